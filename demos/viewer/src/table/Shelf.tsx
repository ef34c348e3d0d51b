import { createResource, createSignal, For, onMount, Show } from 'solid-js';
import type { Garment } from '../job/garment.js';
import { layFiles, type Outcome } from '../job/laying.js';
import { lessonNames, lessonOf } from '../job/lessons.js';
import { forget, type Kept, onShelf, opened } from '../job/shelf.js';
import { pageWords } from '../words.js';

/** Why something was not laid on the table, in words. */
export const whyNot = (outcome: Outcome, language: 'en' | 'de'): string =>
  outcome === 'laid' ? '' : 'refused' in outcome ? outcome.refused : pageWords[language].not[outcome.not];

/** What can be laid on the table: a file, a garment from the shelf, a lesson. */
export function Shelf(props: { readonly garment: Garment; readonly onDone: () => void }) {
  const { garment } = props;
  const say = () => pageWords[garment.language()];
  const [kept, { refetch }] = createResource(() => garment.keepNow().then(onShelf));
  const [busy, setBusy] = createSignal(false);
  const [told, setTold] = createSignal('');
  let first: HTMLInputElement | undefined;
  onMount(() => first?.focus());
  const lay = async (files: FileList | null) => {
    setBusy(true);
    const outcome = await layFiles(garment, [...(files ?? [])]);
    setBusy(false);
    setTold(whyNot(outcome, garment.language()));
    if (outcome === 'laid') props.onDone();
  };
  const take = (one: Kept) => {
    garment.load(one);
    void opened(one.id);
    props.onDone();
  };
  const when = (changed: number) =>
    new Date(changed).toLocaleDateString(garment.language(), { day: 'numeric', month: 'long' });
  return (
    <section
      class="shelf"
      aria-label={say().another}
      onPointerDown={e => e.stopPropagation()}
      onClick={e => e.stopPropagation()}
      onKeyDown={event => event.key === 'Escape' && props.onDone()}
    >
      <h2>{say().fromFile}</h2>
      <p>
        <label class="file">
          {say().chooseFile}
          <input
            ref={first}
            type="file"
            multiple
            accept=".svg,.yaml,.yml,.json,.jpg,.jpeg,.png,image/svg+xml"
            onChange={event => lay(event.currentTarget.files)}
          />
        </label>
        <small role="status">{busy() ? say().working : say().orDrop}</small>
      </p>
      <Show when={told()}>
        <p class="refused" role="alert">
          ▲ {told()}
        </p>
      </Show>
      <h2>{say().lessons}</h2>
      <ul>
        <For each={lessonNames}>
          {name => (
            <li>
              <button
                type="button"
                onClick={async () => {
                  garment.lay(await lessonOf(name));
                  props.onDone();
                }}
              >
                {say().lesson[name][0]}
                <small>{say().lesson[name][1]}</small>
              </button>
            </li>
          )}
        </For>
      </ul>
      <Show when={(kept() ?? []).length > 0}>
        <h2>{say().onShelf}</h2>
        <ul>
          <For each={kept()}>
            {one => (
              <li class="kept">
                <button type="button" aria-current={one.id === garment.source().id} onClick={() => take(one)}>
                  {one.title}
                  <small>
                    {say().changed} {when(one.changed)}
                  </small>
                </button>
                <Show when={one.id !== garment.source().id}>
                  <button
                    type="button"
                    class="away"
                    aria-label={`${say().throwAway}: ${one.title}`}
                    onClick={() => forget(one.id).then(refetch)}
                  >
                    {say().throwAway}
                  </button>
                </Show>
              </li>
            )}
          </For>
        </ul>
      </Show>
      <p>
        <button type="button" class="plain" onClick={props.onDone}>
          {say().close}
        </button>
      </p>
    </section>
  );
}
