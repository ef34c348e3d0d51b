import type { Point } from '../../vector.js';
import { armThrough, offArm } from './arm.js';
import {
  halfWay,
  isCalm,
  type LevelsAcross,
  likeliestStep,
  meanOf,
  mostNoise,
  noiseOf,
  sharesOf,
  togetherAt,
} from './edge-shares.js';
import type { Colour } from './evened-floor.js';
import { cellAt, colourAt, dotAt, type FloorMap, type Shot } from './floor-map.js';
import { paper, rim } from './floor-of-sheets.js';
import { evenly, inwardOf, softenedRing } from './ring.js';

/** A picture with its camera and its tone. */
export interface TonedShot extends Shot {
  readonly tone: number;
}

/** What outlines are found in. */
export interface FloorSeen {
  readonly map: FloorMap;
  readonly shots: readonly TonedShot[];
  /** What cells are known to be: paper, the rim of a sheet, or something on one. */
  readonly codes: Uint8Array;
}

/** mm between the points of an outline. */
export const outlineStep = 0.5;
/** mm to each side of the line so far that the edge is looked for, in turn; and more by so many dots. */
const reaches = [2.2, 1.2] as const,
  firstReachOfFaint = 4;
const dotsMore = 2;
/** mm along the outline, both ways, that the colours to either side are taken over. */
const colourReach = 14;

/**
 * The edge of a patch to a small part of a dot: square to the line so far, where the picture itself is half way from
 * the colour outside to the colour inside, in light. Places where no edge is found are left out.
 *
 * @param faint only its edge showed: the ring is less near to it
 */
export function edgeOfPatch(floor: FloorSeen, ring: readonly Point[], faint = false): EdgeFound {
  let line = evenly(softenedRing(ring, 3), outlineStep);
  let noise = 0;
  for (const reach of faint ? [firstReachOfFaint, ...reaches] : reaches) {
    // Where noise makes the line ragged, it is looked for from a calm one.
    const along = togetherAt(noise);
    const from = along > 0 ? evenly(softenedRing(line, 2 + along), outlineStep) : line;
    const found = foundAcross(floor, from, reach, faint);
    if (found.points.length < 8) return { points: [], noise: found.noise };
    line = evenly(found.points, outlineStep);
    ({ noise } = found);
  }
  return { points: line, noise };
}

/** An edge as found. */
export interface EdgeFound {
  /** Clockwise, about `outlineStep` mm apart; none where there is no edge. */
  readonly points: readonly Point[];
  /** Of the step from the colour outside to the colour inside: what a dot strays from them. */
  readonly noise: number;
}

/** Colours across the line at a point: from outside to inside, three channels a step, in light. */
interface Across extends LevelsAcross {
  /** Which picture shows it, from 1. */
  readonly picture: number;
  /** Something lies on paper here: what is outside changes from dot to dot. */
  readonly onPaper: boolean;
  /** What is outside is the soft rim of a sheet. */
  readonly onRim: boolean;
  /** What is outside is ground near the edge, and a sheet's paper farther off. */
  readonly besidePaper: boolean;
  readonly outside: Colour;
  readonly inside: Colour;
}

function foundAcross(floor: FloorSeen, line: readonly Point[], reach: number, faint: boolean): EdgeFound {
  const inward = inwardOf(softenedRing(line, 2), 3);
  const tables = floor.shots.map(({ tone }) =>
    Float64Array.from({ length: 1021 }, (_, v) => 255 * (v / 1020) ** tone),
  );
  const dot = Math.min(...floor.shots.map(dotAt));
  const half = reach + dotsMore * dot,
    step = dot / 2;
  const steps = Math.ceil(half / step);
  const across = line.map((p, i) => acrossAt(floor, tables, p, inward[i]!, { steps, step }));
  const reachPoints = Math.round(colourReach / outlineStep);
  // Each picture was taken in its own light: colours of one say nothing of those in another.
  const sides = floor.shots.map((_, shot) => {
    const own = across.map(a => (a?.picture === shot + 1 ? a : undefined));
    return {
      outside: colours(
        own.map(a => (a?.onPaper || a?.besidePaper ? undefined : a?.outside)),
        reachPoints,
      ),
      inside: colours(
        own.map(a => a?.inside),
        reachPoints,
      ),
    };
  });
  const shares = across.map((a, i) => {
    const side = a && sides[a.picture - 1];
    const out = a?.onPaper ? a.outside : side?.outside[i],
      within = side?.inside[i];
    return a && out && within && !crossesRim(across, i) ? sharesOf(a, out, within, faint) : undefined;
  });
  const noise = noiseOf(shares);
  if (!(noise < mostNoise)) return { points: [], noise };
  const together = togetherAt(noise);
  const found = line.map((p, i) => {
    const own = together > 0 ? meanOf(shares, i, together) : shares[i];
    const off = own && (isCalm(noise) ? halfWay(own, steps) : likeliestStep(own, steps));
    if (off === undefined) return undefined;
    const n = inward[i]!;
    return { x: p.x + n.x * off * step, y: p.y + n.y * off * step, onPaper: across[i]!.onPaper };
  });
  return { points: withoutStrays(found.filter(p => p !== undefined)), noise };
}

/** Points to both sides: where a piece leaves a sheet, the edge of the paper lies so near to its own. */
const besideRim = 14;

/** Whether a piece runs off a sheet at a point: neither the ground's colour nor the paper's is what lies outside. */
function crossesRim(across: readonly (Across | undefined)[], i: number): boolean {
  const n = across.length;
  if (!across[i]!.onRim) return false;
  for (let k = 1; k <= besideRim; k++)
    if (across[(i + k) % n]?.onPaper || across[(i - k + n) % n]?.onPaper) return true;
  return false;
}

/** mm outside an edge where it shows whether something lies on paper. */
const nearMm = 1;

/** Steps beyond the reach from which the colours to either side are taken. */
const beyond = 3;

function acrossAt(
  { map, shots, codes }: FloorSeen,
  tables: readonly Float64Array[],
  p: Point,
  n: Point,
  { steps, step }: { readonly steps: number; readonly step: number },
): Across | undefined {
  const cell = cellAt(map, p);
  const number = cell < 0 ? 0 : map.from[cell]!;
  if (number === 0) return undefined;
  const { picture, view } = shots[number - 1]!,
    table = tables[number - 1]!;
  const all = steps + beyond;
  const levels = new Float64Array(3 * (2 * all + 1));
  for (let k = -all; k <= all; k++) {
    const q = view.toPicture(p.x + n.x * k * step, p.y + n.y * k * step);
    if (!(q.x > 1 && q.y > 1 && q.x < picture.width - 1 && q.y < picture.height - 1)) return undefined;
    for (let c = 0; c < 3; c++)
      levels[3 * (k + all) + c] = table[Math.round(4 * colourAt(picture, q.x, q.y, c))]!;
  }
  const codeAt = (k: number) => {
    const at = cellAt(map, { x: p.x + n.x * k * step, y: p.y + n.y * k * step });
    return at < 0 ? rim : codes[at]!;
  };
  const mean = (from: number): Colour => {
    const sum = [0, 0, 0];
    for (let k = 0; k < 2 * beyond; k++) for (let c = 0; c < 3; c++) sum[c]! += levels[3 * (from + k) + c]!;
    return sum.map(v => v / (2 * beyond)) as unknown as Colour;
  };
  const onPaper = codeAt(-Math.ceil(nearMm / step)) === paper;
  return {
    picture: number,
    levels: levels.subarray(3 * beyond, levels.length - 3 * beyond),
    sheet: Uint8Array.from({ length: 2 * steps + 1 }, (_, k) => {
      const code = codeAt(k - steps);
      return code === paper || code === rim ? 1 : 0;
    }),
    onPaper,
    onRim: codeAt(-Math.ceil(nearMm / step)) === rim,
    besidePaper: codeAt(-all) !== 0 || codeAt(-steps) !== 0,
    outside: mean(onPaper ? all - Math.ceil(nearMm / step) - beyond : 0),
    inside: mean(2 * all + 1 - 2 * beyond),
  };
}

/** The middle colour of those within so many points of each, taken at every eighth. */
function colours(list: readonly (Colour | undefined)[], reach: number): readonly (Colour | undefined)[] {
  const n = list.length,
    every = 8;
  const middle = (i: number): Colour | undefined => {
    // A stretch that lies along a sheet's paper looks farther for its ground.
    for (let wide = reach; wide < Math.max(n, reach + 1) && wide <= 8 * reach; wide *= 2) {
      const near: Colour[] = [];
      for (let k = -wide; k <= wide; k += 2) {
        const colour = list[(((i + k) % n) + n) % n];
        if (colour) near.push(colour);
      }
      if (near.length > reach / 3)
        return [0, 1, 2].map(
          c => near.map(v => v[c]!).sort((a, b) => a - b)[near.length >> 1]!,
        ) as unknown as Colour;
    }
    return undefined;
  };
  const nodes = Array.from({ length: Math.ceil(n / every) }, (_, k) => middle(k * every));
  return list.map((_, i) => nodes[Math.floor(i / every)]);
}

/** Points to each side that a point on paper is held against, and mm that it may lie off their line. */
const heldAgainst = 44,
  mostAstray = 0.3;

/** On paper the print may be taken for an edge: points there go that are in line with neither side's neighbours. */
function withoutStrays(points: readonly (Point & { readonly onPaper: boolean })[]): readonly Point[] {
  const n = points.length;
  if (n < 3 * heldAgainst) return points;
  return points.filter(
    (p, i) =>
      !p.onPaper ||
      [-1, 1].some(way =>
        isInLine(
          p,
          Array.from({ length: heldAgainst }, (_, k) => points[(i + way * (k + 1) + n) % n]!),
        ),
      ),
  );
}

/** Whether a point lies in the line of most of its neighbours: what lies farthest off that goes first. */
function isInLine(p: Point, neighbours: readonly Point[]): boolean {
  let near = neighbours;
  for (let round = 0; round < 3; round++) {
    const arm = armThrough(near, true);
    const limit = near.map(q => Math.abs(offArm(arm, q))).sort((a, b) => a - b)[
      Math.floor(near.length * 0.7)
    ]!;
    near = near.filter(q => Math.abs(offArm(arm, q)) <= limit);
  }
  return Math.abs(offArm(armThrough(near, true), p)) <= mostAstray;
}
