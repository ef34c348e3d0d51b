import { apply, mirror } from '../affine.js';
import { endOf, reversed, startOf, tangentAt } from '../curve/segment.js';
import { nearestOnPath } from '../path/nearest.js';
import type { OutlinePart } from '../pattern/types.js';
import type { Finding } from '../telling.js';
import { joiningGap } from '../tolerance.js';
import { cross, distance, dot, type Point, subtract } from '../vector.js';
import { type Flank, flankEnd, flankLength, flankStart } from './flank.js';
import { crossingOf, runOn } from './run-on.js';
import { strandsReversed, tangentOnChain } from './strand.js';
import { finding } from './tellings.js';

/** What a drawn outline is made of: stretches of edges without a corner, legs of darts, mouths of pleats. */
export interface Node {
  readonly flank: Flank;
  readonly part: OutlinePart;
  /** Which leg of a dart this is. */
  readonly leg?: 0 | 1;
}

/**
 * Drops what the shaping of a corner or of a dart's mouth left at the end of an edge: a short last stretch, beyond a
 * corner in the edge, that has no place of its own on the stitching line once its neighbours meet.
 */
export function withoutTails(nodes: readonly Node[], reach: number, findings: Finding[]): readonly Node[] {
  const withoutLast = withoutEndTails(nodes, reach, findings);
  return turnedRound(withoutEndTails(turnedRound(withoutLast), reach, findings));
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

function withoutEndTails(nodes: readonly Node[], reach: number, findings: Finding[]): readonly Node[] {
  let ring = nodes;
  for (const node of nodes) {
    const i = ring.indexOf(node);
    const main = ring.at(i - 1)!,
      neighbour = ring[(i + 1) % ring.length]!;
    if (!isTail(main, node, neighbour, reach)) continue;
    ring = ring.filter(r => r !== node);
    findings.push(dropped(node, neighbour));
  }
  return ring;
}

/** Times the wider allowance. */
const longestTail = 4;

function isTail(main: Node, node: Node, neighbour: Node, reach: number): boolean {
  if (main.part !== node.part || node.part.type !== 'edge' || neighbour.part === node.part) return false;
  const { flank } = node;
  const widest = Math.max(flank.allowance, neighbour.flank.allowance);
  if (flankLength(flank) > Math.min(longestTail * widest, flankLength(main.flank))) return false;
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

function dropped({ part, flank }: Node, neighbour: Node): Finding {
  const lengthMm = flankLength(flank),
    edge = { edge: part.name },
    next = neighbour.part.name;
  return neighbour.part.type === 'dart'
    ? finding('note', 'dart-tip-dropped', edge, { edge, dart: { dart: next }, lengthMm })
    : finding('note', 'corner-tail-dropped', edge, { edges: [edge, { edge: next }], lengthMm });
}
