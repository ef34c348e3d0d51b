import type { LengthUnit } from '@paperhinge/geometry';
import { createMemo, createSignal } from 'solid-js';
import { begun, createHistory } from './history.js';
import { stepsOf, valuesOf, type Way, withValue } from './written.js';

/** The sheet as its one text: read, written, undone; and the needle, after which no step is done. */
export function createSheetText() {
  const history = createHistory(begun(''));
  const [wantedNeedle, setNeedle] = createSignal<number>();
  // While a text is being typed it may be no sheet for a moment: the sentences stay as they were.
  const values = createMemo<Readonly<Record<string, unknown>>>(had => valuesOf(history.now()) ?? had, {});
  const steps = createMemo(() => stepsOf(values()));
  return {
    history,
    values,
    steps,
    /** What a bare length in the sheet is in. */
    unitWritten: () => (values().unit as LengthUnit | undefined) ?? 'mm',
    /** Where the needle was put; undefined: after all steps, however many there are. */
    wantedNeedle,
    needle: () => Math.min(wantedNeedle() ?? steps().length, steps().length),
    setNeedle,
    set: (way: Way, value: unknown, settled = true) =>
      history.write(withValue(history.now(), way, value), settled),
    write: (text: string) => history.write(text),
  };
}
export type SheetText = ReturnType<typeof createSheetText>;
