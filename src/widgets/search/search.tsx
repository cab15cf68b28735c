import { createMemo, createSignal, For, type JSX, onMount, Show } from 'solid-js';
import { excerpt, foundWords, type Section } from '../../words/search.ts';
import type { Finder } from './finder.ts';

/** So many places are listed, the likeliest; who reads further down does better with another word. */
const SHOWN = 24;

interface Props {
  /** Where the workbook is served, with a slash at its end. */
  base: string;
}

const NOT_FETCHED =
  'The text of the workbook could not be fetched. Open this page once while you have a network; after that it works without.';

/** Looks through everything that the workbook says, on this device alone. */
export function Search(props: Props): JSX.Element {
  const [query, setQuery] = createSignal('');
  const [find, setFind] = createSignal<Finder | null>(null);
  const [problem, setProblem] = createSignal('');
  let fetching = false;

  async function fetchAll(): Promise<void> {
    try {
      const [{ finder }, sections] = await Promise.all([
        import('./finder.ts'),
        fetch(`${props.base}search/sections.json`).then((answer) => answer.json() as Promise<Section[]>),
      ]);
      setFind(() => finder(sections));
      setProblem('');
    } catch {
      fetching = false;
      setProblem(NOT_FETCHED);
    }
  }
  const ready = () => {
    if (fetching) return;
    fetching = true;
    void fetchAll();
  };

  const wanted = () => query().trim();
  const found = createMemo(() => (wanted() === '' ? [] : (find()?.(wanted()) ?? [])));
  const look = (text: string) => {
    setQuery(text);
    if (text.trim() !== '') ready();
    const address = new URL(location.href);
    if (text.trim() === '') address.searchParams.delete('q');
    else address.searchParams.set('q', text.trim());
    history.replaceState(history.state, '', address);
  };
  let field: HTMLInputElement | undefined;
  onMount(() => {
    // What was typed before the script arrived counts, and so does what the address asks for.
    const typed = field?.value || new URLSearchParams(location.search).get('q') || '';
    if (typed !== '') look(typed);
  });

  return (
    <search data-needs-script>
      <form class="search" onSubmit={(event) => event.preventDefault()}>
        <label for="search-words">What are you looking for?</label>
        <input
          ref={field}
          id="search-words"
          type="search"
          name="q"
          autocomplete="off"
          spellcheck={false}
          enterkeyhint="search"
          value={query()}
          onFocus={ready}
          onInput={(event) => look(event.currentTarget.value)}
        />
        <p class="search-count" role="status">
          {problem() || (wanted() !== '' && find() ? foundWords(found().length, wanted(), SHOWN) : '')}
        </p>
        <Show when={found().length > 0}>
          <ol class="search-found">
            <For each={found().slice(0, SHOWN)}>
              {({ section, terms }) => (
                <li>
                  <a href={props.base + section.url}>{section.heading}</a>
                  <Show when={section.heading !== section.page}>
                    <span class="search-page">{section.page}</span>
                  </Show>
                  <p>
                    <For each={excerpt(section.text, terms)}>
                      {({ text, found }) => (found ? <mark>{text}</mark> : text)}
                    </For>
                  </p>
                </li>
              )}
            </For>
          </ol>
        </Show>
      </form>
    </search>
  );
}
