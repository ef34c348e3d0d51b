import { segmentLength } from '../curve/arc-length.js';
import { isLine, type Segment, tangentAt } from '../curve/segment.js';
import type { Finding } from '../errors.js';
import { edgeNames, edgeParts, partsOfEdge } from '../pattern/outline.js';
import type { Edge, Pattern, Piece } from '../pattern/types.js';
import {
  blendReach,
  cornerTurn,
  joiningGap,
  kinkTurn,
  seamTolerance,
  squareTurn,
  stepReach,
} from '../tolerance.js';
import { angleBetween } from '../vector.js';
import { cornerAt, type EdgeEnd } from './corner.js';
import { type JoinedLine, weldedLines } from './joined-lines.js';

/** A place on an edge that is not smooth. */
export interface Kink {
  /** mm from the edge's start, darts' mouths not counted. */
  readonly alongMm: number;
  /** rad, positive where the line turns towards the cloth (clockwise). */
  readonly turn: number;
}

/** What an edge still needs before it is true. */
export interface EdgeTruing {
  readonly kinks: readonly Kink[];
  /** Short bridges that shift the line sideways, with the shift in mm. */
  readonly steps: readonly { readonly alongMm: number; readonly stepMm: number }[];
}

/**
 * Kinks over `kinkTurn` and steps inside an edge. A turn over `cornerTurn` is taken for a corner the maker meant
 * (a square neck), unless a short straight bridge turns one way and back: a step that a swing left behind.
 */
export function edgeTruing(piece: Piece, edge: string): EdgeTruing {
  const kinks: Kink[] = [],
    steps: { alongMm: number; stepMm: number }[] = [];
  let along = 0;
  for (const part of partsOfEdge(piece, edge)) {
    const segments = part.path.segments.map(segment => ({ segment, length: segmentLength(segment) }));
    const lasting = segments.filter(s => s.length > joiningGap);
    const ends: number[] = [];
    for (const { length } of lasting) ends.push((ends.at(-1) ?? along) + length);
    const turns = lasting.slice(1).map(({ segment }, i) => turnBetween(lasting[i]!.segment, segment));
    const inStep = new Set<number>();
    turns.slice(1).forEach((turn, i) => {
      const { segment, length } = lasting[i + 1]!;
      const back = turns[i]!;
      if (!isLine(segment) || length > stepReach || Math.min(Math.abs(turn), Math.abs(back)) <= kinkTurn)
        return;
      const stepMm = length * Math.sin(Math.min(Math.abs(turn), Math.abs(back), Math.PI / 2));
      if (Math.sign(turn) === Math.sign(back) || stepMm <= seamTolerance) return;
      steps.push({ alongMm: ends[i]!, stepMm });
      inStep.add(i).add(i + 1);
    });
    turns.forEach((turn, i) => {
      if (Math.abs(turn) > kinkTurn && Math.abs(turn) <= cornerTurn && !inStep.has(i))
        kinks.push({ alongMm: ends[i]!, turn });
    });
    along = ends.at(-1) ?? along;
  }
  return { kinks, steps };
}

const turnBetween = (first: Segment, second: Segment): number =>
  angleBetween(tangentAt(first, 1), tangentAt(second, 0));

/** Kinks, steps, welds and fold corners that are not true, on every edge of a piece, as findings. */
export const truingFindings = (pattern: Pattern, piece: Piece): readonly Finding[] => [
  ...edgeNames(piece).flatMap(edge => brokenEdge(piece, edge)),
  ...weldedLines(pattern, piece).flatMap(kinkedWeld),
  ...foldCorners(piece),
];

function brokenEdge(piece: Piece, edge: string): readonly Finding[] {
  const { kinks, steps } = edgeTruing(piece, edge);
  const name = `${piece.name}.${edge}`;
  const remedy = `Redraw it with a fair line: true: { edges: [${name}] }.`;
  const where = { piece: piece.name, edge };
  const findings: Finding[] = [];
  if (kinks.length > 0) {
    const sharpest = kinks.reduce((p, q) => (Math.abs(q.turn) > Math.abs(p.turn) ? q : p));
    const angleDeg = (Math.abs(sharpest.turn) * 180) / Math.PI;
    findings.push({
      severity: 'warning',
      code: 'edge-kinked',
      where,
      message:
        `${name} has ${kinks.length === 1 ? 'a kink' : `${kinks.length} kinks, the sharpest`} of ` +
        `${angleDeg.toFixed(1)}° ${sharpest.alongMm.toFixed(0)} mm from its start.`,
      figures: { count: kinks.length, angleDeg, alongMm: sharpest.alongMm },
      remedy,
    });
  }
  for (const { alongMm, stepMm } of steps)
    findings.push({
      severity: 'warning',
      code: 'edge-stepped',
      where,
      message: `${name} steps by ${stepMm.toFixed(1)} mm, ${alongMm.toFixed(0)} mm from its start.`,
      figures: { stepMm, alongMm },
      remedy,
    });
  return findings;
}

/** Two edges that were welded at an angle; over `cornerTurn` it is a corner that the maker meant. */
function kinkedWeld({ first, second, cornerDeg }: JoinedLine): readonly Finding[] {
  const angleDeg = Math.abs(cornerDeg);
  const turn = (angleDeg * Math.PI) / 180;
  if (turn <= kinkTurn || turn > cornerTurn) return [];
  const [one, two] = [`${first.piece}.${first.edge}`, `${second.piece}.${second.edge}`];
  return [
    {
      severity: 'warning',
      code: 'edge-kinked',
      where: first,
      message: `${one} runs on as ${two} with a kink of ${angleDeg.toFixed(1)}°.`,
      figures: { count: 1, angleDeg },
      remedy: `Redraw both with a fair line: true: { edges: [${one}, ${two}] }.`,
    },
  ];
}

/**
 * Lines that meet a fold must meet it squarely, or the garment shows a point or a dip. An angle over `cornerTurn`
 * away from square is meant (a V) and passes.
 */
function foldCorners(piece: Piece): readonly Finding[] {
  const ends: readonly EdgeEnd[] = ['start', 'end'];
  return edgeParts(piece)
    .filter(edge => edge.kind === 'fold')
    .flatMap(fold => ends.flatMap(end => foldCorner(piece, fold, end)));
}

function foldCorner(piece: Piece, fold: Edge, end: EdgeEnd): readonly Finding[] {
  const { neighbour, interior } = cornerAt(piece, fold.name, end);
  const off = interior - Math.PI / 2;
  if (neighbour.type !== 'edge' || Math.abs(off) <= squareTurn || Math.abs(off) > cornerTurn) return [];
  const name = `${piece.name}.${neighbour.name}`;
  const angleDeg = (interior * 180) / Math.PI;
  // The corner in the garment is twice as far from straight; see joined-lines.ts for the fair curve's height.
  const amountMm = (blendReach * Math.sin(Math.abs(off))) / 2;
  return [
    {
      severity: 'warning',
      code: 'fold-corner-not-square',
      where: { piece: piece.name, edge: neighbour.name },
      message:
        `${name} meets the fold at ${angleDeg.toFixed(1)}° instead of 90°: ` +
        `unfolded it shows ${off < 0 ? 'a point' : 'a dip'} at the centre.`,
      figures: { angleDeg, amountMm },
      remedy:
        `Draw it square to the fold (about ${amountMm.toFixed(1)} mm ${off < 0 ? 'off' : 'on'} there): ` +
        `true: { edges: [${name}] }.`,
    },
  ];
}
