import { createSignal, type JSX, onMount, Show } from 'solid-js';
import { offers } from '../../store/offers.ts';
import { fileName, formatProgress } from '../../store/progress/file.ts';
import type { Log } from '../../store/progress/log.ts';
import { saveFile } from './save-file.ts';

interface Props {
  /** Whether there is anything to lose. */
  tried: boolean;
  log: () => Log;
}

/** Said once, where the browser did not promise to keep what is kept here: some clear it after a week. */
export function FileOffer(props: Props): JSX.Element {
  const [wanted, setWanted] = createSignal(false);
  onMount(async () => {
    if (offers.load().value.file) return;
    const safe = await (navigator.storage?.persisted?.() ?? Promise.resolve(false)).catch(() => false);
    setWanted(!safe);
  });
  const done = () => {
    offers.save({ file: true });
    setWanted(false);
    document.getElementById('practice-now')?.focus();
  };
  return (
    <Show when={props.tried && wanted()}>
      <aside class="file-offer only-screen" aria-label="Keep a copy">
        <p>
          Some browsers clear what a site keeps when you don’t visit it for a week. A file of your progress is safe from
          that. You can read it back here, or on another device.
        </p>
        <p class="practice-buttons">
          <button
            type="button"
            onClick={() => {
              saveFile(fileName(), formatProgress(props.log()));
              done();
            }}
          >
            Save it now
          </button>
          <button type="button" onClick={done}>
            No, thank you
          </button>
        </p>
      </aside>
    </Show>
  );
}
