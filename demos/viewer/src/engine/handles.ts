import { type AnyVerb, verbs } from '@paperhinge/alter';
import { type Field, inSheet } from '@paperhinge/alter/verb';
import { PatternError, type Point } from '@paperhinge/geometry';
import { distance, scale, subtract } from '@paperhinge/geometry/plane';
import { applyStep, type State, type Step } from '@paperhinge/sheet';
import type { InParts } from './in-parts.js';
import { type Landmark, landmarksOf } from './landmarks.js';
import type { Handle, Held } from './view.js';

// A figure has its handle where the drawing answers it most: each is changed by a little, the rest of the sheet is done
// again, and the spot that goes farthest is where the hand takes hold. So no verb is known here, nor need it be.

/** What a figure is changed by to see what it moves: mm, share, rad. */
const nudge = { length: 1, share: 0.01, angle: 0.5 * (Math.PI / 180) } as const;
/** mm for a nudge: what moves less has no handle; what moves more has not moved but leapt. */
const least = 0.04,
  most = 60;
/** A figure that moves many pieces has a handle on so many of them. */
const piecesHeld = 2;

type Figure = keyof typeof nudge;

/**
 * Handles of one step, and the points they can be brought to. It stops after each time that the steps are done again.
 * @param states before each step, and after the last
 */
export function* heldOf(
  states: readonly State[],
  steps: readonly Step[],
  index: number | undefined,
): InParts<Held> {
  const last = states.at(-1);
  const points = last ? [...landmarksOf(last.pattern).values()].filter(l => l.isPoint) : [];
  return {
    handles: index === undefined ? [] : yield* handlesOf(states, steps, index),
    points: points.map(({ piece, at }) => ({ piece, at: [at.x, at.y] })),
  };
}

/** Handles of one step's figures on what stands after all steps. */
function* handlesOf(
  states: readonly State[],
  steps: readonly Step[],
  index: number,
): InParts<readonly Handle[]> {
  const step = steps[index];
  const verb = step && verbs.find(v => v.verb === step.verb);
  const before = states[index],
    after = states.at(-1);
  if (!step || step.off || !verb || !before || !after || before === after) return [];
  const now = landmarksOf(after.pattern);
  const again = (parameters: Step['parameters']) =>
    doneAgain(before, [{ ...step, parameters }, ...steps.slice(index + 1)]);
  const named = namesIn(step.parameters);
  const there = new Set(before.pattern.pieces.map(p => p.name));
  // Of spots that go alike: one on what the step names, rather than on what follows it.
  const likes = ({ of, piece }: Landmark): number =>
    (named.includes(of) ? 1.15 : 1) * (named.includes(piece) ? 1.5 : 1) * (there.has(piece) ? 1.5 : 1);
  const handles: Handle[] = [];
  for (const found of figuresOf(verb, step)) {
    const { way, field, value, figure } = found;
    for (const by of nudgesOf(field, figure, value)) {
      const one = again(withFigure(step.parameters, way, value, value.figure + by));
      yield;
      const two = one && again(withFigure(step.parameters, way, value, value.figure + by / 2));
      yield;
      if (!one || !two) continue;
      handles.push(...heldAt(now, one, two, likes).map(spot => handleAt(spot, by, index, found)));
      break;
    }
  }
  return handles;
}

/** Where the landmarks are once some steps are done; undefined where one cannot be. */
function doneAgain(from: State, steps: readonly Step[]): ReadonlyMap<string, Landmark> | undefined {
  try {
    const end = steps.reduce((state, one) => applyStep(state, one, verbNamed(one.verb)).state, from);
    return landmarksOf(end.pattern);
  } catch (error) {
    if (error instanceof PatternError) return undefined;
    throw error;
  }
}

const handleAt = (
  { landmark, moved }: HeldSpot,
  by: number,
  step: number,
  { way, field, value, figure }: FigureFound,
): Handle => ({
  step,
  way: way.map(inSheet),
  kind: figure,
  piece: landmark.piece,
  at: [landmark.at.x, landmark.at.y],
  along: [moved.x / by, moved.y / by],
  value: value.figure,
  isPlace: value.place,
  ...(value.from === undefined ? {} : { from: value.from }),
  ...(value.inMm ? { inMm: true } : {}),
  least: field.least ?? (value.place ? 0 : -Infinity),
  most: field.most ?? (value.place && !value.inMm ? 1 : Infinity),
});

const verbNamed = (name: string): AnyVerb => verbs.find(v => v.verb === name)!;

interface Value {
  readonly figure: number;
  /** A place on an edge, as a share unless it is in mm, counted from where it says. */
  readonly place: boolean;
  readonly inMm: boolean;
  readonly from?: string;
}

interface FigureFound {
  readonly way: readonly string[];
  readonly field: Field;
  readonly value: Value;
  readonly figure: Figure;
}

/** The figures that a step gives, or that have their usual value, also within groups. */
function figuresOf(verb: AnyVerb, step: Step): readonly FigureFound[] {
  const figures: FigureFound[] = [];
  const look = (
    fields: AnyVerb['fields'],
    given: Readonly<Record<string, unknown>>,
    way: readonly string[],
  ) => {
    for (const [name, field] of Object.entries(fields)) {
      const own = given[name] ?? field.usual;
      if (field.kind === 'group' && typeof own === 'object' && own !== null)
        look(field.fields ?? {}, own as Record<string, unknown>, [...way, name]);
      const value = figureIn(field, own);
      if (value)
        figures.push({
          way: [...way, name],
          field,
          value,
          figure: sortOf(field, value),
        });
    }
  };
  look(verb.fields, step.parameters, []);
  return figures;
}

const sortOf = ({ kind }: Field, { place, inMm }: Value): Figure =>
  place ? (inMm ? 'length' : 'share') : kind === 'lengths' ? 'length' : (kind as Figure);

function figureIn({ kind }: Field, own: unknown): Value | undefined {
  if ((kind in nudge || kind === 'lengths') && typeof own === 'number')
    return { figure: own, place: false, inMm: false };
  if ((kind !== 'place' && kind !== 'places') || typeof own !== 'object' || own === null) return undefined;
  const { share, mm, from } = own as { share?: number; mm?: number; from?: string };
  const figure = share ?? mm;
  if (figure === undefined) return undefined;
  return { figure, place: true, inMm: mm !== undefined, ...(from === undefined ? {} : { from }) };
}

/** The same fields with one figure another. */
function withFigure(
  given: Readonly<Record<string, unknown>>,
  [name = '', ...rest]: readonly string[],
  value: Value,
  figure: number,
): Readonly<Record<string, unknown>> {
  const place = { [value.inMm ? 'mm' : 'share']: figure, ...(value.from ? { from: value.from } : {}) };
  const own = value.place ? place : figure;
  if (rest.length === 0) return { ...given, [name]: own };
  return {
    ...given,
    [name]: withFigure((given[name] ?? {}) as Record<string, unknown>, rest, value, figure),
  };
}

function nudgesOf({ least = -Infinity, most = Infinity }: Field, figure: Figure, value: Value): number[] {
  const by = nudge[figure];
  const [low, high] = value.place && !value.inMm ? [0, 1] : [least, most];
  return [by, -by].filter(n => value.figure + n >= low && value.figure + n <= high);
}

const namesIn = (value: unknown): readonly string[] =>
  typeof value === 'string'
    ? [value]
    : typeof value === 'object' && value !== null
      ? Object.values(value).flatMap(namesIn)
      : [];

interface HeldSpot {
  readonly landmark: Landmark;
  readonly moved: Point;
}

/** The spots that go farthest and evenly, one a piece. */
function heldAt(
  now: ReadonlyMap<string, Landmark>,
  nudged: ReadonlyMap<string, Landmark>,
  half: ReadonlyMap<string, Landmark>,
  likes: (landmark: Landmark) => number,
): readonly HeldSpot[] {
  const best = new Map<string, HeldSpot & { readonly score: number }>();
  for (const [key, landmark] of now) {
    const [one, two] = [nudged.get(key), half.get(key)];
    if (!one || !two) continue;
    const moved = subtract(one.at, landmark.at);
    const size = Math.hypot(moved.x, moved.y);
    const uneven = distance(scale(moved, 0.5), subtract(two.at, landmark.at));
    if (size < least || size > most || uneven > size * 0.2) continue;
    const score = size * likes(landmark);
    if (score > (best.get(landmark.piece)?.score ?? 0)) best.set(landmark.piece, { landmark, moved, score });
  }
  const sorted = [...best.values()].sort((p, q) => q.score - p.score);
  return sorted.filter(held => held.score > sorted[0]!.score * 0.7).slice(0, piecesHeld);
}
