import { endOf, startOf } from '../curve/segment.js';
import type { PatternError } from '../errors.js';
import { withEnds, withoutPoints } from '../path/mended.js';
import {
  endTangent,
  joined,
  type Path,
  pathEnd,
  pathOf,
  pathStart,
  reversedPath,
  startTangent,
} from '../path/path.js';
import { refusal } from '../pattern/tellings.js';
import { signedArea } from '../region/area.js';
import { coincidenceTolerance, cornerTurn, joiningGap } from '../tolerance.js';
import { angleBetween, distance, lerp } from '../vector.js';
import type { Strand } from './chain.js';

/**
 * A piece drawn as one closed path, cut into edges at its corners (joints where the tangent turns by more than
 * `cornerTurn`), clockwise from the corner at or after the path's first point. They are called `edge-1`, `edge-2` ...
 * or by the names given, in that order. A path without corners is one edge from its first point.
 *
 * @throws PatternError `open-outline` (ends over `joiningGap` apart), `outline-without-area`,
 *   `edge-names-do-not-fit`: more or fewer names than edges
 */
export function edgesOfClosedPath(drawn: Path, names?: readonly string[]): readonly Strand[] {
  const path = clockwise(closedUp(drawn));
  const segments = path.segments;
  const isCorner = segments.map((segment, i) => {
    const before = segments[(i + segments.length - 1) % segments.length]!;
    return Math.abs(angleBetween(endTangent(pathOf(before)), startTangent(pathOf(segment)))) > cornerTurn;
  });
  const first = Math.max(0, isCorner.indexOf(true));
  const chains: Path[] = [];
  for (let i = 0; i < segments.length; i++) {
    const index = (first + i) % segments.length;
    if (i === 0 || isCorner[index]) chains.push(pathOf(segments[index]!));
    else chains.push(joined(chains.pop()!, pathOf(segments[index]!)));
  }
  if (names && names.length !== chains.length)
    throw refusal('edge-names-do-not-fit', { edges: chains.length, names: names.length });
  return chains.map((chain, i) => ({ name: names?.[i] ?? `edge-${i + 1}`, path: chain }));
}

/** mm: the closing line that {@link edgesOfClosedPath} leaves away, shorter than a gap; `undefined` where there is none. */
export function closingSide(drawn: Path): number | undefined {
  const path = withoutPoints(drawn);
  const last = path?.segments.at(-1);
  return path && last && isClosingLine(path) ? distance(startOf(last), endOf(last)) : undefined;
}

/** A closing line of less than the gap is what an editor leaves where a curve already came home. */
function isClosingLine(path: Path): boolean {
  const last = path.segments.at(-1)!;
  return (
    distance(pathStart(path), pathEnd(path)) <= coincidenceTolerance &&
    path.segments.length > 2 &&
    distance(startOf(last), endOf(last)) <= joiningGap
  );
}

function closedUp(drawn: Path): Path {
  const path = withoutPoints(drawn);
  if (!path) throw withoutArea();
  const start = pathStart(path),
    end = pathEnd(path);
  const gap = distance(start, end);
  if (gap > joiningGap) throw refusal('open-outline', { gapMm: gap });
  if (isClosingLine(path)) return closedUp({ segments: path.segments.slice(0, -1) });
  const middle = lerp(start, end, 1 / 2);
  return withEnds(path, middle, middle);
}

function clockwise(path: Path): Path {
  const area = signedArea(path);
  if (Math.abs(area) <= coincidenceTolerance) throw withoutArea();
  return area > 0 ? path : reversedPath(path);
}

const withoutArea = (): PatternError => refusal('outline-without-area', {});
