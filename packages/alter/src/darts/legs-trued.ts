import { type Dart, type Piece, type Point, pathOf } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { add, distance, scale, subtract, unit } from '@paperhinge/geometry/plane';
import { nothingBecame } from '../became/became.js';
import type { Reshaped } from '../moved-edges/chains.js';
import { recomposed } from '../moved-edges/composed.js';
import { withEndMoved } from '../moved-edges/end-moved.js';
import { besideDart, replacedRound } from './beside.js';
import { mouthOf } from './mouth.js';
import { finding } from './tellings.js';

/**
 * A piece with the shorter of a dart's straight legs drawn on until it is as long as the other, and the edge beside it
 * to its new end, as paper folded along the dart and cut along the seam shows.
 */
export function withLegsTrued(piece: Piece, dart: Dart): Reshaped {
  const [a, b] = mouthOf(dart);
  const [first, second] = [distance(a, dart.apex), distance(b, dart.apex)];
  if (Math.abs(first - second) <= tolerances.coincidenceTolerance)
    return { piece, became: nothingBecame, findings: [] };
  const from = (end: Point, longer: number): Point =>
    add(dart.apex, scale(unit(subtract(end, dart.apex)), longer));
  const beside = besideDart(piece, dart);
  const shorterFirst = first < second;
  const end = shorterFirst ? from(a, second) : from(b, first);
  const legs = shorterFirst
    ? ([pathOf([end, dart.apex]), dart.legs[1]] as const)
    : ([dart.legs[0], pathOf([dart.apex, end])] as const);
  const { before, after } = beside;
  const fresh = [
    shorterFirst ? { ...before, path: withEndMoved(before.path, 'end', end) } : before,
    { ...dart, legs },
    shorterFirst ? after : { ...after, path: withEndMoved(after.path, 'start', end) },
  ];
  const done = recomposed(piece, replacedRound(beside, fresh));
  const edge = { piece: piece.name, edge: (shorterFirst ? before : after).edge.name };
  const movedMm = Math.abs(first - second);
  return { ...done, findings: [finding('note', 'dart-end-redrawn', edge, { edge, movedMm })] };
}
