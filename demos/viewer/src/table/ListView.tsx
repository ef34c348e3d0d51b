import { For } from 'solid-js';
import type { PieceView, Touched } from '../engine/view.js';

/** The table as a list: every piece, edge and dart with its figures, for whoever does not see the drawing. */
export function ListView(props: {
  readonly pieces: readonly PieceView[];
  readonly onTouch: (event: MouseEvent, thing: Touched) => void;
}) {
  const touch = (event: MouseEvent, kind: Touched['kind'], piece: string, name?: string) =>
    props.onTouch(event, { kind, piece, ...(name === undefined ? {} : { name }) });
  return (
    <ul class="list-view">
      <For each={props.pieces}>
        {piece => (
          <li>
            <button type="button" onClick={event => touch(event, 'piece', piece.name)}>
              {piece.title}, {piece.cut}
            </button>
            <ul>
              <For each={piece.parts.filter(p => p.told !== '')}>
                {part => (
                  <li>
                    <button type="button" onClick={event => touch(event, part.kind, piece.name, part.name)}>
                      {part.name.replaceAll('-', ' ')}: {part.told}
                    </button>
                  </li>
                )}
              </For>
            </ul>
          </li>
        )}
      </For>
    </ul>
  );
}
