import { createSignal, type JSX, Show } from 'solid-js';
import { textAside } from '../../store/progress/aside.ts';
import { fileName, formatProgress, readProgressFile } from '../../store/progress/file.ts';
import { EMPTY_LOG, type Log } from '../../store/progress/log.ts';
import { thisProgress } from '../../store/progress/progress.ts';
import { broughtWords, fileProblemWords } from '../../words/progress-words.ts';
import { storageWords } from '../../words/storage-words.ts';
import { saveFile } from './save-file.ts';

/** The progress as a file: saved, read back and merged, and wiped, with a way back while the page is open. */
export function KeepProgress(props: { log: Log }): JSX.Element {
  let wipe: HTMLButtonElement | undefined;
  let question: HTMLParagraphElement | undefined;
  let undo: HTMLButtonElement | undefined;
  const [say, setSay] = createSignal('');
  const [refused, setRefused] = createSignal(false);
  const [asking, setAsking] = createSignal(false);
  const [wiped, setWiped] = createSignal<Log>(EMPTY_LOG);
  const [aside, setAside] = createSignal(textAside());
  const isEmpty = () => props.log.events.length === 0;

  const tell = (text: string, problem = false) => {
    setSay(text);
    setRefused(problem);
  };
  const save = () => {
    saveFile(fileName(), formatProgress(props.log));
    tell('The file is saved where your browser puts its downloads.');
  };
  async function read(file: File): Promise<void> {
    const text = await file.text().catch(() => null);
    const reading = text === null ? null : readProgressFile(text);
    if (!reading?.ok) {
      tell(fileProblemWords(reading?.problem ?? { code: 'unreadable' }), true);
      return;
    }
    const before = new Set(props.log.events.map(({ id }) => id));
    const keeping = thisProgress.add(reading.log);
    const brought = broughtWords(
      thisProgress.load().value.events.filter(({ id }) => !before.has(id)).length,
      reading.log.events.length,
    );
    tell(keeping.kept ? brought : `${brought} ${storageWords(keeping)}`, !keeping.kept);
  }
  const ask = (on: boolean) => {
    setAsking(on);
    queueMicrotask(() => (on ? question : wipe)?.focus());
  };
  const wipeAll = () => {
    setWiped(props.log);
    thisProgress.wipe();
    setAside(null);
    setAsking(false);
    tell('Your progress is wiped from this device.');
    queueMicrotask(() => undo?.focus());
  };
  const bringBack = () => {
    const keeping = thisProgress.add(wiped());
    setWiped(EMPTY_LOG);
    tell(keeping.kept ? 'Your progress is back.' : storageWords(keeping), !keeping.kept);
    queueMicrotask(() => wipe?.focus());
  };

  return (
    <div class="keep-progress">
      <p>
        What you learn is kept on this device alone. A file takes it to another one, or keeps it safe. It says which
        exercises you tried and when, and nothing else about you. Reading a file back adds what is in it and takes
        nothing away.
      </p>
      <div class="practice-buttons">
        <button type="button" onClick={save} disabled={isEmpty()}>
          Save to a file
        </button>
        <label class="button file-button">
          Read a file back
          <input
            type="file"
            accept="application/json,.json"
            onChange={(event) => {
              const input = event.currentTarget;
              const [file] = input.files ?? [];
              // The same file can be read again after it was mended.
              if (file) void read(file).then(() => (input.value = ''));
            }}
          />
        </label>
        <button type="button" ref={wipe} onClick={() => ask(true)} disabled={isEmpty()}>
          Wipe…
        </button>
      </div>
      <Show when={asking()}>
        <fieldset class="wipe-question">
          <legend>Wipe the progress?</legend>
          <p ref={question} tabindex="-1">
            This takes your progress away from this device: lessons, ticks and practice. What you typed into exercises
            stays where it is. Save a file first if you may want it again.
          </p>
          <div class="practice-buttons">
            <button type="button" onClick={save}>
              Save to a file first
            </button>
            <button type="button" data-kind="must-do" onClick={wipeAll}>
              Wipe it now
            </button>
            <button type="button" onClick={() => ask(false)}>
              Keep it
            </button>
          </div>
        </fieldset>
      </Show>
      <p role="status" classList={{ 'field-problem': refused() }}>
        {say()}
      </p>
      <Show when={wiped().events.length > 0}>
        <p class="practice-buttons">
          <button type="button" ref={undo} onClick={bringBack}>
            Bring it back
          </button>
          <span class="note">as long as this page is open</span>
        </p>
      </Show>
      <Show when={aside()}>
        {(text) => (
          <div>
            <p>
              Something that was kept here could not be read. It is set aside as it was, and you can save it to a file.
            </p>
            <p class="practice-buttons">
              <button type="button" onClick={() => saveFile('evenfold-set-aside.txt', text())}>
                Save what was set aside
              </button>
            </p>
          </div>
        )}
      </Show>
    </div>
  );
}
