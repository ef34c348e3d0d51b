import { line, type Path, type Point, pathLength, pathOf } from '@paperhinge/geometry';
import { isLine, segmentLength } from '@paperhinge/geometry/curves';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { endTangent, pathEnd, pathStart, startTangent, tangentAlong } from '@paperhinge/geometry/paths';
import { angleBetween, distance } from '@paperhinge/geometry/plane';
import { apartBetween } from './apart.js';
import type { Blend, FailedBlend } from './blend.js';
import { type BrokenPlace, type BrokenPlaces, brokenPlaces } from './broken-places.js';
import type { WantedEnd, WantedEnds } from './ends.js';
import { fairThroughout } from './fair-throughout.js';
import { blendedAt } from './local-blend.js';

/** A line after truing. */
export interface Trued {
  readonly path: Path;
  readonly left: readonly LeftOver[];
}

/** A place that was not trued. */
export interface LeftOver {
  readonly what: 'kink' | 'step' | 'corner' | WantedEnd['what'];
  /** mm from the line's start. */
  readonly alongMm: number;
  readonly angleDeg: number;
  /** mm that the limit would have to be; absent where nothing is to be done. */
  readonly needMm?: number;
}

/**
 * A fair line in place of a broken one: the straight line for a broken straight one; else one curve for the whole
 * line, and where none keeps the limit, a blend at each broken place by itself.
 * @param corners mm along the line of the sharp corners that alterations left: they are not meant
 * @param within mm the new line may lie from the old; a step is drawn through its middle, half its height farther
 */
export function trueLine(path: Path, ends: WantedEnds, corners: readonly number[], within: number): Trued {
  const broken = brokenPlaces(path, corners);
  const left = broken.corners.map(leftCorner);
  const endsNeeded = ends.start?.needed === true || ends.end?.needed === true;
  if (broken.places.length === 0 && !endsNeeded) return { path, left };
  const stepped = broken.places.some(p => p.stepMm > 0);
  if (broken.corners.length === 0) {
    const straight = endsNeeded ? undefined : straightened(path, broken, within);
    if (straight) return { path: straight, left };
    // A line that is straight but for its ends is bent there alone, and a step is drawn where it is.
    const whole =
      stepped || broken.places.length === 0
        ? undefined
        : fairThroughout(path, directionsFor(path, ends), within);
    if (whole) return { path: whole, left };
  }
  return blended(path, ends, broken, within, left);
}

/** mm the line may move at a step: it is drawn through the middle, which half of the step's height more allows. */
const stepLimit = ({ stepMm }: BrokenPlace, within: number): number =>
  stepMm <= tolerances.stepReach ? within + stepMm / 2 : within;

/** The straight line between the ends of one that is straight but for what broke it, if it lies near enough. */
function straightened(path: Path, { places }: BrokenPlaces, within: number): Path | undefined {
  const straight = path.segments.every(s => isLine(s) || segmentLength(s) <= tolerances.joiningGap);
  if (!straight) return undefined;
  const chord = pathOf(line(pathStart(path), pathEnd(path)));
  const limit = Math.max(within, ...places.map(p => stepLimit(p, within)));
  return apartBetween(path, chord) <= limit ? chord : undefined;
}

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
  { places, corners }: BrokenPlaces,
  within: number,
  meant: readonly LeftOver[],
): Trued {
  const blends = withEnds(
    path,
    ends,
    places.map(p => blendOf(p, within)),
    within,
  );
  const done = blendedAt(
    path,
    blends,
    corners.map(c => c.from),
  );
  const left = done.failed.map(failed => leftBehind(path, ends, places, failed));
  return { path: done.path, left: [...meant, ...left] };
}

const blendOf = (place: BrokenPlace, within: number): Blend => ({
  from: place.from,
  to: place.to,
  limit: within,
  ...(place.stepMm > 0 ? { stepLimit: stepLimit(place, within) } : {}),
});

/**
 * The blends with those that the ends need. What is broken so near to an end that hardly any line is left beyond it
 * is drawn on to the end in one, in the direction wanted there, else as the line came.
 */
function withEnds(
  path: Path,
  { start, end }: WantedEnds,
  places: readonly Blend[],
  within: number,
): readonly Blend[] {
  const length = pathLength(path);
  const blends = [...places];
  const first = blends[0];
  if (first && first.from <= shortEnd) {
    const direction = start?.direction ?? tangentAlong(path, Math.min(first.to + shortEnd, length));
    blends[0] = { ...first, from: 0, startDirection: direction };
  } else if (start?.needed)
    blends.unshift({ from: 0, to: 0, startDirection: start.direction, limit: within, ...bendOf(path) });
  const last = blends.at(-1);
  if (last && last.to > 0 && length - last.to <= shortEnd) {
    const direction = end?.direction ?? tangentAlong(path, Math.max(last.from - shortEnd, 0));
    blends[blends.length - 1] = { ...last, to: length, endDirection: direction };
  } else if (end?.needed)
    blends.push({ from: length, to: length, endDirection: end.direction, limit: within, ...bendOf(path) });
  return blends;
}

/** mm. A rest of a line shorter than this, beyond its last broken place, shows no direction of its own. */
const shortEnd = 3;

/** A straight line is bent near its end alone; a curve may be redrawn as far as the limit lets it. */
const bendOf = (path: Path): { readonly reach?: number } =>
  distance(pathStart(path), pathEnd(path)) >= pathLength(path) - tolerances.joiningGap ||
  path.segments.every(isLine)
    ? { reach: 2 * tolerances.blendReach }
    : {};

const degrees = (angle: number): number => (Math.abs(angle) * 180) / Math.PI;

function leftBehind(
  path: Path,
  { start, end }: WantedEnds,
  places: readonly BrokenPlace[],
  { blend, needMm }: FailedBlend,
): LeftOver {
  const place = places.find(p => p.from === blend.from || p.to === blend.to);
  const need = Number.isFinite(needMm) ? { needMm } : {};
  if (place)
    return {
      what: place.stepMm > 0 ? 'step' : 'kink',
      alongMm: place.from,
      angleDeg: degrees(place.turn),
      ...need,
    };
  const atStart = blend.startDirection !== undefined;
  const wanted = (atStart ? start : end)!;
  const present = atStart ? startTangent(path) : endTangent(path);
  return {
    what: wanted.what,
    alongMm: blend.from,
    angleDeg: degrees(angleBetween(present, wanted.direction)),
    ...need,
  };
}

const leftCorner = ({ from, turn }: BrokenPlace): LeftOver => ({
  what: 'corner',
  alongMm: from,
  angleDeg: degrees(turn),
});
