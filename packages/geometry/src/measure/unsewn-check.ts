import { isTie, looseEnds } from '../joining/ties.js';
import type { Pattern, Piece, PieceRole } from '../pattern/types.js';
import type { Finding, Thing } from '../telling.js';

import { finding } from './tellings.js';

/**
 * Pieces that no seam takes in: a seam is likely missing. A piece that was drafted for an edge is known to belong
 * there; what is fused, or laid on where a placement line shows (a patch pocket), is not sewn into a seam; a belt hangs loose. Where the pattern lists no seam at all, that is said
 * once: nothing was walked.
 */
export function unsewnFindings(pattern: Pattern): readonly Finding[] {
  const { pieces, seams } = pattern;
  if (seams.length === 0) return [finding('warning', 'no-seams', {}, { pieces: pieces.length })];
  const isLoose = (piece: Piece) => piece.role === 'strip' && isTie(pattern, piece);
  const sewn = new Set(seams.flatMap(({ a, b }) => [...a, ...b].map(run => run.piece)));
  return pieces
    .filter(piece => !sewn.has(piece.name) && !isLaidOn(piece, pieces) && !isLoose(piece))
    .map(({ name }) => finding('warning', 'piece-in-no-seam', { piece: name }, { piece: { piece: name } }));
}

const isLaidOn = ({ name, madeFor, role }: Piece, pieces: readonly Piece[]): boolean =>
  madeFor !== undefined ||
  (role !== undefined && fused.has(role)) ||
  pieces.some(({ lines }) =>
    lines.some(line => line.kind === 'placement' && (line.name === name || role === 'pocket')),
  );

const fused: ReadonlySet<PieceRole> = new Set(['interfacing', 'stay']);

/** What hangs loose: ties, straps and belts, and the ends of drawcords. On children's clothes they are a danger. */
export function looseEndFindings(pattern: Pattern): readonly Finding[] {
  const loose = looseEnds(pattern);
  const cords = (pattern.fastenings ?? []).filter(one => one.kind === 'drawcord');
  const told = (things: readonly Thing[], guessed: boolean): readonly Finding[] =>
    things.length === 0
      ? []
      : [
          finding(
            'note',
            'ends-hang-loose',
            things[0]!.piece === undefined ? {} : { piece: things[0]!.piece },
            { things, guessed },
          ),
        ];
  const pieces = (guessed: boolean) =>
    loose.filter(one => one.guessed === guessed).map(({ piece }) => ({ piece }));
  return [
    ...told([...pieces(false), ...cords.map(({ name }) => ({ fastening: name }))], false),
    ...told(pieces(true), true),
  ];
}
