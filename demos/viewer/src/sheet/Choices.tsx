import { createEffect, For, onCleanup } from 'solid-js';
import type { BlankProps } from './Blank.jsx';
import { isList } from './choices.js';
import { spoken } from './sentence.js';

/** The names that fit, one or several of them. */
export function Choices(props: BlankProps & { readonly onDone: () => void; readonly shown: string }) {
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
              onPointerMove={() => props.onLight?.(name)}
              onClick={() => pick(name)}
            >
              {spoken(name, props.spoken.and, word => props.spoken.chosen(props.field, word))}
            </button>
          )}
        </For>
      </div>
    </>
  );
}
