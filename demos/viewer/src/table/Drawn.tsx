import { Index, Show } from 'solid-js';
import type { PieceView } from '../engine/view.js';

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

/** px that a piece must have across and down for its title to stand on it, across for each letter, and for what is cut of it. */
const titleRoom = 90,
  letter = 9,
  cutRoom = 130;

/** What a piece is, and where there is room how it is cut; a piece too small for its title has it underneath. */
function Title(props: {
  readonly piece: PieceView;
  readonly scale: number;
  readonly upright: string;
  readonly below: boolean;
  readonly onGrab: (event: PointerEvent) => void;
}) {
  /** Nearer to a line, as the place was chosen by, than half its letters are high and wide. */
  const isCramped = () =>
    props.piece.middleRoom * props.scale < Math.max(18, props.piece.title.length * letter * 0.3);
  const at = (): readonly [number, number] => {
    const [x, y, width, height] = props.piece.box;
    const isNarrow = width * props.scale < props.piece.title.length * letter;
    return isNarrow || props.below || Math.min(width, height) * props.scale < titleRoom || isCramped()
      ? [x + width / 2, y + height + 20 / props.scale]
      : props.piece.middle;
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
      <Show when={props.piece.box[2] * props.scale > cutRoom}>
        <text y="18" class="small">
          {props.piece.cut}
        </text>
      </Show>
    </g>
  );
}
