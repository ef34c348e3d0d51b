import { segmentLength } from '../curve/arc-length.js';
import { isLine, type Segment, tangentAt } from '../curve/segment.js';
import { partsOfEdge } from '../pattern/outline.js';
import { requireWholePiece } from '../pattern/require-whole.js';
import type { Pattern, Piece } from '../pattern/types.js';
import { cornerTurn, joiningGap, kinkTurn, seamTolerance, stepReach } from '../tolerance.js';
import { angleBetween } from '../vector.js';
import { isLeftToTrue } from './left-to-true.js';

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
 * (a square neck), unless a short straight bridge turns one way and back (a step that a swing left behind) or the
 * pattern says that an alteration left it.
 */
export function edgeTruing(
  piece: Piece,
  edge: string,
  pattern: Pick<Pattern, 'leftToTrue'> = {},
): EdgeTruing {
  requireWholePiece(piece);
  const kinks: Kink[] = [],
    steps: { alongMm: number; stepMm: number }[] = [];
  let along = 0;
  for (const part of partsOfEdge(piece, edge)) {
    const segments = part.path.segments.map(segment => ({ segment, length: segmentLength(segment) }));
    const lasting = segments.filter(s => s.length > joiningGap);
    const ends: number[] = [];
    for (const { length } of lasting) ends.push((ends.at(-1) ?? along) + length);
    const turns = lasting.slice(1).map(({ segment }, i) => turnBetween(lasting[i]!.segment, segment));
    const left = ends.map(at => isLeftToTrue(pattern, { piece: piece.name, edge, at }));
    const inStep = new Set<number>();
    turns.slice(1).forEach((turn, i) => {
      const { segment, length } = lasting[i + 1]!;
      const back = turns[i]!;
      if (!isLine(segment) || (length > stepReach && !(left[i] && left[i + 1]))) return;
      const stepMm = length * Math.sin(Math.min(Math.abs(turn), Math.abs(back), Math.PI / 2));
      if (Math.sign(turn) === Math.sign(back)) return;
      const isSeen = stepMm > seamTolerance;
      if (isSeen) steps.push({ alongMm: ends[i]!, stepMm });
      // However sharp the two turns of a step that nobody sees.
      if (isSeen || Math.min(Math.abs(turn), Math.abs(back)) > cornerTurn) inStep.add(i).add(i + 1);
    });
    // A rest at the edge's end that nobody sees has no direction: where the edge runs on its corner is seen.
    const isWithin = (at: number): boolean =>
      Math.min(at - along, (ends.at(-1) ?? along) - at) > seamTolerance;
    turns.forEach((turn, i) => {
      const isKink =
        Math.abs(turn) > kinkTurn && (Math.abs(turn) <= cornerTurn || (left[i] && isWithin(ends[i]!)));
      if (isKink && !inStep.has(i)) kinks.push({ alongMm: ends[i]!, turn });
    });
    along = ends.at(-1) ?? along;
  }
  return { kinks, steps };
}

const turnBetween = (first: Segment, second: Segment): number =>
  angleBetween(tangentAt(first, 1), tangentAt(second, 0));
