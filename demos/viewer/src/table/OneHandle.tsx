import { applyToVector } from '@paperhinge/geometry/plane';
import type { Handle } from '../engine/view.js';
import type { Garment } from '../job/garment.js';
import { stepsByKey } from '../sheet/figures.js';
import { pageWords } from '../words.js';
import { onScreen } from './camera.js';
import type { HandleDrag, Seen } from './handle-drag.js';
import { figureGiven, figureText, writeFigure } from './handle-figures.js';
import { placeAt, stepOf, within } from './snapping.js';

/** px a mm at which every whole step of a figure can be told from the next. */
const everyStep = 1e3;
/** Of a limit that there is none of, nothing is said. */
const told = (limit: number): number | undefined => (Number.isFinite(limit) ? limit : undefined);

/** One figure where it lives on the drawing: dragged, or moved by keys. */
export function OneHandle(props: {
  readonly garment: Garment;
  readonly handle: Handle;
  readonly seen: Seen;
  readonly dragging: HandleDrag;
}) {
  const { garment } = props;
  const { drag, isHeld, down, move, up } = props.dragging;
  /** What the hand holds, else what the sheet says: the drawing answers a moment later. */
  const figure = () => (isHeld(props.handle) ? drag()!.figure : figureGiven(garment, props.handle));
  const at = () => {
    const { camera, lieOf } = props.seen;
    return onScreen(camera(), lieOf(props.handle.piece), placeAt(props.handle, figure()));
  };
  const turn = () => {
    const [x, y] = props.handle.along;
    const way = applyToVector(props.seen.lieOf(props.handle.piece), { x, y });
    return (Math.atan2(way.y, way.x) * 180) / Math.PI;
  };
  const isShown = () => garment.toDrag() === props.handle.step && !drag();
  const said = () => figureText(props.handle, figure(), garment.unit());
  const keys = (event: KeyboardEvent) => {
    const by = stepsByKey[event.key];
    if (by === undefined) return;
    event.preventDefault();
    event.stopPropagation();
    const step = stepOf(props.handle, everyStep, garment.unit());
    const to = within(props.handle, Math.round(figure() / step + by) * step);
    writeFigure(garment, props.handle, to, true);
  };
  return (
    <div
      class="handle"
      classList={{ held: isHeld(props.handle), shown: isShown() }}
      role="slider"
      tabIndex={0}
      aria-label={`${props.handle.way.join(', ')}: ${props.handle.piece}`}
      aria-valuenow={figure()}
      aria-valuemin={told(props.handle.least)}
      aria-valuemax={told(props.handle.most)}
      aria-valuetext={said()}
      data-way={props.handle.way.join('.')}
      style={{ transform: `translate(${at()[0]}px, ${at()[1]}px)` }}
      onPointerDown={event => down(event, props.handle)}
      onPointerMove={event => move(event, props.handle)}
      onPointerUp={() => up(props.handle)}
      onPointerCancel={() => up(props.handle)}
      onKeyDown={keys}
      onClick={event => event.stopPropagation()}
    >
      <span class="arrow" aria-hidden="true" style={{ transform: `rotate(${turn()}deg)` }} />
      <span class="tag" aria-hidden="true">
        {isShown() ? pageWords[garment.language()].dragThis : said()}
      </span>
    </div>
  );
}
