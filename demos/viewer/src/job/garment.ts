import first from 'virtual:first-view';
import { batch, createComputed, createSignal } from 'solid-js';
import type { Given } from '../engine/questions.js';
import { createAttention } from './attention.js';
import { createEngine } from './engine.js';
import { begun } from './history.js';
import { createKeptGarment } from './kept-garment.js';
import { firstVisit, type Laid, undoneStep } from './lessons.js';
import { createReader } from './reader.js';
import { createSheetText } from './sheet-text.js';
import { type Kept, lastOnTable, newId } from './shelf.js';

/** The garment on the table: its pattern and sheet, what came of them, what is looked at. */
export function createGarment() {
  const engine = createEngine();
  const reader = createReader();
  const sheet = createSheetText();
  const attention = createAttention(engine);
  const { source, saved, keepNow, takeUp, layAgain } = createKeptGarment(sheet);
  /** A sheet that is shown for a moment and not written: a step that is being played. */
  const [played, setPlayed] = createSignal<string>();
  const load = (garment: Kept): void =>
    batch(() => {
      attention.lookAway();
      setPlayed(undefined);
      takeUp(garment);
    });
  const [tracedFrom, setTracedFrom] = createSignal<TracedFrom>();
  const lay = (laid: Laid): void => load(newlyLaid(laid));
  void lastOnTable().then(async garment => {
    if (garment) return load(garment);
    lay(await firstVisit());
    if (reader.unit() === 'cm' && reader.language() === 'en') engine.show(first);
    attention.setOpen(undoneStep);
    attention.setToDrag(undoneStep);
  });
  // Before the page is drawn anew: the engine works meanwhile.
  createComputed(() => {
    const { id, text, name } = source();
    if (id === '') return;
    engine.ask({
      sheet: played() ?? sheet.history.now(),
      pattern: text,
      patternName: name,
      needle: sheet.wantedNeedle() ?? Number.POSITIVE_INFINITY,
      open: attention.open(),
      unit: reader.unit(),
      language: reader.language(),
    });
  });
  return {
    engine,
    ...reader,
    ...sheet,
    ...attention,
    source,
    saved,
    keepNow,
    played,
    setPlayed,
    load,
    lay,
    /** The drawing or photograph that what lies here was traced from, while the page is open. */
    tracedFrom: () => (tracedFrom()?.id === source().id ? tracedFrom() : undefined),
    setTracedFrom,
    layAgain: (laid: Laid): void =>
      batch(() => {
        attention.lookAway();
        setPlayed(undefined);
        layAgain(laid);
      }),
    /** As it was laid on the table; what was done since is one undo away. */
    startAgain: () => sheet.history.write(source().original),
  };
}
export type Garment = ReturnType<typeof createGarment>;

/** A drawing or photograph that was traced, how it was taken, and the layers it can be taken from. */
interface TracedFrom {
  readonly id: string;
  readonly given: Given;
  readonly layers: readonly string[];
}

/** A garment that is laid on the table for the first time. */
const newlyLaid = ({ patternName, pattern, sheet }: Laid): Kept => ({
  id: newId(),
  title: '',
  patternName,
  pattern,
  history: begun(sheet),
  needle: undefined,
  original: sheet,
  changed: 0,
});
