import { Show } from 'solid-js';
import type { Box } from '../engine/view.js';
import { createAnew } from '../job/asked-anew.js';
import type { Garment } from '../job/garment.js';
import { boxOfSewn, SewnSoFar } from '../table/Answered.jsx';
import { createInSight } from './in-sight.js';

/** Share of a picture's larger side that is left free round it. */
const margin = 0.04;

/** What a job of the making joins and what it is done to, small beside its sentence; drawn once it is in sight. */
export function JobPicture(props: { readonly garment: Garment; readonly at: number }) {
  const { engine } = props.garment;
  let place: HTMLSpanElement | undefined;
  const seen = createInSight(() => place!);
  const sewn = createAnew(engine.view, () => (seen() ? props.at : undefined), engine.sewn);
  return (
    <span class="job-picture" ref={place}>
      <Show when={sewn()}>
        {done => (
          <Show when={boxOfSewn(done())}>
            {box => (
              <svg viewBox={framed(box())} aria-hidden="true">
                <SewnSoFar garment={props.garment} sewn={done()} />
              </svg>
            )}
          </Show>
        )}
      </Show>
    </span>
  );
}

function framed([x, y, width, height]: Box): string {
  const free = Math.max(width, height) * margin;
  return [x - free, y - free, width + 2 * free, height + 2 * free].join(' ');
}
