import { createResource, createSignal } from 'solid-js';
import type { LaidCloth, Measured, PagesPicture } from '../engine/pictures.js';
import type { Touched } from '../engine/view.js';
import type { Engine } from './engine.js';

/** A measurement on one piece, in its own mm. */
export interface Measuring {
  readonly piece: string;
  readonly from: readonly [number, number];
  readonly to?: readonly [number, number];
  readonly came?: Measured | undefined;
}

/** The headings of the sheet, by the names their sections carry. */
export type Heading = 'for-whom' | 'cloth' | 'alter' | 'sews' | 'making' | 'away';

/** What of the garment is being looked at: touched, lit, read, measured, walked, seen whole. */
export function createAttention(engine: Engine) {
  const [touched, setTouched] = createSignal<Touched>();
  /** Edges, darts and lines that light up while one of them is chosen: `front.hem`. */
  const [lit, setLit] = createSignal<ReadonlySet<string>>();
  const [open, setOpen] = createSignal<number>();
  /** The step that a first visitor is shown how to do. */
  const [toDrag, setToDrag] = createSignal<number>();
  /** Where a measurement begins, and what it came to. */
  const [measuring, setMeasuring] = createSignal<Measuring>();
  const { walk, setWalking } = createWalk(engine);
  const read = createRead(engine);
  return {
    touched,
    setTouched,
    lit,
    setLit,
    open,
    setOpen,
    toDrag,
    setToDrag,
    measuring,
    setMeasuring,
    walk,
    setWalking,
    ...createSeenWhole(engine),
    ...read,
    /** Another garment: nothing of the last one is looked at. */
    lookAway: (): void => {
      setTouched(undefined);
      setWalking(undefined);
      setMeasuring(undefined);
      setOpen(undefined);
      setToDrag(undefined);
      read.setReading('alter');
    },
  };
}

/** The seam that is being walked, and what walking it shows; walked again whenever the garment changes. */
function createWalk(engine: Engine) {
  const [walking, setWalking] = createSignal<string>();
  const [walk] = createResource(
    () => {
      engine.view();
      return walking();
    },
    seam => engine.walk(seam),
  );
  return {
    setWalking,
    /** What was walked last stays in sight while it is walked again. */
    walk: () => (walking() === undefined ? undefined : walk.latest),
  };
}

/** The garment laid out whole, while it is looked at so. */
function createSeenWhole(engine: Engine) {
  const [seenWhole, setSeenWhole] = createSignal(false);
  const [whole] = createResource(
    () => (seenWhole() ? engine.view() : undefined),
    () => engine.whole(),
  );
  return { seenWhole, setSeenWhole, whole: () => (seenWhole() ? whole.latest : undefined) };
}

/** What the table answers to the heading that is read: the cloths with their pieces, a job of the making, the pages. */
function createRead(engine: Engine) {
  const [reading, setReading] = createSignal<Heading>('alter');
  const [cloths, setCloths] = createSignal<readonly LaidCloth[]>();
  const [pages, setPages] = createSignal<PagesPicture>();
  /** The job that is pointed at, by its place in the order of work. */
  const [job, setJob] = createSignal<number>();
  const [sewn] = createResource(
    () => (reading() === 'making' && engine.proof() ? job() : undefined),
    at => engine.sewn(at),
  );
  return {
    reading,
    setReading,
    cloths,
    setCloths,
    pages,
    setPages,
    setJob,
    /** Something else than the pieces lies on the table for the heading that is read. */
    answers: (): boolean =>
      (reading() === 'cloth' && cloths() !== undefined) ||
      (reading() === 'away' && pages() !== undefined) ||
      (reading() === 'making' && job() !== undefined && sewn.latest !== undefined),
    sewn: () => (reading() === 'making' && job() !== undefined ? sewn.latest : undefined),
  };
}
