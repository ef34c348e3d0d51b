import type { Part, PieceView, Touched } from '../engine/view.js';
import type { Garment } from '../job/garment.js';
import { type Language, pageWords } from '../words.js';
import { partTold } from './part-told.js';

/** A name as it is read: "side-front" as "side front". */
export const spacedName = (name: string): string => name.replaceAll('-', ' ');

/** What was touched, as the slip is headed: "Hem of the front". */
export function titleOf(thing: Touched, piece: PieceView | undefined, language: Language): string {
  const say = pageWords[language];
  if (thing.kind === 'table') return say.onTable;
  const of = piece?.title ?? '';
  if (thing.name === undefined) return of;
  const own = thing.kind === 'corner' ? `${say.cornerOf} ${spacedName(thing.name)}` : spacedName(thing.name);
  return language === 'de'
    ? `${own} · ${of}`
    : `${own.replace(/^\p{Ll}/u, c => c.toUpperCase())} of the ${of.toLowerCase()}`;
}

/** Its figures; of a whole piece, how it is cut and what it takes. */
export const figuresOf = (
  garment: Garment,
  { thing, piece, part }: { thing: Touched; piece: PieceView | undefined; part: Part | undefined },
): string =>
  (part && partTold(garment, part)) ||
  (piece && thing.name === undefined ? `${piece.cut} · ${piece.told}` : '');
