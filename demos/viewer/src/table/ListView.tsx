import { Index } from 'solid-js';
import type { PieceView, Touched } from '../engine/view.js';
import type { Garment } from '../job/garment.js';
import { partTold } from './part-told.js';

/** The table as a list: every piece, edge and dart with its figures, for whoever does not see the drawing. */
export function ListView(props: {
  readonly garment: Garment;
  readonly pieces: readonly PieceView[];
  readonly onTouch: (event: MouseEvent, thing: Touched) => void;
}) {
  const touch = (event: MouseEvent, kind: Touched['kind'], piece: string, name?: string) =>
    props.onTouch(event, { kind, piece, ...(name === undefined ? {} : { name }) });
  return (
    <ul class="list-view">
      <Index each={props.pieces}>
        {piece => (
          <li>
            <button type="button" onClick={event => touch(event, 'piece', piece().name)}>
              {piece().title}, {piece().cut}
            </button>
            <ul>
              <Index each={piece().parts.filter(p => p.told !== '')}>
                {part => (
                  <li>
                    <button
                      type="button"
                      onClick={event => touch(event, part().kind, piece().name, part().name)}
                    >
                      {part().name.replaceAll('-', ' ')}: {partTold(props.garment, part())}
                    </button>
                  </li>
                )}
              </Index>
            </ul>
          </li>
        )}
      </Index>
    </ul>
  );
}
