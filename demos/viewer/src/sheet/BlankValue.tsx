import type { BlankProps } from './Blank.jsx';
import { hasFigure, stepped, stepsByKey } from './figures.js';

/** px of a sideways drag that make one step of a figure. */
const dragPerStep = 8;

/** What stands in a blank: a figure is dragged sideways or stepped by keys; a touch or Enter opens it. */
export function BlankValue(props: BlankProps & { readonly shown: string; readonly onEdit: () => void }) {
  const step = (by: number, settled: boolean) =>
    props.onChange(stepped(props.field, props.value, by, props.written, props.unit), settled);
  const drag = createDrag({
    canBegin: () => hasFigure(props.field, props.value),
    step: by => step(by, false),
    settle: () => props.onChange(props.value, true),
  });
  const keys = (event: KeyboardEvent) => {
    if (event.key === 'Enter' || event.key === ' ') {
      event.preventDefault();
      props.onEdit();
      return;
    }
    const by = stepsByKey[event.key];
    if (by === undefined || !hasFigure(props.field, props.value)) return;
    event.preventDefault();
    step(by, true);
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a word of the sentence, which wraps with its line and keeps its comma
    <span
      class="value"
      role="button"
      tabIndex={0}
      aria-label={`${props.label}: ${props.shown}`}
      aria-haspopup={props.choices.length > 0 ? 'listbox' : undefined}
      onPointerDown={drag.down}
      onPointerMove={drag.move}
      onPointerUp={drag.up}
      onPointerCancel={drag.up}
      onKeyDown={keys}
      onClick={() => !drag.hasMoved() && props.onEdit()}
    >
      {props.shown}
    </span>
  );
}

/** A figure dragged sideways, step by step; a touch that moved is no click. */
function createDrag(figure: {
  readonly canBegin: () => boolean;
  readonly step: (by: number) => void;
  readonly settle: () => void;
}) {
  let from: number | undefined,
    moved = false;
  return {
    hasMoved: () => moved,
    down: (event: PointerEvent) => {
      if (!figure.canBegin()) return;
      [from, moved] = [event.clientX, false];
      (event.currentTarget as Element).setPointerCapture(event.pointerId);
    },
    move: (event: PointerEvent) => {
      if (from === undefined) return;
      const steps = Math.trunc((event.clientX - from) / dragPerStep);
      if (steps === 0) return;
      [from, moved] = [from + steps * dragPerStep, true];
      figure.step(steps);
    },
    up: () => {
      if (moved) figure.settle();
      from = undefined;
    },
  };
}
