import {
  cuttingLine,
  type Edge,
  type OutlinePart,
  type Path,
  type Piece,
  type Segment,
} from '@paperhinge/geometry';
import {
  endTangent,
  nearestOnPath,
  reversedPath,
  startTangent,
  transformedPath,
} from '@paperhinge/geometry/paths';
import { selfCrossings, signedArea } from '@paperhinge/geometry/regions';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sampled } from './independent.js';
import { at, edge, pieceOf, straightEdge } from './pieces.js';

/** The left half of a front seen from within, its fold on the line x = 0, from the hem up to the neck. */
const half = (neck: Segment, hem: Segment, allowance: number, hemDepth = 20): Piece => {
  const neckEnd = neck.at(-1)!,
    hemStart = hem[0],
    hemEnd = hem.at(-1)!;
  return pieceOf([
    edge('neck', [neck], { allowance }),
    straightEdge('shoulder', neckEnd, at(190, 40), { allowance }),
    straightEdge('side', at(190, 40), hemStart, { allowance }),
    edge('hem', [hem], { kind: 'hem', allowance: hemDepth, start: 'mitre' }),
    straightEdge('centre', hemEnd, neck[0], { kind: 'fold' }),
  ]);
};

/** The same piece opened out. */
function openedOut(piece: Piece): Piece {
  const isEdge = (part: OutlinePart): part is Edge => part.type === 'edge' && part.kind !== 'fold';
  const edges = piece.outline.parts.filter(isEdge);
  const mirrored = edges.map((own): Edge => {
    const { start, end } = own.corners;
    const corners = { ...(end && { start: end }), ...(start && { end: start }) };
    const path = reversedPath(transformedPath(own.path, { a: -1, b: 0, c: 0, d: 1, e: 0, f: 0 }));
    return { ...own, name: `${own.name} left`, path, corners };
  });
  return pieceOf([...edges, ...mirrored.reverse()]);
}

const straightNeck = (width: number, depth: number): Segment => [at(0, depth), at(width, 0)];
const levelHem: Segment = [at(210, 400), at(0, 400)];
const heightOnFold = (path: Path): number =>
  Math.min(...sampled(path, 4).flatMap(({ point: { x, y } }) => (Math.abs(x) <= 1e-6 ? [y] : [])));

describe('a V at the fold', () => {
  test.each([5, 10, 15, 20, 23, 24, 30, 45, 60, 80])(
    'of %d degrees to the fold is met at allowance / sin above its point',
    degrees => {
      const angle = (degrees * Math.PI) / 180,
        allowance = 7;
      const depth = Math.min(300, 60 / Math.tan(angle));
      const piece = half(straightNeck(depth * Math.tan(angle), depth), levelHem, allowance);
      const { path, findings, snips } = cuttingLine(piece);
      expect(findings).toEqual([]);
      expect(heightOnFold(path)).toBeCloseTo(depth - allowance / Math.sin(angle), 6);
      expect(snips).toHaveLength(1);
      expect(snips[0]!.segments[0]!.at(-1)).toEqual(at(0, depth));
    },
  );

  test('narrower than its allowances have room for is cut across, and never beyond the fold', () => {
    const piece = half(straightNeck(9, 120), levelHem, 12);
    const { path, findings, snips } = cuttingLine(piece);
    // It is slashed down the fold, from where the line comes to it to the point of the V, as drawn or in a mirror.
    const image = { a: -1, b: 0, c: 0, d: 1, e: 0, f: 0 };
    const parts = (piece.outline.parts as readonly Edge[])
      .map((own): Edge => ({ ...own, path: reversedPath(transformedPath(own.path, image)), corners: {} }))
      .reverse();
    for (const cut of [snips, cuttingLine({ ...piece, outline: { parts } }).snips]) {
      expect(cut).toHaveLength(1);
      const [from, to] = cut[0]!.segments[0]!;
      expect(from.x).toBeCloseTo(0, 9);
      expect(from.y).toBeCloseTo(heightOnFold(path), 6);
      expect(to).toEqual({ x: expect.closeTo(0, 9), y: 120 });
    }
    expect(Math.min(...sampled(path, 8).map(({ point }) => point.x))).toBeGreaterThan(-1e-6);
    expect(selfCrossings(path)).toEqual([]);
    expect(findings.map(f => f.code)).not.toContain('cutting-line-not-simple');
  });
});

describe('a point at the fold', () => {
  const tip = (degrees: number) => {
    const drop = 210 / Math.tan((degrees * Math.PI) / 180);
    return half([at(0, 80), at(40, 80), at(80, 40), at(80, 0)], [at(210, 400), at(0, 400 + drop)], 10, 20);
  };
  test('is run on to the fold as far as a mitre goes', () => {
    const { path } = cuttingLine(tip(40));
    const bottom = Math.max(...sampled(path, 4).map(({ point }) => point.y));
    const drop = 210 / Math.tan((40 * Math.PI) / 180);
    expect(bottom).toBeCloseTo(400 + drop + 20 / Math.sin((40 * Math.PI) / 180), 6);
  });
  test('past the limit of a mitre is cut square to the fold', () => {
    const { path } = cuttingLine(tip(12));
    const bottom = 400 + 210 / Math.tan((12 * Math.PI) / 180) + 2.5 * 20;
    const low = sampled(path, 4).filter(({ point }) => point.y > bottom - 1e-6);
    expect(Math.max(...low.map(({ point }) => point.y))).toBeCloseTo(bottom, 6);
    expect(Math.min(...low.map(({ point }) => point.x))).toBeCloseTo(0, 6);
    // The hem leaves the fold by 12 degrees: uncut, its line would come to it 20 / sin 12° below.
    const tipped = (20 / Math.sin((12 * Math.PI) / 180) - 2.5 * 20) * Math.tan((12 * Math.PI) / 180);
    expect(Math.max(...low.map(({ point }) => point.x))).toBeCloseTo(tipped, 6);
  });
});

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anyHalf = fc
  .record({
    width: within(12, 120),
    depth: within(30, 300),
    neck: fc.option(fc.tuple(within(0, 1), within(0.2, 1), within(0.3, 1), within(0, 0.8))),
    drop: within(-200, 400),
    hem: fc.option(fc.tuple(within(0.5, 1), within(-0.2, 1), within(0, 0.5), within(0.2, 1.2))),
    allowance: fc.constantFrom(0, 6.35, 7, 10, 15),
  })
  .map(({ width, depth, neck, drop, hem, allowance }) => {
    const neckline: Segment = neck
      ? [
          at(0, depth),
          at(width * neck[0], depth * neck[1]),
          at(width * neck[2], depth * neck[3]),
          at(width, 0),
        ]
      : straightNeck(width, depth);
    const end = Math.max(depth + 60, 400 + drop);
    const y = (k: number) => 400 + (end - 400) * k;
    const hemline: Segment = hem
      ? [at(210, 400), at(210 * hem[0], y(hem[1])), at(210 * hem[2], y(hem[3])), at(0, end)]
      : [at(210, 400), at(0, end)];
    return half(neckline, hemline, allowance);
  })
  .filter(meetsTheFoldClearly);

/** Whether neck and hem leave the fold at 5 degrees or more. */
function meetsTheFoldClearly({ outline }: Piece): boolean {
  const [neck, , , hem] = outline.parts as readonly Edge[];
  return [startTangent(neck!.path), endTangent(hem!.path)].every(
    ({ x }) => Math.abs(x) > Math.sin(Math.PI / 36),
  );
}

test('the drawn half equals the piece opened out', () => {
  fc.assert(
    fc.property(anyHalf, piece => {
      const drawn = cuttingLine(piece),
        whole = cuttingLine(openedOut(piece));
      fc.pre(!whole.findings.some(f => f.severity === 'fault'));
      expect(selfCrossings(drawn.path)).toEqual([]);
      for (const { point } of sampled(drawn.path, 6)) {
        expect(point.x).toBeGreaterThan(-1e-6);
        if (point.x > 0.01) expect(nearestOnPath(whole.path, point).distance).toBeLessThan(0.01);
      }
      for (const { point } of sampled(whole.path, 6))
        if (point.x > 0.01) expect(nearestOnPath(drawn.path, point).distance).toBeLessThan(0.01);
      expect(Math.abs(2 * signedArea(drawn.path) - signedArea(whole.path))).toBeLessThan(5);
    }),
    { numRuns: 200 },
  );
});
