import first from 'virtual:first-view';
import type { LengthUnit } from '@paperhinge/geometry';
import { type VerbWords, verbWordsOf } from '@paperhinge/sheet';
import { batch, createEffect, createMemo, createResource, createSignal, on } from 'solid-js';
import type { Measured, Touched } from '../engine/view.js';
import type { Language } from '../words.js';
import { createEngine } from './engine.js';
import { begun, createHistory } from './history.js';
import { createKeeping } from './keeping.js';
import { firstVisit, type Laid, undoneStep } from './lessons.js';
import { remembered } from './remembered.js';
import { type Kept, lastOnTable, newId } from './shelf.js';
import { stepsOf, valuesOf, type Way, withValue } from './written.js';

/** A measurement on one piece, in its own mm. */
export interface Measuring {
  readonly piece: string;
  readonly from: readonly [number, number];
  readonly to?: readonly [number, number];
  readonly came?: Measured | undefined;
}

/** The garment on the table: its pattern and sheet, what came of them, what is touched. */
export function createGarment() {
  const engine = createEngine();
  const history = createHistory(begun(''));
  const [source, setSource] = createSignal({ id: '', name: '', text: '', original: '' });
  const [unit, setUnit] = remembered<'mm' | 'cm' | 'in'>('unit', ['cm', 'in', 'mm']);
  const [language, setLanguage] = remembered<Language>(
    'language',
    navigator.language.startsWith('de') ? ['de', 'en'] : ['en', 'de'],
  );
  const [verbWords, setVerbWords] = createSignal<VerbWords>({});
  createEffect(() => void verbWordsOf(language()).then(setVerbWords));
  const [wantedNeedle, setNeedle] = createSignal<number | undefined>(undefined);
  const [touched, setTouched] = createSignal<Touched>();
  /** Edges, darts and lines that light up while one of them is chosen: `front.hem`. */
  const [lit, setLit] = createSignal<ReadonlySet<string>>();
  const [open, setOpen] = createSignal<number>();
  /** The step that a first visitor is shown how to do. */
  const [toDrag, setToDrag] = createSignal<number>();
  /** The seam that is being walked, and what walking it shows. */
  const [walking, setWalking] = createSignal<string>();
  const [walk] = createResource(
    () => {
      engine.view();
      return walking();
    },
    seam => engine.walk(seam),
  );
  /** The garment laid out whole, while it is looked at so. */
  const [seenWhole, setSeenWhole] = createSignal(false);
  const [whole] = createResource(
    () => (seenWhole() ? engine.view() : undefined),
    () => engine.whole(),
  );
  /** Where a measurement begins, and what it came to. */
  const [measuring, setMeasuring] = createSignal<Measuring>();
  /** A sheet that is shown for a moment and not written: a step that is being played. */
  const [played, setPlayed] = createSignal<string>();
  const keeping = createKeeping(id => setSource(s => ({ ...s, id })));

  // While a text is being typed it may be no sheet for a moment: the sentences stay as they were.
  const values = createMemo<Readonly<Record<string, unknown>>>(had => valuesOf(history.now()) ?? had, {});
  const steps = createMemo(() => stepsOf(values()));
  const needle = () => Math.min(wantedNeedle() ?? steps().length, steps().length);

  /** What was read from the shelf is not kept again until it is changed. */
  let asKept: Kept | undefined;
  const load = (garment: Kept) =>
    batch(() => {
      setTouched(undefined);
      setWalking(undefined);
      setMeasuring(undefined);
      setPlayed(undefined);
      setOpen(undefined);
      setToDrag(undefined);
      setNeedle(garment.needle);
      history.set(garment.history);
      const { id, patternName: name, pattern: text, original } = garment;
      setSource({ id, name, text, original });
      asKept = garment;
      keeping.knows(garment);
    });
  const lay = ({ patternName, pattern, sheet }: Laid) =>
    load({
      id: newId(),
      title: '',
      patternName,
      pattern,
      history: begun(sheet),
      needle: undefined,
      original: sheet,
      changed: 0,
    });
  void lastOnTable().then(async garment => {
    if (garment) load(garment);
    else {
      lay(await firstVisit());
      if (unit() === 'cm' && language() === 'en') engine.show(first.view);
      setOpen(undoneStep);
      setToDrag(undoneStep);
    }
  });

  createEffect(() => {
    const { text, name } = source();
    if (text === '') return;
    engine.ask({
      sheet: played() ?? history.now(),
      pattern: text,
      patternName: name,
      needle: needle(),
      open: open(),
      unit: unit(),
      language: language(),
    });
  });
  createEffect(
    on([history.history, source, wantedNeedle], ([now, { id, name, text, original }, at]) => {
      if (text === '' || (asKept?.changed && asKept.history === now && asKept.needle === at)) return;
      keeping.later({
        id,
        title: String(values().title ?? name.replace(/\.svg$/i, '')),
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
    engine,
    history,
    source,
    unit,
    setUnit,
    language,
    setLanguage,
    verbWords,
    steps,
    values,
    /** What a bare length in the sheet is in. */
    unitWritten: () => (values().unit as LengthUnit | undefined) ?? 'mm',
    needle,
    setNeedle,
    touched,
    setTouched,
    lit,
    setLit,
    open,
    setOpen,
    setWalking,
    seenWhole,
    setSeenWhole,
    whole: () => (seenWhole() ? whole.latest : undefined),
    measuring,
    setMeasuring,
    played,
    setPlayed,
    /** What was walked last stays in sight while it is walked again. */
    walk: () => (walking() === undefined ? undefined : walk.latest),
    toDrag,
    setToDrag,
    saved: keeping.saved,
    keepNow: keeping.now,
    load,
    lay,
    /** As it was laid on the table; what was done since is one undo away. */
    startAgain: () => history.write(source().original),
    set: (way: Way, value: unknown, settled = true) =>
      history.write(withValue(history.now(), way, value), settled),
    write: (text: string) => history.write(text),
  };
}
export type Garment = ReturnType<typeof createGarment>;
