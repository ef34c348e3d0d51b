import { For } from 'solid-js';
import type { PagesPicture } from '../engine/pictures.js';
import type { Box } from '../engine/view.js';
import type { Garment } from '../job/garment.js';

/** mm of room round the sheet; and how far down from the middle of a page its label's foot stands. */
const room = 8,
  labelDown = 18;

/** The box round all windows, in mm. */
export function boxOfPages(windows: readonly Box[]): Box {
  const x = Math.min(...windows.map(w => w[0])),
    y = Math.min(...windows.map(w => w[1]));
  const right = Math.max(...windows.map(w => w[0] + w[2])),
    bottom = Math.max(...windows.map(w => w[1] + w[3]));
  return [x - room, y - room, right - x + 2 * room, bottom - y + 2 * room];
}

interface PagesInkProps {
  readonly garment: Garment;
  readonly tiles: PagesPicture['pages'];
  readonly pieces: PagesPicture['pieces'];
}

/** The large sheet as a picture of its own. */
export function PagesDrawn(props: PagesInkProps & { readonly label: string }) {
  return (
    <svg viewBox={boxOfPages(props.tiles.map(p => p.window)).join(' ')} role="img" aria-label={props.label}>
      <PagesInk garment={props.garment} tiles={props.tiles} pieces={props.pieces} />
    </svg>
  );
}

/** The large sheet: its pages, the pieces where they lie on it, the pages' labels over them. */
export function PagesInk(props: PagesInkProps) {
  const cutting = (name: string) => props.garment.engine.view()?.pieces.find(p => p.name === name)?.cutting;
  return (
    <>
      <For each={props.tiles}>
        {({ window: [x, y, width, height] }) => (
          <rect class="tile" x={x} y={y} width={width} height={height} />
        )}
      </For>
      <For each={props.pieces}>
        {placed => (
          <path class="placed" d={cutting(placed.piece)} transform={`matrix(${placed.matrix.join(' ')})`} />
        )}
      </For>
      <For each={props.tiles}>
        {({ window: [x, y, width, height], label }) => (
          <text x={x + width / 2} y={y + height / 2 + labelDown}>
            {label}
          </text>
        )}
      </For>
    </>
  );
}
