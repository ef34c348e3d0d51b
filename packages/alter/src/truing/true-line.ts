import {
  angleBetween,
  endTangent,
  type Path,
  PatternError,
  type Point,
  pathLength,
  segmentLength,
  startTangent,
  tangentAt,
  tolerances,
} from '@paperhinge/geometry';
import { apartBetween } from './apart.js';
import type { WantedEnd, WantedEnds } from './ends.js';
import { fairThroughout } from './fair-throughout.js';
import { type Blend, blendedAt } from './local-blend.js';

/** A line after truing. */
export interface Trued {
  readonly path: Path;
  /** mm: the farthest that the new line lies from the old. */
  readonly movedMm: number;
  readonly left: readonly LeftOver[];
}

/** A place that was not trued. */
export interface LeftOver {
  readonly what: string;
  readonly alongMm: number;
  readonly angleDeg: number;
  readonly why: string;
  readonly remedy: string;
}

/**
 * A fair line in place of a broken one: first one curve for the whole line, and where none keeps the limit, a blend
 * at each broken place by itself.
 * @throws PatternError `truing-limit`: the limit is no length over 0
 */
export function trueLine(path: Path, ends: WantedEnds, within: number): Trued {
  if (!(within > 0))
    throw new PatternError('truing-limit', {
      message: 'Truing needs a limit over 0.',
      remedy: 'Give how far the new line may lie from the old, such as 2 mm.',
    });
  const { kinks, corners } = kinksOf(path);
  const needed = kinks.length > 0 || ends.start?.needed === true || ends.end?.needed === true;
  const meant = corners.map(leftCorner);
  if (!needed) return { path, movedMm: 0, left: meant };
  if (corners.length === 0) {
    const fair = fairThroughout(path, directionsFor(path, ends), within);
    if (fair) return { ...fair, left: [] };
  }
  return blended(path, ends, kinks, corners, within, meant);
}

interface Turn {
  readonly alongMm: number;
  readonly turn: number;
}

/** Turns between a line's segments that show: those to be trued, and those so sharp that they are meant. */
function kinksOf(path: Path): { readonly kinks: readonly Turn[]; readonly corners: readonly Turn[] } {
  const lasting = path.segments.filter(s => segmentLength(s) > tolerances.joiningGap);
  let along = 0;
  const turns = lasting.slice(1).map((segment, i): Turn => {
    along += segmentLength(lasting[i]!);
    return { alongMm: along, turn: angleBetween(tangentAt(lasting[i]!, 1), tangentAt(segment, 0)) };
  });
  const shown = turns.filter(t => Math.abs(t.turn) > tolerances.kinkTurn);
  return {
    kinks: shown.filter(t => Math.abs(t.turn) <= sharpest),
    corners: shown.filter(t => Math.abs(t.turn) > sharpest),
  };
}

/** rad. A swing of more than this at one place is rare; a corner so sharp was drawn on purpose. */
const sharpest = Math.PI / 4;

/** The pairs of end directions to try, best first; an end that needs another direction gets no other. */
function directionsFor(path: Path, { start, end }: WantedEnds): readonly (readonly [Point, Point])[] {
  const options = (wanted: WantedEnd | undefined, present: Point): readonly Point[] =>
    wanted === undefined ? [present] : wanted.needed ? [wanted.direction] : [wanted.direction, present];
  return options(start, startTangent(path)).flatMap(a =>
    options(end, endTangent(path)).map(b => [a, b] as const),
  );
}

function blended(
  path: Path,
  ends: WantedEnds,
  kinks: readonly Turn[],
  corners: readonly Turn[],
  within: number,
  meant: readonly LeftOver[],
): Trued {
  const length = pathLength(path);
  // Two turns near each other are one place: a step.
  const places = kinks.reduce<{ from: number; to: number; turn: number }[]>((list, { alongMm, turn }) => {
    const last = list.at(-1);
    if (last && alongMm - last.to <= tolerances.stepReach) {
      last.to = alongMm;
      if (Math.abs(turn) > Math.abs(last.turn)) last.turn = turn;
    } else list.push({ from: alongMm, to: alongMm, turn });
    return list;
  }, []);
  const blends: Blend[] = places.map(p => ({ from: p.from, to: p.to }));
  const { start, end } = ends;
  if (start?.needed) blends.unshift({ from: 0, to: 0, startDirection: start.direction });
  if (end?.needed) blends.push({ from: length, to: length, endDirection: end.direction });
  const done = blendedAt(
    path,
    blends,
    corners.map(c => c.alongMm),
    within,
  );
  const left = done.failed.map(blend => {
    const place = places.find(p => p.from === blend.from);
    if (blend.startDirection && start)
      return leftBehind(start.what, 0, Math.abs(angleBetween(startTangent(path), start.direction)));
    if (blend.endDirection && end)
      return leftBehind(end.what, length, Math.abs(angleBetween(endTangent(path), end.direction)));
    return leftBehind(
      place && place.to > place.from ? 'stepped' : 'kinked',
      blend.from,
      Math.abs(place?.turn ?? 0),
    );
  });
  const movedMm = done.path === path ? 0 : apartBetween(path, done.path);
  return { path: done.path, movedMm, left: [...meant, ...left] };
}

const degrees = (angle: number): number => (Math.abs(angle) * 180) / Math.PI;

const leftBehind = (what: string, alongMm: number, angle: number): LeftOver => ({
  what,
  alongMm,
  angleDeg: degrees(angle),
  why: 'a fair line would lie farther from it than the limit allows',
  remedy: 'Allow the truing more, or redraw the line by hand.',
});

const leftCorner = ({ alongMm, turn }: Turn): LeftOver => ({
  what: 'with its corner',
  alongMm,
  angleDeg: degrees(turn),
  why: 'so sharp a corner is taken to be meant',
  remedy: 'Redraw it by hand if it is not.',
});
