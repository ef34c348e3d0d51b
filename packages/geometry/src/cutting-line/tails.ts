import { apply, mirror } from '../affine.js';
import { endOf, reversed, type Segment, startOf, tangentAt } from '../curve/segment.js';
import { nearestOnPath } from '../path/nearest.js';
import type { OutlinePart } from '../pattern/types.js';
import type { Finding } from '../telling.js';
import { joinedCorner, joiningGap } from '../tolerance.js';
import { cross, distance, dot, type Point, subtract } from '../vector.js';
import { type Flank, flankEnd, flankLength, flankStart } from './flank.js';
import { crossingOf, runOn, turnInto } from './run-on.js';
import { strandsReversed, tangentOnChain } from './strand.js';
import { finding } from './tellings.js';

/** What a drawn outline is made of: stretches of edges without a corner, legs of darts, mouths of pleats. */
export interface Node {
  readonly flank: Flank;
  readonly part: OutlinePart;
  /** Which leg of a dart this is. */
  readonly leg?: 0 | 1 | undefined;
}

/** A first or last stretch of an edge, beyond a corner in it. */
export interface EndStretch {
  readonly part: OutlinePart;
  readonly end: 'start' | 'end';
  /** Its place from that end, from 1: how many stretches go with it where it is dropped. */
  readonly count: number;
  readonly neighbour: OutlinePart;
  /** Short enough for what a corner's shape leaves of an edge. */
  readonly isShort: boolean;
  /** Whether, as drawn, its neighbour's line goes on from it without a corner. */
  readonly isRunOn: boolean;
  readonly drawn: readonly Segment[];
}

/** What is left of a ring, and which end stretches were dropped, and which kept as the edges' own. */
export interface Trimmed {
  readonly ring: readonly Node[];
  readonly findings: readonly Finding[];
  readonly kept: readonly EndStretch[];
  readonly dropped: readonly EndStretch[];
}

/**
 * Drops what the shaping of a corner or of a dart's mouth left at the end of an edge: a short last stretch, beyond a
 * corner in the edge, that has no place of its own on the stitching line once its neighbours meet.
 * @param also end stretches that are dropped, whatever they look like
 */
export function withoutTails(
  nodes: readonly Node[],
  reach: number,
  also: readonly EndStretch[] = [],
): Trimmed {
  const last = withoutEndTails(nodes, reach, 'end', also);
  const first = withoutEndTails(turnedRound(last.ring), reach, 'start', also);
  return {
    ring: turnedRound(first.ring),
    findings: [...last.findings, ...first.findings],
    kept: [...last.kept, ...first.kept],
    dropped: [...last.dropped, ...first.dropped],
  };
}

/** The ring seen the other way: starts are ends. */
const turnedRound = (nodes: readonly Node[]): readonly Node[] =>
  nodes
    .map(node => {
      const { drawn, strands } = node.flank;
      const flank = {
        ...node.flank,
        drawn: drawn.map(reversed).reverse(),
        strands: strandsReversed(strands),
      };
      return { ...node, flank };
    })
    .reverse();

function withoutEndTails(
  nodes: readonly Node[],
  reach: number,
  end: EndStretch['end'],
  also: readonly EndStretch[],
): Trimmed {
  let ring = nodes;
  const findings: Finding[] = [];
  const kept: EndStretch[] = [];
  const dropped: EndStretch[] = [];
  for (const node of nodes)
    for (let last = node, count = 1; ; count++) {
      const i = ring.indexOf(last);
      const main = ring.at(i - 1)!,
        neighbour = ring[(i + 1) % ring.length]!;
      if (!isEndStretch(main, last, neighbour)) break;
      const { part, flank } = last;
      const isShort = flankLength(flank) <= longestAt(last, neighbour);
      const isRunOn = Math.abs(turnInto(flank, neighbour.flank)) <= joinedCorner;
      const stretch = { part, end, count, neighbour: neighbour.part, isShort, isRunOn, drawn: flank.drawn };
      const known = also.some(a => a.part === part && a.end === end && a.count >= count);
      if (!known && (count > 1 || !isTail(main, last, neighbour, reach))) {
        kept.push(stretch);
        break;
      }
      const gone = last;
      ring = ring.filter(r => r !== gone);
      dropped.push(stretch);
      findings.push(droppedAt(gone, neighbour));
      last = main;
    }
  return { ring, findings, kept, dropped };
}

/** Times the wider allowance. */
const longestTail = 4;

const isEndStretch = (main: Node, node: Node, neighbour: Node): boolean =>
  main !== node && main.part === node.part && node.part.type === 'edge' && neighbour.part !== node.part;

const longestAt = ({ flank }: Node, neighbour: Node): number =>
  longestTail * Math.max(flank.allowance, neighbour.flank.allowance);

function isTail(main: Node, node: Node, neighbour: Node, reach: number): boolean {
  const { flank } = node;
  if (flankLength(flank) > Math.min(longestAt(node, neighbour), flankLength(main.flank))) return false;
  // Next to a dart nothing short and bent off belongs to the stitching line: it is the tip of a folded mouth.
  return (
    neighbour.part.type === 'dart' ||
    !hasPlace(main.flank, flank, neighbour.flank, reach) ||
    isShapedEnd(flank, main.flank, neighbour.flank, reach)
  );
}

/** Whether a middle stretch keeps some of its length, and no more than it was drawn with, between its neighbours. */
function hasPlace(before: Flank, middle: Flank, after: Flank, reach: number): boolean {
  const first = crossingOf(before, middle, reach),
    second = crossingOf(middle, after, reach);
  if (!first || !second) return false;
  const along = dot(subtract(second.point, first.point), tangentAt(middle.drawn[0]!, 0));
  return along > joiningGap && along <= flankLength(middle) + joiningGap;
}

/**
 * Whether a last stretch is the end of a pressed-open or turned-up allowance: the mirror image of the line it leaves,
 * in the stitching line that its neighbour or its own edge has at the corner. Or the step by which a wider allowance
 * ends square to its edge.
 */
function isShapedEnd(tail: Flank, main: Flank, neighbour: Flank, reach: number): boolean {
  // Moved in, the two meet without it: a step between unlike allowances along one smooth line.
  if (distance(flankEnd(main), flankStart(neighbour)) <= joiningGap) return true;
  const corner = crossingOf(main, neighbour, reach);
  if (!corner) return false;
  const inner = startOf(tail.drawn[0]!),
    outer = endOf(tail.drawn.at(-1)!);
  const folds = (axis: Point, pivot: Point, tip: Point, source: Flank): boolean =>
    Math.abs(cross(axis, subtract(pivot, corner.point))) <= joiningGap &&
    nearestOnPath({ segments: source.drawn }, apply(mirror(corner.point, axis), tip)).distance <= joiningGap;
  return (
    Math.abs(distance(inner, corner.point) - main.allowance) <= joiningGap ||
    folds(tangentOnChain(runOn(neighbour, reach), corner.after), inner, outer, main) ||
    folds(tangentOnChain(runOn(main, reach), corner.before), outer, inner, neighbour)
  );
}

function droppedAt({ part, flank }: Node, neighbour: Node): Finding {
  const lengthMm = flankLength(flank),
    edge = { edge: part.name },
    next = neighbour.part.name;
  return neighbour.part.type === 'dart'
    ? finding('note', 'dart-tip-dropped', edge, { edge, dart: { dart: next }, lengthMm })
    : finding('note', 'corner-tail-dropped', edge, { edges: [edge, { edge: next }], lengthMm });
}
