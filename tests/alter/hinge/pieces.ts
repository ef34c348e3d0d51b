import {
  at,
  type Dart,
  type Edge,
  type EdgeKind,
  edgeNames,
  edgePath,
  line,
  type OutlinePart,
  type Path,
  type Pattern,
  PatternError,
  type Piece,
  type Point,
  pathLength,
  pathOf,
  pieceNamed,
  type Segment,
} from '@paperhinge/geometry';
import type { Cubic } from '@paperhinge/geometry/curves';
import { pathEnd, pathStart, reversedPath, transformedPath } from '@paperhinge/geometry/paths';
import { dartsOf, outlinePath, pathsOfPart } from '@paperhinge/geometry/pattern';
import { add, scale, subtract, unit } from '@paperhinge/geometry/plane';
import { signedArea } from '@paperhinge/geometry/regions';
import fc from 'fast-check';
import { expect } from 'vitest';
import { told } from '../../support/told.js';

export const edge = (name: string, kind: EdgeKind, ...segments: Segment[]): Edge => ({
  type: 'edge',
  name,
  path: { segments },
  kind,
  allowance: kind === 'fold' ? 0 : 10,
  corners: {},
});

export const dart = (name: string, a: Point, apex: Point, b: Point): Dart => ({
  type: 'dart',
  name,
  legs: [pathOf(line(a, apex)), pathOf(line(apex, b))],
  apex,
});

export const patternOf = (...pieces: Piece[]): Pattern => ({
  name: 'test',
  unit: 'mm',
  pieces,
  seams: [],
  fabrics: [],
});

export const pieceOf = (parts: readonly OutlinePart[], rest: Partial<Piece> = {}): Piece => ({
  name: 'block',
  title: 'Block',
  outline: { parts },
  notches: [],
  lines: [{ kind: 'grain', name: 'grain', path: pathOf(line(at(40, 80), at(40, 520))) }],
  marks: [],
  cutting: { count: 1, mirrored: false, fabric: 'main' },
  ...rest,
});

/** w 30, L 120, hem 400 mm below the apex: check-values §7. */
export const mouth = 30;
export const leg = 120;
export const radius = 400;
export const depth = Math.sqrt(leg ** 2 - (mouth / 2) ** 2);

/** A rectangle on the fold with a side dart, its apex at (100, 200), its hem at y = 600. */
export function block(): Piece {
  const x = 100 + depth;
  return pieceOf(
    [
      edge('top', 'seam', line(at(0, 0), at(x, 0))),
      edge('side-upper', 'seam', line(at(x, 0), at(x, 185))),
      dart('bust', at(x, 185), at(100, 200), at(x, 215)),
      edge('side-lower', 'seam', line(at(x, 215), at(x, 600))),
      edge('hem', 'hem', line(at(x, 600), at(0, 600))),
      edge('centre', 'fold', line(at(0, 600), at(0, 0))),
    ],
    { marks: [{ kind: 'point', name: 'bust point', at: at(75, 200) }] },
  );
}

/** Smooth cubic from p along u to q along v. */
const curve = (p: Point, u: Point, q: Point, v: Point): Cubic => {
  const reach = 0.35 * Math.hypot(q.x - p.x, q.y - p.y);
  return [p, add(p, scale(unit(u), reach)), subtract(q, scale(unit(v), reach)), q];
};

/** Random bodices on the fold: curved neck, armhole, side and hem; a side dart; notches, levels and a bust point. */
export const anyBodice: fc.Arbitrary<Piece> = fc
  .record({
    width: fc.double({ min: 200, max: 340, noNaN: true }),
    length: fc.double({ min: 480, max: 1100, noNaN: true }),
    flare: fc.double({ min: -30, max: 120, noNaN: true }),
    neck: fc.double({ min: 60, max: 110, noNaN: true }),
    slope: fc.double({ min: 15, max: 50, noNaN: true }),
    apexShare: fc.double({ min: 0.3, max: 0.55, noNaN: true }),
    apexDown: fc.double({ min: 0.2, max: 0.8, noNaN: true }),
    mouth: fc.double({ min: 8, max: 60, noNaN: true }),
    sweep: fc.double({ min: 0, max: 25, noNaN: true }),
  })
  .map(m => {
    const neckPoint = at(m.neck, -40);
    const shoulderPoint = at(m.neck + 0.5 * (m.width - m.neck), -40 + m.slope);
    const underarm = at(m.width, 190);
    const apex = at(m.width * m.apexShare, 230 + 60 * m.apexDown);
    const half = m.mouth / 2;
    const a = at(m.width, 270 - half);
    // The second leg is as long as the first, turned about the apex.
    const reach = Math.hypot(a.x - apex.x, a.y - apex.y);
    const turn = Math.atan2(a.y - apex.y, a.x - apex.x) + 2 * Math.asin(half / reach);
    const b = add(apex, at(reach * Math.cos(turn), reach * Math.sin(turn)));
    const hemSide = at(m.width + m.flare, m.length - m.sweep);
    return pieceOf(
      [
        edge('neck', 'seam', curve(at(0, 60), at(1, 0), neckPoint, at(0.3, -1))),
        edge('shoulder', 'seam', line(neckPoint, shoulderPoint)),
        edge('armhole', 'seam', curve(shoulderPoint, at(-0.2, 1), underarm, at(1, 0.1))),
        edge('side-upper', 'seam', line(underarm, a)),
        dart('bust', a, apex, b),
        edge('side-lower', 'seam', curve(b, at(0, 1), hemSide, at(m.flare, m.length))),
        edge(
          'hem',
          'hem',
          line(hemSide, at(m.width * 0.8, m.length - m.sweep * 0.7)),
          curve(at(m.width * 0.8, m.length - m.sweep * 0.7), at(-1, 0.05), at(0, m.length), at(-1, 0)),
        ),
        edge('centre', 'fold', line(at(0, m.length), at(0, 60))),
      ],
      {
        name: 'block',
        notches: [
          { edge: 'armhole', at: 60, style: 'single' },
          { edge: 'side-lower', at: 40, style: 'double' },
          { edge: 'hem', at: 20, style: 'single' },
        ],
        lines: [
          { kind: 'grain', name: 'grain', path: pathOf(line(at(30, 120), at(30, m.length - 60))) },
          { kind: 'level', name: 'waist', path: pathOf(line(at(0, 420), at(m.width * 0.9, 420))) },
        ],
        marks: [{ kind: 'point', name: 'bust point', at: add(apex, at(-15, 0)) }],
      },
    );
  });

export const areaOf = (piece: Piece): number => signedArea(outlinePath(piece.outline));
export const lengthOf = (piece: Piece, name: string): number => pathLength(edgePath(piece, name));
export const only = (pattern: Pattern): Piece => pieceNamed(pattern, 'block');

/** Every edge but those named is as long as it was, to 1e-9 mm. */
export function expectUntouched(before: Piece, after: Piece, ...touched: string[]): void {
  for (const name of edgeNames(before))
    if (!touched.includes(name))
      expect(Math.abs(lengthOf(after, name) - lengthOf(before, name))).toBeLessThan(1e-9);
}

/** Each part starts exactly where the last ended, and every edge stands in one run or round darts. */
export function expectClosed(piece: Piece): void {
  const { parts } = piece.outline;
  const first = (p: OutlinePart): Path => pathsOfPart(p)[0]!;
  const last = (p: OutlinePart): Path => pathsOfPart(p).at(-1)!;
  for (const [i, part] of parts.entries()) {
    const next = parts[(i + 1) % parts.length]!;
    expect(pathStart(first(next))).toEqual(pathEnd(last(part)));
    expect(part.type === 'edge' && next.type === 'edge' && part.name === next.name).toBe(false);
  }
}

/** The same piece seen in a mirror: x turned round, outline clockwise again. */
export function mirrorImage(piece: Piece): Piece {
  const map = { a: -1, b: 0, c: 0, d: 1, e: 0, f: 0 };
  const turned = (path: Path) => reversedPath(transformedPath(path, map));
  const parts = [...piece.outline.parts]
    .reverse()
    .map(
      (p): OutlinePart =>
        p.type === 'edge'
          ? { ...p, path: turned(p.path) }
          : p.type === 'pleat'
            ? { ...p, mouth: turned(p.mouth) }
            : { ...p, legs: [turned(p.legs[1]), turned(p.legs[0])], apex: at(-p.apex.x, p.apex.y) },
    );
  return {
    ...piece,
    outline: { parts },
    notches: piece.notches.map(n => ({ ...n, at: lengthOf(piece, n.edge) - n.at })),
    lines: piece.lines.map(l => ({ ...l, path: transformedPath(l.path, map) })),
    marks: piece.marks.map(m => ({ ...m, at: at(-m.at.x, m.at.y) })),
  };
}

/** The same piece with its list of parts begun elsewhere. */
export const begunAt = (piece: Piece, index: number): Piece => {
  const { parts } = piece.outline;
  const k = index % parts.length;
  return { ...piece, outline: { parts: [...parts.slice(k), ...parts.slice(0, k)] } };
};

/** Angle in degrees between the chords of a dart. */
export function angleOf(piece: Piece, name: string): number {
  const { legs, apex } = dartsOf(piece).find(d => d.name === name)!;
  const u = subtract(pathStart(legs[0]), apex);
  const v = subtract(pathEnd(legs[1]), apex);
  return (Math.acos((u.x * v.x + u.y * v.y) / Math.hypot(u.x, u.y) / Math.hypot(v.x, v.y)) * 180) / Math.PI;
}

/** What an error must carry: its code, a remedy, the piece. */
export const refusal = (code: string, remedy: RegExp = /./): Error =>
  ({
    asymmetricMatch: (error: unknown): boolean =>
      error instanceof PatternError &&
      error.code === code &&
      error.where.piece === 'block' &&
      remedy.test(told(error).remedy),
    toAsymmetricMatcher: () => `PatternError ${code} of the block, its remedy ${remedy}`,
  }) as object as Error;
