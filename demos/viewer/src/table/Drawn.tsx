import { For, Index, Show } from 'solid-js';
import type { PieceView } from '../engine/view.js';
import { cutLines, lineHeight, standsBelow } from './title.js';

/** One piece as paper: cut edge, stitching line, what lies on it; each part with a broad path that takes the touch. */
export function Drawn(props: {
  readonly piece: PieceView;
  readonly scale: number;
  readonly isTouched: (name?: string) => boolean;
  readonly isLit: (name: string) => boolean;
  /** Stands its title upright, if it is turned. */
  readonly upright?: string;
  /** The piece is taken hold of by its title. */
  readonly onGrab?: (event: PointerEvent) => void;
  /** Turned over, its title would read backwards. */
  readonly untitled?: true;
  /** Other words stand on the piece: its title stands underneath. */
  readonly titleBelow?: boolean;
}) {
  return (
    <>
      <path
        class="paper"
        classList={{ touched: props.isTouched(undefined), lit: props.isLit('') }}
        d={props.piece.cutting}
        data-kind="piece"
        data-piece={props.piece.name}
      />
      <Index each={props.piece.parts}>
        {part => (
          <>
            <path
              class={`${part().kind} ${part().sort}`}
              classList={{ touched: props.isTouched(part().name), lit: props.isLit(part().name) }}
              d={part().path}
            />
            <path
              class="reach"
              d={part().path}
              stroke-width={(part().kind === 'corner' ? 22 : 16) / props.scale}
              data-kind={part().kind}
              data-piece={props.piece.name}
              data-name={part().name}
            />
          </>
        )}
      </Index>
      <Show when={!props.untitled}>
        <Title
          piece={props.piece}
          scale={props.scale}
          upright={props.upright ?? ''}
          below={props.titleBelow ?? false}
          onGrab={event => props.onGrab?.(event)}
        />
      </Show>
    </>
  );
}

/** What a piece is, and where there is room how it is cut; a piece too small for its title has it underneath. */
function Title(props: {
  readonly piece: PieceView;
  readonly scale: number;
  readonly upright: string;
  readonly below: boolean;
  readonly onGrab: (event: PointerEvent) => void;
}) {
  const isBelow = () => props.below || standsBelow(props.piece, props.scale);
  const at = (): readonly [number, number] => {
    const [x, y, width, height] = props.piece.box;
    return isBelow() ? [x + width / 2, y + height + 20 / props.scale] : props.piece.middle;
  };
  return (
    <g
      transform={`translate(${at().join(' ')}) scale(${1 / props.scale}) ${props.upright}`}
      class="title"
      data-kind="piece"
      data-piece={props.piece.name}
      onPointerDown={event => props.onGrab(event)}
    >
      <text>{props.piece.title}</text>
      <For each={cutLines(props.piece, props.scale, isBelow())}>
        {(line, i) => (
          <text y={lineHeight * (i() + 1)} class="small">
            {line}
          </text>
        )}
      </For>
    </g>
  );
}
