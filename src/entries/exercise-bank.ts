const EXERCISE = /<Exercise((?:\s+[\w-]+(?:=(?:"[^"]*"|\{[^}]*\}))?)*)\s*\/?>/g;
const SETTING = /([\w-]+)(?:=(?:"([^"]*)"|\{([^}]*)\}))?/g;
/** A lesson holds figures and lists of names, no code: `{3}`, `{true}`, `{['spare', 'onBar']}`. */
const settingOf = (code: string): unknown => JSON.parse(code.replaceAll("'", '"'));

/** What each exercise of a lesson's text is set to. */
export const exercisesIn = (text: string): readonly Readonly<Record<string, unknown>>[] =>
  [...text.matchAll(EXERCISE)].map(([, settings = '']) =>
    Object.fromEntries(
      [...settings.matchAll(SETTING)].map(([, name, words, code]) => [
        name,
        words ?? (code === undefined ? true : settingOf(code)),
      ]),
    ),
  );
