import type { Piece, Point } from '@paperhinge/geometry';
import { refusal } from './tellings.js';

/** The point mark that darts are turned about, where one is named. @throws PatternError `unknown-mark` */
export function pivotOf(piece: Piece, { pivot }: { readonly pivot?: string }): Point | undefined {
  if (pivot === undefined) return undefined;
  const points = piece.marks.filter(m => m.kind === 'point');
  const found = points.find(m => m.name === pivot);
  if (found) return found.at;
  throw refusal('unknown-mark', { piece: piece.name, name: pivot, names: points.map(m => m.name) });
}
