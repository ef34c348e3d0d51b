import { For, Show } from 'solid-js';
import type { Garment } from '../job/garment.js';
import { lengthText } from '../sheet/figures.js';
import { pageWords } from '../words.js';
import { type Camera, onScreen, type Place } from './camera.js';
import type { Lie } from './lie.js';

/** A measurement on a piece: a line between two points, straight and along the edge they lie on. */
export function Measure(props: {
  readonly garment: Garment;
  readonly camera: Camera;
  readonly lieOf: (piece: string) => Lie;
}) {
  const { garment } = props;
  const say = () => pageWords[garment.language()];
  const px = (piece: string, at: Place): Place => onScreen(props.camera, props.lieOf(piece), at);
  return (
    <Show when={garment.measuring()}>
      {measuring => {
        const from = () => px(measuring().piece, measuring().from);
        const to = () => (measuring().to ? px(measuring().piece, measuring().to!) : from());
        return (
          <>
            <svg class="measure" width="100%" height="100%" aria-hidden="true">
              <path d={`M${from().join(' ')} L${to().join(' ')}`} />
              <circle cx={from()[0]} cy={from()[1]} r="5" />
              <circle cx={to()[0]} cy={to()[1]} r="5" />
            </svg>
            <p class="tag still" role="status" style={{ left: `${to()[0] + 14}px`, top: `${to()[1] + 8}px` }}>
              <Show when={measuring().came} fallback={say().measureTo}>
                {came => (
                  <>
                    <strong>{lengthText(came().straightMm, garment.unit())}</strong>
                    <For each={came().along}>
                      {({ edge, mm }) => (
                        <>
                          {' '}
                          · {lengthText(mm, garment.unit())} {say().along} {edge.replaceAll('-', ' ')}
                        </>
                      )}
                    </For>
                  </>
                )}
              </Show>
            </p>
          </>
        );
      }}
    </Show>
  );
}
