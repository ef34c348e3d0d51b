import type { Dart, Piece } from '@paperhinge/geometry';
import { dartsOf } from '@paperhinge/geometry/pattern';
import { refusal } from './tellings.js';

/** A dart of a piece by its name. @throws PatternError `unknown-dart`: the remedy names the nearest, or lists them */
export function dartNamed(piece: Piece, name: string): Dart {
  const darts = dartsOf(piece);
  const found = darts.find(d => d.name === name);
  if (found) return found;
  const names = darts.map(d => d.name);
  throw refusal('unknown-dart', { piece: piece.name, name, names }, { piece: piece.name });
}
