import { type AnyVerb, perform, verbs } from '@paperhinge/alter';
import { trueEdges } from '@paperhinge/alter/edges';
import { unfold } from '@paperhinge/alter/seams';
import {
  at,
  checkPattern,
  definePattern,
  definePiece,
  edgeNames,
  type Pattern,
  PatternError,
  type Piece,
  polyline,
  readPattern,
  type Segment,
  writePattern,
} from '@paperhinge/geometry';
import { pointAt } from '@paperhinge/geometry/curves';
import { partsOfEdge } from '@paperhinge/geometry/pattern';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anyBodice, patternOf } from '../hinge/pieces.js';

/** A step of a sheet. */
const done = (pattern: Pattern, verb: string, step: object) =>
  perform(verbs.find(v => v.verb === verb) as AnyVerb, pattern, step);
const after = (pattern: Pattern, verb: string, step: object): Pattern => done(pattern, verb, step).pattern;

// Corners by hand: the angle between the last and the first hundred-thousandth of two segments that follow each other.
const turnBetween = (first: Segment, second: Segment): number => {
  const [a, b, c, d] = [
    pointAt(first, 1 - 1e-5),
    pointAt(first, 1),
    pointAt(second, 0),
    pointAt(second, 1e-5),
  ];
  const [x, y] = [Math.atan2(b.y - a.y, b.x - a.x), Math.atan2(d.y - c.y, d.x - c.x)];
  return ((Math.abs(((y - x) * 180) / Math.PI) + 180) % 360) - 180;
};
const sizeOf = (segment: Segment): number => {
  const points = Array.from({ length: 33 }, (_, i) => pointAt(segment, i / 32));
  return points.slice(1).reduce((sum, p, i) => sum + Math.hypot(p.x - points[i]!.x, p.y - points[i]!.y), 0);
};
/** Degrees of the turns over 20 within an edge, stretches of it shorter than `least` mm left out. */
const cornersOn = (piece: Piece, edge: string, least = 0.06): readonly number[] =>
  partsOfEdge(piece, edge).flatMap(({ path }) => {
    const lasting = path.segments.filter(s => sizeOf(s) > least);
    return lasting
      .slice(1)
      .map((s, i) => Math.abs(turnBetween(lasting[i]!, s)))
      .filter(turn => turn > 20.5);
  });

const ways: Readonly<Record<string, (amount: number, a: number) => readonly (readonly [string, object])[]>> =
  {
    'a wedge': (by, a) => [
      ['spread', { piece: 'block', from: { edge: 'hem', at: { share: a } }, to: { edge: 'neck' }, by }],
    ],
    'a wedge from a short edge': (by, a) => [
      [
        'spread',
        { piece: 'block', from: { edge: 'neck', at: { share: a } }, to: { edge: 'hem' }, by: by / 2 },
      ],
    ],
    'a wedge folded away': (by, a) => [
      [
        'spread',
        { piece: 'block', from: { edge: 'hem', at: { share: a } }, to: { edge: 'shoulder' }, by: -by / 2 },
      ],
    ],
    'a parallel slash': (by, a) => [
      [
        'spread',
        { piece: 'block', from: { edge: 'hem', at: { share: a } }, to: { edge: 'neck' }, by, hinge: 'none' },
      ],
    ],
    'an overlap': (by, a) => [
      [
        'spread',
        {
          piece: 'block',
          from: { edge: 'hem', at: { share: a } },
          to: { edge: 'neck', at: { share: 1 - a } },
          by: -by / 2,
          hinge: 'none',
        },
      ],
    ],
    'several slashes': (by, a) => [
      [
        'spread',
        {
          piece: 'block',
          from: { edge: 'hem', at: [{ share: a / 2 }, { share: (1 + a) / 2 }] },
          to: { edge: 'neck' },
          by: 2 * by,
          slashes: 3,
        },
      ],
    ],
    'a tuck': (by, a) => [
      [
        'spread',
        {
          piece: 'block',
          from: { edge: 'hem', at: { share: a } },
          to: { edge: 'neck' },
          by,
          hinge: 'none',
          into: 'tucks',
          name: 'tuck',
        },
      ],
    ],
    'a dart closed': (_, a) => [
      ['close dart', { piece: 'block', dart: 'bust', into: 'neck', at: { share: a } }],
    ],
    'a dart closed in part': (_, a) => [
      ['close dart', { piece: 'block', dart: 'bust', into: 'hem', at: { share: a }, share: 0.6 }],
    ],
    lengthening: by => [['lengthen', { pieces: ['block'], at: 'waist', by }]],
    shortening: by => [['shorten', { pieces: ['block'], at: 'waist', by }]],
    'a piece cut in two and joined again': () => [
      [
        'divide',
        {
          piece: 'block',
          name: 'lower',
          from: { edge: 'side-lower', at: { share: 0.3 } },
          to: { edge: 'centre', at: { share: 0.5 } },
          seam: 'cut',
        },
      ],
      ['join pieces', { seam: 'cut' }],
    ],
    'taking in after a wedge': (by, a) => [
      ['spread', { piece: 'block', from: { edge: 'hem', at: { share: a } }, to: { edge: 'neck' }, by }],
      ['shorten', { pieces: ['block'], at: 'waist', by: by / 2 }],
    ],
  };

describe.each(Object.entries(ways))('after %s', (_, stepsFor) => {
  test('no corner is taken to be meant that was not there: each is told, and trued or left with a limit', () => {
    let tried = 0;
    fc.assert(
      fc.property(
        anyBodice,
        fc.double({ min: 2, max: 90, noNaN: true }),
        fc.double({ min: 0.1, max: 0.9, noNaN: true }),
        (bodice, amount, a) => {
          let pattern = patternOf(bodice);
          try {
            for (const [verb, step] of stepsFor(amount, a)) pattern = after(pattern, verb, step);
          } catch (error) {
            // What cannot be folded or cut so leaves nothing to be trued.
            if (error instanceof PatternError) return;
            throw error;
          }
          tried++;
          const told = checkPattern(pattern);
          for (const piece of pattern.pieces)
            for (const edge of edgeNames(piece)) {
              const corners = cornersOn(piece, edge);
              if (corners.length === 0) continue;
              // A step of less than 1/32 in is not told: nobody sews it. At 20 degrees it is 2.4 mm long.
              if (cornersOn(piece, edge, 2.4).length === 0) continue;
              const seen = told.filter(f => f.where.piece === piece.name && f.where.edge === edge);
              expect([edge, corners, seen.map(f => f.code)]).toEqual([
                edge,
                corners,
                expect.arrayContaining([expect.stringMatching(/edge-(kinked|stepped)/)]),
              ]);
              const own = { edges: [{ piece: piece.name, edge }] };
              const once = trueEdges(pattern, own);
              const needMm = Math.max(0, ...once.findings.map(f => f.figures?.needMm ?? 0));
              const trued = needMm > 0 ? trueEdges(pattern, { ...own, within: needMm * 1.05 + 1.6 }) : once;
              expect(trued.findings.filter(f => f.code === 'truing-left').map(f => f.about)).toEqual([]);
              expect(cornersOn(trued.pattern.pieces.find(p => p.name === piece.name)!, edge)).toEqual([]);
              expect(trued.pattern.leftToTrue?.filter(left => left.edge === edge) ?? []).toEqual([]);
            }
        },
      ),
      { numRuns: 20, endOnFailure: true },
    );
    expect(tried).toBeGreaterThan(3);
  });
});

// A whole yoke with a deep neck: 40 mm folded out of its middle, the two halves of the neck cross in a point.
const yoke = definePiece({
  name: 'yoke',
  outline: [
    { name: 'neck', path: { segments: [[at(0, 0), at(4, 78), at(96, 78), at(100, 0)]] } },
    { name: 'shoulder-left', path: polyline(at(100, 0), at(190, 30)) },
    { name: 'side-left', path: polyline(at(190, 30), at(200, 200)) },
    { name: 'hem', kind: 'hem', path: polyline(at(200, 200), at(-100, 200)) },
    { name: 'side-right', path: polyline(at(-100, 200), at(-90, 30)) },
    { name: 'shoulder-right', path: polyline(at(-90, 30), at(0, 0)) },
  ],
});
const folded = after(definePattern({ name: 'yoke', pieces: [yoke] }), 'spread', {
  piece: 'yoke',
  from: { edge: 'hem', at: { share: 0.5 } },
  to: { edge: 'neck', at: { share: 0.5 } },
  by: -40,
  hinge: 'none',
});
const neck = { edges: [{ piece: 'yoke', edge: 'neck' }] };
const only = (pattern: Pattern): Piece => pattern.pieces[0]!;
const codesOn = (pattern: Pattern, edge: string): readonly string[] =>
  checkPattern(pattern).flatMap(f => (f.where.edge === edge ? [f.code] : []));

describe('a point that folding left in a short neck', () => {
  const trued = trueEdges(folded, neck);

  test('is sharper than what `true` takes to be meant, and is told and trued all the same', () => {
    const [corner, ...rest] = cornersOn(only(folded), 'neck');
    expect(corner).toBeGreaterThan(50);
    expect(rest).toEqual([]);
    expect(folded.leftToTrue?.map(left => left.edge)).toEqual(['neck']);
    expect(codesOn(folded, 'neck')).toContain('edge-kinked');
    expect(trued.findings).toEqual([]);
    expect(cornersOn(only(trued.pattern), 'neck')).toEqual([]);
    expect(trued.pattern.leftToTrue ?? []).toEqual([]);
    expect(codesOn(trued.pattern, 'neck')).not.toContain('edge-kinked');
  });

  test('the same point in a drawing is meant', () => {
    const { leftToTrue: _, ...drawn } = folded;
    expect(codesOn(drawn, 'neck')).not.toContain('edge-kinked');
    expect(trueEdges(drawn, neck).findings.map(f => f.about)).toEqual([
      expect.objectContaining({ what: 'corner' }),
    ]);
  });

  test('it is known again from the written drawing', () => {
    const read = readPattern(writePattern(folded)).pattern;
    expect(read.leftToTrue).toEqual([
      { piece: 'yoke', edge: 'neck', at: expect.closeTo(folded.leftToTrue![0]!.at, 5) },
    ]);
    expect(codesOn(read, 'neck')).toContain('edge-kinked');
    expect(cornersOn(only(trueEdges(read, neck).pattern), 'neck')).toEqual([]);
    expect(readPattern(writePattern(trued.pattern)).pattern.leftToTrue).toBeUndefined();
  });

  test('it is followed through later steps, and along an edge that they lengthen', () => {
    const later = after(folded, 'spread', {
      piece: 'yoke',
      from: { edge: 'neck', at: { share: 0.2 } },
      to: { edge: 'hem', at: { share: 0.8 } },
      by: 12,
      hinge: 'none',
    });
    expect(later.leftToTrue!.filter(left => left.edge === 'neck')).toHaveLength(3);
    const all = trueEdges(later, { ...neck, within: 6 });
    expect(cornersOn(only(all.pattern), 'neck')).toEqual([]);
  });
});

describe('corners that were drawn stay meant', () => {
  const square = definePiece({
    name: 'front',
    outline: [
      { name: 'neck', path: polyline(at(0, 90), at(60, 90), at(66, 0)) },
      { name: 'shoulder', path: polyline(at(66, 0), at(180, 40)) },
      { name: 'side', path: polyline(at(180, 40), at(220, 500)) },
      { name: 'hem', kind: 'hem', path: polyline(at(220, 500), at(0, 510)) },
      { name: 'centre', kind: 'fold', path: polyline(at(0, 510), at(0, 90)) },
    ],
  });
  const pattern = definePattern({ name: 'square', pieces: [square] });
  const own = { edges: [{ piece: 'front', edge: 'neck' }] };

  test.each([
    ['beside a slash', { from: { edge: 'neck', at: { share: 0.8 } }, to: { edge: 'hem' }, by: 20 }],
    ['at the slash itself', { from: { edge: 'hem' }, to: { edge: 'neck', at: { mm: 60 } }, by: 30 }],
  ])('a square neck, %s', (_, step) => {
    const spread = after(pattern, 'spread', { piece: 'front', ...step });
    const kept = trueEdges(spread, { ...own, within: 8 });
    expect(cornersOn(only(kept.pattern), 'neck').filter(turn => turn > 60)).toHaveLength(1);
  });

  test('a V neck is a V when it is opened out, and its point is meant', () => {
    const v = definePiece({
      name: 'front',
      outline: [
        { name: 'neck', path: polyline(at(0, 150), at(66, 0)) },
        { name: 'shoulder', path: polyline(at(66, 0), at(180, 40)) },
        { name: 'side', path: polyline(at(180, 40), at(220, 500)) },
        { name: 'hem', kind: 'hem', path: polyline(at(220, 500), at(0, 510)) },
        { name: 'centre', kind: 'fold', path: polyline(at(0, 510), at(0, 150)) },
      ],
    });
    const whole = unfold(definePattern({ name: 'v', pieces: [v] }), { piece: 'front' }).pattern;
    expect(cornersOn(only(whole), 'neck')).toHaveLength(1);
    expect(whole.leftToTrue).toBeUndefined();
  });
});

describe('where two edges meet', () => {
  // A dart so slanted that, closed into the neck, the two parts of the side meet in a corner of over 20 degrees.
  const { pattern } =
    readPattern(`<svg xmlns="http://www.w3.org/2000/svg" width="600mm" height="500mm" viewBox="0 0 600 500" data-paperhinge="2">
    <metadata>{ "seams": { "side": { "a": ["front.side-upper from armhole", "front.side-lower from slant"], "b": "back.side from armhole" } } }</metadata>
    <g data-piece="front" data-cut="2" data-allowance="10mm">
      <path data-edge="neck" d="M0,170 C14,110 34,60 52,0"/><path data-edge="shoulder" d="M52,0 L128,26"/>
      <path data-edge="armhole" d="M128,26 C116,80 130,140 182,152"/><path data-edge="side-upper" d="M182,152 L181,200"/>
      <path data-dart="slant" d="M181,200 L96,240 L185.9,214"/><path data-edge="side-lower" d="M185.9,214 L180,330"/>
      <path data-edge="hem" data-kind="hem" d="M180,330 L0,340"/><path data-edge="front-edge" d="M0,340 L0,170"/>
    </g>
    <g data-piece="back" data-allowance="10mm" transform="translate(300,0)">
      <path data-edge="neck" d="M0,18 C24,18 42,14 52,0"/><path data-edge="shoulder" d="M52,0 L128,26"/>
      <path data-edge="armhole" d="M128,26 C120,80 134,140 182,152"/><path data-edge="side" d="M182,152 L180,311"/>
      <path data-edge="hem" data-kind="hem" d="M180,311 L0,316"/><path data-edge="centre" data-kind="fold" d="M0,316 L0,18"/>
    </g></svg>`);
  const closed = after(pattern, 'close dart', { piece: 'front', dart: 'slant', into: 'hem' });
  const edges = ['side-upper', 'side-lower'].map(edge => ({ piece: 'front', edge }));
  const kinks = (of: Pattern): readonly string[] =>
    checkPattern(of).flatMap(f =>
      f.code === 'edge-kinked' && f.where.edge === 'side-upper' ? [String(f.figures?.angleDeg)] : [],
    );

  test('a corner that a closed dart left between them is told and trued, from the written drawing, too', () => {
    expect(closed.leftToTrue).toContainEqual({
      piece: 'front',
      edge: 'side-upper',
      at: expect.closeTo(Math.hypot(1, 48), 6),
    });
    expect(
      kinks(closed)
        .map(Number)
        .some(angle => angle > 20),
    ).toBe(true);
    const read = readPattern(writePattern(closed)).pattern;
    expect(kinks(read)).toHaveLength(kinks(closed).length);
    const once = trueEdges(read, { edges });
    const needMm = Math.max(0, ...once.findings.map(f => f.figures?.needMm ?? 0));
    const trued = needMm > 0 ? trueEdges(read, { edges, within: needMm * 1.05 + 1.6 }) : once;
    expect(kinks(trued.pattern)).toEqual([]);
  });

  test('the corners of the piece are corners still', () => {
    const drawn = ['neck', 'shoulder', 'armhole', 'hem', 'front-edge'];
    const left = closed.leftToTrue!.filter(({ at }) => at < 1e-6).map(({ edge }) => edge);
    expect(left.filter(edge => drawn.includes(edge))).toEqual([]);
  });
});
