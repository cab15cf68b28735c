/** What is said of one slip. */
export interface SlipText {
  /** What was done, after 'you': 'gave each side all 10 spare strings'. */
  readonly did: string;
  /** Why that does not come out, in whole sentences. */
  readonly why: string;
  /** The next step, in whole sentences. */
  readonly next: string;
}
