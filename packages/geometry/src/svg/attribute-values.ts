import { PatternError } from '../errors.js';
import { nearestName } from '../naming.js';
import type { NamedThing } from '../pattern/tellings.js';
import { type LengthUnit, parseLength } from '../units.js';
import type { Owner, Report } from './report.js';
import type { Attribute, Element } from './xml.js';

/** What reading an attribute asks for. */
export interface ReadingPlace {
  readonly report: Report;
  readonly unit: LengthUnit;
  readonly owner: Owner;
}

/**
 * One of the words an attribute may say; `undefined` where the element does not have it.
 * @throws PatternError `word-not-understood`: suggests the nearest word, never quoting what stood there
 */
export function wordOf<W extends string>(
  element: Element,
  attribute: string,
  words: readonly W[],
  { report, owner }: Pick<ReadingPlace, 'report' | 'owner'>,
): W | undefined {
  const written = element.attributes.get(attribute);
  if (!written) return undefined;
  const word = words.find(w => w === written.value.trim());
  if (word !== undefined) return word;
  throw report.refuse(
    'word-not-understood',
    written.offset,
    { attribute, ...wordFacts(written.value, words) },
    owner,
  );
}

/** {@link wordOf} for one who can do without: a word that is none is told, and read as `otherwise`. */
export function wordOr<W extends string>(
  element: Element,
  attribute: string,
  words: readonly W[],
  otherwise: W,
  { report, owner }: Pick<ReadingPlace, 'report' | 'owner'>,
): W {
  const written = element.attributes.get(attribute)!;
  const word = words.find(w => w === written.value.trim());
  if (word !== undefined) return word;
  const facts = { attribute, readAs: otherwise, ...wordFacts(written.value, words) };
  report.add('warning', 'word-not-understood', written.offset, facts, owner);
  return otherwise;
}

/** The role an element gives; a word that is none is told and passed over, so that the role is guessed. */
export function roleGiven<Role extends string>(
  element: Element | undefined,
  roles: readonly Role[],
  { report, owner }: Pick<ReadingPlace, 'report' | 'owner'>,
): { readonly role?: Role } {
  const attribute = element?.attributes.get('data-role');
  if (!attribute) return {};
  const written = attribute.value.trim();
  const role = roles.find(r => r === written);
  if (role !== undefined) return { role };
  report.add('warning', 'role-not-known', attribute.offset, wordFacts(written, roles), owner);
  return {};
}

function wordFacts<W extends string>(written: string, words: readonly W[]) {
  const near = nearestName(written.trim(), words);
  return { words, ...(near === undefined ? {} : { near }) };
}

/** A length of an attribute in mm. @throws PatternError those of `parseLength`, with its place */
export function lengthOf(attribute: Attribute, name: string, { report, unit, owner }: ReadingPlace): number {
  try {
    return parseLength(attribute.value, unit);
  } catch (error) {
    if (!(error instanceof PatternError)) throw error;
    const code = error.code as 'length-not-understood' | 'length-out-of-range';
    throw report.refuse(code, attribute.offset, { attribute: name }, owner);
  }
}

/** A length over 0 that an element's attribute gives, in mm; `undefined` where it does not have it. */
export function positiveLength(element: Element, name: string, place: ReadingPlace): number | undefined {
  const attribute = element.attributes.get(name);
  if (!attribute) return undefined;
  const mm = lengthOf(attribute, name, place);
  if (mm > 0) return mm;
  throw place.report.refuse('length-not-positive', attribute.offset, { attribute: name }, place.owner);
}

/** A name that an attribute gives. @throws PatternError `name-missing` where it is empty */
export function nameOf(element: Element, what: NamedThing, report: Report, owner: Owner): string {
  const { value, offset } = element.attributes.get(`data-${what}`)!;
  const name = value.trim();
  if (name !== '') return name;
  throw report.refuse('name-missing', offset, { what }, owner);
}

/** A whole number that an attribute gives, from 1 to `most`. @throws PatternError `cut-count` */
export function countOf(
  element: Element,
  name: string,
  most: number,
  { report, owner }: ReadingPlace,
): number | undefined {
  const written = element.attributes.get(name);
  if (!written) return undefined;
  const count = /^\s*\d{1,4}\s*$/.test(written.value) ? Number(written.value) : Number.NaN;
  if (count >= 1 && count <= most) return count;
  throw report.refuse('cut-count', written.offset, { most }, owner);
}
