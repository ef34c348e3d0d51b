import { type Piece, pathLength, polyline } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { type EdgePosition, outlinePath, pathsOfPart, resolvePosition } from '@paperhinge/geometry/pattern';
import { pivotOf } from '../darts/pivot.js';
import { type Cut, type CutEnd, pointOfEnd } from '../hinge/cut.js';
import { partOffsets } from '../hinge/ring.js';
import { refusal as hingeRefusal } from '../hinge/tellings.js';
import { refusal as movedEdgesRefusal } from '../moved-edges/tellings.js';
import { cutBetween } from '../neckline/drawn.js';
import { refusal as necklineRefusal } from '../neckline/tellings.js';
import { refusal } from './tellings.js';

/** Where a division begins or ends: at a place of an edge, or at a dart, whose legs then lie in the new seam. */
export interface DivisionEnd {
  readonly edge?: string;
  /** Absent = the middle of the edge. */
  readonly at?: EdgePosition;
  readonly dart?: string;
}

/** The cut of a division: along a line drawn on the piece, or straight between its ends, by way of a mark. */
export interface DivisionWish {
  readonly line?: string;
  readonly from?: DivisionEnd;
  readonly to?: DivisionEnd;
  readonly through?: string;
}

/**
 * @throws PatternError `unknown-line`, `line-ends-off-outline`, `line-crosses-dart`; `division-end-unclear`,
 *   `unknown-edge`, `unknown-dart`, `unknown-mark`, `slash-too-short` where both ends are one
 */
export function divisionCut(piece: Piece, { line, from, to, through }: DivisionWish): Cut {
  if (line !== undefined) return alongLine(piece, line);
  const ends = [from!, to!].map(end => cutEnd(piece, end));
  if (from!.dart !== undefined && from!.dart === to!.dart)
    throw hingeRefusal('slash-too-short', {}, { piece: piece.name });
  const by = pivotOf(piece, { ...(through === undefined ? {} : { pivot: through }) });
  const points = [pointOfEnd(piece, ends[0]!), ...(by ? [by] : []), pointOfEnd(piece, ends[1]!)];
  return { from: ends[0]!, to: ends[1]!, ...(by ? { course: polyline(...points) } : {}) };
}

function cutEnd(piece: Piece, { edge, at, dart }: DivisionEnd): CutEnd {
  if ((edge === undefined) === (dart === undefined))
    throw refusal('division-end-unclear', { piece: { piece: piece.name } }, { piece: piece.name });
  if (dart !== undefined) return { dart };
  return { edge: edge!, along: resolvePosition(piece, edge!, at ?? { share: 0.5 }) };
}

function alongLine(piece: Piece, name: string): Cut {
  const drawn = piece.lines.find(l => l.name === name);
  if (!drawn)
    throw movedEdgesRefusal(
      'unknown-line',
      { piece: piece.name, name, names: piece.lines.map(l => l.name) },
      { piece: piece.name },
    );
  const { path, from, to } = cutBetween(piece, name, drawn.path, outlinePath(piece.outline));
  return { from: endOnOutline(piece, from), to: endOnOutline(piece, to), course: path };
}

/** The place on an edge that lies so many mm along the outline. @throws PatternError `line-crosses-dart` */
export function endOnOutline(piece: Piece, along: number): CutEnd {
  const offsets = partOffsets(piece);
  let start = 0;
  for (const part of piece.outline.parts) {
    const length = pathsOfPart(part).reduce((sum, path) => sum + pathLength(path), 0);
    const within = along - start;
    start += length;
    if (within > length + tolerances.coincidenceTolerance) continue;
    if (part.type === 'edge')
      return { edge: part.name, along: offsets.get(part)! + Math.min(within, length) };
    if (within < length - tolerances.joiningGap)
      throw necklineRefusal(
        'line-crosses-dart',
        { dart: { piece: piece.name, [part.type]: part.name } },
        { piece: piece.name },
      );
  }
  throw new Error('A place on the outline lies on one of its parts.');
}
