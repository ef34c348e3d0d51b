import { readFileSync } from 'node:fs';
import {
  blendSizes,
  edgeNames,
  edgePath,
  levelGirths,
  type Pattern,
  type Piece,
  pathLength,
  pathOf,
  pieceNamed,
  readPattern,
  walkSeams,
} from '@paperhinge/geometry';
import {
  endTangent,
  nearestOnPath,
  pathEnd,
  pathStart,
  pointAlong,
  startTangent,
  transformedPath,
} from '@paperhinge/geometry/paths';
import { outlinePath, sizeDifferences } from '@paperhinge/geometry/pattern';
import { type Affine, apply, cross, distance } from '@paperhinge/geometry/plane';
import { signedArea } from '@paperhinge/geometry/regions';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { refusalOf, toldFinding } from '../../support/told.js';

const shift: Pattern = {
  ...readPattern(readFileSync('demos/patterns/woven-shift.svg')).pattern,
  size: '12',
};

/** The pattern with every point of every piece moved by a map; sizes of one another where it is near to one. */
const mapped = (pattern: Pattern, map: Affine, size: string): Pattern => ({
  ...pattern,
  size,
  pieces: pattern.pieces.map(
    (piece): Piece => ({
      ...piece,
      notches: piece.notches.map(notch => ({
        ...notch,
        at:
          (notch.at / pathLength(edgePath(piece, notch.edge))) *
          pathLength(transformedPath(edgePath(piece, notch.edge), map)),
      })),
      outline: {
        parts: piece.outline.parts.map(part =>
          part.type === 'edge'
            ? { ...part, path: transformedPath(part.path, map) }
            : part.type === 'dart'
              ? {
                  ...part,
                  legs: [transformedPath(part.legs[0], map), transformedPath(part.legs[1], map)] as const,
                  apex: apply(map, part.apex),
                }
              : { ...part, mouth: transformedPath(part.mouth, map) },
        ),
      },
      lines: piece.lines.map(line => ({ ...line, path: transformedPath(line.path, map) })),
      marks: piece.marks.map(mark => ({ ...mark, at: apply(map, mark.at) })),
    }),
  ),
});
const grown = (k: number, size = '14', e = 0, f = 0): Pattern =>
  mapped(shift, { a: k, b: 0, c: 0, d: k, e, f }, size);
/** Wider by a tenth, as long as before. */
const wider = mapped(shift, { a: 1.1, b: 0, c: 0, d: 1, e: 0, f: 0 }, '14');

const everyEdge = (pattern: Pattern) =>
  pattern.pieces.flatMap(piece => edgeNames(piece).map(edge => [piece, edge] as const));

describe('everywhere alike', () => {
  test('at 0 and at 1 the sizes themselves', () => {
    expect(blendSizes(shift, wider, 0)).toBe(shift);
    expect(blendSizes(shift, wider, 1)).toBe(wider);
  });

  // Closed form: between a pattern and its enlargement lies the enlargement by the share.
  test('between a pattern and its enlargement lies an enlargement', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        fc.double({ min: 0.9, max: 1.15, noNaN: true }),
        fc.integer({ min: -500, max: 500 }),
        (share, k, move) => {
          const blend = blendSizes(shift, grown(k, '14', move, -move), share);
          const factor = 1 + share * (k - 1);
          for (const [piece, edge] of everyEdge(shift)) {
            const length = pathLength(edgePath(pieceNamed(blend, piece.name), edge));
            expect(Math.abs(length - factor * pathLength(edgePath(piece, edge)))).toBeLessThan(0.02);
          }
          for (const piece of shift.pieces) {
            const area = signedArea(outlinePath(pieceNamed(blend, piece.name).outline));
            expect(area / (factor * factor * signedArea(outlinePath(piece.outline)))).toBeCloseTo(1, 4);
          }
        },
      ),
      { numRuns: 12 },
    );
  });

  test('where the larger size lies on the page, and how it is turned, does not matter', () => {
    const turned = mapped(wider, { a: 0, b: 1, c: -1, d: 0, e: 3000, f: 40 }, '14');
    const [here, there] = [wider, turned].map(b => blendSizes(shift, b, 0.3));
    for (const [piece, edge] of everyEdge(shift)) {
      const [p, q] = [here!, there!].map(pattern => edgePath(pieceNamed(pattern, piece.name), edge));
      expect(distance(pathEnd(p!), pathEnd(q!)), `${piece.name}.${edge}`).toBeLessThan(1e-6);
    }
  });

  test('seams that match in both sizes match between them', () => {
    const matching = (pattern: Pattern) =>
      walkSeams(pattern)
        .filter(walk => walk.matches)
        .map(walk => walk.seam);
    const both = matching(shift).filter(seam => matching(wider).includes(seam));
    expect(both.length).toBeGreaterThan(2);
    expect(matching(blendSizes(shift, wider, 0.5))).toEqual(expect.arrayContaining([...both]));
  });

  test('notches keep their share of their edge, straight edges stay straight, allowances lie between', () => {
    const front = pieceNamed(shift, 'front');
    const deeper = {
      ...wider,
      pieces: wider.pieces.map(piece => ({
        ...piece,
        outline: {
          parts: piece.outline.parts.map(part =>
            part.type === 'edge' && part.kind === 'hem' ? { ...part, allowance: 2 * part.allowance } : part,
          ),
        },
      })),
    };
    const blend = pieceNamed(blendSizes(shift, deeper, 0.25), 'front');
    const share = (piece: Piece, i: number) =>
      piece.notches[i]!.at / pathLength(edgePath(piece, piece.notches[i]!.edge));
    const sorted = blend.notches.map(notch =>
      front.notches.findIndex(n => n.edge === notch.edge && n.style === notch.style),
    );
    for (const [i, j] of sorted.entries()) expect(share(blend, i)).toBeCloseTo(share(front, j), 3);
    const hem = (piece: Piece) => piece.outline.parts.find(p => p.type === 'edge' && p.kind === 'hem');
    expect((hem(blend) as { allowance: number }).allowance).toBeCloseTo(25.4 * 1.25, 9);
    expect(edgePath(blend, 'centre-front').segments).toHaveLength(1);
  });
});

describe('level by level', () => {
  const levels = (bust: number, hip: number) =>
    blendSizes(shift, wider, [
      { level: 'bust', share: bust },
      { level: 'hip', share: hip },
    ]);
  const girth = (pattern: Pattern, level: string): number => levelGirths(pattern)[level]!;

  test('a 12 at the bust and a 14 at the hip', () => {
    const blend = levels(0, 1);
    // Places of one share of an edge lie at heights a little unlike in the two sizes: a tenth of a millimetre of 1100.
    expect(Math.abs(girth(blend, 'bust') - girth(shift, 'bust'))).toBeLessThan(0.1);
    expect(Math.abs(girth(blend, 'hip') - girth(wider, 'hip'))).toBeLessThan(0.1);
    const waist = girth(blend, 'waist');
    expect(waist).toBeGreaterThan(girth(shift, 'waist') + 1);
    expect(waist).toBeLessThan(girth(wider, 'waist') - 1);
    expect(blend.size).toBe('12…14');
  });

  test('the same share at every level is that share everywhere', () => {
    const [byLevel, everywhere] = [levels(0.4, 0.4), blendSizes(shift, wider, 0.4)];
    for (const [piece, edge] of everyEdge(shift))
      expect(
        Math.abs(
          pathLength(edgePath(pieceNamed(byLevel, piece.name), edge)) -
            pathLength(edgePath(pieceNamed(everywhere, piece.name), edge)),
        ),
      ).toBeLessThan(0.01);
  });

  test('is fair: the sides keep one tangent throughout, and the fold stays straight', () => {
    const blend = levels(0, 1);
    for (const [name, edge] of [
      ['front', 'side-lower'],
      ['back', 'side'],
    ] as const) {
      const { segments } = edgePath(pieceNamed(blend, name), edge);
      for (const [i, segment] of segments.entries())
        if (i > 0)
          expect(
            Math.abs(cross(endTangent(pathOf(segments[i - 1]!)), startTangent(pathOf(segment)))),
          ).toBeLessThan(1e-3);
    }
    const fold = edgePath(pieceNamed(blend, 'front'), 'centre-front');
    expect(Math.abs(pathStart(fold).x - pathEnd(fold).x)).toBeLessThan(1e-6);
  });

  test('every place lies between the two sizes, at the share of its height', () => {
    // Independent: the side of the wider size lies a tenth farther out, at every height alike.
    const blend = levels(0, 1);
    const [a, c] = [shift, blend].map(pattern => edgePath(pieceNamed(pattern, 'back'), 'side'));
    for (let i = 1; i < 20; i++) {
      const p = pointAlong(c!, (pathLength(c!) * i) / 20);
      const { point } = nearestOnPath(a!, p);
      const out = p.x - point.x;
      expect(out).toBeGreaterThan(-0.05);
      expect(out).toBeLessThan(
        0.1 * (p.x - pathStart(edgePath(pieceNamed(shift, 'back'), 'centre-back')).x) + 0.05,
      );
    }
  });
});

describe('what is refused', () => {
  test('sizes that are not one pattern, with what differs', () => {
    const [front, ...others] = wider.pieces;
    const without = { ...wider, pieces: [{ ...front!, lines: front!.lines.slice(1) }, ...others] };
    expect(sizeDifferences(shift, wider)).toEqual([]);
    expect(sizeDifferences(shift, without).map(found => toldFinding(found).message)).toEqual([
      'The sizes 12 and 14 differ in more than their lengths: the lines of the front are not the same.',
    ]);
    expect(refusalOf(() => blendSizes(shift, without, 0.5))).toMatchObject({
      code: 'sizes-differ',
      where: { piece: 'front' },
      remedy: expect.stringContaining('same names'),
    });
    expect(sizeDifferences(shift, { ...wider, pieces: others }).map(found => found.about?.part)).toEqual([
      'pieces',
    ]);
    expect(sizeDifferences(shift, { ...wider, seams: [] }).map(found => found.about?.part)).toEqual([
      'seams',
    ]);
  });

  test.each([-0.1, 1.1, Number.NaN])('a share of %s', share => {
    expect(refusalOf(() => blendSizes(shift, wider, share)).code).toBe('share-out-of-range');
    expect(refusalOf(() => blendSizes(shift, wider, [{ level: 'bust', share }])).code).toBe(
      'share-out-of-range',
    );
  });

  test('a level that no piece has, and no level at all', () => {
    expect(refusalOf(() => blendSizes(shift, wider, [{ level: 'hips', share: 1 }]))).toMatchObject({
      code: 'unknown-level',
      remedy: 'Did you mean "hip"?',
    });
    expect(refusalOf(() => blendSizes(shift, wider, [])).code).toBe('share-out-of-range');
  });
});
