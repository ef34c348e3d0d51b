import { createEffect, createSignal, on } from 'solid-js';
import { stemOf } from './files.js';
import { begun } from './history.js';
import { createKeeping } from './keeping.js';
import type { Laid } from './lessons.js';
import type { SheetText } from './sheet-text.js';
import type { Kept } from './shelf.js';

/** What lies on the table as it was laid there: its id on the shelf, its drawing (empty where it has none), its sheet. */
interface Source {
  readonly id: string;
  readonly name: string;
  readonly text: string;
  readonly original: string;
}

/** The garment as the shelf keeps it: its sheet is kept a moment after each change. */
export function createKeptGarment({ history, values, wantedNeedle, setNeedle }: SheetText) {
  const [source, setSource] = createSignal<Source>({ id: '', name: '', text: '', original: '' });
  const keeping = createKeeping(id => setSource(s => ({ ...s, id })));
  /** What was read from the shelf is not kept again until it is changed. */
  let asKept: Kept | undefined;
  createEffect(
    on([history.history, source, wantedNeedle], ([now, { id, name, text, original }, at]) => {
      if (id === '' || (asKept?.changed && asKept.history === now && asKept.needle === at)) return;
      keeping.later({
        id,
        title: String(values().title ?? stemOf(name)),
        patternName: name,
        pattern: text,
        history: now,
        needle: at,
        original,
        changed: Date.now(),
      });
    }),
  );
  return {
    source,
    saved: keeping.saved,
    keepNow: keeping.now,
    /** The same garment from another drawing, as the one it was traced from is taken otherwise. */
    layAgain: ({ pattern: text, sheet: original }: Pick<Laid, 'pattern' | 'sheet'>): void => {
      setNeedle(undefined);
      history.set(begun(original));
      setSource(s => ({ ...s, text, original }));
    },
    /** Takes one from the shelf in its place. */
    takeUp: (garment: Kept): void => {
      setNeedle(garment.needle);
      history.set(garment.history);
      const { id, patternName: name, pattern: text, original } = garment;
      setSource({ id, name, text, original });
      asKept = garment;
      keeping.knows(garment);
    },
  };
}
