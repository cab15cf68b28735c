import type { UnitSystem } from '../words/units.ts';
import { type Concern, concern } from './concern.ts';
import type { Device } from './safe-storage.ts';

export type FiguresShown = 'example' | 'mine';

export interface Preferences {
  readonly version: 1;
  /** Whose figures lessons are read with. */
  readonly figures: FiguresShown;
  readonly units: UnitSystem;
}
export type PreferencesChange = Partial<Omit<Preferences, 'version'>>;

export const STARTING_PREFERENCES: Preferences = { version: 1, figures: 'example', units: 'metric' };

const read = ({ figures, units }: Readonly<Record<string, unknown>>): PreferencesChange => ({
  ...(figures === 'example' || figures === 'mine' ? { figures } : {}),
  ...(units === 'metric' || units === 'inches' ? { units } : {}),
});

/** Small choices on a device; the functions below are those of this browser. */
export const preferencesOn = (device?: Device): Concern<Preferences, PreferencesChange> =>
  concern(
    {
      name: 'preferences',
      version: 1,
      start: STARTING_PREFERENCES,
      read,
      merge: (value, change) => ({ ...value, ...read(change) }),
    },
    device,
  );

const here = preferencesOn();
export const loadPreferences = here.load;
export const savePreferences = here.save;
export const subscribePreferences = here.subscribe;
