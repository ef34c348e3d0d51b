import {
  type EdgeRef,
  edgeNamed,
  edgeNames,
  edgePath,
  type Finding,
  type Pattern,
  type Piece,
  pathLength,
  pieceNamed,
  type Seam,
  walkSeam,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { holdsEdge } from '../edge-refs.js';
import { neckOf } from '../neckline/neck-edge.js';
import { finding } from './tellings.js';

/** A shoulder that was cut no longer matches its partner: said here, where the maker can still recut that too. */
export function shoulderFindings(before: Pattern, after: Pattern, name: string): readonly Finding[] {
  return cutEdges(pieceNamed(before, name), pieceNamed(after, name)).flatMap(({ edge, byMm }) =>
    after.seams.flatMap(seam => {
      const own = (runs: typeof seam.a) => runs.some(r => r.piece === name && r.edge === edge);
      const partner = own(seam.a) ? seam.b : own(seam.b) ? seam.a : [];
      const others = partner.filter(r => r.piece !== name);
      // Both cut to the same length match again, and there is nothing left to say.
      if (others.length === 0 || walkSeam(after, seam).matches) return [];
      return [
        finding(
          'warning',
          'shoulder-cut',
          { piece: name, edge },
          {
            edge: { piece: name, edge },
            changeMm: byMm,
            shoulderMm: partnerLength(after, seam, { piece: name, edge }),
            sewnTo: others.map(r => ({ piece: r.piece, edge: r.edge })),
          },
        ),
      ];
    }),
  );
}

/** mm that the other side of a seam must be long to fit this one, with the ease that is wanted. */
function partnerLength(pattern: Pattern, seam: Seam, own: EdgeRef): number {
  const isA = holdsEdge(seam.a, own);
  const { aMm, bMm, easeWantedMm } = walkSeam(pattern, seam);
  return isA ? aMm - easeWantedMm : bMm + easeWantedMm;
}

function cutEdges(before: Piece, after: Piece): readonly { readonly edge: string; readonly byMm: number }[] {
  const there = new Set(edgeNames(after));
  return edgeNames(before)
    .filter(
      edge => there.has(edge) && edgeNamed(before, edge).kind === 'seam' && edge !== neckOf(before).name,
    )
    .map(edge => ({ edge, byMm: pathLength(edgePath(after, edge)) - pathLength(edgePath(before, edge)) }))
    .filter(({ byMm }) => Math.abs(byMm) > tolerances.seamTolerance);
}
