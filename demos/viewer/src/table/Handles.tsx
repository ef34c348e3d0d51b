import { createMemo, Index, Show } from 'solid-js';
import type { Garment } from '../job/garment.js';
import { type Camera, onScreen, type Place } from './camera.js';
import { createHandleDrag, type Seen } from './handle-drag.js';
import { OneHandle } from './OneHandle.jsx';

/** The handles of the step that is being read: each figure where it lives on the drawing. */
export function Handles(props: {
  readonly garment: Garment;
  readonly camera: Camera;
  readonly placeOf: (piece: string) => Place;
  readonly onDrag: (dragging: boolean) => void;
}) {
  const { garment } = props;
  const seen: Seen = { camera: () => props.camera, placeOf: piece => props.placeOf(piece) };
  const dragging = createHandleDrag(garment, seen, isDragging => props.onDrag(isDragging));
  const handles = createMemo(() =>
    garment.engine.held().handles.filter(h => h.step === garment.open() && h.step < garment.needle()),
  );
  return (
    <div class="handles">
      <Index each={handles()}>
        {handle => <OneHandle garment={garment} handle={handle()} seen={seen} dragging={dragging} />}
      </Index>
      <Show when={dragging.drag()?.point}>
        {point => (
          <span
            class="met"
            aria-hidden="true"
            style={{
              transform: `translate(${onScreen(props.camera, props.placeOf(point().piece), point().at).join('px, ')}px)`,
            }}
          />
        )}
      </Show>
    </div>
  );
}
