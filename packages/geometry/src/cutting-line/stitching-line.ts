import { apply, mirror } from '../affine.js';
import { boundsOf, boxesMeet } from '../curve/bounds.js';
import { curvatureAt } from '../curve/curvature.js';
import { intersectSegments } from '../curve/intersect.js';
import { endOf, startOf, tangentAt } from '../curve/segment.js';
import { locating } from '../errors.js';
import { nearestOnPath } from '../path/nearest.js';
import type { Path } from '../path/path.js';
import type { Dart, Edge, OutlinePart, Pleat } from '../pattern/types.js';
import type { Finding } from '../telling.js';
import { coincidenceTolerance, joinedCorner, joiningGap, visibleLength } from '../tolerance.js';
import { add, angleBetween, cross, distance, dot, type Point, scale, subtract } from '../vector.js';
import { stretched } from './assemble.js';
import { type Flank, flankLength, flanksOf } from './flank.js';
import { requireAllowance, requireParts } from './sound.js';
import { isBefore, type Place, type Strand, strandsBetween } from './strand.js';
import { finding, refusal } from './tellings.js';

/** The outline of a piece on its stitching line, found from its cutting line. */
export interface StitchingLine {
  readonly parts: readonly OutlinePart[];
  /** What was dropped on the way: corner tails and dart tips that lie outside the stitching line. */
  readonly findings: readonly Finding[];
}

/**
 * The stitching line of an outline drawn on its cutting line (clockwise, as an {@link OutlinePart} ring): each edge is
 * moved inwards by the allowance `included` says was drawn with it (mm), neighbours are cut at or run on straight to
 * their crossing, and dart legs are cut at the new line. Allowances and corner rules stay as the edges carry them.
 *
 * Error: the parallels' `fitTolerance`; straight edges exactly.
 * @throws PatternError `included-allowance-too-wide`: an edge has no room left for it
 */
export function stitchingLine(
  drawn: readonly OutlinePart[],
  included: (edge: Edge) => number,
): StitchingLine {
  requireParts(drawn);
  const allowance = (edge: Edge): number =>
    edge.kind === 'fold' || edge.kind === 'raw' ? 0 : included(edge);
  for (const part of drawn)
    if (part.type === 'edge') locating({ edge: part.name }, () => requireAllowance(allowance(part)));
  const findings: Finding[] = [];
  const reach = extension * Math.max(1, ...drawn.map(p => (p.type === 'edge' ? allowance(p) : 0)));
  const nodes = drawn.flatMap((part): readonly Node[] =>
    part.type === 'dart'
      ? [legNode(part, 0), legNode(part, 1)]
      : part.type === 'pleat'
        ? [mouthNode(part)]
        : flanksOf(part, allowance(part)).map(flank => ({ flank, part })),
  );
  const ring = withoutTails(nodes, reach, findings);
  const kept = cutToMeet(ring, reach, findings);
  const pathOf = (part: OutlinePart, leg?: 0 | 1): Path => ({
    segments: ring.flatMap((node, i) =>
      node.part === part && node.leg === leg ? kept[i]!.map(s => s.segment) : [],
    ),
  });
  const parts = drawn.map(
    (part): OutlinePart =>
      part.type === 'edge'
        ? { ...part, path: pathOf(part) }
        : part.type === 'pleat'
          ? { ...part, mouth: pathOf(part) }
          : { ...part, legs: [pathOf(part, 0), pathOf(part, 1)] },
  );
  return { parts, findings };
}

/** Of the largest allowance: how far an edge is run on in search of its neighbour. A corner of 6° needs no more. */
const extension = 20;

interface Node {
  readonly flank: Flank;
  readonly part: OutlinePart;
  /** Which leg of a dart this is. */
  readonly leg?: 0 | 1;
}

/** A dart's leg, run on beyond the mouth only. */
function legNode(dart: Dart, leg: 0 | 1): Node {
  const path = dart.legs[leg];
  const strands = path.segments.map(segment => ({ segment, of: dart.name, shape: 'dart' as const }));
  return { part: dart, leg, flank: { of: dart.name, allowance: 0, drawn: path.segments, strands } };
}

/** A pleat's mouth, where it was drawn. */
function mouthNode(pleat: Pleat): Node {
  const { name, mouth } = pleat;
  const strands = mouth.segments.map(segment => ({ segment, of: name, shape: 'parallel' as const }));
  return { part: pleat, flank: { of: name, allowance: 0, drawn: mouth.segments, strands } };
}

/**
 * Drops what the shaping of a corner or of a dart's mouth left at the end of an edge: a short last stretch, beyond a
 * corner in the edge, that has no place of its own on the stitching line once its neighbours meet.
 */
function withoutTails(nodes: readonly Node[], reach: number, findings: Finding[]): readonly Node[] {
  let ring = [...nodes];
  for (const side of ['end', 'start'] as const)
    for (const node of nodes) {
      const n = ring.length,
        i = ring.indexOf(node),
        step = side === 'end' ? 1 : -1;
      if (i < 0) continue;
      const main = ring[(i + n - step) % n]!,
        neighbour = ring[(i + n + step) % n]!;
      if (main.part !== node.part || node.part.type !== 'edge' || neighbour.part === node.part) continue;
      const widest = Math.max(node.flank.allowance, neighbour.flank.allowance);
      const longest = Math.min(longestTail * widest, flankLength(main.flank));
      if (widest === 0 || flankLength(node.flank) > longest) continue;
      const order = side === 'end' ? [main, node, neighbour] : [neighbour, node, main];
      // Next to a dart nothing short and bent off belongs to the stitching line: it is the tip of a folded mouth.
      const isTip = neighbour.part.type === 'dart';
      if (
        !isTip &&
        hasPlace(order[0]!.flank, node.flank, order[2]!.flank, reach) &&
        !isShapedEnd(node.flank, main.flank, neighbour.flank, side, reach)
      )
        continue;
      ring = ring.filter(r => r !== node);
      findings.push(dropped(node, neighbour));
    }
  return ring;
}

const longestTail = 4;

/** Whether a middle stretch keeps some of its length, and no more than it was drawn with, between its neighbours. */
function hasPlace(before: Flank, middle: Flank, after: Flank, reach: number): boolean {
  const first = crossingOf(before, middle, reach),
    second = crossingOf(middle, after, reach);
  if (!first || !second) return false;
  const tangent = tangentAt(middle.drawn[0]!, 0);
  const along = dot(subtract(second.point, first.point), tangent);
  return along > 0 && along <= flankLength(middle) + joiningGap;
}

/**
 * Whether a last stretch is the end of a pressed-open or turned-up allowance: the mirror image of the line it leaves,
 * in the stitching line that its neighbour or its own edge has at the corner. Or the step by which a wider allowance
 * ends square to its edge.
 */
function isShapedEnd(
  tail: Flank,
  main: Flank,
  neighbour: Flank,
  side: 'start' | 'end',
  reach: number,
): boolean {
  // Moved in, the two meet without it: a step between unlike allowances along one smooth line.
  const [mainEnd, neighbourEnd] =
    side === 'end'
      ? [endOf(main.strands.at(-1)!.segment), startOf(neighbour.strands[0]!.segment)]
      : [startOf(main.strands[0]!.segment), endOf(neighbour.strands.at(-1)!.segment)];
  if (distance(mainEnd, neighbourEnd) <= joiningGap) return true;
  const corner = side === 'end' ? crossingOf(main, neighbour, reach) : crossingOf(neighbour, main, reach);
  if (!corner) return false;
  const first = startOf(tail.drawn[0]!),
    last = endOf(tail.drawn.at(-1)!);
  const [inner, outer] = side === 'end' ? [first, last] : [last, first];
  const on = ({ strands }: Flank, place: Place): Point =>
    tangentAt(extendedStrand(strands, place).segment, place.t);
  const [mainPlace, neighbourPlace] =
    side === 'end' ? [corner.before, corner.after] : [corner.after, corner.before];
  const folds = (axis: Point, pivot: Point, tip: Point, source: Flank): boolean =>
    Math.abs(cross(axis, subtract(pivot, corner.point))) <= joiningGap &&
    nearestOnPath({ segments: source.drawn }, apply(mirror(corner.point, axis), tip)).distance <= joiningGap;
  const isStep = Math.abs(distance(inner, corner.point) - main.allowance) <= joiningGap;
  return (
    isStep ||
    folds(on(neighbour, neighbourPlace), inner, outer, main) ||
    folds(on(main, mainPlace), outer, inner, neighbour)
  );
}

/** The strand of a run-on flank at a place: beyond its ends, the one that is run on. */
const extendedStrand = (strands: readonly Strand[], { index }: Place): Strand =>
  strands[Math.min(strands.length - 1, Math.max(0, index - 1))]!;

function dropped({ part, flank }: Node, neighbour: Node): Finding {
  const lengthMm = flankLength(flank),
    edge = { edge: part.name },
    next = neighbour.part.name;
  return neighbour.part.type === 'dart'
    ? finding('note', 'dart-tip-dropped', edge, { edge, dart: { dart: next }, lengthMm })
    : finding('note', 'corner-tail-dropped', edge, { edges: [edge, { edge: next }], lengthMm });
}

/** Each node's strands between its crossings with the node before and after. */
function cutToMeet(
  ring: readonly Node[],
  reach: number,
  findings: Finding[],
): readonly (readonly Strand[])[] {
  const n = ring.length;
  const crossings = ring.map((node, i) => {
    const next = ring[(i + 1) % n]!;
    if (node.part === next.part && node.leg === 0) return undefined; // a dart's legs meet in its apex, which stays
    const crossing = crossingOf(node.flank, next.flank, reach);
    if (!crossing) return notMet(node, next, findings);
    tellRunOn(node, next, crossing, findings);
    return crossing;
  });
  return ring.map((node, i) => {
    const into = crossings.at(i - 1),
      out = crossings[i];
    const { strands } = extended(node.flank, reach);
    const from = into?.after ?? { index: 1, t: 0 },
      to = out?.before ?? { index: strands.length - 2, t: 1 };
    if (isBefore(to, from))
      throw refusal(
        'included-allowance-too-wide',
        { edge: { edge: node.part.name } },
        { edge: node.part.name },
      );
    const kept = strandsBetween(strands, from, to);
    return drawnTo(kept, into?.point, out?.point);
  });
}

/** The ends of a chain moved onto the points where it meets its neighbours, a rounding away. */
function drawnTo(
  strands: readonly Strand[],
  from: Point | undefined,
  to: Point | undefined,
): readonly Strand[] {
  const last = strands.length - 1;
  return strands.map((strand, i) => {
    const start = i === 0 && from ? from : startOf(strand.segment);
    const end = i === last && to ? to : endOf(strand.segment);
    return { ...strand, segment: stretched(strand.segment, start, end) };
  });
}

function notMet(node: Node, next: Node, findings: Finding[]): undefined {
  const edges = [node, next].map(({ part }) => ({ edge: part.name }));
  findings.push(finding('warning', 'corner-not-recovered', { edge: node.part.name }, { edges }));
  return undefined;
}

/**
 * A curve whose end its neighbour's allowance covers was cut off with it: it is run on straight, and where it would bend
 * away from that by as much as can be seen, the corner is a guess.
 */
function tellRunOn(node: Node, next: Node, { before, after, point }: Crossing, findings: Finding[]): void {
  const first = node.flank.strands.at(-1)!.segment,
    second = next.flank.strands[0]!.segment;
  const runOns = [
    before.index > node.flank.strands.length ? { end: endOf(first), bend: curvatureAt(first, 1) } : undefined,
    after.index === 0 ? { end: startOf(second), bend: curvatureAt(second, 0) } : undefined,
  ].filter(end => end !== undefined);
  for (const { end, bend } of runOns) {
    const lengthMm = distance(end, point);
    // A circle leaves its tangent by half the square of the way along it over its radius.
    if (!(Math.abs(bend) * lengthMm ** 2 >= 2 * visibleLength)) continue;
    const edges = [node, next].map(({ part }) => ({ edge: part.name }));
    findings.push(finding('warning', 'corner-guessed', { edge: node.part.name }, { edges, lengthMm }));
    return;
  }
}

interface Crossing {
  readonly before: Place;
  readonly after: Place;
  readonly point: Point;
}

/** Where one flank, run on, meets the next: of several places the one nearest to the corner as it was drawn. */
function crossingOf(first: Flank, second: Flank, reach: number): Crossing | undefined {
  const a = extended(first, reach).strands,
    b = extended(second, reach).strands;
  const end = endOf(first.strands.at(-1)!.segment),
    start = startOf(second.strands[0]!.segment);
  const turn = angleBetween(
    tangentAt(first.strands.at(-1)!.segment, 1),
    tangentAt(second.strands[0]!.segment, 0),
  );
  const gap = distance(end, start);
  // Ends all but together are one point, unless a real corner there says just where.
  if (gap <= coincidenceTolerance || (gap <= joiningGap && Math.abs(turn) <= joinedCorner))
    return {
      before: { index: a.length - 2, t: 1 },
      after: { index: 1, t: 0 },
      point: scale(add(end, start), 1 / 2),
    };
  const corner = endOf(first.drawn.at(-1)!);
  const boxes = b.map(s => boundsOf(s.segment));
  let best: Crossing | undefined;
  for (const [i, { segment }] of a.entries()) {
    const box = boundsOf(segment);
    for (const [k, other] of b.entries()) {
      if (!boxesMeet(box, boxes[k]!, coincidenceTolerance)) continue;
      for (const { ta, tb, point } of intersectSegments(segment, other.segment))
        if (!best || distance(point, corner) < distance(best.point, corner))
          best = { before: { index: i, t: ta }, after: { index: k, t: tb }, point };
    }
  }
  return best;
}

/** A flank run on straight at both ends; its own strands start at index 1. */
function extended({ strands, of }: Flank, reach: number): { readonly strands: readonly Strand[] } {
  const first = strands[0]!.segment,
    last = strands.at(-1)!.segment;
  const start = startOf(first),
    end = endOf(last);
  const lead: Strand = {
    segment: [subtract(start, scale(tangentAt(first, 0), reach)), start],
    of,
    shape: 'corner',
  };
  const tail: Strand = { segment: [end, add(end, scale(tangentAt(last, 1), reach))], of, shape: 'corner' };
  return { strands: [lead, ...strands, tail] };
}
