import { For } from 'solid-js';
import type { Joined, Whole } from '../engine/pictures.js';
import type { Box } from '../engine/view.js';

/** The garment laid out whole, front beside back; before as a ghost over after. */
export function WholeGarment(props: { readonly whole: Whole; readonly ghosts: boolean }) {
  const drawn = (kind: string) => (joined: Joined) => <path class={kind} d={joined.path} />;
  return (
    <g class="whole">
      <For each={props.whole.after}>{drawn('paper')}</For>
      <For each={props.ghosts ? props.whole.before : []}>{drawn('ghost')}</For>
    </g>
  );
}

/** The box that the drawing takes, in mm. */
export function boxOfWhole({ after, before }: Whole): Box | undefined {
  const boxes = [...after, ...before].map(j => j.box);
  if (boxes.length === 0) return undefined;
  const [x, y] = [Math.min(...boxes.map(b => b[0])), Math.min(...boxes.map(b => b[1]))];
  return [x, y, Math.max(...boxes.map(b => b[0] + b[2])) - x, Math.max(...boxes.map(b => b[1] + b[3])) - y];
}
