import { createResource, For, Show } from 'solid-js';
import { forget, type Kept, onShelf, opened } from '../job/shelf.js';
import { pageWords } from '../words.js';
import type { ShelfProps } from './Shelf.jsx';

/** The garments that are kept on this device: taken up again, or thrown away. */
export function KeptGarments(props: ShelfProps) {
  const { garment } = props;
  const say = () => pageWords[garment.language()];
  const [kept, { refetch }] = createResource(() => garment.keepNow().then(onShelf));
  const take = (one: Kept) => {
    garment.load(one);
    void opened(one.id);
    props.onDone();
  };
  const when = (changed: number) =>
    new Date(changed).toLocaleDateString(garment.language(), { day: 'numeric', month: 'long' });
  const isHere = (one: Kept) => one.id === garment.source().id;
  return (
    <Show when={(kept() ?? []).length > 0}>
      <h2>{say().onShelf}</h2>
      <ul>
        <For each={kept()}>
          {one => (
            <li class="kept">
              <button type="button" aria-current={isHere(one)} onClick={() => take(one)}>
                {one.title}
                <small>
                  {say().changed} {when(one.changed)}
                </small>
              </button>
              <Show when={!isHere(one)}>
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
  );
}
