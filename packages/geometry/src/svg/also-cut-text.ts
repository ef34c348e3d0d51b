import { mirroredByDefault } from '../pattern/build.js';
import type { Cutting } from '../pattern/types.js';
import { mostCopies } from '../pattern/validate-facts.js';

/**
 * What a piece is cut from besides, as `data-also-cut` writes it: `2 lining, 1 interfacing`. What differs from the
 * usual stands in brackets: `2 lining (not mirrored, 2 layers, right side up, note "less 2 mm")`. A name that holds
 * anything but letters, digits, spaces and hyphens stands in quotation marks.
 *
 * @returns `undefined` where the text is not understood
 */
export function alsoCutOf(text: string, hasFold: boolean): readonly Cutting[] | undefined {
  const found: Cutting[] = [];
  for (let rest = text.trim(); rest !== ''; ) {
    const match = one.exec(rest);
    if (!match) return undefined;
    const [whole, number, name, details] = match;
    const count = Number(number);
    const fabric = unquoted(name!.trim());
    const extra = detailsOf(details ?? '');
    if (!(count >= 1 && count <= mostCopies) || !fabric || !extra) return undefined;
    found.push({ count, mirrored: mirroredByDefault(count, hasFold), fabric, ...extra });
    rest = rest.slice(whole.length).trim();
  }
  return found.length > 0 ? found : undefined;
}

const quotedName = '"(?:[^"\\\\]|\\\\.)*"';
/** Count, name, and what stands in brackets, up to the next comma. */
const one = new RegExp(
  `^(\\d{1,4})\\s+(${quotedName}|[^",()]+)\\s*(?:\\(((?:${quotedName}|[^")])*)\\))?\\s*(?:,|$)`,
  'u',
);

function detailsOf(text: string): Omit<Partial<Cutting>, 'count' | 'fabric'> | undefined {
  let found: Omit<Partial<Cutting>, 'count' | 'fabric'> = {};
  for (let rest = text.trim(); rest !== ''; ) {
    const [whole, detail] = detailed.exec(rest) ?? [];
    if (whole === undefined || detail === undefined) return undefined;
    const layers = /^(\d{1,4}) layers?$/.exec(detail)?.[1];
    const note = /^note\s+(".*")$/s.exec(detail)?.[1];
    if (detail === 'mirrored' || detail === 'not mirrored')
      found = { ...found, mirrored: detail === 'mirrored' };
    else if (detail === 'right side up') found = { ...found, rightSideUp: true };
    else if (layers !== undefined) found = { ...found, layers: Number(layers) };
    else if (note !== undefined) found = { ...found, note: unquoted(note) ?? '' };
    else return undefined;
    rest = rest.slice(whole.length).trim();
  }
  return found;
}
const detailed = new RegExp(`^((?:${quotedName}|[^",])+?)\\s*(?:,|$)`, 'u');

function unquoted(name: string): string | undefined {
  if (!name.startsWith('"')) return name;
  try {
    return JSON.parse(name) as string;
  } catch {
    return undefined;
  }
}

/** Cuttings as `data-also-cut` writes them; {@link alsoCutOf} reads the same again. */
export const alsoCutText = (cuttings: readonly Cutting[], hasFold: boolean): string =>
  cuttings
    .map(({ count, fabric, mirrored, layers, rightSideUp, note }) => {
      const details = [
        ...(mirrored === mirroredByDefault(count, hasFold) ? [] : [mirrored ? 'mirrored' : 'not mirrored']),
        ...(layers === undefined ? [] : [`${layers} layers`]),
        ...(rightSideUp ? ['right side up'] : []),
        ...(note === undefined ? [] : [`note ${JSON.stringify(note)}`]),
      ];
      const name = /^[\p{L}\p{N}]+(?:[ -][\p{L}\p{N}]+)*$/u.test(fabric) ? fabric : JSON.stringify(fabric);
      return `${count} ${name}${details.length > 0 ? ` (${details.join(', ')})` : ''}`;
    })
    .join(', ');
