import type { Piece } from '@paperhinge/geometry';
import type { XY } from '../twenty-drafts.js';
import { armhole, neckline } from './block.js';
import { bend, ring } from './ring.js';

// What the garments of lots E and F share beside block.ts: halves of bodies, legs, and pieces printed whole; mm.

export interface Cut {
  readonly fold?: string;
  readonly cut?: number;
  readonly darts?: Readonly<Record<string, readonly XY[]>>;
}

/** The shoulder's end: so long from the neck, falling so much on every mm across. */
export const shoulderEnd = ([x, y]: XY, long: number, slope: number): XY => [
  x + long / Math.hypot(1, slope),
  y + (long * slope) / Math.hypot(1, slope),
];

export const over = ([x, y]: XY): XY => [-x, y];

/** Half a body with its centre at x = 0, or `stand` before it. */
export interface Torso {
  readonly deep: number;
  readonly wide: number;
  readonly top?: number;
  readonly shoulder: number;
  readonly slope: number;
  readonly across: number;
  readonly pit: XY;
  /** From the armpit down. */
  readonly side: readonly XY[];
  /** From the side to the centre. */
  readonly foot: readonly XY[];
  readonly footName?: string;
  readonly stand?: number;
}

export function torsoEdges(of: Torso): Readonly<Record<string, readonly XY[]>> {
  const { deep, wide, top = 0, stand = 0 } = of;
  const end = shoulderEnd([wide, top], of.shoulder, of.slope);
  return {
    neck: [...(stand > 0 ? [[0, deep] as const] : []), ...neckline(deep, wide, top)],
    shoulder: [end],
    armhole: armhole(end, of.across, of.pit),
    side: of.side,
    [of.footName ?? 'hem']: of.foot,
  };
}

export const torso = (name: string, of: Torso, cut: Cut = { fold: 'centre' }): Piece =>
  ring(name, [-(of.stand ?? 0), of.deep], { ...torsoEdges(of), centre: [] }, cut);

/** A piece printed whole by its right half: the first edge and the last cross the centre, x = 0. */
export function whole(
  name: string,
  first: XY,
  edges: Readonly<Record<string, readonly XY[]>>,
  { cut = 1, darts = {} }: Cut = {},
): Piece {
  const names = Object.keys(edges);
  let at = first;
  const runs = names.map(edge => {
    const through = [at, ...edges[edge]!];
    at = through.at(-1)!;
    return through;
  });
  const across = (run: readonly XY[]): readonly XY[] => [...run].reverse().map(over);
  const inner = names.slice(1, -1);
  const start = over(runs[0]!.at(-1)!);
  const right = inner.map((edge, i) => [`${edge} r`, edges[inner[i]!]!] as const);
  const left = inner.map((edge, i) => [`${edge} l`, across(runs[i + 1]!).slice(1)] as const).reverse();
  const twin = Object.entries(darts).map(([dart, places]) => [`${dart} l`, across(places)] as const);
  return ring(
    name,
    start,
    Object.fromEntries([
      [names[0]!, [...across(runs[0]!).slice(1), ...edges[names[0]!]!]],
      ...right,
      [names.at(-1)!, [...edges[names.at(-1)!]!, ...across(runs.at(-1)!).slice(1)]],
      ...left.map(
        ([edge, places], i) => [edge, i === left.length - 1 ? places.slice(0, -1) : places] as const,
      ),
    ]),
    { cut, darts: { ...darts, ...Object.fromEntries(twin) } },
  );
}

/** A leg of trousers, its centre about x = 0 and its side on the right. */
export interface Leg {
  /** From the centre out to the side; the first is where the crotch ends. */
  readonly waist: readonly XY[];
  readonly hip: XY;
  readonly fork: XY;
  /** Where the crotch leaves its straight. */
  readonly bow: XY;
  /** How far below the fork (or above, negative) the handle of its crotch lies. */
  readonly dip?: number;
  /** Inside, outside and how far down. */
  readonly knee: readonly [inside: number, outside: number, down: number];
  readonly hem: readonly [inside: number, outside: number, down: number];
  readonly darts?: Cut['darts'];
}

export function legEdges(of: Leg): Readonly<Record<string, readonly XY[]>> {
  const [first, ...waist] = of.waist;
  const [sx, sy] = waist.at(-1)!;
  const [hx, hy] = of.hip;
  const [ki, ko, kd] = of.knee;
  const [hi, ho, hd] = of.hem;
  const [fx, fy] = of.fork;
  const [bx, by] = of.bow;
  const down = kd - hy;
  return {
    waist,
    outseam: [
      ...bend(
        [sx, sy],
        [sx + (hx - sx) * 0.55, sy + (hy - sy) * 0.35],
        [hx, hy - (hy - sy) * 0.35],
        of.hip,
        4,
      ),
      ...bend(of.hip, [hx, hy + down * 0.3], [ko + (ko - ho) * 0.3, kd - down * 0.3], [ko, kd], 4),
      ...bend(
        [ko, kd],
        [ko - (ko - ho) * 0.4, kd + (hd - kd) * 0.3],
        [ho, hd - (hd - kd) * 0.3],
        [ho, hd],
        3,
      ),
    ],
    hem: [[hi, hd]],
    inseam: [
      ...bend(
        [hi, hd],
        [hi, hd - (hd - kd) * 0.3],
        [ki - (ki - hi) * 0.4, kd + (hd - kd) * 0.3],
        [ki, kd],
        3,
      ),
      ...bend(
        [ki, kd],
        [ki, kd - (kd - fy) * 0.4],
        [fx + (ki - fx) * 0.42, fy + (kd - fy) * 0.3],
        of.fork,
        4,
      ),
    ],
    crotch: [
      ...bend(
        of.fork,
        [fx + (bx - fx) * 0.55, fy + (of.dip ?? (by - fy) * 0.06)],
        [bx - (bx - first![0]) * 0.1, by + (fy - by) * 0.5],
        of.bow,
        6,
      ),
      first!,
    ],
  };
}

export const leg = (name: string, of: Leg): Piece => {
  const { crotch, ...others } = legEdges(of);
  return ring(
    name,
    of.waist[0]!,
    { ...others, crotch: crotch!.slice(0, -1) },
    { cut: 2, darts: of.darts ?? {} },
  );
};

/** A patch pocket with rounded lower corners. */
export const patch = (name: string, wide: number, high: number, cut = 2, round = 24): Piece => {
  const [right, foot] = [wide - round, high - round];
  return ring(
    name,
    [0, 0],
    {
      opening: [[wide, 0]],
      round: [
        [wide, foot * 0.5],
        [wide, foot - 6],
        ...bend([wide, foot], [wide, high - round * 0.45], [wide - round * 0.45, high], [right, high], 3),
        [right - 6, high],
        [wide / 2, high],
        [round + 6, high],
        [round, high],
        ...bend([round, high], [round * 0.45, high], [0, high - round * 0.45], [0, foot], 3),
        [0, foot - 6],
        [0, foot * 0.5],
      ],
    },
    { cut },
  );
};

/** Places on a circle about the origin, from straight below it by degrees towards the right, after the first. */
export const arc = (radius: number, from: number, to: number, steps = 6): readonly XY[] =>
  Array.from({ length: steps }, (_, i): XY => {
    const angle = ((from + ((to - from) * (i + 1)) / steps) * Math.PI) / 180;
    return [radius * Math.sin(angle), radius * Math.cos(angle)];
  });
