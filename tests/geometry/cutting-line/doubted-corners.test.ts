import type { Edge, OutlinePart, Piece } from '@paperhinge/geometry';
import { cuttingLine } from '@paperhinge/geometry';
import { stitchingLine } from '@paperhinge/geometry/cutting-line';
import { reversedPath, transformedPath } from '@paperhinge/geometry/paths';
import { describe, expect, test } from 'vitest';
import { cutOf } from './cut-of.js';
import { distanceTo, edgesOf, sampled } from './independent.js';
import { arc, at, edge, pieceOf, polygon, straightEdge } from './pieces.js';

// Whether an edge's last stretch is its own or its corner's shape, where looks do not tell: the cutting line does.

const back = (parts: readonly OutlinePart[]) => stitchingLine(parts, e => e.allowance);
const asDrawn = (parts: readonly OutlinePart[]): readonly OutlinePart[] => parts;
/** An outline turned over: what was an edge's end is its start. */
const turnedOver = (parts: readonly OutlinePart[]): readonly Edge[] =>
  (parts as readonly Edge[])
    .map(part => {
      const { start, end } = part.corners;
      const path = reversedPath(transformedPath(part.path, { a: -1, b: 0, c: 0, d: 1, e: 0, f: 0 }));
      return { ...part, path, corners: { ...(end && { start: end }), ...(start && { end: start }) } };
    })
    .reverse();
const bothWays = [
  ['as drawn', asDrawn],
  ['turned over', turnedOver],
] as const;

function expectBack(parts: readonly OutlinePart[], piece: Piece, within = 1e-6): void {
  for (const { name, path } of edgesOf(piece)) {
    const own = (parts as readonly Edge[]).find(p => p.name === name)!.path;
    const apart = (one: typeof path, other: typeof path): number =>
      Math.max(...sampled(one, 3).map(s => distanceTo(other, s.point).distance));
    expect(Math.max(apart(own, path), apart(path, own))).toBeLessThan(within);
  }
}

describe.each(bothWays)('%s', (_, turn) => {
  /** A corner of so many degrees between two edges of a piece with three more. */
  const cornered = (degrees: number, specs: readonly Parameters<typeof edge>[2][]): Piece => {
    const angle = (degrees * Math.PI) / 180;
    const far = at(150 * -Math.cos(angle), 150 * Math.sin(angle));
    const corners = [at(-200, 0), at(0, 0), far, at(far.x - 100, far.y + 120), at(-260, 200)];
    return pieceOf(turn(polygon(corners, i => specs[i] ?? {}).outline.parts));
  };
  /** It comes back as it was, and its ends are known for what they are. */
  const expectKnown = (piece: Piece): void => {
    const { parts, findings } = back(cutOf(piece));
    expect(findings.map(f => f.code)).toEqual(findings.map(() => 'corner-tail-dropped'));
    expectBack(parts, piece);
  };
  // Mirrored in a corner of 12 degrees, the end of an allowance is far longer than the short stretches that corners leave.
  test.each([
    ['hem', 'seam', 5, 0],
    ['hem', 'seam', 10, 0],
    // The longest stretch of the edge lies beyond another corner: it is not the one to go.
    ['hem', 'seam', 5, 5],
    ['hem', 'seam', 15, 15],
    ['seam', 'hem', 5, 5],
    ['seam', 'hem', 25, 25],
    ['seam', 'hem', 5, 10],
    ['seam', 'hem', 5, 15],
    ['seam', 'hem', 5, 25],
    ['seam', 'hem', 10, 25],
  ] as const)(
    'a %s and a %s at a corner of 12°, %d and %d mm, come back as they were',
    (first, second, a, b) => {
      expectKnown(
        cornered(12, [
          { kind: first, allowance: a },
          { kind: second, allowance: b },
        ]),
      );
    },
  );

  // Without the step the edge and its neighbour are parallel, and meet nowhere: nothing is as likely.
  test.each([4, 15, 30])(
    'a step of %d mm to a line that runs on beside it is its own, and is not doubted',
    step => {
      const tip = at(step / 2, -step * Math.sin(Math.PI / 3));
      const far = at(tip.x + 200, tip.y);
      const piece = pieceOf(
        turn([
          edge('stepped', [
            [at(-300, 0), at(0, 0)],
            [at(0, 0), tip],
          ]),
          straightEdge('beside', tip, far),
          straightEdge('right', far, at(far.x, 400)),
          straightEdge('foot', at(far.x, 400), at(-300, 400)),
          straightEdge('left', at(-300, 400), at(-300, 0)),
        ]),
      );
      expectKnown(piece);
    },
  );

  // Two may cross a corner's line at one place: an end is told by what it is the mirror image of.
  test.each([45, 75, 105, 120, 150])(
    'whatever is turned up or pressed open at a corner of %d° comes back',
    degrees => {
      let count = 0;
      for (const [first, second] of [
        [{ kind: 'hem' }, {}],
        [{}, { kind: 'hem' }],
        [{ end: 'pressed-open' }, {}],
        [{}, { start: 'pressed-open' }],
      ] as const)
        for (const a of [5, 15, 25])
          for (const b of [0, 5, 10, 25]) {
            const piece = cornered(degrees, [
              { ...first, allowance: a },
              { ...second, allowance: b },
            ]);
            if (cuttingLine(piece).findings.some(f => f.severity !== 'note')) continue;
            count++;
            expectKnown(piece);
          }
      expect(count).toBeGreaterThan(40);
    },
  );

  // Moved in by as much as the hem, the slant is 45° from both: it loses tan 22.5° of that at the hem, and at the side
  // as much as the hem's allowance is narrower than the side's, times √2; wider, it gains. Longer than drawn it has no place.
  test.each([
    [20, true],
    [25, false],
  ])(
    'a hem of %d mm cut off slantwise at its corner is told, for no allowance is cut so: kept, %s',
    (allowance, kept) => {
      const parts = turn([
        straightEdge('top', at(0, 0), at(200, 0)),
        straightEdge('right', at(200, 0), at(200, 300)),
        edge(
          'hem',
          [
            [at(200, 300), at(30, 300)],
            [at(30, 300), at(0, 270)],
          ],
          { kind: 'hem', allowance },
        ),
        straightEdge('left', at(0, 270), at(0, 0)),
      ]);
      expect(back(parts).findings.filter(f => f.severity !== 'note')).toMatchObject([
        {
          severity: 'warning',
          code: 'corner-doubted',
          where: { edge: 'hem' },
          figures: { lengthMm: expect.closeTo(30 * Math.SQRT2, 6) },
          about: { edge: { edge: 'hem' }, next: { edge: 'left' }, kept },
        },
      ]);
    },
  );

  test('a corner cut off that is all but gone once moved in is left out, and told', () => {
    // Cut off at 45 degrees, 10 mm within, a stretch is shorter by 20 tan 22.5°: of 8 mm nothing is left.
    const slant = 8 * Math.SQRT1_2;
    const parts = turn([
      edge('top', [
        [at(0, 0), at(200, 0)],
        [at(200, 0), at(200 + slant, slant)],
      ]),
      straightEdge('right', at(200 + slant, slant), at(200 + slant, 300)),
      straightEdge('foot', at(200 + slant, 300), at(0, 300)),
      straightEdge('left', at(0, 300), at(0, 0)),
    ]);
    const { findings } = back(parts);
    expect(findings.map(f => [f.severity, f.code, f.figures!.lengthMm])).toEqual([
      ['note', 'corner-tail-dropped', expect.closeTo(8, 6)],
      ['warning', 'corner-doubted', expect.closeTo(8, 6)],
    ]);
    expect(findings[1]!.about).toEqual({ edge: { edge: 'top' }, next: { edge: 'right' }, kept: false });
  });

  // A step down that ends as far from its neighbour as their allowances differ: moved out, it lies in the neighbour's
  // line, and of what comes after it nothing is left. The whole has the cutting line of a plain rectangle.
  describe.each([
    [2, 15, 10],
    [6, 25, 10],
    [9, 25, 20],
    [12, 18, 15],
  ] as const)('a step of %d mm under %d mm, beside a neighbour of %d mm', (step, wider, narrower) => {
    const stepAt = (x: number): Piece =>
      pieceOf(
        turn([
          edge(
            'top',
            [
              [at(0, 0), at(x, 0)],
              [at(x, 0), at(x, step)],
              [at(x, step), at(200, step)],
            ],
            { allowance: wider },
          ),
          straightEdge('right', at(200, step), at(200, 300), { allowance: narrower }),
          straightEdge('foot', at(200, 300), at(0, 300), { allowance: narrower }),
          straightEdge('left', at(0, 300), at(0, 0), { allowance: narrower }),
        ]),
      );

    test('that is cut as if it were none is told', () => {
      const piece = stepAt(200 - (wider - narrower));
      // The oracle: the cutting line of the rectangle from the step's foot up to the level of the top, in closed form.
      const [left, right, top, foot] = [-narrower, 200 + narrower, -wider, 300 + narrower];
      const drawn = turn(
        polygon([at(left, top), at(right, top), at(right, foot), at(left, foot)]).outline.parts,
      );
      const rectangle = { segments: (drawn as readonly Edge[]).flatMap(e => e.path.segments) };
      const { path } = cuttingLine(piece);
      for (const { point } of sampled(path, 3))
        expect(distanceTo(rectangle, point).distance).toBeLessThan(1e-6);
      const { findings } = back(cutOf(piece));
      expect(findings).toMatchObject([
        { severity: 'note', code: 'corner-tail-dropped' },
        {
          severity: 'warning',
          code: 'corner-doubted',
          where: { edge: 'top' },
          about: { edge: { edge: 'top' }, next: { edge: 'right' }, kept: false },
        },
      ]);
      // From the level of the allowance the two are cut in one line, which has the name of either: down to that of the
      // step's foot, or to where the allowance of what lies beyond it would be.
      const { lengthMm } = findings[1]!.figures!;
      expect(Math.min(...[step, wider + step].map(mm => Math.abs(mm - lengthMm!)))).toBeLessThan(1e-6);
    });

    test('farther in it is seen, and comes back undoubted', () => {
      const piece = stepAt(100);
      const { parts, findings } = back(cutOf(piece));
      expect(findings).toEqual([]);
      expectBack(parts, piece);
    });
  });

  test('an end that bends off by less than can be seen is left out, and nothing is doubted', () => {
    const piece = pieceOf(
      turn([
        edge('top', [
          [at(0, 0), at(200, 0)],
          [at(200, 0), at(206, 0.02)],
        ]),
        straightEdge('right', at(206, 0.02), at(206, 300)),
        straightEdge('foot', at(206, 300), at(0, 300)),
        straightEdge('left', at(0, 300), at(0, 0)),
      ]),
    );
    const { parts, findings } = back(cutOf(piece));
    expect(findings.map(f => [f.severity, f.code])).toEqual([['note', 'corner-tail-dropped']]);
    expectBack(parts, piece, 0.03);
  });

  // A curve that arrives straight down at a step of 30 mm, beyond which the side goes on down.
  test('what is told for a guess is not doubted as well', () => {
    const degrees = (Math.asin(100 / 300) * 180) / Math.PI;
    const curve = arc(at(400, 100), 300, 180 + degrees, 180);
    const parts = turn([
      straightEdge('top', at(0, 0), curve[0]![0]),
      edge('curve', curve),
      edge('side', [
        [at(100, 100), at(130, 100)],
        [at(130, 100), at(130, 350)],
      ]),
      straightEdge('foot', at(130, 350), at(0, 350)),
      straightEdge('left', at(0, 350), at(0, 0)),
    ]);
    expect(back(parts).findings.map(f => f.code)).toEqual(['corner-guessed']);
  });
});
