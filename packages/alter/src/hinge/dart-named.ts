import type { Dart, Piece } from '@paperhinge/geometry';
import { dartsOf } from '@paperhinge/geometry/pattern';
import { refusal } from './tellings.js';

/**
 * A dart of a piece by its name.
 * @throws PatternError `unknown-dart`: the remedy names the nearest, or lists them; `dart-within-piece`: it is
 *   double-pointed, and has no mouth to close
 */
export function dartNamed(piece: Piece, name: string): Dart {
  const darts = dartsOf(piece);
  const found = darts.find(d => d.name === name);
  if (found) return found;
  const where = { piece: piece.name };
  const within = piece.lines.some(line => line.kind === 'dart' && line.name === name);
  const code = within ? 'dart-within-piece' : 'unknown-dart';
  throw refusal(code, { ...where, name, names: darts.map(d => d.name) }, where);
}
