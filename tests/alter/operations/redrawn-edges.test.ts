import { addButtonStand, cutKeyhole, recutArmhole, recutEdge } from '@paperhinge/alter/edges';
import { shapeHem } from '@paperhinge/alter/length';
import { matchEdge } from '@paperhinge/alter/seams';
import {
  at,
  edgeNamed,
  edgePath,
  line,
  type Pattern,
  type Piece,
  pathOf,
  pieceNamed,
  validatePattern,
  walkSeams,
} from '@paperhinge/geometry';
import { endTangent, pathEnd, pathStart, startTangent } from '@paperhinge/geometry/paths';
import { angleBetween, distance } from '@paperhinge/geometry/plane';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { patternOf as patternWith, rectangle, seam } from '../../support/polygon-piece.js';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf, toldDid, toldFinding } from '../../support/told.js';
import {
  anyBodice,
  areaOf,
  block,
  depth,
  edge,
  lengthOf,
  only,
  patternOf,
  pieceOf,
  refusal,
} from '../hinge/pieces.js';

const width = 100 + depth;
const degrees = (rad: number) => Math.abs((rad * 180) / Math.PI);
/** The angle in degrees between two edges of a piece where one leads into the other. */
const turnBetween = (piece: Piece, before: string, after: string) =>
  degrees(angleBetween(endTangent(edgePath(piece, before)), startTangent(edgePath(piece, after))));

describe('an armhole recut', () => {
  const recut = (changes: Partial<Parameters<typeof recutArmhole>[1]>, pattern: Pattern = shiftPattern()) =>
    recutArmhole(pattern, { pieces: ['front', 'back'], ...changes });
  test('lower takes so much of the side, further in so much of the shoulder', () => {
    const before = shiftPattern();
    const { pattern } = recut({ lower: 20, in: 12 });
    for (const [name, side] of [
      ['front', 'side-upper'],
      ['back', 'side'],
    ] as const) {
      const [was, is] = [before, pattern].map(p => pieceNamed(p, name));
      expect(lengthOf(is!, side)).toBeCloseTo(lengthOf(was!, side) - 20, 6);
      expect(lengthOf(is!, 'shoulder')).toBeCloseTo(lengthOf(was!, 'shoulder') - 12, 6);
    }
    validatePattern(pattern);
  });
  test('raised runs on along the side; notches keep their share', () => {
    const before = shiftPattern();
    const { pattern } = recut({ lower: -15 });
    const [was, is] = [before, pattern].map(p => pieceNamed(p, 'back'));
    expect(lengthOf(is!, 'side')).toBeCloseTo(lengthOf(was!, 'side') + 15, 6);
    const share = (piece: Piece) =>
      piece.notches.find(n => n.edge === 'armhole')!.at / lengthOf(piece, 'armhole');
    expect(share(is!)).toBeCloseTo(share(was!), 6);
  });
  test('keeps what ran level or along the grain: on a straight-sided piece only scales', () => {
    const square = pieceOf([
      edge('shoulder', 'seam', line(at(0, 0), at(150, 0))),
      edge('armhole', 'seam', [at(150, 0), at(150, 120), at(180, 180), at(250, 180)]),
      edge('side', 'seam', line(at(250, 180), at(250, 600))),
      edge('hem', 'hem', line(at(250, 600), at(0, 600))),
      edge('centre', 'fold', line(at(0, 600), at(0, 0))),
    ]);
    const after = only(recutArmhole(patternOf(square), { pieces: ['block'], lower: 18, in: 25 }).pattern);
    const [handle] = edgePath(after, 'armhole').segments;
    // 100 -> 125 across, 180 -> 198 down.
    const expected = [at(125, 0), at(125, 120 * 1.1), at(125 + 30 * 1.25, 198), at(250, 198)];
    for (const [i, p] of handle!.entries()) expect(distance(p, expected[i]!)).toBeLessThan(1e-9);
  });
  test('back again is as it was', () => {
    fc.assert(
      fc.property(
        anyBodice,
        fc.double({ min: 1, max: 25, noNaN: true }),
        fc.double({ min: 0, max: 8, noNaN: true }),
        (piece, lower, cutIn) => {
          const there = recutArmhole(patternOf(piece), { pieces: ['block'], lower, in: cutIn }).pattern;
          validatePattern(there);
          const back = recutArmhole(there, { pieces: ['block'], lower: -lower, in: -cutIn }).pattern;
          for (const name of ['armhole', 'shoulder', 'side-upper'])
            expect(lengthOf(only(back), name)).toBeCloseTo(lengthOf(piece, name), 5);
        },
      ),
      { numRuns: 40 },
    );
  });
  test('is refused without armhole, at a dart, past an edge', () => {
    expect(() => recutArmhole(patternOf(block()), { pieces: ['block'], lower: 5 })).toThrow(
      refusal('no-armhole', /data-role/),
    );
    expect(refusalOf(() => recut({ lower: 200 })).code).toBe('corner-beyond-edge');
    expect(refusalOf(() => recut({})).code).toBe('field-missing');
  });
});

describe('an edge recut', () => {
  const recut = (changes: Partial<Parameters<typeof recutEdge>[1]>, piece = block()) =>
    recutEdge(patternOf(piece), { piece: 'block', edge: 'top', ...changes });
  test('further in takes a strip, further out adds one', () => {
    expect(areaOf(only(recut({ in: 20 }).pattern))).toBeCloseTo(areaOf(block()) - 20 * width, 6);
    expect(areaOf(only(recut({ out: 20 }).pattern))).toBeCloseTo(areaOf(block()) + 20 * width, 6);
    expect(toldDid(recut({ in: [30, 0] }))).toBe(
      `The top of the block was recut 30 mm at its start and 0 mm at its end further in: it is ${Math.hypot(width, 30).toFixed(1)} mm long now; it was ${width.toFixed(1)} mm.`,
    );
  });
  test('by other amounts at its ends takes a wedge', () => {
    expect(areaOf(only(recut({ in: [30, 0] }).pattern))).toBeCloseTo(areaOf(block()) - (30 * width) / 2, 6);
  });
  test('along a line takes its place and its name', () => {
    const drawn = {
      ...block(),
      lines: [
        ...block().lines,
        { kind: 'style' as const, name: 'new top', path: pathOf(line(at(0, 60), at(width, 40))) },
      ],
    };
    const after = only(recut({ line: 'new top' }, drawn).pattern);
    expect(areaOf(after)).toBeCloseTo(areaOf(block()) - 50 * width, 4);
    expect(lengthOf(after, 'top')).toBeCloseTo(Math.hypot(width, 20), 6);
    expect(lengthOf(after, 'side-upper')).toBeCloseTo(185 - 40, 6);
  });
  test('through a mark passes it, its ends where they were', () => {
    const marked = { ...block(), marks: [{ kind: 'point', name: 'high', at: at(width / 2, -20) }] };
    const after = only(recut({ through: ['high'] }, marked).pattern);
    const path = edgePath(after, 'top');
    expect([pathStart(path), pathEnd(path)]).toEqual([at(0, 0), at(width, 0)]);
    // Level at both ends and 20 mm up half way, a fair curve covers half of the strip.
    expect((areaOf(after) - areaOf(block())) / width).toBeCloseTo(10, 1);
    validatePattern(patternOf(after));
  });
  test('is refused where too much is taken, or two ways are asked for', () => {
    expect(() => recut({ in: 190 })).toThrow(refusal('take-in-too-much'));
    expect(() => recut({ in: 5, out: 5 })).toThrow(expect.objectContaining({ code: 'fields-exclude' }));
    expect(() => recut({ edge: 'hem', line: 'grain' })).toThrow(refusal('line-ends-off-outline'));
  });
});

describe('a hem shaped', () => {
  const shape = (changes: Partial<Parameters<typeof shapeHem>[1]>, piece = block()) =>
    shapeHem(patternOf(piece), { piece: 'block', ...changes });
  test('straight up at the side takes a triangle', () => {
    const after = only(shape({ side: 60, line: 'straight' }).pattern);
    expect(areaOf(after)).toBeCloseTo(areaOf(block()) - (60 * width) / 2, 6);
    expect(lengthOf(after, 'side-lower')).toBeCloseTo(385 - 60, 9);
    expect(lengthOf(after, 'centre')).toBeCloseTo(600, 9);
  });
  test('in a curve is square to side and fold', () => {
    const after = only(shape({ side: 60, centre: -30 }).pattern);
    expect(turnBetween(after, 'side-lower', 'hem')).toBeCloseTo(90, 6);
    expect(turnBetween(after, 'hem', 'centre')).toBeCloseTo(90, 6);
    expect(lengthOf(after, 'centre')).toBeCloseTo(630, 9);
    expect(distance(pathEnd(edgePath(after, 'hem')), at(0, 630))).toBeLessThan(1e-9);
  });
  test('tells a deep allowance on a curve, with what to do', () => {
    const parts = block().outline.parts.map(p =>
      p.type === 'edge' && p.name === 'hem' ? { ...p, allowance: 30 } : p,
    );
    const done = shape({ side: 40 }, { ...block(), outline: { parts } });
    expect(done.findings.map(f => toldFinding(f).message)).toEqual([
      'The hem of the block is curved now: 30 mm turned up there will not lie flat.',
    ]);
    expect(shape({ side: 40 }).findings).toEqual([]);
  });
  test('there and back is straight again on any bodice’s side', () => {
    fc.assert(
      fc.property(anyBodice, fc.double({ min: 2, max: 60, noNaN: true }), (piece, side) => {
        const up = shape({ side }, piece).pattern;
        validatePattern(up);
        expect(lengthOf(only(up), 'side-lower')).toBeCloseTo(lengthOf(piece, 'side-lower') - side, 6);
      }),
      { numRuns: 30 },
    );
  });
  test('is refused where there is no centre, or too much goes', () => {
    expect(refusalOf(() => shapeHem(shiftPattern(), { piece: 'sleeve', side: 5 })).code).toBe(
      'hem-not-at-centre',
    );
    expect(() => shape({ side: 385 })).toThrow(refusal('corner-beyond-edge', /less/));
  });
});

describe('an edge matched', () => {
  const unequal = (ease = { mm: 0 }) =>
    patternWith(
      [rectangle('left', 100, 300), rectangle('right', 80, 288)],
      [{ ...seam('middle', ['left.right'], ['-right.left']), ease }],
    );
  test('is as long as its partner, and the edge beside it meets its new end', () => {
    const { pattern } = matchEdge(unequal(), { edge: { piece: 'left', edge: 'right' }, at: 'end' });
    const [left] = pattern.pieces;
    expect(lengthOf(left!, 'right')).toBeCloseTo(288, 9);
    expect(lengthOf(left!, 'bottom')).toBeCloseTo(Math.hypot(100, 12), 9);
    expect(walkSeams(pattern).every(w => w.matches)).toBe(true);
  });
  test('longer, at its start, with the ease that is wanted', () => {
    const done = matchEdge(unequal({ mm: 5 }), { edge: { piece: 'right', edge: 'left' }, at: 'start' });
    expect(lengthOf(done.pattern.pieces[1]!, 'left')).toBeCloseTo(295, 9);
    expect(walkSeams(done.pattern).every(w => w.matches)).toBe(true);
    expect(toldDid(done)).toBe(
      'The left of the right was made 7 mm longer to match the middle seam: 295 mm; the bottom is drawn to its new end.',
    );
  });
  test('to a length that is asked for', () => {
    const done = matchEdge(unequal(), { edge: { piece: 'left', edge: 'top' }, at: 'end', length: 130 });
    expect(lengthOf(done.pattern.pieces[0]!, 'top')).toBeCloseTo(130, 9);
    expect(lengthOf(done.pattern.pieces[0]!, 'right')).toBeCloseTo(Math.hypot(300, 30), 9);
  });
  test('is refused where it is sewn to nothing, or matches', () => {
    const refused = (edge: string, pattern = unequal()) =>
      refusalOf(() => matchEdge(pattern, { edge: { piece: 'left', edge }, at: 'end' })).code;
    expect(refused('top')).toBe('edge-in-no-seam');
    expect(refused('right', unequal({ mm: 12 }))).toBe('edge-matches-already');
  });
});

describe('a button stand', () => {
  const stand = (changes: Partial<Parameters<typeof addButtonStand>[1]> = {}, piece = block()) =>
    addButtonStand(patternOf(piece), { piece: 'block', edge: 'centre', width: 15, ...changes });
  test('is a strip beyond the centre, the centre a line, the piece a pair', () => {
    const after = only(stand().pattern);
    expect(areaOf(after)).toBeCloseTo(areaOf(block()) + 15 * 600, 6);
    expect(after.cutting).toMatchObject({ count: 2, mirrored: true });
    expect(edgeNamed(after, 'centre')).toMatchObject({ kind: 'seam', role: 'opening', allowance: 10 });
    const centre = after.lines.find(l => l.role === 'centre')!;
    expect(centre.path).toEqual(edgePath(block(), 'centre'));
  });
  test('with a facing has the facing turned over beyond its fold line', () => {
    const done = stand({ facing: 60 });
    const after = only(done.pattern);
    expect(areaOf(after)).toBeCloseTo(areaOf(block()) + (15 + 60) * 600, 6);
    expect(after.lines.map(l => [l.kind, l.name])).toContainEqual(['fold', 'centre fold']);
    expect(lengthOf(after, 'top-facing')).toBeCloseTo(60, 9);
    expect(edgeNamed(after, 'hem-facing').kind).toBe('hem');
    expect(done.findings).toEqual([]);
    validatePattern(done.pattern);
  });
  test('folded back, the facing’s neck lies on the neck', () => {
    const before = shiftPattern();
    const { pattern } = addButtonStand(before, {
      piece: 'front',
      edge: 'centre-front',
      width: 15,
      facing: 60,
    });
    const front = pieceNamed(pattern, 'front');
    const neck = edgePath(front, 'neck'),
      facing = edgePath(front, 'neck-facing');
    const fold = front.lines.find(l => l.kind === 'fold')!.path;
    const x = pathStart(fold).x;
    expect(distance(pathStart(neck), pathEnd(facing))).toBeLessThan(1e-6);
    const turned = at(2 * x - pathStart(facing).x, pathStart(facing).y);
    const nearest = Math.min(
      ...Array.from({ length: 2001 }, (_, i) => {
        const [p0, p1, p2, p3] = neck.segments.at(-1) as unknown as readonly [
          typeof turned,
          typeof turned,
          typeof turned,
          typeof turned,
        ];
        const t = i / 2000,
          u = 1 - t;
        const on = (k: 'x' | 'y') =>
          u ** 3 * p0[k] + 3 * u * u * t * p1[k] + 3 * u * t * t * p2[k] + t ** 3 * p3[k];
        return distance(turned, at(on('x'), on('y')));
      }),
    );
    expect(nearest).toBeLessThan(0.1);
    validatePattern(pattern);
  });
  test('is refused on a bent edge, or with a facing wider than the piece', () => {
    expect(
      refusalOf(() => addButtonStand(shiftPattern(), { piece: 'back', edge: 'side', width: 15 })).code,
    ).toBe('stand-edge-bent');
    expect(() => stand({ facing: 400 })).toThrow(refusal('grown-facing-too-wide', /narrower/));
  });
});

describe('a keyhole', () => {
  const cut = (changes: Partial<Parameters<typeof cutKeyhole>[1]> = {}) =>
    cutKeyhole(shiftPattern(), { piece: 'back', below: 20, depth: 110, width: 60, ...changes });
  test('takes half an oval off the half piece: a quarter of π times depth and half width', () => {
    const [before, after] = [shiftPattern(), cut().pattern].map(p => pieceNamed(p, 'back'));
    expect(areaOf(before!) - areaOf(after!)).toBeCloseTo((Math.PI * 110 * 30) / 4, 4);
    expect(lengthOf(after!, 'centre-back')).toBeCloseTo(lengthOf(before!, 'centre-back') - 110, 6);
    validatePattern(cut().pattern);
  });
  test('is a circle where it is as wide as deep', () => {
    const after = pieceNamed(cut({ depth: 80, width: 80 }).pattern, 'back');
    expect(lengthOf(after, 'keyhole')).toBeCloseTo(Math.PI * 40, 4);
  });
  test('is refused without a fold at a neck, beyond the fold, twice, or into the armhole', () => {
    expect(refusalOf(() => cut({ piece: 'sleeve' })).code).toBe('keyhole-needs-fold');
    expect(refusalOf(() => cut({ depth: 900 })).code).toBe('keyhole-off-fold');
    expect(refusalOf(() => cut({ width: 900 })).code).toBe('redrawn-crosses');
    const once = cut().pattern;
    expect(refusalOf(() => cutKeyhole(once, { piece: 'back', below: 200, depth: 50, width: 20 })).code).toBe(
      'edge-in-two-parts',
    );
  });
});
