import type { AnyVerbForm } from '@paperhinge/alter';
import { edgeNames, type Pattern, type PatternError, type Piece, type Where } from '@paperhinge/geometry';
import { oncePer } from '@paperhinge/geometry/internal';
import { dartsOf, fabricRoles, pleatsOf } from '@paperhinge/geometry/pattern';
import { refusal as patternRefusal } from './pattern-refusal.js';
import { type Reference, type ReferenceKind, referencesOf } from './references.js';
import type { Step, StepPlaces } from './sheet.js';
import { refusal } from './tellings.js';

/** The names a step may use. */
export interface Names {
  readonly pieces: ReadonlyMap<string, PieceNames>;
  /** Steps before may have made other pieces that only a run can tell. */
  readonly morePieces?: true;
  /** Undefined where a step before may have made seams that only a run can tell. */
  readonly seams: readonly string[] | undefined;
  readonly fabrics: readonly string[];
}
interface PieceNames {
  readonly edges: readonly string[];
  readonly darts: readonly string[];
  readonly pleats: readonly string[];
  readonly lines: readonly string[];
  readonly marks: readonly string[];
  /** Steps before may have made others that only a run can tell. */
  readonly unsure?: true;
}

export const namesIn = (pattern: Pattern): Names => ({
  pieces: new Map(pattern.pieces.map(piece => [piece.name, namesOfPiece(piece)])),
  seams: pattern.seams.map(seam => seam.name),
  fabrics: [
    ...new Set([
      ...pattern.fabrics.map(fabric => fabric.name),
      ...pattern.pieces.flatMap(({ cutting, alsoCut = [] }) => [cutting, ...alsoCut].map(c => c.fabric)),
      // A cloth may go by its role alone.
      ...fabricRoles,
    ]),
  ],
});

const namesOfPiece = /* @__PURE__ */ oncePer(
  (piece: Piece): PieceNames => ({
    edges: edgeNames(piece),
    darts: [
      ...dartsOf(piece).map(d => d.name),
      ...piece.lines.filter(l => l.kind === 'dart').map(l => l.name),
    ],
    pleats: pleatsOf(piece).map(pleat => pleat.name),
    lines: piece.lines.map(line => line.name),
    marks: piece.marks.map(mark => mark.name),
  }),
);

/**
 * What is known of the names after a step without running it: never fewer than there will be, so that whatever is
 * told of a later step is true.
 */
export function namesAfter(verb: AnyVerbForm, { parameters }: Step, names: Names): Names {
  const {
    pieces: made = [],
    changed = [],
    removed = [],
    morePieces = false,
    seams = [],
  } = verb.leaves?.(parameters as never) ?? {};
  const pieces = new Map(names.pieces);
  // A step that names what is not there makes nothing.
  const doable = changed.every(piece => pieces.has(piece));
  for (const name of [...made, ...changed.filter(piece => pieces.has(piece))])
    pieces.set(name, { ...(pieces.get(name) ?? nothing), unsure: true });
  for (const name of removed) pieces.delete(name);
  return {
    ...names,
    pieces,
    ...(morePieces ? { morePieces } : {}),
    seams: seamsAfter(names.seams, doable ? seams : []),
  };
}
const seamsAfter = (before: Names['seams'], made: readonly string[] | 'unknown'): Names['seams'] =>
  made === 'unknown' ? undefined : before && [...before, ...made];
const nothing: PieceNames = { edges: [], darts: [], pleats: [], lines: [], marks: [] };

/**
 * The names in a step that the pattern does not have, each at its own line and column. An edge of an unknown piece
 * is not told besides the piece.
 *
 * @param where the file and the number of the step
 */
export function unknownNames(
  verb: AnyVerbForm,
  { parameters }: Step,
  names: Names,
  where: Where,
  places?: StepPlaces,
): readonly PatternError[] {
  return referencesOf(verb, parameters).flatMap(reference => {
    const known = knownTo(reference, names);
    if (!known || known.includes(reference.name)) return [];
    const { kind, name, piece, words = [] } = reference;
    return [
      unknown(reference, [...words, ...known], {
        ...where,
        ...placeOf(reference, places),
        ...(kind === 'piece' ? { piece: name } : piece === undefined ? {} : { piece }),
        ...(kind === 'edge' ? { edge: name } : {}),
      }),
    ];
  });
}

/** One value may stand for a list of one. */
const placeOf = ({ field }: Reference, places: StepPlaces | undefined) =>
  places?.fields[field] ?? places?.fields[field.replace(/\.\d+$/, '')] ?? places?.verb;

function unknown(
  { kind, name, piece = '' }: Reference,
  names: readonly string[],
  where: Where,
): PatternError {
  if (kind === 'piece') return patternRefusal('unknown-piece', { name, names }, where);
  if (kind === 'edge') return patternRefusal('unknown-edge', { name, names, piece }, where);
  if (kind === 'seam' || kind === 'fabric') return refusal(`unknown-${kind}`, { name, names }, where);
  return refusal(`unknown-${kind}`, { name, names, piece }, where);
}

/** The names there are of a reference's kind; undefined where it cannot be told. */
function knownTo({ kind, piece, name }: Reference, names: Names): readonly string[] | undefined {
  if (kind === 'piece') return names.morePieces ? undefined : [...names.pieces.keys()];
  if (kind === 'seam') return names.seams;
  if (kind === 'fabric') return names.fabrics;
  const own = names.pieces.get(piece ?? name);
  if (!own || own.unsure) return undefined;
  return ownNames[kind]?.(own);
}

const ownNames: { readonly [K in ReferenceKind]?: (own: PieceNames) => readonly string[] } = {
  edge: own => own.edges,
  dart: own => own.darts,
  pleat: own => own.pleats,
  line: own => own.lines,
  mark: own => own.marks,
  neighbour: own => [...own.edges, ...own.darts, ...own.pleats],
};
