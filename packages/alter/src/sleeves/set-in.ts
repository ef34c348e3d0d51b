import {
  type EdgeRun,
  edgePath,
  type Pattern,
  type Piece,
  pathLength,
  pieceNamed,
  type Seam,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { edgesOfRole, neighboursOf, partsOfEdge } from '@paperhinge/geometry/pattern';
import { seamNamed } from '../moved-edges/seam-place.js';
import { refusal } from './tellings.js';

/** A front or back as it is sewn to a set-in sleeve. */
export interface SetInBody {
  readonly piece: Piece;
  /** Its armhole in the direction in which the seam is sewn. */
  readonly run: EdgeRun;
  readonly armholeMm: number;
  /** Whether the seam leads from its underarm up to its shoulder, or down from there. */
  readonly up: boolean;
  readonly shoulder: string;
  /** The edge beyond the shoulder. */
  readonly neck: string;
  /** Whether it must be turned over to lie beside the sleeve as that is drawn. */
  readonly over: boolean;
}

/** A sleeve set into the armhole of one front and one back. */
export interface SetIn {
  readonly seam: Seam;
  readonly sleeve: Piece;
  readonly cap: EdgeRun;
  readonly capMm: number;
  /** In the order in which the seam is sewn. */
  readonly bodies: readonly [SetInBody, SetInBody];
  /** The seam of their shoulders. */
  readonly shoulder: Seam;
}

/**
 * Reads an armhole seam: whose cap is set into whose armhole, and which way round everything lies.
 *
 * @throws PatternError `unknown-seam`, `seam-without-cap`, `armhole-of-several`: not of one whole edge of a front and one
 *   of a back; `shoulder-not-sewn`: not one whole shoulder to the other, each beside armhole and neck; `shoulders-unlike`
 */
export function setIn(pattern: Pattern, name: string): SetIn {
  const seam = seamNamed(pattern, name);
  const isCap = (run: EdgeRun): boolean =>
    edgesOfRole(pieceNamed(pattern, run.piece), 'cap').includes(run.edge);
  const caps = [seam.a, seam.b].find(side => side.every(isCap));
  const armholes = caps === seam.a ? seam.b : seam.a;
  const where = { seam: name };
  if (!caps || armholes.some(isCap)) throw refusal('seam-without-cap', { seam: where }, where);
  const [cap] = caps;
  const [first, second] = armholes;
  const isWhole = (run: EdgeRun): boolean =>
    run.part === undefined && partsOfEdge(pieceNamed(pattern, run.piece), run.edge).length === 1;
  const plain = caps.length === 1 && armholes.length === 2 && [cap!, first!, second!].every(isWhole);
  if (!plain || first!.piece === second!.piece) throw refusal('armhole-of-several', { seam: where }, where);
  const bodies = [bodyOf(pattern, first!, cap!, true), bodyOf(pattern, second!, cap!, false)] as const;
  const sleeve = pieceNamed(pattern, cap!.piece);
  return {
    seam,
    sleeve,
    cap: cap!,
    capMm: pathLength(edgePath(sleeve, cap!.edge)),
    bodies,
    shoulder: shoulderSeam(pattern, bodies),
  };
}

function bodyOf(pattern: Pattern, run: EdgeRun, cap: EdgeRun, up: boolean): SetInBody {
  const piece = pieceNamed(pattern, run.piece);
  // The end that the seam comes to last is the outline's end of the edge, unless it is sewn against the outline.
  const top = up === run.reversed ? 'start' : 'end';
  const shoulder = neighboursOf(piece, run.edge)[top];
  const neck = neighboursOf(piece, shoulder)[top];
  const armholeMm = pathLength(edgePath(piece, run.edge));
  return { piece, run, armholeMm, up, shoulder, neck, over: run.reversed === cap.reversed };
}

function shoulderSeam(pattern: Pattern, bodies: readonly [SetInBody, SetInBody]): Seam {
  const isShoulder = (run: EdgeRun): boolean =>
    run.part === undefined &&
    bodies.some(({ piece, shoulder }) => piece.name === run.piece && shoulder === run.edge);
  const found = pattern.seams.find(
    ({ a, b }) => a.length === 1 && b.length === 1 && isShoulder(a[0]!) && isShoulder(b[0]!),
  );
  const [first, second] = bodies.map(({ piece, shoulder }) => ({ piece: piece.name, edge: shoulder }));
  const dartless = bodies.every(({ piece, shoulder }) => partsOfEdge(piece, shoulder).length === 1);
  if (!found || !dartless)
    throw refusal('shoulder-not-sewn', { first: first!, second: second! }, { piece: first!.piece });
  const [firstMm, secondMm] = bodies.map(({ piece, shoulder }) => pathLength(edgePath(piece, shoulder)));
  if (Math.abs(firstMm! - secondMm!) > tolerances.dartLegTolerance)
    throw refusal(
      'shoulders-unlike',
      { first: first!, firstMm: firstMm!, second: second!, secondMm: secondMm! },
      first!,
    );
  return found;
}
