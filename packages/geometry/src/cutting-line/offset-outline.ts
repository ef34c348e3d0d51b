import { boxOfPoints, distanceToBox } from '../curve/bounds.js';
import { nearestOnSegment } from '../curve/nearest.js';
import { endOf, pointAt, type Segment, startOf } from '../curve/segment.js';
import { requireDistance } from '../curve/sound.js';
import { locating } from '../errors.js';
import { boundsOfPath } from '../path/bounds.js';
import { pathLength } from '../path/length.js';
import { type Path, reversedPath } from '../path/path.js';
import { requirePath } from '../path/sound.js';
import { refusal as withoutLength } from '../pattern/tellings.js';
import { signedArea } from '../region/area.js';
import type { Finding } from '../telling.js';
import { clearSlack, coincidenceTolerance, fitTolerance, leastCurved, leastOutline } from '../tolerance.js';
import { distance, type Point } from '../vector.js';
import { assembled, closedUp, keptBetween } from './assemble.js';
import { boundariesOf } from './boundaries.js';
import { isRun } from './node.js';
import { plainJoint } from './plain-joint.js';
import { withoutOverlaps } from './ring.js';
import { type Run, runsAlong } from './run.js';
import { pathOfStrands, type Strand, type Stretch, strandsReversed, stretchesOf } from './strand.js';
import { finding, refusal } from './tellings.js';
import { withBareBends } from './tight-bends.js';

/** A part of a closed outline: an edge, or the legs of a dart in one path. */
export interface NamedPath {
  readonly name: string;
  readonly path: Path;
}

/** One closed curve of an outline's parallel: simple, in the outline's own sense (a gap left inside it, the other). */
export interface OffsetLoop {
  readonly path: Path;
  /** The same curve part by part, each with the name of what it is parallel to. */
  readonly stretches: readonly Stretch[];
}

/** An outline moved to one side. */
export interface OutlineOffset {
  /** The longest first. None where nothing is left of the outline. */
  readonly loops: readonly OffsetLoop[];
  readonly findings: readonly Finding[];
}

/**
 * A closed outline moved outwards (`by` > 0) or inwards (`by` < 0), in mm, each part by its own distance: a facing's
 * inner line, a stitching line from a cutting line, a hem's fold. Parts keep their names.
 *
 * Away from corners it lies on the true parallels within `fitTolerance`, and nowhere nearer to any part than that
 * part's distance. Corners that open are mitred up to the mitre's limit (trade-notes §1), corners that close are cut
 * where the parallels meet. Where a bend or a slot is too tight the curve is trimmed, with the finding
 * `parallel-trimmed`; where a narrow place parts it, there are several loops (`parallel-in-parts`); where nothing is
 * left, none (`parallel-vanished`).
 *
 * @param outline closed: parts in order of travel, or a path, whose parts are its segments, named "1", "2" …
 * @throws PatternError `offset-both-ways`: some parts outwards and others inwards; `edge-without-length`: no outline
 */
export function offsetOutline(
  outline: Path | readonly NamedPath[],
  by: number | ((name: string) => number),
): OutlineOffset {
  const drawn = 'segments' in outline ? segmentsNamed(outline) : outline;
  const distances = drawn.map(({ name }) => (typeof by === 'number' ? by : by(name)));
  for (const [i, { name, path }] of drawn.entries())
    locating({ edge: name }, () => {
      requirePath(path);
      requireDistance(distances[i]!, 'distance');
    });
  if (drawn.length === 0) throw withoutLength('edge-without-length', {});
  const isInward = distances.some(d => d < 0),
    reaches = distances.map(Math.abs);
  if (isInward && distances.some(d => d > 0)) throw refusal('offset-both-ways', {});
  const { min, max } = boundsOfPath(wholeOf(drawn));
  if (distance(min, max) <= leastOutline) throw withoutLength('edge-without-length', {});
  // No place within is farther from what surrounds it than half the way across.
  if (isInward && Math.min(max.x - min.x, max.y - min.y) < 2 * Math.min(...reaches))
    return { loops: [], findings: partings([], true) };
  const parts = distance(min, max) <= leastCurved ? drawn.map(inChords) : drawn;
  const whole = wholeOf(parts);
  const isReversed = isInward === signedArea(whole) > 0;
  const runs = parts.map((part, i) => runsOfPart(part, reaches[i]!, isReversed));
  const ring = (isReversed ? runs.reverse() : runs).flat();
  if (ring.length === 0) throw withoutLength('edge-without-length', {});
  const { raw, covers } = rawParallel(ring);
  const free = boundariesOf(raw, isInward ? -1 : 0, { covers });
  if ('openAt' in free) {
    const edge = free.openAt;
    return { loops: [], findings: [finding('fault', 'parallel-not-closed', { edge }, { part: edge })] };
  }
  const kept = free.filter(({ strands }) => {
    const asked = farthestMoved(strands, parts, reaches);
    return isClear(free.length === 1 ? asked.slice(0, 1) : asked, parts, reaches);
  });
  const loops = kept
    .map(({ strands }) => closedUp(isReversed ? strandsReversed(strands) : strands))
    .map(strands => ({ path: pathOfStrands(strands), stretches: stretchesOf(strands) }))
    .map(loop => ({ loop, size: Math.abs(signedArea(loop.path)) }))
    .filter(({ size }) => size > coincidenceTolerance)
    .sort((a, b) => b.size - a.size)
    .map(({ loop }) => loop);
  return { loops, findings: [...trimmed(raw, ring, loops), ...partings(loops, isInward)] };
}

const wholeOf = (parts: readonly NamedPath[]): Path => ({ segments: parts.flatMap(p => p.path.segments) });

const inChords = ({ name, path }: NamedPath): NamedPath => ({
  name,
  path: {
    segments: path.segments.flatMap((segment): readonly Segment[] => {
      const middle = pointAt(segment, 1 / 2);
      return [
        [startOf(segment), middle],
        [middle, endOf(segment)],
      ];
    }),
  },
});

const segmentsNamed = (path: Path): readonly NamedPath[] =>
  path.segments.map((segment, i) => ({ name: `${i + 1}`, path: { segments: [segment] } }));

function runsOfPart({ name, path }: NamedPath, distance: number, isReversed: boolean): readonly Run[] {
  return runsAlong(name, (isReversed ? reversedPath(path) : path).segments, distance);
}

/** The parallels joined at every corner, before loops are removed, and what is laid on of the bends that are bare among them. */
function rawParallel(runs: readonly Run[]) {
  const n = runs.length;
  const planned = withoutOverlaps(
    runs,
    runs.map((run, i) => plainJoint(run, runs[(i + 1) % n]!)),
  );
  const { ring, joints, covers } = withBareBends(runs, planned);
  const kept = ring.filter(isRun).map((run, i) => keptBetween(run.parallel, joints.at(i - 1), joints[i]));
  return { raw: closedUp(assembled(kept, joints).strands), covers };
}

/** The parallels of the parts that move farthest: what is beside one that moves less may start nearer to them. */
function farthestMoved(
  strands: readonly Strand[],
  parts: readonly NamedPath[],
  reaches: readonly number[],
): readonly Strand[] {
  const most = Math.max(...reaches);
  const names = parts.filter((_, i) => reaches[i] === most).map(({ name }) => name);
  const farthest = strands.filter(({ of, shape }) => shape === 'parallel' && names.includes(of));
  return farthest.length > 0 ? farthest : strands;
}

/**
 * Two kinds of loop lie nearer to the outline than they may: of several, one that rounding left beside a crossing;
 * and one that turned inside out, where the whole outline lies within reach: that is so at any place of it.
 */
function isClear(strands: readonly Strand[], parts: readonly NamedPath[], reaches: readonly number[]) {
  return strands.every(({ segment }) =>
    parts.every(({ path }, i) => isAway(path, startOf(segment), reaches[i]! - clearSlack)),
  );
}

const isAway = ({ segments }: Path, p: Point, least: number): boolean =>
  segments.every(
    segment =>
      distanceToBox(boxOfPoints(segment), p) >= least || nearestOnSegment(segment, p).distance >= least,
  );

/** What each part that moves lost of its parallel, other than at corners, which close as they should. */
function trimmed(
  raw: readonly Strand[],
  ring: readonly Run[],
  loops: readonly OffsetLoop[],
): readonly Finding[] {
  if (loops.length === 0) return [];
  const left = loops.flatMap(loop => loop.stretches);
  const names = new Set(ring.filter(run => run.allowance > 0).map(run => run.of));
  return [...names].flatMap(name => {
    const lostMm = lengthBeside(name, stretchesOf(raw)) - lengthBeside(name, left);
    return lostMm > fitTolerance
      ? [finding('note', 'parallel-trimmed', { edge: name }, { part: name, lostMm })]
      : [];
  });
}

/** mm of the parallel of a part. */
const lengthBeside = (name: string, stretches: readonly Stretch[]): number =>
  stretches
    .filter(({ of, shape }) => of === name && shape === 'parallel')
    .reduce((sum, { path }) => sum + pathLength(path), 0);

function partings({ length: count }: readonly OffsetLoop[], inwards: boolean): readonly Finding[] {
  if (count === 1) return [];
  if (count === 0) return [finding('warning', 'parallel-vanished', {}, { inwards })];
  return [finding('warning', 'parallel-in-parts', {}, { inwards, loops: count })];
}
