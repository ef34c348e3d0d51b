import {
  dartsOf,
  edgeNames,
  type Pattern,
  PatternError,
  type Piece,
  quoted,
  suggestion,
  type Where,
} from '@paperhinge/geometry';
import { type Reference, referencesOf } from './references.js';
import type { SheetStep } from './sheet.js';

/** The names a step may use. */
export interface Names {
  readonly pieces: ReadonlyMap<string, PieceNames>;
  /** Undefined where a step before may have made seams that only a run can tell. */
  readonly seams: readonly string[] | undefined;
  readonly fabrics: readonly string[];
}
interface PieceNames {
  readonly edges: readonly string[];
  readonly darts: readonly string[];
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
      ...pattern.pieces.map(piece => piece.cutting.fabric),
      // A cloth may go by its role alone.
      ...['main', 'contrast', 'lining', 'interfacing', 'stabiliser'],
    ]),
  ],
});

const namesOfPiece = (piece: Piece): PieceNames => ({
  edges: edgeNames(piece),
  darts: [...dartsOf(piece).map(d => d.name), ...piece.lines.filter(l => l.kind === 'dart').map(l => l.name)],
  lines: piece.lines.map(line => line.name),
  marks: piece.marks.map(mark => mark.name),
});

/**
 * What is known of the names after a step without running it: never fewer than there will be, so that whatever is
 * told of a later step is true.
 */
export function namesAfter(step: SheetStep, names: Names): Names {
  const pieces = new Map(names.pieces);
  const open = (piece: string) => pieces.set(piece, { ...(pieces.get(piece) ?? nothing), unsure: true });
  switch (step.verb) {
    case 'remove piece':
      pieces.delete(step.parameters.piece);
      return { ...names, pieces };
    case 'unfold':
      if (!pieces.has(step.parameters.piece)) return names;
      open(step.parameters.piece);
      // The mirrored half brings seams of its own.
      return { ...names, pieces, seams: undefined };
    case 'recut neckline':
      if (pieces.has(step.parameters.piece)) open(step.parameters.piece);
      return { ...names, pieces };
    case 'draft band':
    case 'draft strip':
    case 'draft binding':
    case 'draft facing':
    case 'draft stay': {
      const { name, along } = step.parameters;
      // A facing or stay of several pieces is one for each; a ring has a seam of its own ends besides.
      const made = [name, ...along.map(ref => `${name} ${ref.piece}`)];
      for (const one of made) open(one);
      return { ...names, pieces, seams: names.seams && [...names.seams, ...made, `${name} join`] };
    }
    default:
      return names;
  }
}
const nothing: PieceNames = { edges: [], darts: [], lines: [], marks: [] };

/**
 * The names in a step that the pattern does not have, each at its own line and column. An edge of an unknown piece
 * is not told besides the piece.
 */
export function unknownNames(
  step: SheetStep,
  number: number,
  names: Names,
  file: string,
): readonly PatternError[] {
  return referencesOf(step).flatMap(reference => {
    const known = knownTo(reference, names);
    if (!known || known.includes(reference.name)) return [];
    const { kind, name, piece } = reference;
    const where: Where = {
      file,
      ...(step.places[reference.field] ?? step.place),
      step: number,
      ...(kind === 'piece' ? { piece: name } : piece === undefined ? {} : { piece }),
      ...(kind === 'edge' ? { edge: name } : {}),
    };
    const owner = piece === undefined ? 'The pattern' : `Piece ${quoted(piece)}`;
    return [
      new PatternError(`unknown-${kind}`, {
        message: `${owner} has no ${words[kind].one} ${quoted(name)}.`,
        remedy: suggestion(name, known, words[kind].many),
        where,
      }),
    ];
  });
}

/** The names there are of a reference's kind; undefined where it cannot be told. */
function knownTo({ kind, piece, name }: Reference, names: Names): readonly string[] | undefined {
  if (kind === 'piece') return [...names.pieces.keys()];
  if (kind === 'seam') return names.seams;
  if (kind === 'fabric') return names.fabrics;
  const own = names.pieces.get(piece ?? name);
  if (!own || own.unsure) return undefined;
  if (kind === 'edge') return own.edges;
  if (kind === 'dart') return own.darts;
  if (kind === 'neighbour') return [...own.edges, ...own.darts];
  return kind === 'line' ? own.lines : own.marks;
}

const words = {
  piece: { one: 'piece', many: 'pieces' },
  edge: { one: 'edge', many: 'edges' },
  neighbour: { one: 'edge or dart', many: 'edges and darts' },
  dart: { one: 'dart', many: 'darts' },
  line: { one: 'line', many: 'lines' },
  mark: { one: 'mark', many: 'marks' },
  seam: { one: 'seam', many: 'seams' },
  fabric: { one: 'fabric', many: 'fabrics' },
} as const;
