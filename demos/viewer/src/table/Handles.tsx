import { createMemo, Index, Show } from 'solid-js';
import type { Garment } from '../job/garment.js';
import { type Camera, onScreen } from './camera.js';
import { createHandleDrag, type Seen } from './handle-drag.js';
import type { Lie } from './lie.js';
import { OneHandle } from './OneHandle.jsx';

/** The handles of the step that is being read: each figure where it lives on the drawing. */
export function Handles(props: {
  readonly garment: Garment;
  readonly camera: Camera;
  readonly lieOf: (piece: string) => Lie;
  readonly onDrag: (dragging: boolean) => void;
}) {
  const { garment } = props;
  const seen: Seen = { camera: () => props.camera, lieOf: piece => props.lieOf(piece) };
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
              transform: `translate(${onScreen(props.camera, props.lieOf(point().piece), point().at).join('px, ')}px)`,
            }}
          />
        )}
      </Show>
    </div>
  );
}
