import type { Path } from '../../path/path.js';
import { distance, type Point } from '../../vector.js';
import { cornersOfOutline } from './corners.js';
import { markCovered } from './covered-paper.js';
import { edgeOfPatch, type FloorSeen } from './edge-of-patch.js';
import { cellAt, dotAt } from './floor-map.js';
import { type PlacedSheet, paper, rim } from './floor-of-sheets.js';
import type { Unlikeness } from './ground.js';
import { edgesOfOutline } from './outline-edges.js';
import { type Patch, patchesOf } from './patches.js';

/** A piece as traced, in floor mm. */
export interface TracedOutline {
  /** From corner to corner, clockwise. */
  readonly edges: readonly Path[];
  /** The traced points that the edges were fitted to. */
  readonly points: readonly Point[];
  readonly area: number;
  /** mm² of it that lie on sheets. */
  readonly onPaper: number;
}

/** What tracing found: whole pieces, and patches that run out of the pictures. */
export interface FloorTraced {
  readonly outlines: readonly TracedOutline[];
  readonly cutOff: readonly Patch[];
}

/** mm². Smaller patches are crumbs, pins, thread. */
const leastArea = 180;
/** Times the noise, and in logarithms: what differs from the ground by more is not ground. */
const overNoise = 7,
  leastDifference = 0.06;

/** mm, and dots, beside a corner in which a picture is soft. */
const softMm = 0.9,
  softDots = 2;

/** The pieces that lie on the floor: whatever is neither ground nor paper. */
export function traceFloor(
  floor: FloorSeen,
  sheets: readonly PlacedSheet[],
  unlike: Unlikeness,
): FloorTraced {
  const limit = Math.max(leastDifference, overNoise * unlike.noise);
  const marked = new Uint8Array(unlike.values.length);
  for (let k = 0; k < marked.length; k++)
    if (unlike.values[k]! > limit && floor.codes[k] === 0 && floor.map.from[k] !== 0) marked[k] = 1;
  markCovered(floor.map, sheets, unlike, floor.codes, marked);
  const patches = patchesOf(floor.map, marked, floor.codes, leastArea).filter(
    patch => isBroad(patch) && !isRim(floor, patch),
  );
  const soft = softMm + softDots * Math.min(...floor.shots.map(dotAt));
  const outlines = patches
    .filter(p => !p.cutOff)
    .flatMap(patch => {
      const points = edgeOfPatch(floor, patch.ring);
      if (points.length === 0) return [];
      return [
        {
          edges: edgesOfOutline(points, cornersOfOutline(points, soft)),
          points,
          area: patch.area,
          onPaper: patch.onPaper,
        },
      ];
    });
  return { outlines, cutOff: patches.filter(p => p.cutOff) };
}

/** mm. Patches narrower than this in the mean are threads, seams of a floor, rims of shadows. */
const leastBreadth = 5;

function isBroad({ ring, area }: Patch): boolean {
  const round = ring.reduce((sum, p, i) => sum + distance(p, ring[(i + 1) % ring.length]!), 0);
  // A stair of cells is up to a third longer than the line it stands for.
  return (2 * area) / round > leastBreadth / 2;
}

/** Of a patch's ring: along so much of it lies paper if it is but the soft rim of a sheet. */
const rimShare = 0.35;
/** mm². What lies on a sheet, and by less than this beside it, is a piece only if it is larger than a hand's breadth. */
const leastBeside = 300,
  leastOnSheet = 2500;
/** Cells from a patch to the paper that it is the rim of. */
const rimReach = 2;

function isRim({ map, codes }: FloorSeen, { ring, area, onPaper }: Patch): boolean {
  if (onPaper > 0) return area - onPaper < leastBeside && area < leastOnSheet;
  const beside = ring.filter(p =>
    [-rimReach, 0, rimReach].some(dx =>
      [-rimReach, 0, rimReach].some(dy => {
        const cell = cellAt(map, { x: p.x + dx * map.cell, y: p.y + dy * map.cell });
        return cell >= 0 && (codes[cell] === paper || codes[cell] === rim);
      }),
    ),
  );
  return beside.length > rimShare * ring.length;
}
