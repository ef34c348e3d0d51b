import {
  type Cutting,
  type Edge,
  edgeNames,
  type Pattern,
  PatternError,
  type Piece,
  pieceNamed,
} from '@paperhinge/geometry';
import { boundsOfPath } from '@paperhinge/geometry/paths';
import { outlinePath, withPiece } from '@paperhinge/geometry/pattern';
import type { Alteration } from '../alteration.js';
import type { Reshaped } from '../moved-edges/chains.js';
import { moveEdgesInwards } from '../moved-edges/move-edges-inwards.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { laidAside } from './free-place.js';
import { titled } from './long-piece.js';
import { takePlace } from './take-place.js';
import { refusal, saying } from './tellings.js';

/** Interfacing as a piece of its own. */
export interface DraftInterfacing {
  readonly name: string;
  /** The piece, or the facing, that it backs. */
  readonly piece: string;
  /** mm inside the stitching line at which it ends; absent: cut like its piece, and caught in the seams. */
  readonly inside?: number;
  /** How many are cut; absent: one for each of its piece, of one layer. */
  readonly count?: number;
  /** Default: the cloth called interfacing. */
  readonly fabric?: string;
}

/**
 * Drafts the interfacing of a piece or a facing. On paper: the piece traced with its darts and notches, cut with its
 * allowances so that the seams catch it, or trimmed to the stitching line or a little inside it where it is thick. Fold
 * edges stay folds. What its piece said of being cut of that cloth besides goes, since the new piece says it. The
 * garment does not change. "The facing less its allowances" (trade-notes §7); common practice, no source.
 *
 * @throws PatternError `interfacing-too-far-inside`: an edge of the piece is lost so far inside; `unknown-piece`; those
 *   of `perform`
 */
export const draftInterfacing = (pattern: Pattern, parameters: DraftInterfacing): Alteration =>
  perform(draftInterfacingVerb, pattern, parameters);

/** More of one piece no garment has. */
const mostCut = 100;

export const draftInterfacingForm = formOf<DraftInterfacing>()({
  verb: 'draft interfacing',
  does: 'Traces the interfacing of a piece or a facing as a piece of its own: with its allowances, so that the seams catch it, or trimmed so far inside the stitching line.',
  fields: {
    name: field.newName(),
    piece: field.piece(),
    inside: field.optional(field.length()),
    count: field.optional(field.count(mostCut)),
    fabric: field.usually(field.cloth(), 'interfacing'),
  },
  leaves: ({ name, piece }) => ({ pieces: [name], changed: [piece] }),
  sentence:
    'Draft the interfacing "{name}" of the {piece}[, trimmed {inside} inside the stitching line][, cut {count} times][, of the {fabric} cloth]',
  startsAt: { piece: ['piece'], table: [] },
  example: {
    pattern: 'trousers',
    step: { name: 'waistband interfacing', piece: 'waistband', inside: 2 },
  },
});
export const draftInterfacingVerb = /* @__PURE__ */ verbFrom(draftInterfacingForm, drawnInterfacing);

type Whole = DraftInterfacing & Required<Pick<DraftInterfacing, 'fabric'>>;

function drawnInterfacing(given: Pattern, wish: Whole): Alteration {
  const source = pieceNamed(given, wish.piece);
  const cut = trimmed(source, wish.inside);
  const piece = laidAside(given, interfacingOf(cut.piece, source, wish));
  const instead = (source.alsoCut ?? []).some(({ fabric }) => fabric === wish.fabric);
  const placed = takePlace(withPiece(given, cutNoMore(source, wish.fabric)), piece, undefined);
  const { min, max } = boundsOfPath(outlinePath(piece.outline));
  return {
    pattern: placed.pattern,
    did: saying('drafted-interfacing', {
      piece: { piece: piece.name },
      of: { piece: source.name },
      count: piece.cutting.count,
      ...(wish.inside === undefined ? {} : { insideMm: wish.inside }),
      instead,
    }),
    findings: placed.findings,
    derived: [
      {
        name: piece.name,
        kind: 'interfacing',
        lengthMm: Math.max(max.x - min.x, max.y - min.y),
        widthMm: Math.min(max.x - min.x, max.y - min.y),
        fabric: wish.fabric,
        along: piece.madeFor ?? [],
        edgeMm: 0,
        figures: wish.inside === undefined ? {} : { insideMm: wish.inside },
      },
    ],
  };
}

/** Whether the edge bounds cloth: on a fold it goes on. */
const isCut = (edge: Edge): boolean => edge.kind !== 'fold';

function trimmed(source: Piece, inside: number | undefined): Pick<Reshaped, 'piece'> {
  if (inside === undefined) return { piece: withEdges(source, edge => ({ ...edge, kind: unturned(edge) })) };
  const bare = withEdges(source, edge => ({ ...edge, kind: 'raw', allowance: 0, corners: {} }));
  const runs = edgeNames(bare)
    .filter(name =>
      bare.outline.parts.some(part => part.type === 'edge' && part.name === name && isCut(part)),
    )
    .map(edge => ({
      piece: bare.name,
      edge,
      reversed: false,
      side: 'a' as const,
      fromShare: 0,
      toShare: 1,
    }));
  if (inside === 0) return { piece: bare };
  try {
    return moveEdgesInwards(bare, runs, inside, { kind: 'whole' });
  } catch (error) {
    if (!(error instanceof PatternError)) throw error;
    const where = { piece: source.name };
    throw refusal('interfacing-too-far-inside', { piece: where, insideMm: inside }, where);
  }
}

/** Interfacing is turned up with its piece, not by itself. */
const unturned = ({ kind }: Edge): Edge['kind'] => (kind === 'hem' ? 'seam' : kind);

const withEdges = (piece: Piece, change: (edge: Edge) => Edge): Piece => ({
  ...piece,
  outline: {
    parts: piece.outline.parts.map(part =>
      part.type === 'edge' && isCut(part) ? plain(change(part)) : part,
    ),
  },
});

/** What is done to the piece's edge is not done to its interfacing once more. */
function plain({ opening: _, finish: __, topstitch: ___, interfacing: ____, ...edge }: Edge): Edge {
  return edge;
}

function interfacingOf(cut: Piece, source: Piece, { name, count, fabric }: Whole): Piece {
  const { layers = 1, mirrored } = source.cutting;
  const own = count ?? source.cutting.count / layers;
  return {
    name,
    title: titled(name),
    role: 'interfacing',
    outline: cut.outline,
    notches: cut.notches,
    lines: cut.lines.filter(({ kind }) => kind === 'grain' || kind === 'fold'),
    marks: [],
    cutting: { count: own, mirrored: mirrored && own % 2 === 0, fabric },
    madeFor: edgeNames(source)
      .filter(edge => source.outline.parts.some(p => p.type === 'edge' && p.name === edge && isCut(p)))
      .map(edge => ({ piece: source.name, edge })),
  };
}

/** The piece no longer says that it is cut of this cloth besides. */
function cutNoMore({ alsoCut, ...piece }: Piece, fabric: string): Piece {
  const left = (alsoCut ?? []).filter((cutting: Cutting) => cutting.fabric !== fabric);
  return left.length === 0 ? piece : { ...piece, alsoCut: left };
}
