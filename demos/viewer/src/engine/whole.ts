import {
  type EdgeRole,
  edgeNamed,
  type Pattern,
  type Piece,
  type PieceRole,
  pieceRoleOf,
  roleOf,
  type Seam,
} from '@paperhinge/geometry';
import { bodyPieces, sidesOfSeam } from '@paperhinge/geometry/measure';
import { boundsOfPath, pathEnd, pathStart, transformedPath } from '@paperhinge/geometry/paths';
import { centreEdgeOf, isLimb, outlinePath } from '@paperhinge/geometry/pattern';
import {
  type Affine,
  compose,
  identity,
  inverse,
  mirror,
  subtract,
  translation,
  unit,
} from '@paperhinge/geometry/plane';
import { signedArea } from '@paperhinge/geometry/regions';
import { toPathData } from '@paperhinge/geometry/svg';
import type { Joined, Whole } from './pictures.js';
import { stationAt } from './walk.js';

/** Seams between front and back, or between the legs: laid flat, the garment is seen from one side of them. */
const betweenSides: ReadonlySet<EdgeRole> = new Set([
  'shoulder',
  'side',
  'underarm',
  'inseam',
  'outseam',
  'crotch',
]);
/** They go round front and back alike, so that nothing lies flat with them. */
const trimmings: ReadonlySet<PieceRole> = new Set(['band', 'strip', 'binding', 'collar', 'cuff', 'hood']);
/** Places along a seam that are tried for joining, as shares of it, the middle first. */
const places = Array.from({ length: 49 }, (_, i) => 0.02 * (i + 1)).sort(
  (p, q) => Math.abs(p - 0.5) - Math.abs(q - 0.5),
);
/** mm between the figures. */
const gap = 120;

interface Placed {
  readonly piece: Piece;
  readonly matrix: Affine;
}
interface Figure {
  readonly first: string;
  readonly placed: readonly Placed[];
}

/**
 * The garment laid out whole and flat, front beside back: pieces joined where seams hold them together on one side of the
 * body, sleeves at the middle of their armholes, all mirrored at the centre. Before lies under after, figure by figure.
 */
export function wholeOf(after: Pattern, before: Pattern): Whole {
  const now = figuresOf(after),
    was = figuresOf(before);
  let x = 0;
  const shifts = new Map<string, Affine>();
  for (const figure of now) {
    const same = was.find(f => f.first === figure.first);
    const boxes = [...figure.placed, ...(same?.placed ?? [])].map(({ piece, matrix }) =>
      boundsOfPath(transformedPath(outlinePath(piece.outline), matrix)),
    );
    const left = Math.min(...boxes.map(b => b.min.x));
    shifts.set(figure.first, translation({ x: x - left, y: -Math.min(...boxes.map(b => b.min.y)) }));
    x += Math.max(...boxes.map(b => b.max.x)) - left + gap;
  }
  const drawn = (figures: readonly Figure[]) =>
    figures.flatMap(({ first, placed }) => {
      const shift = shifts.get(first);
      return shift ? placed.map(p => joined(p, shift)) : [];
    });
  return { after: drawn(now), before: drawn(was) };
}

/**
 * What hangs together once seams are sewn, of what some pieces are sewn to: laid flat about the largest of them.
 * A piece that no such seam holds lies by itself beside the others.
 */
export function joinedBy(
  pattern: Pattern,
  seams: ReadonlySet<string>,
  pieces: ReadonlySet<string>,
): readonly Joined[] {
  let left = [...pattern.pieces].sort((p, q) => area(q) - area(p));
  let x = 0;
  const laid: Joined[] = [];
  for (let first = left[0]; first; first = left[0]) {
    const together = joinedTo(pattern, first, left, seam => seams.has(seam.name));
    left = left.filter(p => !together.some(t => t.piece === p));
    if (!together.some(t => pieces.has(t.piece.name))) continue;
    const boxes = together.map(({ piece, matrix }) =>
      boundsOfPath(transformedPath(outlinePath(piece.outline), matrix)),
    );
    const [from, to] = [Math.min(...boxes.map(b => b.min.x)), Math.max(...boxes.map(b => b.max.x))];
    const shift = translation({ x: x - from, y: -Math.min(...boxes.map(b => b.min.y)) });
    laid.push(...together.map(t => joined(t, shift)));
    x += to - from + gap;
  }
  return laid;
}

function joined({ piece, matrix }: Placed, shift: Affine): Joined {
  const placed = compose(matrix, shift);
  const path = transformedPath(outlinePath(piece.outline), placed);
  const { min, max } = boundsOfPath(path);
  return {
    piece: piece.name,
    path: toPathData(path).replace(/(\.\d{2})\d+/g, '$1'),
    box: [min.x, min.y, max.x - min.x, max.y - min.y],
    matrix: [placed.a, placed.b, placed.c, placed.d, placed.e, placed.f],
  };
}

function figuresOf(pattern: Pattern): readonly Figure[] {
  const pieces = bodyPieces(pattern).filter(p => !trimmings.has(pieceRoleOf(p) ?? 'bodice'));
  const limbs = pieces.filter(p => isLimb(p) && p.role === 'sleeve');
  let left = pieces.filter(p => !limbs.includes(p)).sort((p, q) => area(q) - area(p));
  const figures: Figure[] = [];
  for (let first = left[0]; first; first = left[0]) {
    const together = joinedTo(pattern, first, left, seam => !isBetweenSides(pattern, seam));
    const sleeves = limbs.flatMap(limb => joinedTo(pattern, first!, [limb], () => true, together).slice(-1));
    const placed = [...together, ...sleeves.filter(s => limbs.includes(s.piece))];
    const over = centreOf(first);
    const mirrored = over ? placed.map(p => ({ ...p, matrix: compose(p.matrix, over) })) : [];
    figures.push({ first: first.name, placed: [...placed, ...mirrored] });
    left = left.filter(p => !together.some(t => t.piece === p));
  }
  return figures;
}

const area = ({ outline }: Piece): number => Math.abs(signedArea(outlinePath(outline)));

/** What mirrors a half at the fold or seam in the garment's centre. */
function centreOf(piece: Piece): Affine | undefined {
  const centre = centreEdgeOf(piece);
  if (!centre) return undefined;
  const from = pathStart(centre.path);
  return mirror(from, unit(subtract(pathEnd(centre.path), from)));
}

function isBetweenSides(pattern: Pattern, { a }: Seam): boolean {
  const [run] = a;
  const piece = pattern.pieces.find(p => p.name === run?.piece);
  const role = piece && run ? roleOf(edgeNamed(piece, run.edge)) : undefined;
  return role !== undefined && betweenSides.has(role);
}

/** A piece with all of the others that its seams hold on to it, one after the other. */
function joinedTo(
  pattern: Pattern,
  first: Piece,
  others: readonly Piece[],
  holds: (seam: Seam) => boolean,
  placed: readonly Placed[] = [{ piece: first, matrix: identity }],
): readonly Placed[] {
  for (const seam of pattern.seams.filter(holds)) {
    const next = neighbour(pattern, seam, placed, others);
    if (next) return joinedTo(pattern, first, others, holds, [...placed, next]);
  }
  return placed;
}

function neighbour(
  pattern: Pattern,
  seam: Seam,
  placed: readonly Placed[],
  others: readonly Piece[],
): Placed | undefined {
  const { a, b } = sidesOfSeam(pattern, seam);
  const there = (name: string) => placed.find(p => p.piece.name === name);
  const free = (name: string) => others.find(p => p.name === name && !there(name));
  for (const share of places) {
    const s = stationAt(pattern, a, b, share * a.reachMm, share * b.reachMm);
    const [m0, m1, m2, m3, m4, m5] = s.matrix;
    const ontoA: Affine = { a: m0, b: m1, c: m2, d: m3, e: m4, f: m5 };
    const [p, q] = [there(s.a), there(s.b)];
    const [x, y] = [free(s.a), free(s.b)];
    if (p && y) return { piece: y, matrix: compose(ontoA, p.matrix) };
    if (q && x) return { piece: x, matrix: compose(inverse(ontoA), q.matrix) };
  }
  return undefined;
}
