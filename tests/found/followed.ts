// What the tests of remedies share: a remedy in each tongue and unit, its figures read as a maker reads them.
import {
  type Edge,
  edgePath,
  type Finding,
  type LengthUnit,
  millimetresPer,
  type Pattern,
  type Piece,
  pathLength,
  pieceNamed,
} from '@paperhinge/geometry';
import { catalogueOf, wordsOf } from '@paperhinge/sheet/words';

export const tongues = [
  ['en', 'mm'],
  ['en', 'in'],
  ['de', 'cm'],
] as const;

/** The remedy of a finding as it is read. */
export async function remedyOf(finding: Finding, language: 'en' | 'de', unit: LengthUnit): Promise<string> {
  return wordsOf(await catalogueOf(language), unit).finding(finding).remedy;
}

/** The lengths in a text, in mm, as they stand in it: `2 7/8 in`, `1,2 cm`, `360 mm`. */
export function lengthsIn(text: string): readonly number[] {
  return [...text.matchAll(/((?:\d+ )?\d+\/\d+|\d+(?:[.,]\d+)?) (mm|cm|in)\b/g)].map(([, figure, unit]) => {
    const sum = figure!
      .split(' ')
      .map(part => part.split('/').map(n => Number(n.replace(',', '.'))))
      .reduce((total, [over, under = 1]) => total + over! / under, 0);
    return sum * millimetresPer[unit as 'mm' | 'cm' | 'in'];
  });
}

export const withPieces = (pattern: Pattern, change: (piece: Piece) => Piece): Pattern => ({
  ...pattern,
  pieces: pattern.pieces.map(change),
});

/** A pattern with one edge of one piece changed. */
export const withEdge = (
  pattern: Pattern,
  piece: string,
  edge: string,
  change: (edge: Edge) => Edge,
): Pattern =>
  withPieces(pattern, p =>
    p.name !== piece
      ? p
      : {
          ...p,
          outline: {
            parts: p.outline.parts.map(part =>
              part.type === 'edge' && part.name === edge ? change(part) : part,
            ),
          },
        },
  );

export const lengthOf = (pattern: Pattern, piece: string, edge: string): number =>
  pathLength(edgePath(pieceNamed(pattern, piece), edge));
