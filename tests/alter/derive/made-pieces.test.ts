// Every verb that makes a piece for an edge, on garments it was not built on: each piece has its role, its grain, its
// cut, its seam with the edge it came from, which walks, and is made again for edges that have changed.
import { readFileSync } from 'node:fs';
import { orderOfWork, perform, verbs } from '@paperhinge/alter';
import {
  checkPattern,
  type EdgeRun,
  type Pattern,
  type Piece,
  pieceNamed,
  readPattern,
  validatePattern,
  walkSeam,
} from '@paperhinge/geometry';
import { transformedPath } from '@paperhinge/geometry/paths';
import { outlinePath } from '@paperhinge/geometry/pattern';
import { apply } from '@paperhinge/geometry/plane';
import { signedArea } from '@paperhinge/geometry/regions';
import { describe, expect, test } from 'vitest';

type Step = readonly [verb: string, parameters: object];
interface Case {
  readonly verb: string;
  readonly garment: string;
  readonly wish: object;
  /** What must be done before. */
  readonly after?: readonly Step[];
}

const ref = (text: string) => {
  const dot = text.lastIndexOf('.');
  return { piece: text.slice(0, dot), edge: text.slice(dot + 1) };
};
const along = (...edges: readonly string[]) => ({ name: 'made', along: edges.map(ref) });
const dressNeck = along('front.neck', 'back.neck');
const shirtNeck = along('yoke.neck', 'front.neck');
const armholes = along('front.armhole', 'back.armhole');
const noCollar: readonly Step[] = [
  ['remove piece', { piece: 'collar' }],
  ['remove piece', { piece: 'stand' }],
];
const lapel = (break_: object, piece = 'front', edge = 'front-edge'): Step => [
  'cut lapel',
  { piece, neck: 'neck', edge, break: break_ },
];
const dressLapel: readonly Step[] = [
  ['add button stand', { piece: 'front', edge: 'centre', width: 20 }],
  lapel({ mm: 120, from: 'neck' }, 'front', 'centre'),
];
const lapelled = ['front-edge', 'lapel', 'lapel-top', 'neck'].map(edge => `front.${edge}`);

const necks: readonly Omit<Case, 'verb'>[] = [
  { garment: 'darted-dress', wish: dressNeck },
  { garment: 'shirt', wish: shirtNeck, after: noCollar },
  { garment: 'waistcoat', wish: dressNeck },
];
const forNecks = (verb: string, more: object): readonly Case[] =>
  necks.map(({ wish, ...rest }) => ({ verb, ...rest, wish: { ...wish, ...more } }));

const cases: readonly Case[] = [
  ...(['flat', 'stand', 'shirt'] as const).flatMap(kind => forNecks('draft collar', { kind, width: 50 })),
  ...forNecks('draft hood', { height: 350, depth: 290 }),
  ...forNecks('draft binding', { width: 8, join: 8 }),
  ...forNecks('draft strip', { width: 30, join: 8 }),
  ...forNecks('draft band', { ratio: 0.9, width: 50, join: 7 }),
  {
    verb: 'draft notched collar',
    garment: 'shirt',
    wish: shirtNeck,
    after: [...noCollar, lapel({ mm: 220, from: 'neck' })],
  },
  {
    verb: 'draft notched collar',
    garment: 'waistcoat',
    wish: dressNeck,
    after: [lapel({ mm: 20, from: 'neck' })],
  },
  { verb: 'draft notched collar', garment: 'darted-dress', wish: dressNeck, after: dressLapel },
  {
    verb: 'draft front facing',
    garment: 'shirt',
    wish: along(...lapelled),
    after: [...noCollar, lapel({ mm: 220, from: 'neck' })],
  },
  { verb: 'draft front facing', garment: 'waistcoat', wish: along('front.front-edge', 'front.neck') },
  { verb: 'draft facing', garment: 'darted-dress', wish: { ...dressNeck, width: 60 } },
  { verb: 'draft facing', garment: 'yoke-skirt', wish: { ...along('front.hem', 'back.hem'), width: 50 } },
  { verb: 'draft facing', garment: 'trousers', wish: { ...along('front.waist', 'back.waist'), width: 50 } },
  {
    verb: 'draft combined facing',
    garment: 'darted-dress',
    wish: { ...along('front.neck', 'front.armhole', 'back.neck', 'back.armhole'), side: 30 },
  },
  {
    verb: 'draft combined facing',
    garment: 'shirt',
    wish: { ...along('front.neck', 'front.armhole') },
    after: noCollar,
  },
  { verb: 'draft stay', garment: 'darted-dress', wish: { ...along('front.neck'), width: 20 } },
  { verb: 'draft stay', garment: 'smock', wish: { ...along('back.side'), width: 12 } },
  { verb: 'draft interfacing', garment: 'shirt', wish: { name: 'made', piece: 'cuff' } },
  { verb: 'draft interfacing', garment: 'waistcoat', wish: { name: 'made', piece: 'front', inside: 2 } },
  {
    verb: 'draft interfacing',
    garment: 'yoke-skirt',
    wish: { name: 'made', piece: 'front yoke', inside: 0 },
  },
  {
    verb: 'draft waistband',
    garment: 'trousers',
    wish: { ...along('front.waist', 'back.waist'), width: 35, underlap: 30 },
    after: [['remove piece', { piece: 'waistband' }]],
  },
  {
    verb: 'draft waistband',
    garment: 'yoke-skirt',
    wish: { ...along('front yoke.waist', 'back yoke.waist'), width: 40, farEdge: 640 },
  },
  {
    verb: 'draft waistband',
    garment: 'darted-dress',
    wish: { ...along('skirt front.waist', 'skirt back.waist'), width: 35 },
    after: [
      ['remove piece', { piece: 'front' }],
      ['remove piece', { piece: 'back' }],
    ],
  },
  {
    verb: 'draft cuff',
    garment: 'shirt',
    wish: { ...along('sleeve.wrist'), width: 60, overlap: 20 },
    after: [['remove piece', { piece: 'cuff' }]],
  },
  {
    verb: 'draft cuff',
    garment: 'smock',
    wish: { ...along('sleeve.hem'), width: 60, length: 180, takenUp: 'gathered' },
  },
  { verb: 'draft cuff', garment: 'darted-dress', wish: { ...armholes, width: 35 } },
  { verb: 'draft casing', garment: 'smock', wish: { ...along('sleeve.hem'), elastic: 10, length: 150 } },
  {
    verb: 'draft casing',
    garment: 'yoke-skirt',
    wish: { ...along('front yoke.waist', 'back yoke.waist'), elastic: 30, length: 600 },
  },
  {
    verb: 'draft casing',
    garment: 'darted-dress',
    wish: { ...along('skirt front.hem', 'skirt back.hem'), elastic: 10, length: 600 },
  },
  {
    verb: 'draft placket',
    garment: 'shirt',
    wish: { name: 'made', along: ref('sleeve.underarm-back'), length: 110 },
  },
  {
    verb: 'draft placket',
    garment: 'darted-dress',
    wish: { name: 'made', along: ref('back.side'), length: 110 },
  },
  { verb: 'draft placket', garment: 'smock', wish: { name: 'made', along: ref('back.side'), length: 90 } },
  {
    verb: 'draft fly',
    garment: 'trousers',
    wish: { name: 'made', piece: 'front', edge: 'crotch', length: 160 },
  },
  {
    verb: 'draft fly',
    garment: 'darted-dress',
    wish: { name: 'made', piece: 'skirt front', edge: 'centre', length: 160 },
    after: [['fold to seam', { piece: 'skirt front' }]],
  },
  {
    verb: 'draft fly',
    garment: 'darted-dress',
    wish: { name: 'made', piece: 'skirt back', edge: 'centre', length: 180, over: 'left' },
    after: [['fold to seam', { piece: 'skirt back' }]],
  },
  {
    verb: 'draft patch pocket',
    garment: 'smock',
    wish: {
      name: 'made',
      piece: 'front',
      width: 70,
      height: 80,
      beside: { edge: 'centre-front', at: { share: 0.5 }, in: 60 },
    },
  },
  {
    verb: 'draft seam pocket',
    garment: 'darted-dress',
    wish: { name: 'made', seam: 'skirt side', from: 60 },
  },
  { verb: 'draft seam pocket', garment: 'trousers', wish: { name: 'made', seam: 'outseam', from: 60 } },
  { verb: 'draft seam pocket', garment: 'yoke-skirt', wish: { name: 'made', seam: 'side', from: 60 } },
  {
    verb: 'draft slant pocket',
    garment: 'trousers',
    wish: { name: 'made', piece: 'front', waist: 'waist', side: 'outseam' },
  },
  {
    verb: 'draft slant pocket',
    garment: 'darted-dress',
    wish: { name: 'made', piece: 'skirt front', waist: 'waist', side: 'side', depth: 30 },
  },
  {
    verb: 'draft slant pocket',
    garment: 'yoke-skirt',
    wish: { name: 'made', piece: 'front', waist: 'top', side: 'side' },
  },
  { verb: 'draft lining', garment: 'woven-shift', wish: { pieces: ['front', 'back', 'sleeve'], pleat: 30 } },
  { verb: 'draft lining', garment: 'yoke-skirt', wish: { pieces: ['front', 'back'] } },
  {
    verb: 'draft flounce',
    garment: 'darted-dress',
    wish: { ...along('skirt front.hem', 'skirt back.hem'), width: 60 },
  },
];

const garments = new Map(
  [...new Set(cases.map(one => one.garment))].map(name => {
    const file = new URL(`../../../demos/patterns/${name}.svg`, import.meta.url);
    return [name, readPattern(readFileSync(file), { file: name }).pattern] as const;
  }),
);
const done = (pattern: Pattern, verb: string, parameters: object) =>
  perform(verbs.find(v => v.verb === verb)!, pattern, parameters);
const before = ({ garment, after = [] }: Case): Pattern =>
  after.reduce((now, [verb, parameters]) => done(now, verb, parameters).pattern, garments.get(garment)!);
const madeBy = (was: Pattern, is: Pattern): readonly Piece[] =>
  is.pieces.filter(piece => !was.pieces.some(other => other.name === piece.name));
const seamsOf = ({ seams }: Pattern, piece: string) =>
  seams.filter(({ a, b }) => [...a, ...b].some(run => run.piece === piece));
const areaOf = (piece: Piece): number => signedArea(outlinePath(piece.outline));

/** Laid on where a line shows, or fused: no seam holds them. */
const heldByNoSeam = ['draft patch pocket', 'draft stay', 'draft interfacing'];
/** Cut out of the garment itself: it changes with what it was cut off. */
const cutOut = ['draft slant pocket'];
/** Sewn end to end or all round: their corners and the seams that cross them are their notches. */
const endToEnd = [
  ...heldByNoSeam,
  'draft lining',
  'draft facing',
  'draft combined facing',
  'draft front facing',
  'draft flounce',
  'draft binding',
  'draft strip',
];

describe.each(cases.map(one => [`${one.verb}, ${one.garment}`, one] as const))('%s', (_, one) => {
  const { verb, wish } = one;
  const was = before(one);
  const { pattern, derived = [] } = done(was, verb, wish);
  const made = madeBy(was, pattern);

  test('makes pieces with role, grain, cut and notches, that lie in a sound pattern', () => {
    validatePattern(pattern);
    expect(made.length).toBeGreaterThan(0);
    expect(made.map(p => p.name).toSorted()).toEqual(derived.map(d => d.name).toSorted());
    for (const piece of made) {
      expect([piece.name, piece.role === undefined]).toEqual([piece.name, false]);
      expect(piece.lines.map(l => l.kind)).toContain('grain');
      expect(piece.cutting.count).toBeGreaterThan(0);
      expect(piece.cutting.fabric).not.toBe('');
      if (!endToEnd.includes(verb))
        expect([piece.name, piece.notches.length > 0]).toEqual([piece.name, true]);
      expect(areaOf(piece)).toBeGreaterThan(0);
    }
    const known = new Set(checkPattern(was).map(f => f.code + JSON.stringify(f.where)));
    const faults = checkPattern(pattern).filter(
      f => f.severity === 'fault' && !known.has(f.code + JSON.stringify(f.where)),
    );
    expect(faults).toEqual([]);
  });

  test('sews each to what it came from, and the walk proves it', () => {
    for (const piece of made) {
      const seams = seamsOf(pattern, piece.name);
      expect([piece.name, seams.length > 0]).toEqual([piece.name, !heldByNoSeam.includes(verb)]);
      for (const seam of seams) {
        const walk = walkSeam(pattern, seam);
        expect([seam.name, walk.matches, walk.findings.filter(f => f.code !== 'notch-misses-seam')]).toEqual([
          seam.name,
          true,
          [],
        ]);
      }
    }
  });

  test('has a place in the order of work', () => {
    const { order } = orderOfWork(pattern, derived, []);
    for (const { name } of made) {
      const seams = seamsOf(pattern, name).map(s => `seam ${s.name}`);
      const isIts = (job: string) => seams.includes(job) || job.endsWith(` ${name}`);
      expect([name, order.some(({ job }) => isIts(job))]).toEqual([name, true]);
    }
  });
});

describe.each(
  cases.filter(one => !cutOut.includes(one.verb)).map(one => [`${one.verb}, ${one.garment}`, one] as const),
)('%s', (_, one) => {
  test('is made again for edges that have changed', () => {
    const { verb, wish } = one;
    const was = before(one);
    const { pattern } = done(was, verb, wish);
    const made = madeBy(was, pattern);
    const larger = grown(pattern, made);
    const again = done(larger, 'refresh', {}).pattern;
    validatePattern(again);
    const fresh = done(grown(was, []), verb, wish).pattern;
    for (const { name } of made) {
      expect(areaOf(pieceNamed(again, name))).toBeCloseTo(areaOf(pieceNamed(fresh, name)), 3);
      for (const seam of seamsOf(again, name))
        expect([seam.name, walkSeam(again, seam).matches]).toEqual([seam.name, true]);
    }
    expect(again.seams.map(s => s.name).toSorted()).toEqual(pattern.seams.map(s => s.name).toSorted());
  });
});

const ratio = 1.04;

/** The garment a size larger in all directions, but for these pieces. */
function grown(pattern: Pattern, but: readonly Piece[]): Pattern {
  const map = { a: ratio, b: 0, c: 0, d: ratio, e: 0, f: 0 };
  const stays = (name: string) => but.some(piece => piece.name === name);
  const pieces = pattern.pieces.map(
    (piece): Piece =>
      stays(piece.name)
        ? piece
        : {
            ...piece,
            outline: {
              parts: piece.outline.parts.map(part => {
                if (part.type === 'edge') return { ...part, path: transformedPath(part.path, map) };
                if (part.type === 'pleat') return { ...part, mouth: transformedPath(part.mouth, map) };
                const [a, b] = part.legs;
                return {
                  ...part,
                  legs: [transformedPath(a, map), transformedPath(b, map)],
                  apex: apply(map, part.apex),
                };
              }),
            },
            notches: piece.notches.map(notch => ({ ...notch, at: notch.at * ratio })),
            lines: piece.lines.map(line => ({ ...line, path: transformedPath(line.path, map) })),
            marks: piece.marks.map(mark => ({ ...mark, at: apply(map, mark.at) })),
          },
  );
  const run = (one: EdgeRun): EdgeRun =>
    one.part && !stays(one.piece)
      ? { ...one, part: { from: one.part.from * ratio, to: one.part.to * ratio } }
      : one;
  const seams = pattern.seams.map(seam => ({ ...seam, a: seam.a.map(run), b: seam.b.map(run) }));
  return { ...pattern, pieces, seams };
}
