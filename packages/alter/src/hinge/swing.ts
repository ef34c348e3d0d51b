import type { Finding, Piece, Point } from '@paperhinge/geometry';
import { outlinePath } from '@paperhinge/geometry/pattern';
import { type Affine, identity } from '@paperhinge/geometry/plane';
import { selfCrossings } from '@paperhinge/geometry/regions';
import type { Became } from '../became/became.js';
import { carriedNotches } from '../became/parts.js';
import { assemble, type ClosedDart, type Place } from './assemble.js';
import { carry, same } from './carry.js';
import type { CutPiece } from './cut-piece.js';
import { joinsOf, type Opening } from './joins.js';
import type { Mouth } from './mouth.js';

import { refusal } from './tellings.js';

/** What a swing is asked to keep or to open beside its cuts and motions. */
export interface SwingWishes {
  /** Openings that become darts or pleats: see `dartMouth`, `pleatMouth`. */
  readonly mouths?: readonly Mouth[];
  /** Darts to weld although their legs are not quite equal: the step becomes part of the edge before it. */
  readonly closing?: readonly string[];
  /** Darts that the move pulls apart at their points, and the point that their legs are drawn anew to. */
  readonly redrawn?: ReadonlyMap<string, Point>;
}

/** A piece rejoined after its sections moved. */
export interface Swung {
  readonly piece: Piece;
  /** Old to new: where each run of each edge went. */
  readonly places: readonly Place[];
  /** The same for all that follows an edge: notches, seams, handles. */
  readonly became: Became;
  readonly openings: readonly Opening[];
  readonly closed: readonly ClosedDart[];
  /** Lines parted: nothing is lost in silence. */
  readonly findings: readonly Finding[];
}

/**
 * The hinge: moves each section of a cut piece by its own rigid motion, with all that lies on it, and rejoins the
 * outline. Openings are bridged by one straight segment that belongs to the edge that opened, overlaps are cut at
 * their crossing, what closed is welded. Edges that no cut touched keep their lengths to rounding.
 *
 * @param motions one rigid motion for each section, by index
 * @param holding the section whose part of a cut line keeps the line's name, normally the one that stays
 * @throws PatternError `dart-torn`, `dart-overclosed`, `overlap-too-wide`, `outline-tangled`, `outline-open`
 */
export function swing(
  cutPiece: CutPiece,
  motions: readonly Affine[],
  holding: number,
  wishes: SwingWishes = {},
): Swung {
  const unmoved = new Set(motions.flatMap((motion, i) => (same(motion, identity) ? [i] : [])));
  const joins = joinsOf(cutPiece, motions, unmoved, wishes.mouths ?? []);
  const { piece, places, closed } = assemble(cutPiece, joins, motions, unmoved, {
    closing: wishes.closing ?? [],
    redrawn: wishes.redrawn ?? new Map(),
  });
  checkSimple(cutPiece.piece, piece);
  const { findings, ...carried } = carry(cutPiece, motions, holding);
  const became = becameOf(cutPiece.piece.name, places, closed, holding);
  const notches = carriedNotches(cutPiece.piece, became);
  return {
    piece: { ...piece, ...carried, notches },
    places,
    became,
    openings: joins.openings,
    closed,
    findings,
  };
}

/** The places as what became of the edges: those of the cloth that stays first, so that what lies on a cut stays. */
function becameOf(
  piece: string,
  places: readonly Place[],
  closed: readonly ClosedDart[],
  holding: number,
): Became {
  const ordered = [...places].sort((a, b) => Number(b.section === holding) - Number(a.section === holding));
  return {
    edges: ordered.map(({ edge, from, to, newFrom }) => ({
      was: { piece, edge, from, to },
      now: { piece, edge, from: newFrom, to: newFrom + to - from },
    })),
    things: closed.map(({ dart }) => ({ was: { piece, dart } })),
  };
}

/** An outline that was simple must stay so: paper cannot lie in two places at once. */
function checkSimple(before: Piece, after: Piece): void {
  const crosses = ({ outline }: Piece): boolean => selfCrossings(outlinePath(outline)).length > 0;
  const where = { piece: after.name };
  if (crosses(after) && !crosses(before)) throw refusal('outline-tangled', where, where);
}
