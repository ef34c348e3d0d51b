import { For } from 'solid-js';
import type { Garment } from '../job/garment.js';
import { lessonNames, lessonOf } from '../job/lessons.js';
import { pageWords } from '../words.js';
import { FromFile } from './FromFile.jsx';
import { KeptGarments } from './KeptGarments.jsx';

/** A part of the shelf; when something of it lies on the table, it is done with. */
export interface ShelfProps {
  readonly garment: Garment;
  readonly onDone: () => void;
}

/** What can be laid on the table: a file, a lesson, a garment that was kept. */
export function Shelf(props: ShelfProps) {
  const say = () => pageWords[props.garment.language()];
  return (
    <section
      class="shelf"
      aria-label={say().another}
      onPointerDown={e => e.stopPropagation()}
      onClick={e => e.stopPropagation()}
      onKeyDown={event => event.key === 'Escape' && props.onDone()}
    >
      <FromFile {...props} />
      <Lessons {...props} />
      <KeptGarments {...props} />
      <p>
        <button type="button" class="plain" onClick={props.onDone}>
          {say().close}
        </button>
      </p>
    </section>
  );
}

/** Garments to learn by, each one click away. */
function Lessons(props: ShelfProps) {
  const { garment } = props;
  const say = () => pageWords[garment.language()];
  const take = async (name: (typeof lessonNames)[number]) => {
    garment.lay(await lessonOf(name));
    props.onDone();
  };
  return (
    <>
      <h2>{say().lessons}</h2>
      <ul>
        <For each={lessonNames}>
          {name => (
            <li>
              <button type="button" onClick={() => take(name)}>
                {say().lesson[name][0]}
                <small>{say().lesson[name][1]}</small>
              </button>
            </li>
          )}
        </For>
      </ul>
    </>
  );
}
