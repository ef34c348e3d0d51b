import type { Field } from '@paperhinge/alter/verb';
import type { LengthUnit } from '@paperhinge/geometry';
import { createEffect, createSignal, Show } from 'solid-js';
import type { Spoken } from '../job/reader.js';
import { BlankValue } from './BlankValue.jsx';
import { Choices } from './Choices.jsx';
import { hasFigure, isFigure, shownFigure, writtenFigure } from './figures.js';
import { spoken } from './sentence.js';

export interface BlankProps {
  readonly label: string;
  readonly field: Field;
  readonly value: unknown;
  readonly choices: readonly string[];
  readonly unit: LengthUnit;
  readonly written: LengthUnit;
  readonly spoken: Spoken;
  /** A name is looked at before it is chosen; undefined: no longer. */
  readonly onLight?: (name: string | undefined) => void;
  readonly onChange: (value: unknown, settled: boolean) => void;
}

/** A blank's value as its sentence says it. */
const shownIn = ({ field, value, written, unit, spoken: says }: BlankProps): string => {
  if (value === undefined) return '…';
  return hasFigure(field, value)
    ? says.figure(shownFigure(field, value, written, unit))
    : spoken(value, says.and, word => says.chosen(field, word));
};

/** A blank in a sentence: typed in, stepped by the arrow keys, dragged sideways, or chosen from the names that fit. */
export function Blank(props: BlankProps) {
  const [editing, setEditing] = createSignal(false);
  const shown = () => shownIn(props);
  return (
    <span
      class="blank"
      classList={{ name: !hasFigure(props.field, props.value), empty: props.value === undefined }}
    >
      <Show
        when={editing()}
        fallback={<BlankValue {...props} shown={shown()} onEdit={() => setEditing(true)} />}
      >
        <Show
          when={props.choices.length > 0}
          fallback={<Typed {...props} onDone={() => setEditing(false)} shown={shown()} />}
        >
          <Choices {...props} onDone={() => setEditing(false)} shown={shown()} />
        </Show>
      </Show>
    </span>
  );
}

/** A blank being typed in; left, it is written if it was changed. */
function Typed(props: BlankProps & { readonly onDone: () => void; readonly shown: string }) {
  let input: HTMLInputElement | undefined;
  createEffect(() => input?.select());
  const commit = (typed: string) => {
    const { field, written, unit } = props;
    props.onDone();
    if (typed.trim() !== '' && typed !== props.shown)
      props.onChange(isFigure(field) ? writtenFigure(field, typed, written, unit) : typed, true);
  };
  return (
    <input
      ref={input}
      aria-label={props.label}
      value={props.value === undefined ? '' : props.shown}
      size={Math.max(4, props.shown.length)}
      onBlur={event => commit(event.currentTarget.value)}
      onKeyDown={event => {
        if (event.key === 'Enter') event.currentTarget.blur();
        if (event.key === 'Escape') props.onDone();
      }}
    />
  );
}
