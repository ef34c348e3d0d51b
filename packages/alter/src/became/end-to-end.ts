import {
  type Edge,
  type EdgeRef,
  edgePath,
  type Finding,
  type Pattern,
  type Piece,
  pathLength,
  pieceNamed,
} from '@paperhinge/geometry';
import { abs } from '@paperhinge/geometry/internal';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import type { Said } from '../alteration.js';
import { distinctEdges, edgeOf, hasEdge, sameEdge } from '../edge-refs.js';
import type { Step } from './run.js';
import { finding } from './tellings.js';
import { followThing } from './things.js';

/** An edge that opens, and is of another length now. Lengths in mm. */
interface Changed extends EdgeRef {
  readonly openMm: number;
  readonly wasMm: number;
  readonly edgeMm: number;
}

/**
 * An alteration after which what was open from end to end of its edge, or fastened so, is so again where the edge
 * changed its length. An opening of a stated length keeps it: a zip is as long as it was bought. Both are told.
 */
export function withOpenings(before: Pattern, alteration: Said): Said {
  const { pattern: after, became } = alteration;
  const lengths = [
    ...before.pieces.filter(piece => !after.pieces.includes(piece)).flatMap(openingsOf),
    ...(before.fastenings ?? []).map(({ along, length = 0 }) => ({ ...edgeOf(along), openMm: length })),
  ].filter(({ openMm }) => openMm > 0);
  const changed = lengths.flatMap(open => changesOf({ before, after, became }, open));
  if (changed.length === 0) return alteration;
  const whole = changed.filter(isWhole);
  const isTold = ({ code, where }: Finding): boolean =>
    alteration.findings.some(one => one.code === code && sameEdge(one.where as EdgeRef, where as EdgeRef));
  return {
    ...alteration,
    pattern: whole.length > 0 ? reopened(after, whole) : after,
    findings: [
      ...alteration.findings,
      ...distinctEdges(changed.filter(isNoticed))
        .map(told)
        .filter(one => !isTold(one)),
    ],
  };
}

const openingsOf = (piece: Piece) =>
  piece.outline.parts
    .filter((part): part is Edge => part.type === 'edge')
    .map(({ name, opening = 0 }) => ({ piece: piece.name, edge: name, openMm: opening }));

/** What became of an edge that opens, where its length changed so that one sees it. */
function changesOf(
  { before, after, became }: Step,
  open: EdgeRef & { readonly openMm: number },
): readonly Changed[] {
  const { openMm } = open;
  if (!hasEdge(before, open)) return [];
  const wasMm = lengthOf(before, open);
  return followThing<EdgeRef>(became, edgeOf(open))
    .filter(ref => hasEdge(after, ref))
    .map(ref => ({ ...edgeOf(ref), openMm, wasMm, edgeMm: lengthOf(after, ref) }))
    .filter(({ edgeMm }) => abs(edgeMm - wasMm) > tolerances.joiningGap);
}

const lengthOf = (pattern: Pattern, { piece, edge }: EdgeRef): number =>
  pathLength(edgePath(pieceNamed(pattern, piece), edge));

const isNoticed = ({ wasMm, edgeMm }: Changed): boolean => abs(edgeMm - wasMm) > tolerances.openingNoticed;

/** Open from end to end, to within what two sides of a seam may differ. */
const isWhole = ({ openMm, wasMm }: Changed): boolean => openMm >= wasMm - tolerances.seamTolerance;

function reopened(pattern: Pattern, whole: readonly Changed[]): Pattern {
  const now = (ref: EdgeRef, mm: number): number =>
    whole.find(one => sameEdge(one, ref) && one.openMm === mm)?.edgeMm ?? mm;
  const { pieces, fastenings } = pattern;
  return {
    ...pattern,
    pieces: pieces.map(piece =>
      whole.some(one => one.piece === piece.name) ? reopenedPiece(piece, now) : piece,
    ),
    ...(fastenings
      ? {
          fastenings: fastenings.map(one =>
            one.length === undefined ? one : { ...one, length: now(one.along, one.length) },
          ),
        }
      : {}),
  };
}

const reopenedPiece = (piece: Piece, now: (ref: EdgeRef, mm: number) => number): Piece => ({
  ...piece,
  outline: {
    parts: piece.outline.parts.map(part =>
      part.type === 'edge' && part.opening !== undefined
        ? { ...part, opening: now({ piece: piece.name, edge: part.name }, part.opening) }
        : part,
    ),
  },
});

function told(changed: Changed): Finding {
  const { piece, edge, ...figures } = changed;
  const ref = { piece, edge };
  return finding('note', isWhole(changed) ? 'opening-follows' : 'opening-kept', ref, {
    edge: ref,
    ...figures,
  });
}
