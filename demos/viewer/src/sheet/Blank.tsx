import type { Field } from '@paperhinge/alter/verb';
import type { LengthUnit } from '@paperhinge/geometry';
import { createEffect, createSignal, For, onCleanup, Show } from 'solid-js';
import { isList } from './choices.js';
import { isFigure, shownFigure, stepped, writtenFigure } from './figures.js';
import { spoken } from './sentence.js';

interface BlankProps {
  readonly label: string;
  readonly field: Field;
  readonly value: unknown;
  readonly choices: readonly string[];
  readonly unit: LengthUnit;
  readonly written: LengthUnit;
  readonly and: string;
  /** A name is looked at before it is chosen; undefined: no longer. */
  readonly onLight?: (name: string | undefined) => void;
  readonly onChange: (value: unknown, settled: boolean) => void;
}

/** px of a sideways drag that make one step of a figure. */
const dragPerStep = 8;

/** A blank in a sentence: typed in, stepped by the arrow keys, dragged sideways, or chosen from the names that fit. */
export function Blank(props: BlankProps) {
  const [editing, setEditing] = createSignal(false);
  let input: HTMLInputElement | undefined;
  createEffect(() => editing() && input?.select());
  /** A figure, and not a goal that is to be met by one. */
  const hasFigure = () => isFigure(props.field) && (typeof props.value !== 'object' || props.value === null);
  const shown = () =>
    props.value === undefined
      ? '…'
      : hasFigure()
        ? shownFigure(props.field, props.value, props.written, props.unit)
        : spoken(props.value, props.and);
  const step = (by: number, settled: boolean) =>
    props.onChange(stepped(props.field, props.value, by, props.written, props.unit), settled);
  const commit = (typed: string) => {
    setEditing(false);
    if (typed.trim() !== '' && typed !== shown())
      props.onChange(
        isFigure(props.field) ? writtenFigure(props.field, typed, props.written, props.unit) : typed,
        true,
      );
  };

  let from: number | undefined,
    moved = false;
  const down = (event: PointerEvent) => {
    if (!hasFigure()) return;
    [from, moved] = [event.clientX, false];
    (event.currentTarget as Element).setPointerCapture(event.pointerId);
  };
  const drag = (event: PointerEvent) => {
    if (from === undefined) return;
    const steps = Math.trunc((event.clientX - from) / dragPerStep);
    if (steps === 0) return;
    [from, moved] = [from + steps * dragPerStep, true];
    step(steps, false);
  };
  const up = () => {
    if (moved) props.onChange(props.value, true);
    from = undefined;
  };
  const keys = (event: KeyboardEvent) => {
    if (event.key === 'Enter' || event.key === ' ') {
      event.preventDefault();
      setEditing(true);
      return;
    }
    const by = { ArrowUp: 1, ArrowRight: 1, ArrowDown: -1, ArrowLeft: -1, PageUp: 10, PageDown: -10 }[
      event.key
    ];
    if (by === undefined || !hasFigure()) return;
    event.preventDefault();
    step(by, true);
  };

  return (
    <span class="blank" classList={{ name: !hasFigure(), empty: props.value === undefined }}>
      <Show
        when={editing()}
        fallback={
          // biome-ignore lint/a11y/useSemanticElements: a word of the sentence, which wraps with its line and keeps its comma
          <span
            class="value"
            role="button"
            tabIndex={0}
            aria-label={`${props.label}: ${shown()}`}
            aria-haspopup={props.choices.length > 0 ? 'listbox' : undefined}
            onPointerDown={down}
            onPointerMove={drag}
            onPointerUp={up}
            onPointerCancel={up}
            onKeyDown={keys}
            onClick={() => !moved && setEditing(true)}
          >
            {shown()}
          </span>
        }
      >
        <Show
          when={props.choices.length > 0}
          fallback={
            <input
              ref={input}
              aria-label={props.label}
              value={props.value === undefined ? '' : shown()}
              size={Math.max(4, shown().length)}
              onBlur={event => commit(event.currentTarget.value)}
              onKeyDown={event => {
                if (event.key === 'Enter') event.currentTarget.blur();
                if (event.key === 'Escape') setEditing(false);
              }}
            />
          }
        >
          <Choices {...props} onDone={() => setEditing(false)} shown={shown()} />
        </Show>
      </Show>
    </span>
  );
}

/** The names that fit, one or several of them. */
function Choices(props: BlankProps & { readonly onDone: () => void; readonly shown: string }) {
  const chosen = () =>
    (Array.isArray(props.value) ? props.value : props.value === undefined ? [] : [props.value]).map(String);
  const pick = (name: string) => {
    if (!isList(props.field) || props.field.words?.includes(name)) {
      props.onChange(name, true);
      props.onDone();
      return;
    }
    const rest = chosen().filter(c => c !== name && !props.field.words?.includes(c));
    const next = chosen().includes(name) ? rest : [...rest, name];
    if (next.length > 0) props.onChange(next, true);
  };
  let list: HTMLDivElement | undefined;
  createEffect(() => list?.querySelector<HTMLElement>('button')?.focus());
  onCleanup(() => props.onLight?.(undefined));
  const leave = (event: FocusEvent) => {
    if (!list?.contains(event.relatedTarget as Node | null)) props.onDone();
  };
  const keys = (event: KeyboardEvent) => {
    if (event.key === 'Escape') props.onDone();
    const by = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (by === undefined) return;
    event.preventDefault();
    const all = [...(list?.querySelectorAll<HTMLElement>('button') ?? [])];
    const at = all.indexOf(document.activeElement as HTMLElement);
    all[(at + by + all.length) % all.length]?.focus();
  };
  return (
    <>
      <span class="chosen">{props.shown}</span>
      <div
        class="choices"
        ref={list}
        role="listbox"
        aria-label={props.label}
        aria-multiselectable={isList(props.field)}
        onFocusOut={leave}
        onKeyDown={keys}
      >
        <For each={props.choices}>
          {name => (
            <button
              type="button"
              role="option"
              aria-selected={chosen().includes(name)}
              onFocus={() => props.onLight?.(name)}
              onPointerEnter={() => props.onLight?.(name)}
              onClick={() => pick(name)}
            >
              {spoken(name, props.and)}
            </button>
          )}
        </For>
      </div>
    </>
  );
}
