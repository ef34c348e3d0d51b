import type { Where } from '@paperhinge/geometry';
import { onMount } from 'solid-js';
import type { Garment } from '../job/garment.js';
import { pageWords } from '../words.js';
import { createFlights } from './flights.js';
import { OnTable } from './OnTable.jsx';
import { OverTable } from './OverTable.jsx';
import { createShowing } from './showing.js';
import { tableKeys } from './table-keys.js';

/** mm: the side of a square of the table's grid. */
const square = 100;

/** The table with the pieces on it: panned, zoomed, touched. */
export function Table(props: {
  readonly garment: Garment;
  readonly onReady: (fly: (where: Where) => void) => void;
}) {
  const { garment } = props;
  let table: HTMLElement | undefined;
  const showing = createShowing(garment, () => table!);
  const { control, camera, gestures, layout, room, touching } = showing;
  const flights = createFlights(garment, layout, control, room);
  onMount(() => props.onReady(flights.goTo));
  const side = () => square * camera().scale;
  return (
    <section
      class="table"
      ref={table}
      tabindex="0"
      aria-label={pageWords[garment.language()].table}
      onPointerDown={gestures.down}
      onPointerMove={gestures.move}
      onPointerUp={gestures.up}
      onPointerCancel={gestures.up}
      on:wheel={{ handleEvent: gestures.wheel, passive: false }}
      onKeyDown={tableKeys(garment, control, layout, room)}
      onClick={touching.click}
      style={{
        'background-size': `${side()}px ${side()}px`,
        'background-position': `${camera().x}px ${camera().y}px`,
      }}
    >
      <OnTable garment={garment} showing={showing} />
      <OverTable garment={garment} showing={showing} />
    </section>
  );
}
