import type { Piece } from '@paperhinge/geometry';
import { edgesOfRole } from '@paperhinge/geometry/pattern';
import { refusal } from './tellings.js';

/** The only armhole of a piece. @throws PatternError `no-armhole` */
export function armholeOf(piece: Piece): string {
  const [name, ...others] = edgesOfRole(piece, 'armhole');
  if (name !== undefined && others.length === 0) return name;
  throw refusal('no-armhole', { piece: { piece: piece.name } }, { piece: piece.name });
}
