// Random sequences of all verbs on random pieces: whatever is asked, the pattern stays sound, nothing is lost without a
// word, and what cannot be done is refused with a remedy and leaves the pattern as it was. 300 sequences; more with
// PAPERHINGE_SEQUENCES=10000.
import { type Alteration, type AnyVerb, follow, perform, verbs } from '@paperhinge/alter';
import { cutLapel, draftShawlCollar } from '@paperhinge/alter/edges';
import { removePiece } from '@paperhinge/alter/made';
import type { Field, Fields } from '@paperhinge/alter/verb';
import {
  edgeNames,
  type Notch,
  type Pattern,
  PatternError,
  type Piece,
  validatePattern,
  walkSeams,
} from '@paperhinge/geometry';
import { dartsOf, pleatsOf } from '@paperhinge/geometry/pattern';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoPattern } from '../support/demo-pattern.js';
import { told, toldDid, toldFinding } from '../support/told.js';
import { anyBodice, patternOf } from './hinge/pieces.js';

const sequences = Number(process.env.PAPERHINGE_SEQUENCES ?? 300);

const demos = ['darted-dress', 'woven-shift', 'yoke-skirt', 'trousers', 'shirt', 'smock'].map(demoPattern);
const anyPattern: fc.Arbitrary<Pattern> = fc.oneof(
  fc.constantFrom(...demos),
  anyBodice.map(piece => patternOf(piece)),
);

/** A step before the pattern it is done to is known: which verb, and what each of its choices is decided by. */
const anyStep = fc.record({
  verb: fc.nat({ max: verbs.length - 1 }).map(i => verbs[i]!.verb),
  draws: fc.array(fc.nat({ max: 999 }), { minLength: 48, maxLength: 48 }),
});

/** Draws one after the other, the last again and again. */
function drawer(draws: readonly number[]) {
  let i = 0;
  const next = (): number => draws[Math.min(i++, draws.length - 1)]! / 1000;
  return { next, pick: <T>(list: readonly T[]): T | undefined => list[Math.floor(next() * list.length)] };
}
type Drawer = ReturnType<typeof drawer>;

/** Parameters of a verb that the pattern could have; nothing where it lacks a thing that the verb needs. */
function parametersFor(pattern: Pattern, verb: AnyVerb, draw: Drawer): Record<string, unknown> {
  const chosen = (verb.oneOf ?? []).map(list => draw.pick(list)!);
  const excluded = (verb.oneOf ?? []).flat().filter(name => !chosen.includes(name));
  const given = fieldsFor(pattern, verb.fields, draw, {}, name =>
    chosen.includes(name) ? true : excluded.includes(name) ? false : undefined,
  );
  const lacking = verb.lacks?.(given as never);
  if (lacking !== undefined && given[lacking] === undefined)
    given[lacking] = valueFor(pattern, verb.fields[lacking]!, given, draw);
  return given;
}

function fieldsFor(
  pattern: Pattern,
  fields: Fields,
  draw: Drawer,
  outer: Record<string, unknown>,
  wanted: (name: string) => boolean | undefined = () => undefined,
): Record<string, unknown> {
  const given: Record<string, unknown> = {};
  for (const [name, field] of Object.entries(fields)) {
    const isGiven = wanted(name) ?? (field.giving === 'needed' || draw.next() < 0.4);
    if (!isGiven) continue;
    const value = valueFor(pattern, field, { ...outer, ...given }, draw);
    if (value !== undefined) given[name] = value;
  }
  return given;
}

function valueFor(pattern: Pattern, field: Field, so: Record<string, unknown>, draw: Drawer): unknown {
  const piece = (): Piece =>
    pattern.pieces.find(p => p.name === so[field.of ?? 'piece']) ?? draw.pick(pattern.pieces)!;
  const anyEdge = () => {
    const owner = draw.pick(pattern.pieces)!;
    return { piece: owner.name, edge: draw.pick(edgeNames(owner))! };
  };
  const { least = 0, most = 1 } = field;
  const place = () => (draw.next() < 0.7 ? { share: draw.next() } : { mm: draw.next() * 300 });
  const named = (list: readonly { readonly name: string }[]) => draw.pick(list)?.name;
  switch (field.kind) {
    case 'piece':
      return named(pattern.pieces);
    case 'pieces':
      return [named(pattern.pieces)];
    case 'edge':
      return draw.pick(edgeNames(piece()));
    case 'edge-of-piece':
      return anyEdge();
    case 'edges-of-pieces':
      return field.words && draw.next() < 0.3
        ? field.words[0]
        : [anyEdge(), anyEdge()].slice(0, draw.next() < 0.6 ? 1 : 2);
    case 'dart':
      return named(dartsOf(piece()));
    case 'pleat':
      return named(pleatsOf(piece()));
    case 'line':
      return field.words && draw.next() < 0.5 ? field.words[0] : named(piece().lines);
    case 'mark':
      return named(piece().marks.filter(m => m.kind === 'point'));
    case 'marks': {
      const one = named(piece().marks.filter(m => m.kind === 'point'));
      return one === undefined ? undefined : [one];
    }
    case 'notch':
      return undefined;
    case 'seam':
      return named(pattern.seams);
    case 'place':
      return place();
    case 'places':
      return draw.next() < 0.5 ? place() : [place(), place()];
    case 'range':
      return [place(), place()];
    case 'length': {
      // Mostly what a maker would ask for, now and then far too much.
      const size = Math.round(draw.next() ** 2 * (draw.next() < 0.9 ? 800 : 9000)) / 10;
      return Math.min(Math.max(least < 0 && draw.next() < 0.4 ? -size : size, least), most) || 5;
    }
    case 'lengths':
      return draw.next() < 0.5
        ? Math.round(draw.next() * 40)
        : [Math.round(draw.next() * 40), Math.round(draw.next() * 40)];
    case 'ease':
      return { mm: (draw.next() - 0.5) * 40 };
    case 'angle':
      return (draw.next() - 0.3) * 0.5;
    case 'share':
      return Math.max(least, Math.min(most, least + draw.next() * Math.min(most - least, 1.5))) || 0.5;
    case 'count':
      return 1 + Math.floor(draw.next() * Math.min(4, most));
    case 'choice':
      return draw.pick(field.words!);
    case 'yes-or-no':
      return draw.next() < 0.5;
    case 'cloth':
      return pattern.fabrics[0]?.name ?? 'main';
    case 'new-name':
      return `new ${Math.floor(draw.next() * 1000)}`;
    case 'group':
      return fieldsFor(pattern, field.fields!, draw, so);
    case 'groups':
      return Array.from({ length: 1 + Math.floor(draw.next() * 3) }, () =>
        fieldsFor(pattern, field.fields!, draw, so),
      );
    default:
      return 'text';
  }
}

/** What validation refuses, the step itself should have. */
const validated = [
  'open-outline',
  'outline-open',
  'self-crossing',
  'outline-anticlockwise',
  'outline-without-area',
  'duplicate-edge',
  'duplicate-piece',
  'duplicate-seam',
  'edge-in-parts',
  'edge-without-length',
  'notch-off-edge',
  'dart-legs-differ',
  'empty-seam',
];

const none = /NaN|undefined|Infinity|\[object/;

/** Every notch is where its cloth is now, or it was said that it went. */
function expectNoNotchLost(before: Pattern, done: Alteration, verb: string): void {
  // Walking a cap sets its notches and those of the armhole anew: that is its work.
  if (verb === 'walk cap') return;
  const redrafts = verb === 'refresh';
  const became = done.became!;
  const isAt = (place: { readonly piece: string; readonly edge: string; readonly at: number }) =>
    done.pattern.pieces.some(
      p =>
        p.name === place.piece &&
        p.notches.some(n => n.edge === place.edge && Math.abs(n.at - place.at) < 0.05),
    );
  const isTold = ({ name }: Piece, { edge }: Notch) =>
    done.findings.some(f => f.code === 'notch-cut-away' && f.where.piece === name && f.where.edge === edge) ||
    done.findings.some(f => f.code === 'piece-replaced' && f.where.piece === name);
  for (const piece of before.pieces) {
    // What was made for an edge and is drafted again has the marks of its draft.
    if (redrafts && piece.recipe) continue;
    const gone = follow(became, { piece: piece.name }).length === 0;
    for (const notch of piece.notches) {
      const edge = { piece: piece.name, edge: notch.edge };
      // An edge that became a fold line, or the middle of a joined piece, needs no notches.
      const noEdge = follow(became, edge as object).some(now => !('edge' in now) || now.edge === undefined);
      // A named notch that stands elsewhere was set anew, as those of a band's quarters are.
      const anew =
        notch.name !== undefined && done.pattern.pieces.some(p => p.notches.some(n => n.name === notch.name));
      // A step that marks an edge anew says which.
      const remarked =
        done.notchedAnew?.some(ref => ref.piece === edge.piece && ref.edge === edge.edge) === true;
      const there = anew || remarked || follow(became, { ...edge, at: notch.at }).some(isAt);
      expect(there || gone || noEdge || isTold(piece, notch), `notch of ${piece.name}.${notch.edge}`).toBe(
        true,
      );
    }
  }
}

/** Does the steps one after the other; what is refused leaves the pattern as it was. Counts what was done. */
function play(
  start: Pattern,
  steps: readonly { readonly verb: string; readonly draws: readonly number[] }[],
  done: Map<string, number>,
): void {
  let pattern = start;
  const story: string[] = [];
  for (const { verb: name, draws } of steps) {
    const verb = verbs.find(v => v.verb === name)!;
    const parameters = parametersFor(pattern, verb, drawer(draws));
    story.push(`${verb.verb} ${JSON.stringify(parameters)}`);
    try {
      const step = perform(verb, pattern, parameters);
      validatePattern(step.pattern);
      for (const walk of walkSeams(step.pattern)) expect(Number.isFinite(walk.differenceMm)).toBe(true);
      expect(toldDid(step)).not.toMatch(none);
      for (const finding of step.findings) expect(toldFinding(finding).message).not.toMatch(none);
      expectNoNotchLost(pattern, step, verb.verb);
      pattern = step.pattern;
      done.set(verb.verb, (done.get(verb.verb) ?? 0) + 1);
    } catch (error) {
      if (!(error instanceof PatternError) || validated.includes(error.code))
        throw new Error(`${start.name}: ${story.join('; ')}`, { cause: error });
      const { message, remedy } = told(error);
      expect(message, story.join('; ')).not.toMatch(none);
      expect(remedy).not.toBe('');
    }
  }
}

describe('any sequence of verbs leaves a sound pattern, loses nothing in silence, or is refused with a remedy', () => {
  const done = new Map<string, number>();
  // A hundred at a time, so that a night's run is heard of between.
  const hundreds = Array.from({ length: Math.ceil(sequences / 100) }, (_, i) => i);
  test.each(hundreds)('hundred %d', hundred => {
    const seed = (fc.readConfigureGlobal().seed ?? 0) + hundred;
    const steps = fc.array(anyStep, { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(anyPattern, steps, (start, wanted) => play(start, wanted, done)),
      { numRuns: 100, seed },
    );
  });
  test('does most of the verbs: a property that never does a thing proves nothing', () => {
    expect(done.size).toBeGreaterThan(verbs.length / 2);
  });
});

// A lapel is seldom drawn by chance: here the front of the shirt has one that breaks anywhere from its neck to its hem, or
// a shawl collar, before the verbs come.
test('any sequence on a front with a lapel leaves a sound pattern, or is refused with a remedy', () => {
  const bare = ['collar', 'stand'].reduce(
    (pattern, piece) => removePiece(pattern, { piece }).pattern,
    demos.find(({ name }) => /shirt/i.test(name))!,
  );
  const front = { piece: 'front', neck: 'neck', edge: 'front-edge' };
  const lapelled = (share: number, shawl: boolean): Pattern | undefined => {
    try {
      const { pattern } = shawl
        ? draftShawlCollar(bare, {
            name: 'shawl',
            ...front,
            along: [{ piece: 'yoke', edge: 'neck' }],
            break: { share },
          })
        : cutLapel(bare, { ...front, break: { share } });
      validatePattern(pattern);
      return pattern;
    } catch (error) {
      if (!(error instanceof PatternError) || validated.includes(error.code)) throw error;
      expect(told(error).remedy).not.toBe('');
      return undefined;
    }
  };
  const done = new Map<string, number>();
  const steps = fc.array(anyStep, { minLength: 1, maxLength: 3 });
  // At the ends of the edge as often as between them.
  const share = fc.oneof(
    fc.constantFrom(0, 1),
    fc.integer({ min: 1, max: 99 }).map(percent => percent / 100),
  );
  fc.assert(
    fc.property(share, fc.boolean(), steps, (at, shawl, wanted) => {
      const start = lapelled(at, shawl);
      if (start) play(start, wanted, done);
    }),
    {
      numRuns: Math.max(20, Math.round(sequences / 10)),
      examples: [
        [0, false, []],
        [1, false, []],
        [1, true, []],
      ],
    },
  );
  expect(done.size).toBeGreaterThan(3);
});
