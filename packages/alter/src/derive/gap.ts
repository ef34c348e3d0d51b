import {
  type EdgeRef,
  edgeNamed,
  edgeNames,
  edgePath,
  type Pattern,
  type Piece,
  pieceNamed,
} from '@paperhinge/geometry';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { copiesInGarment, isCentreEdge, neighboursOf } from '@paperhinge/geometry/pattern';
import { apply, distance, mirror, subtract } from '@paperhinge/geometry/plane';
import { refusal } from './tellings.js';

/**
 * G: the straight distance in mm over which a band bridges an edge. Where the edge ends on the fold or on a centre
 * edge: from its outer end to that end's mirror image; else from end to end, as often as the edge stands in the
 * garment.
 *
 * @throws PatternError `unknown-piece`, `unknown-edge`; `gap-also-along`; `gap-not-beside` where it touches none of
 *   the edges
 */
export function gapAcross(pattern: Pattern, gap: EdgeRef, along: readonly EdgeRef[]): number {
  const piece = pieceNamed(pattern, gap.piece);
  const path = edgePath(piece, gap.edge);
  const beside = neighboursOf(piece, gap.edge);
  const isAlong = (name: string): boolean => along.some(a => a.piece === gap.piece && a.edge === name);
  if (isAlong(gap.edge)) throw refusal('gap-also-along', { gap: { ...gap } }, { ...gap });
  if (!isAlong(beside.start) && !isAlong(beside.end))
    throw refusal('gap-not-beside', { gap: { ...gap }, neighbours: [beside.start, beside.end] }, { ...gap });
  const centre = [beside.start, beside.end].find(name => isCentre(piece, name));
  if (centre === undefined) return copiesInGarment(piece) * distance(pathStart(path), pathEnd(path));
  const outer = centre === beside.start ? pathEnd(path) : pathStart(path);
  const line = edgePath(piece, centre);
  const image = apply(mirror(pathStart(line), subtract(pathEnd(line), pathStart(line))), outer);
  return distance(outer, image);
}

const isCentre = (piece: Piece, name: string): boolean =>
  edgeNames(piece).includes(name) && isCentreEdge(edgeNamed(piece, name));
