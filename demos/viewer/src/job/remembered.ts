import { createEffect, createSignal, type Signal } from 'solid-js';

/** A choice of the reader's that is there again next time, where this window may keep anything; the first is usual. */
export function remembered<T extends string>(name: string, choices: readonly [T, ...T[]]): Signal<T> {
  const key = `paperhinge-${name}`;
  const [value, setValue] = createSignal<T>(choices.find(c => c === read(key)) ?? choices[0]);
  createEffect(() => write(key, value()));
  return [value, setValue];
}

/** A private window may forbid it. */
function read(key: string): string | null {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
}
function write(key: string, value: string): void {
  try {
    localStorage.setItem(key, value);
  } catch {
    // It is chosen again next time.
  }
}
