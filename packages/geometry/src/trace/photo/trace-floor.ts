import type { Path } from '../../path/path.js';
import { distance, type Point } from '../../vector.js';
import { clearlyUnlike } from './clearly-unlike.js';
import { cornersOfOutline } from './corners.js';
import { markCovered } from './covered-paper.js';
import { edgeOfPatch, type FloorSeen } from './edge-of-patch.js';
import { isClear } from './edge-shares.js';
import { faintPatches } from './faint-patches.js';
import { floorBlocks } from './floor-blocks.js';
import { cellAt, dotAt, type FloorMap } from './floor-map.js';
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
  /** Whether its edge is clear against the ground all round; else it is less true. */
  readonly isClear: boolean;
  readonly area: number;
  /** mm² of it that lie on sheets. */
  readonly onPaper: number;
}

/** What tracing found: whole pieces, and patches that run out of the pictures. */
export interface FloorTraced {
  readonly outlines: readonly TracedOutline[];
  readonly cutOff: readonly Patch[];
  /** Where edges were seen that close round nothing. */
  readonly loose: readonly Point[];
}

/** mm². Smaller patches are crumbs, pins, thread. */
const leastArea = 180;
/** Times the noise, and in logarithms: what differs from the ground by more is not ground. */
const overNoise = 7,
  leastDifference = 0.06;

/** mm, and dots, beside a corner in which a picture is soft. */
const softMm = 0.9,
  softDots = 2;

/**
 * The pieces that lie on the floor: whatever is neither ground nor paper.
 * @param done told how much is done, from 0 to 1; may throw to stop
 */
export function traceFloor(
  floor: FloorSeen,
  sheets: readonly PlacedSheet[],
  unlike: Unlikeness,
  done: (share: number) => void,
): FloorTraced {
  const { map, codes, shots } = floor;
  const marked = clearlyUnlike(floor, unlike, Math.max(leastDifference, overNoise * unlike.noise));
  const { cells, loose } = faintPatches(map, floorBlocks(map, unlike.floor, codes, marked));
  const faint = new Set(cells);
  for (const cell of cells) marked[cell] = 1;
  markCovered(map, sheets, unlike, codes, marked);
  const patches = patchesOf(map, marked, codes, leastArea).filter(
    patch => isBroad(patch) && !isRim(floor, patch),
  );
  const soft = softMm + softDots * Math.min(...shots.map(dotAt));
  const whole = patches.filter(patch => !patch.cutOff);
  const found = whole.map((patch, i) => {
    done(i / whole.length);
    return { patch, ...edgeOfPatch(floor, patch.ring, isFaint(map, faint, patch)) };
  });
  done(1);
  return {
    outlines: found.flatMap(({ patch: { area, onPaper }, points, noise }) =>
      points.length === 0
        ? []
        : [
            {
              edges: edgesOfOutline(points, cornersOfOutline(points, soft)),
              points,
              isClear: isClear(noise),
              area,
              onPaper,
            },
          ],
    ),
    cutOff: patches.filter(p => p.cutOff),
    loose: [...loose, ...found.flatMap(({ patch, points }) => (points.length === 0 ? [patch.ring[0]!] : []))],
  };
}

/** Whether a patch is one that was found by its edge alone: its ring begins at the upper left corner of a cell of it. */
function isFaint(map: FloorMap, faint: ReadonlySet<number>, { ring: [first] }: Patch): boolean {
  const half = map.cell / 2;
  return faint.has(cellAt(map, { x: first!.x + half, y: first!.y + half }));
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
