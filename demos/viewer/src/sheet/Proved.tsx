import type { JSX } from 'solid-js';
import type { Garment } from '../job/garment.js';

/** What is true only once it is proved. Until then it cannot be seen nor heard, and its room is kept: nothing jumps. */
export function Proved(props: { readonly garment: Garment; readonly children: JSX.Element }) {
  return (
    <span class="proved" classList={{ awaited: !props.garment.engine.isProved() }}>
      <span>{props.children}</span>
    </span>
  );
}
