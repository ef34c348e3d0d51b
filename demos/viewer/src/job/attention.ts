import { createResource, createSignal } from 'solid-js';
import type { Measured, Touched } from '../engine/view.js';
import type { Engine } from './engine.js';

/** A measurement on one piece, in its own mm. */
export interface Measuring {
  readonly piece: string;
  readonly from: readonly [number, number];
  readonly to?: readonly [number, number];
  readonly came?: Measured | undefined;
}

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
    /** Another garment: nothing of the last one is looked at. */
    lookAway: (): void => {
      setTouched(undefined);
      setWalking(undefined);
      setMeasuring(undefined);
      setOpen(undefined);
      setToDrag(undefined);
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
