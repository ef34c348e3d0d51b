import { type VerbWords, verbWordsOf } from '@paperhinge/sheet';
import { createEffect, createMemo, createSignal, on } from 'solid-js';
import pattern from '../../../patterns/woven-shift.svg?raw';
import sheet from '../../../sheets/cellist-top.yaml?raw';
import type { Touched } from '../engine/view.js';
import { createEngine } from './engine.js';
import { begun, createHistory } from './history.js';
import { type Kept, keep, kept } from './shelf.js';
import { stepsOf, valuesOf, type Way, withValue } from './written.js';

export const demo: Kept = {
  patternName: 'woven-shift.svg',
  pattern,
  history: begun(sheet.replace('../patterns/', '')),
  needle: undefined,
};

/** The garment on the table: its pattern and sheet, what came of them, what is touched. */
export function createGarment() {
  const engine = createEngine();
  const history = createHistory(demo.history);
  const [source, setSource] = createSignal({ name: demo.patternName, text: demo.pattern });
  const [unit, setUnit] = createSignal<'mm' | 'cm' | 'in'>('cm');
  const [language, setLanguage] = createSignal<'en' | 'de'>('en');
  const [verbWords, setVerbWords] = createSignal<VerbWords>({});
  createEffect(() => void verbWordsOf(language()).then(setVerbWords));
  const [wantedNeedle, setNeedle] = createSignal<number | undefined>(undefined);
  const [touched, setTouched] = createSignal<Touched>();
  /** Edges, darts and lines that light up while one of them is chosen: `front.hem`. */
  const [lit, setLit] = createSignal<ReadonlySet<string>>();
  const [open, setOpen] = createSignal<number>();
  const [saved, setSaved] = createSignal<'kept' | 'not kept'>('kept');
  const [ready, setReady] = createSignal(false);

  const steps = createMemo(() => stepsOf(history.now()));
  const values = createMemo(() => valuesOf(history.now()));
  const needle = () => Math.min(wantedNeedle() ?? steps().length, steps().length);

  const load = (garment: Kept) => {
    setSource({ name: garment.patternName, text: garment.pattern });
    history.set(garment.history);
    setNeedle(garment.needle);
    setTouched(undefined);
    setOpen(undefined);
  };
  void kept().then(garment => {
    if (garment) load(garment);
    setReady(true);
  });

  createEffect(() => {
    engine.ask({
      sheet: history.now(),
      pattern: source().text,
      patternName: source().name,
      needle: needle(),
      open: open(),
      unit: unit(),
      language: language(),
    });
  });
  let timer: ReturnType<typeof setTimeout> | undefined;
  createEffect(
    on([history.history, source, wantedNeedle], ([now, { name, text }, at]) => {
      if (!ready()) return;
      clearTimeout(timer);
      timer = setTimeout(async () => {
        const could = await keep({ patternName: name, pattern: text, history: now, needle: at });
        setSaved(could ? 'kept' : 'not kept');
      }, 400);
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
    needle,
    setNeedle,
    touched,
    setTouched,
    lit,
    setLit,
    open,
    setOpen,
    saved,
    load,
    set: (way: Way, value: unknown, settled = true) =>
      history.write(withValue(history.now(), way, value), settled),
    write: (text: string) => history.write(text),
  };
}
export type Garment = ReturnType<typeof createGarment>;
