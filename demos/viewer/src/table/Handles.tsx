import type { LengthUnit } from '@paperhinge/geometry';
import { createMemo, createSignal, Index, Show } from 'solid-js';
import type { Handle } from '../engine/view.js';
import type { Garment } from '../job/garment.js';
import { valueAt } from '../sheet/sentence.js';
import { pageWords } from '../words.js';
import type { Camera } from './camera.js';
import { figureFrom, figureInSheet, figureText } from './handle-figures.js';
import { figureAt, placeAt, type Snapped, snapped, stepOf, within } from './snapping.js';

interface Drag extends Snapped {
  readonly key: string;
}
const keyOf = ({ piece, way }: Handle): string => `${piece} ${way.join('.')}`;

/** The handles of the step that is being read: each figure where it lives on the drawing. */
export function Handles(props: {
  readonly garment: Garment;
  readonly camera: Camera;
  readonly placeOf: (piece: string) => readonly [number, number];
  readonly onDrag: (dragging: boolean) => void;
}) {
  const { garment } = props;
  const [drag, setDrag] = createSignal<Drag>();
  const handles = createMemo(() =>
    garment.engine.held().handles.filter(h => h.step === garment.open() && h.step < garment.needle()),
  );
  const px = (piece: string, [x, y]: readonly [number, number]): readonly [number, number] => {
    const [dx, dy] = props.placeOf(piece);
    const { scale, x: left, y: top } = props.camera;
    return [left + (x + dx) * scale, top + (y + dy) * scale];
  };
  const unitWritten = () => (garment.values().unit as LengthUnit | undefined) ?? 'mm';
  /** What the hand holds, else what the sheet says: the drawing answers a moment later. */
  const figureNow = (handle: Handle): number => {
    if (drag()?.key === keyOf(handle)) return drag()!.figure;
    const fields = garment.steps()[handle.step]?.fields ?? {};
    return figureFrom(handle, valueAt(fields, handle.way.join('.')), unitWritten()) ?? handle.value;
  };
  const write = (handle: Handle, figure: number, settled: boolean) => {
    const verb = garment.steps()[handle.step]?.verb;
    if (verb === undefined) return;
    garment.set(
      ['steps', handle.step, verb, ...handle.way],
      figureInSheet(handle, figure, unitWritten()),
      settled,
    );
  };

  /** Where the pointer took hold, from the handle's own place, in px. */
  let grip: readonly [number, number] | undefined;
  const down = (event: PointerEvent, handle: Handle) => {
    event.stopPropagation();
    (event.currentTarget as Element).setPointerCapture(event.pointerId);
    const [x, y] = px(handle.piece, handle.at);
    grip = [event.clientX - x, event.clientY - y];
    props.onDrag(true);
  };
  const move = (event: PointerEvent, handle: Handle) => {
    if (!grip) return;
    event.stopPropagation();
    const [dx, dy] = props.placeOf(handle.piece);
    const { scale, x, y } = props.camera;
    const to = [
      (event.clientX - grip[0] - x) / scale - dx,
      (event.clientY - grip[1] - y) / scale - dy,
    ] as const;
    const { points } = garment.engine.held();
    const next = snapped(handle, within(handle, figureAt(handle, to)), {
      scale,
      unit: garment.unit(),
      points,
    });
    if (next.figure === drag()?.figure) return;
    setDrag({ key: keyOf(handle), ...next });
    write(handle, next.figure, false);
  };
  const up = (handle: Handle) => {
    grip = undefined;
    const last = drag();
    setDrag(undefined);
    props.onDrag(false);
    if (!last) return;
    write(handle, last.figure, true);
    garment.setToDrag(undefined);
  };
  const keys = (event: KeyboardEvent, handle: Handle) => {
    const by = { ArrowUp: 1, ArrowRight: 1, ArrowDown: -1, ArrowLeft: -1, PageUp: 10, PageDown: -10 }[
      event.key
    ];
    if (by === undefined) return;
    event.preventDefault();
    event.stopPropagation();
    const step = stepOf(handle, 1e3, garment.unit());
    write(handle, within(handle, Math.round(figureNow(handle) / step + by) * step), true);
  };
  return (
    <div class="handles">
      <Index each={handles()}>
        {handle => {
          const at = () => px(handle().piece, placeAt(handle(), figureNow(handle())));
          const turn = () => (Math.atan2(handle().along[1], handle().along[0]) * 180) / Math.PI;
          const isShown = () => garment.toDrag() === handle().step && !drag();
          const said = () => figureText(handle(), figureNow(handle()), garment.unit());
          return (
            <div
              class="handle"
              classList={{ held: drag()?.key === keyOf(handle()), shown: isShown() }}
              role="slider"
              tabIndex={0}
              aria-label={`${handle().way.join(', ')}: ${handle().piece}`}
              aria-valuenow={figureNow(handle())}
              aria-valuemin={Number.isFinite(handle().least) ? handle().least : undefined}
              aria-valuemax={Number.isFinite(handle().most) ? handle().most : undefined}
              aria-valuetext={said()}
              data-way={handle().way.join('.')}
              style={{ transform: `translate(${at()[0]}px, ${at()[1]}px)` }}
              onPointerDown={event => down(event, handle())}
              onPointerMove={event => move(event, handle())}
              onPointerUp={() => up(handle())}
              onPointerCancel={() => up(handle())}
              onKeyDown={event => keys(event, handle())}
              onClick={event => event.stopPropagation()}
            >
              <span class="arrow" aria-hidden="true" style={{ transform: `rotate(${turn()}deg)` }} />
              <span class="tag" aria-hidden="true">
                {isShown() ? pageWords[garment.language()].dragThis : said()}
              </span>
            </div>
          );
        }}
      </Index>
      <Show when={drag()?.point}>
        {point => (
          <span
            class="met"
            aria-hidden="true"
            style={{ transform: `translate(${px(point().piece, point().at).join('px, ')}px)` }}
          />
        )}
      </Show>
    </div>
  );
}
