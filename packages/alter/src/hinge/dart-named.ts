import { type Dart, dartsOf, PatternError, type Piece, suggestion } from '@paperhinge/geometry';

/** A dart of a piece by its name. @throws PatternError `unknown-dart`: the remedy names the nearest, or lists them */
export function dartNamed(piece: Piece, name: string): Dart {
  const darts = dartsOf(piece);
  const found = darts.find(d => d.name === name);
  if (found) return found;
  throw new PatternError('unknown-dart', {
    message: `Piece "${piece.name}" has no dart "${name}".`,
    remedy: suggestion(
      name,
      darts.map(d => d.name),
      'darts',
    ),
    where: { piece: piece.name },
  });
}
