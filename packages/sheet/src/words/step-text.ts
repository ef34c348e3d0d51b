import type { LengthUnit, Thing } from '@paperhinge/geometry';
import { allowanceText } from '@paperhinge/geometry/internal';

/**
 * A step as it is typed into a sheet: `true: { edges: [front.hem, back.hem] }`. Names that YAML would misread stand in
 * quotation marks.
 */
export function stepText(
  verb: string,
  fields: Readonly<Record<string, string | number | readonly string[]>>,
): string {
  const written = Object.entries(fields).map(
    ([field, value]) =>
      `${field}: ${typeof value === 'object' ? `[${value.map(scalar).join(', ')}]` : typeof value === 'number' ? value : scalar(value)}`,
  );
  return `${verb}: { ${written.join(', ')} }`;
}

/** A word as it is typed: in quotation marks where YAML would misread it. */
const scalar = (text: string): string =>
  /^[\p{L}_-][\p{L}\p{M}\p{N} ._/-]*(?<! )$/u.test(text) && !/^(?:yes|no|true|false|on|off|null)$/i.test(text)
    ? text
    : /^-?\d[\d./ ]* (?:mm|cm|in)$/.test(text)
      ? text
      : JSON.stringify(text);

/** An edge as it is typed: `front.hem`. */
export const edgeText = ({ piece = '', edge = '' }: Thing): string => `${piece}.${edge}`;

/** A length as it is typed, in the reader's unit and with a decimal point, whatever her language: `-3.2 mm`. */
export const typedLength = (mm: number, unit: LengthUnit): string =>
  allowanceText(mm, unit, '.').replace('−', '-');

/** The step that gives a cap the ease that is usual in a set-in sleeve, by its height. */
export const raisedCap = (piece: Thing, seam: Thing): string => capWithEase(piece, seam, '20 mm');

/** The step that makes a cap as high as an ease asks. */
export const capWithEase = ({ piece = '' }: Thing, { seam = '' }: Thing, ease: string): string =>
  `change cap: { piece: ${scalar(piece)}, by: { so that: ${scalar(`ease of ${seam}`)}, is: ${ease} }, keep: width }`;

/** A seam as it is listed above the steps: `{ side: { a: front.side from armhole, b: back.side from armhole } }`. */
export function seamText({ seam = '' }: Thing, edges: readonly Thing[], from: readonly string[]): string {
  const [a, b] = edges.map((edge, i) => scalar(`${edgeText(edge)} from ${from[i] ?? 'start'}`));
  return `{ ${scalar(seam)}: { a: ${a}, b: ${b} } }`;
}
