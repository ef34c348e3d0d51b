import type { LengthUnit } from '@paperhinge/geometry';
import { createMemo, createSignal } from 'solid-js';
import { begun, createHistory } from './history.js';
import { stepsOf, valuesOf, type Way, type WrittenStep, withValue } from './written.js';

/** The sheet as its one text: read, written, undone; and the needle, after which no step is done. */
export function createSheetText() {
  const history = createHistory(begun(''));
  const [wantedNeedle, setNeedle] = createSignal<number>();
  // While a text is being typed it may be no sheet for a moment: the sentences stay as they were.
  const values = createMemo<Readonly<Record<string, unknown>>>(had => valuesOf(history.now()) ?? had, {});
  const steps = createMemo<readonly WrittenStep[]>(had => sameSteps(had, stepsOf(values())), []);
  return {
    history,
    values,
    steps,
    /** What a bare length in the sheet is in. */
    unitWritten: createMemo(() => (values().unit as LengthUnit | undefined) ?? 'mm'),
    /** Where the needle was put; undefined: after all steps, however many there are. */
    wantedNeedle,
    needle: createMemo(() => Math.min(wantedNeedle() ?? steps().length, steps().length)),
    setNeedle,
    set: (way: Way, value: unknown, settled = true) =>
      history.write(withValue(history.now(), way, value), settled),
    write: (text: string) => history.write(text),
  };
}
/** Steps that say what they said are the same objects still, so that their sentences are left as they are. */
const sameSteps = (had: readonly WrittenStep[], now: readonly WrittenStep[]): readonly WrittenStep[] =>
  now.map((step, i) => (JSON.stringify(step) === JSON.stringify(had[i]) ? had[i]! : step));

export type SheetText = ReturnType<typeof createSheetText>;
