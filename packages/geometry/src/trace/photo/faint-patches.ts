import type { Point } from '../../vector.js';
import { blurred, edgeStrength, shrunk } from './faint-edges.js';
import type { FloorBlocks } from './floor-blocks.js';
import type { FloorMap } from './floor-map.js';

/** What differs so little from the ground that only its edge shows. */
export interface FaintPatches {
  /** Cells within closed edges. */
  readonly cells: readonly number[];
  /** Floor points in the middle of edges that close round nothing. */
  readonly loose: readonly Point[];
}

/** Times what noise makes of it: an edge is as clear somewhere, and everywhere as clear as the second. */
const sure = 9,
  likely = 5;
/** mm: shorter edges are crumbs, folds, marks of a floor. */
const leastLength = 60;
/** mm². */
const leastArea = 500;
/** Of the blocks around a region: so many are edge. */
const edged = 0.7;
/** Blocks across an edge, about. */
const edgeBlocks = 5;
/** Of an edge's blocks: where so many are near a sheet or where two pictures meet, it is that rim or that seam. */
const rimShare = 0.6;
/** Blocks from those that are near them: two beside a sheet are not looked at, and its rim is softened over some more. */
const rimReach = 6;

/** Regions of the floor with an edge all round, and edges without one. */
export function faintPatches(map: FloorMap, blocks: FloorBlocks): FaintPatches {
  const { width, side, open } = blocks;
  const edges = labelled(blocks, clearEdges(blocks));
  const isFree = shrunk(blocks, open, 2).map((inside, k) => (inside === 1 && edges.of[k] === 0 ? 1 : 0));
  const free = labelled(blocks, isFree);
  const ground = free.sizes.indexOf(Math.max(...free.sizes));
  const blockMm = side * map.cell;
  const around = bordersOf(blocks, free, edges);
  const isPiece = free.sizes.map(
    (size, label) =>
      label > 0 &&
      label !== ground &&
      size * blockMm ** 2 >= leastArea &&
      around[label]!.edge >= edged * around[label]!.all,
  );
  const used = new Set(isPiece.flatMap((is, label) => (is ? [...around[label]!.edges] : [])));
  const nearest = grownInto(blocks, free.of);
  const isLike = likePieces(
    blocks,
    free.of.map(label => (label === ground ? -1 : isPiece[label] ? 1 : 0)),
  );
  const cells: number[] = [];
  for (let k = 0; k < nearest.length; k++)
    if (isPiece[nearest[k]!] && (free.of[k] !== 0 || isLike[k] === 1))
      for (let v = 0; v < side; v++)
        for (let u = 0; u < side; u++)
          cells.push((Math.floor(k / width) * side + v) * map.width + (k % width) * side + u);
  const alongRims = nearRims(blocks, edges);
  const loose = edges.sizes.flatMap((size, label) => {
    if (label === 0 || used.has(label) || (size / edgeBlocks) * blockMm < leastLength) return [];
    if (alongRims[label]! > rimShare * size) return [];
    const at = edges.middles[label]!;
    return [{ x: map.origin.x + (at.x + 0.5) * blockMm, y: map.origin.y + (at.y + 0.5) * blockMm }];
  });
  return { cells, loose };
}

/** How many of each edge's blocks lie near a sheet's rim or a seam of two pictures. */
function nearRims(blocks: FloorBlocks, edges: Labels): readonly number[] {
  const clear = shrunk(
    blocks,
    Uint8Array.from(blocks.ownEdge, is => 1 - is),
    rimReach,
  );
  const out = edges.sizes.map(() => 0);
  for (const [k, label] of edges.of.entries()) if (clear[k] === 0) out[label]!++;
  return out;
}

/** Blocks over which the colours of pieces and ground are taken beside an edge. */
const beside = 6;

/** Blocks that are more like the pieces about them (1 in `sides`) than like the ground about them (−1). */
function likePieces({ width, height, channels }: FloorBlocks, sides: Int32Array): Uint8Array {
  const parts = [-1, 1].map(side => Float32Array.from(sides, s => (s === side ? 1 : 0)));
  const weights = parts.map(part => blurred(part, width, height, beside));
  const along = new Float32Array(sides.length),
    size = new Float32Array(sides.length);
  for (const values of channels) {
    const [ground, piece] = parts.map((part, i) =>
      blurred(
        values.map((v, k) => v * part[k]!),
        width,
        height,
        beside,
      ).map((sum, k) => (weights[i]![k]! > 0 ? sum / weights[i]![k]! : 0)),
    );
    const soft = blurred(values, width, height, 1);
    for (let k = 0; k < size.length; k++) {
      const d = piece![k]! - ground![k]!;
      along[k]! += (soft[k]! - ground![k]!) * d;
      size[k]! += d * d;
    }
  }
  return Uint8Array.from(along, (a, k) => (a > size[k]! / 2 ? 1 : 0));
}

/** Blocks of edges: likely ones that are joined to sure ones. */
function clearEdges(blocks: FloorBlocks): Uint8Array {
  const strength = edgeStrength(blocks);
  const out = Uint8Array.from(strength, s => (s > sure ? 1 : 0));
  const stack = [...out.keys()].filter(k => out[k] === 1);
  while (stack.length > 0)
    for (const next of around8(blocks, stack.pop()!))
      if (out[next] === 0 && strength[next]! > likely) {
        out[next] = 1;
        stack.push(next);
      }
  return out;
}

interface Labels {
  /** By block; 0 for none. */
  readonly of: Int32Array;
  readonly sizes: readonly number[];
  /** A block of each that lies about in the middle of the order in which they were met. */
  readonly middles: readonly Point[];
}

/** Marked blocks in groups that are joined. */
function labelled(blocks: FloorBlocks, marked: ArrayLike<number>): Labels {
  const { width } = blocks;
  const of = new Int32Array(marked.length);
  const sizes = [0];
  const middles: Point[] = [{ x: 0, y: 0 }];
  for (let seed = 0; seed < of.length; seed++) {
    if (marked[seed] !== 1 || of[seed] !== 0) continue;
    const label = sizes.length;
    const own = [seed];
    of[seed] = label;
    for (let at = 0; at < own.length; at++)
      for (const next of around4(blocks, own[at]!))
        if (marked[next] === 1 && of[next] === 0) {
          of[next] = label;
          own.push(next);
        }
    const middle = own[own.length >> 1]!;
    sizes.push(own.length);
    middles.push({ x: middle % width, y: Math.floor(middle / width) });
  }
  return { of, sizes, middles };
}

function bordersOf(blocks: FloorBlocks, free: Labels, edges: Labels) {
  const out = free.sizes.map(() => ({ all: 0, edge: 0, edges: new Set<number>() }));
  for (let k = 0; k < free.of.length; k++) {
    if (free.of[k] === 0) continue;
    const own = out[free.of[k]!]!;
    for (const next of around4(blocks, k)) {
      if (free.of[next] === free.of[k]) continue;
      own.all++;
      if (edges.of[next]! > 0) {
        own.edge++;
        own.edges.add(edges.of[next]!);
      }
    }
  }
  return out;
}

/** Every block with the label of the nearest that has one, step by step. */
function grownInto(blocks: FloorBlocks, labels: Int32Array): Int32Array {
  const out = labels.slice();
  let front = [...out.keys()].filter(k => out[k] !== 0);
  while (front.length > 0) {
    const next: number[] = [];
    for (const k of front)
      for (const other of around4(blocks, k))
        if (out[other] === 0 && blocks.open[other] === 1) {
          out[other] = out[k]!;
          next.push(other);
        }
    front = next;
  }
  return out;
}

function* around4({ width, height }: FloorBlocks, k: number): Generator<number> {
  const i = k % width;
  if (i > 0) yield k - 1;
  if (i < width - 1) yield k + 1;
  if (k >= width) yield k - width;
  if (k < width * (height - 1)) yield k + width;
}

function* around8(blocks: FloorBlocks, k: number): Generator<number> {
  const i = k % blocks.width;
  yield* around4(blocks, k);
  for (const row of [-1, 1])
    for (const step of [-1, 1]) {
      const next = k + row * blocks.width + step;
      if (i + step >= 0 && i + step < blocks.width && next >= 0 && next < blocks.open.length) yield next;
    }
}
