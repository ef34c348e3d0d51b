import {
  checkPattern,
  type Path,
  type Pattern,
  type Piece,
  type Point,
  type Saying,
} from '@paperhinge/geometry';
import { describe, expect, test } from 'vitest';
import { foundRun } from './found.js';

const pieceOf = (pattern: Pattern, name: string): Piece => pattern.pieces.find(p => p.name === name)!;
const pathsOf = (piece: Piece, edge: string): readonly Path[] =>
  piece.outline.parts.flatMap(part => (part.type === 'edge' && part.name === edge ? [part.path] : []));

// Measured by hand, point by point: none of the project's own measuring.
function pointOn(segment: Path['segments'][number], t: number): Point {
  const [a, b, c, d] = segment as readonly Point[];
  const mix = (p: Point, q: Point): Point => ({ x: p.x + (q.x - p.x) * t, y: p.y + (q.y - p.y) * t });
  if (c === undefined || d === undefined) return mix(a!, b!);
  const ab = mix(a!, b!),
    bc = mix(b!, c),
    cd = mix(c, d);
  return mix(mix(ab, bc), mix(bc, cd));
}
const pointsOf = (path: Path): readonly Point[] =>
  path.segments.flatMap((segment, s) =>
    Array.from({ length: 300 }, (_, i) => pointOn(segment, i / 300)).concat(
      s === path.segments.length - 1 ? [pointOn(segment, 1)] : [],
    ),
  );
function toSide(p: Point, a: Point, b: Point): number {
  const dx = b.x - a.x,
    dy = b.y - a.y;
  const square = dx * dx + dy * dy;
  const t = square === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / square));
  return Math.hypot(p.x - a.x - dx * t, p.y - a.y - dy * t);
}
const farthest = (points: readonly Point[], polygon: readonly Point[]): number =>
  points.reduce((most, p) => {
    let nearest = Number.POSITIVE_INFINITY;
    for (let i = 1; i < polygon.length; i++)
      nearest = Math.min(nearest, toSide(p, polygon[i - 1]!, polygon[i]!));
    return Math.max(most, nearest);
  }, 0);
const apart = (a: Path, b: Path): number =>
  Math.max(farthest(pointsOf(a), pointsOf(b)), farthest(pointsOf(b), pointsOf(a)));
const lengthOf = (path: Path): number =>
  pointsOf(path).reduce(
    (sum, p, i, all) => (i === 0 ? 0 : sum + Math.hypot(p.x - all[i - 1]!.x, p.y - all[i - 1]!.y)),
    0,
  );

interface Moved {
  readonly facts: {
    readonly edge: { readonly piece: string; readonly edge: string };
    readonly movedMm: number;
  };
}

describe.each([
  ['hem-step-then-true', ['skirt.hem']],
  ['overlap-then-true', ['skirt.hem', 'skirt.waist-side']],
  ['shoulder-then-true', ['front.shoulder']],
  ['shoulder-then-true-2', ['front.shoulder', 'front.armhole']],
  ['true-moved-figure', ['sleeve.cap', 'sleeve.hem']],
  ['true-moved-figure-2', ['leg.crotch', 'leg.outseam']],
] as const)('%s', (name, edges) => {
  const run = foundRun(name);
  const before = foundRun(name, run.steps.length - 1).altered;

  test('no step and no kink is left, and none is taken to be meant', () => {
    expect(run.steps.at(-1)!.findings.map(f => f.code)).not.toContain('truing-left');
    const broken = checkPattern(run.altered).filter(
      f =>
        ['edge-stepped', 'edge-kinked'].includes(f.code) &&
        edges.includes(`${f.where.piece}.${f.where.edge}` as never),
    );
    expect(broken).toEqual([]);
  });

  test('how far each edge moved is the greatest distance between the two lines', () => {
    const { did } = run.steps.at(-1)!;
    const told = (did as Saying).facts.edges as unknown as readonly Moved[];
    expect(told).toHaveLength(edges.length);
    for (const { facts } of told) {
      const { piece, edge } = facts.edge;
      const old = pathsOf(pieceOf(before, piece), edge),
        fresh = pathsOf(pieceOf(run.altered, piece), edge);
      const most = Math.max(...old.map((path, i) => apart(path, fresh[i]!)));
      expect(Math.abs(facts.movedMm - most), edge).toBeLessThan(0.05);
    }
  });
});

test('a large step is left with the limit that would do, and the whole sheet is done', () => {
  const run = foundRun('true-after-take-in-and-spread');
  const left = run.steps.at(-1)!.findings.filter(f => f.code === 'truing-left');
  expect(left).toHaveLength(1);
  expect(left[0]!.about).toMatchObject({ what: 'step' });
  expect(left[0]!.figures!.needMm).toBeGreaterThan(2);
});

test('let-out-after-lengthen: no segment without length, and the seam is let out', () => {
  const { altered } = foundRun('let-out-after-lengthen');
  for (const piece of altered.pieces)
    for (const part of piece.outline.parts)
      if (part.type === 'edge')
        for (const segment of part.path.segments)
          expect(lengthOf({ segments: [segment] })).toBeGreaterThan(1e-3);
});

test('take-in-from-to: the full amount at the waist, nothing at the second place and beyond', () => {
  const run = foundRun('take-in-from-to');
  const [was, now] = [run.before, run.altered].map(p => pathsOf(pieceOf(p, 'front'), 'side')[0]!);
  const old = pointsOf(was!);
  const off = pointsOf(now!).map(p => farthest([p], old));
  // 30 mm over four edges; the side seam runs from the waist down, or up to it.
  const [atWaist, atHem] = off[0]! > off.at(-1)! ? [off[0]!, off.at(-1)!] : [off.at(-1)!, off[0]!];
  expect(atWaist).toBeGreaterThan(7);
  expect(atWaist).toBeLessThan(9);
  expect(atHem).toBeLessThan(1e-6);
});

test('lengthen-through-slanted-dart: the legs run to the moved point, and can be sewn together', () => {
  const { altered, before } = foundRun('lengthen-through-slanted-dart');
  const dartIn = (pattern: Pattern) => {
    const found = pieceOf(pattern, 'front').outline.parts.find(p => p.type === 'dart');
    if (found?.type !== 'dart') throw new Error('no dart');
    return found;
  };
  const [was, now] = [dartIn(before), dartIn(altered)];
  const legs = now.legs.map(lengthOf);
  expect(Math.abs(legs[0]! - legs[1]!)).toBeLessThan(1.001);
  expect(legs[0]! - lengthOf(was.legs[0])).toBeGreaterThan(20);
});

test('drawn-neck-loses-shoulder: the edge that went is told', () => {
  const { findings } = foundRun('drawn-neck-loses-shoulder');
  expect(findings.filter(f => f.code === 'edge-cut-away').map(f => JSON.stringify(f.where))).toEqual([
    expect.stringContaining('shoulder'),
  ]);
});

test('shoulders-recut-unequal: what is told says how long to leave the other', () => {
  const run = foundRun('shoulders-recut-unequal');
  const cut = run.steps[0]!.findings.find(f => f.code === 'shoulder-cut')!;
  const own = pathsOf(pieceOf(foundRun('shoulders-recut-unequal', 1).altered, 'front'), 'shoulder').reduce(
    (sum, p) => sum + lengthOf(p),
    0,
  );
  expect(cut.figures!.shoulderMm).toBeCloseTo(own, 2);
});
