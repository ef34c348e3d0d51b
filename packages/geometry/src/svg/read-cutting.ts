import { mirroredByDefault } from '../pattern/build.js';
import type { Cutting, OutlinePart, Piece } from '../pattern/types.js';
import { mostCopies } from '../pattern/validate-facts.js';
import { alsoCutOf } from './also-cut-text.js';
import { countOf, type ReadingPlace, wordOf } from './attribute-values.js';
import type { SheetPiece } from './sheet-pieces.js';
import { yesNo } from './vocabulary.js';
import { attributeOf, type Element } from './xml.js';

/** How a piece is cut, and what it is cut from besides. */
export function readCuttings(
  element: Element | undefined,
  sheet: SheetPiece | undefined,
  parts: readonly OutlinePart[],
  place: ReadingPlace,
): Pick<Piece, 'cutting' | 'alsoCut'> {
  const hasFold = parts.some(part => part.type === 'edge' && part.kind === 'fold');
  const count = sheet?.cut ?? (element && countOf(element, 'data-cut', mostCopies, place)) ?? 1;
  const layers = element && countOf(element, 'data-layers', mostCopies, place);
  const mirrored = sheet?.mirrored ?? isYes(element, 'data-mirrored', place);
  const note = textOf(element, 'data-note');
  const cutting: Cutting = {
    count,
    mirrored: mirrored ?? mirroredByDefault(count, hasFold),
    fabric: sheet?.fabric ?? textOf(element, 'data-fabric') ?? 'main',
    ...(layers === undefined || layers === 1 ? {} : { layers }),
    ...(isYes(element, 'data-right-side-up', place) ? { rightSideUp: true } : {}),
    ...(note === undefined ? {} : { note }),
  };
  const also = element?.attributes.get('data-also-cut');
  if (!also) return { cutting };
  const alsoCut = alsoCutOf(also.value, hasFold);
  if (!alsoCut) throw place.report.refuse('also-cut-not-understood', also.offset, {}, place.owner);
  return { cutting, alsoCut };
}

const isYes = (element: Element | undefined, name: string, place: ReadingPlace): boolean | undefined => {
  const word = element && wordOf(element, name, yesNo, place);
  return word === undefined ? undefined : word === 'yes';
};

/** The text of an attribute; `undefined` where there is none, or nothing in it. */
export const textOf = (element: Element | undefined, name: string): string | undefined => {
  const text = element && attributeOf(element, name)?.trim();
  return text === '' ? undefined : text;
};
