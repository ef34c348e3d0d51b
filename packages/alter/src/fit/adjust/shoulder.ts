import { edgePath, type Pattern, type Piece, type Point, pathLength } from '@paperhinge/geometry';
import { pointAlong } from '@paperhinge/geometry/paths';
import { edgesOfRole, neighboursOf, partsOfEdge, withPiece } from '@paperhinge/geometry/pattern';
import { type Affine, add, dot, identity, scale, subtract, translation } from '@paperhinge/geometry/plane';
import type { Alteration } from '../../alteration.js';
import type { Cut } from '../../hinge/cut.js';
import { openingFindings } from '../../hinge/opening-findings.js';
import { cutApart } from '../../hinge/sections.js';
import { swing } from '../../hinge/swing.js';
import { grainOrVertical } from '../../moved-edges/grain.js';
import { edgeFor } from './landmarks.js';
import { saying } from './tellings.js';

/** mm from the neck along the shoulder at which its box is cut; between there and the neck the shoulder is drawn anew. */
const fromNeck = 15;
/** mm below the underarm along the side at which its box is cut. */
const belowUnderarm = 25;

/**
 * A shoulder that is squarer or slopes more. On paper: a box is cut round shoulder and armhole, from the shoulder near
 * the neck down and out to the side below the underarm, and slid up along the grain by `by` mm (negative: down), the
 * whole armhole with it; the shoulder is then drawn straight from the neck. Rigid: the box and the rest. Source: common
 * practice, no source (trade-notes §9).
 *
 * @throws PatternError `adjust-needs-edge`; those of the hinge
 */
export function slidShoulder(pattern: Pattern, piece: Piece, by: number): Alteration {
  const shoulder = endAt(piece, edgeFor(piece, 'shoulder'), edgesOfRole(piece, 'neck'), fromNeck);
  const sideEdge = sideBesideArmhole(piece);
  const side = endAt(piece, sideEdge, [edgeFor(piece, 'armhole')], belowUnderarm);
  const { grain } = grainOrVertical(piece);
  const up = dot(grain, subtract(shoulder.point, side.point)) >= 0 ? grain : scale(grain, -1);
  // Straight down the grain from the shoulder as far as the underarm, then out to the side.
  const corner = add(shoulder.point, scale(up, dot(subtract(side.point, shoulder.point), up)));
  const cuts: readonly Cut[] = [
    { from: { edge: shoulder.edge, along: shoulder.along }, to: { pivot: corner } },
    { from: { edge: side.edge, along: side.along }, to: { pivot: corner } },
  ];
  const cutPiece = cutApart(piece, cuts);
  const armhole = edgeFor(piece, 'armhole');
  const box =
    cutPiece.sectionOf[cutPiece.stretches.findIndex(one => one.type === 'edge' && one.edge.name === armhole)];
  const motions = cutPiece.sections.map(
    (_, i): Affine => (i === box ? translation(scale(up, by)) : identity),
  );
  const rest = motions.indexOf(identity);
  const swung = swing(cutPiece, motions, rest);
  return {
    pattern: withPiece(pattern, swung.piece),
    did: saying('slid-shoulder', { piece: { piece: piece.name }, byMm: by }),
    findings: openingFindings(piece.name, swung),
    became: swung.became,
  };
}

function sideBesideArmhole(piece: Piece): string {
  const { start, end } = neighboursOf(piece, edgeFor(piece, 'armhole'));
  return edgesOfRole(piece, 'side').find(edge => edge === start || edge === end) ?? edgeFor(piece, 'side');
}

/** A place so far along an edge from its end at one of these neighbours. */
function endAt(
  piece: Piece,
  edge: string,
  beside: readonly string[],
  far: number,
): { readonly edge: string; readonly along: number; readonly point: Point } {
  const path = edgePath(piece, edge);
  const length = pathLength(path);
  const fromStart = beside.includes(neighboursOf(piece, edge).start);
  // Where a dart parts the edge, in the part beside its end.
  const own = pathLength(partsOfEdge(piece, edge).at(fromStart ? 0 : -1)!.path);
  const off = Math.min(far, own / 2);
  const along = fromStart ? off : length - off;
  return { edge, along, point: pointAlong(path, along) };
}
