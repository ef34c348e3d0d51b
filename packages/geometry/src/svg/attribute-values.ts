import { PatternError } from '../errors.js';
import { listed, nearestName, quoted } from '../naming.js';
import { type LengthUnit, parseLength } from '../units.js';
import type { Report } from './report.js';
import type { Attribute, Element } from './xml.js';

/** The piece and edge that an attribute speaks of, for errors. */
export interface Owner {
  readonly piece?: string | undefined;
  readonly edge?: string | undefined;
}

/**
 * One of the words an attribute may say; `undefined` where the element does not have it.
 * @throws PatternError `word-not-understood`: suggests the nearest word, never quoting what stood there
 */
export function wordOf<W extends string>(
  element: Element,
  name: string,
  words: readonly W[],
  report: Report,
  owner: Owner,
): W | undefined {
  const attribute = element.attributes.get(name);
  if (!attribute) return undefined;
  const word = words.find(w => w === attribute.value.trim());
  if (word !== undefined) return word;
  const near = nearestName(attribute.value.trim(), words);
  throw report.error('word-not-understood', attribute.offset, {
    message: `${name} says a word that is not one of its own.`,
    remedy: near === undefined ? `Write one of: ${listed(words)}.` : `Did you mean ${quoted(near)}?`,
    ...owner,
  });
}

/** The role an element gives; a word that is none is told and passed over, so that the role is guessed. */
export function roleGiven<Role extends string>(
  element: Element | undefined,
  roles: readonly Role[],
  report: Report,
  owner: Owner,
): { readonly role?: Role } {
  const attribute = element?.attributes.get('data-role');
  if (!attribute) return {};
  const written = attribute.value.trim();
  const role = roles.find(r => r === written);
  if (role !== undefined) return { role };
  const near = nearestName(written, roles);
  report.add('warning', 'role-not-known', attribute.offset, {
    message: 'data-role says a word that is not a role; the role was guessed.',
    remedy:
      near === undefined ? `Write one of: ${listed(roles, roles.length)}.` : `Did you mean ${quoted(near)}?`,
    ...owner,
  });
  return {};
}

/** A length of an attribute in mm. @throws PatternError those of `parseLength`, with its place */
export function lengthOf(
  attribute: Attribute,
  name: string,
  unit: LengthUnit,
  report: Report,
  owner: Owner,
): number {
  try {
    return parseLength(attribute.value, unit);
  } catch (error) {
    if (!(error instanceof PatternError)) throw error;
    throw report.error(error.code, attribute.offset, {
      message: `${error.message.replace(/\.$/, '')} (${name}).`,
      remedy: error.remedy,
      ...owner,
    });
  }
}

/** A name that an attribute gives. @throws PatternError `name-missing` where it is empty */
export function nameOf(element: Element, attribute: string, report: Report, owner: Owner): string {
  const { value, offset } = element.attributes.get(attribute)!;
  const name = value.trim();
  if (name !== '') return name;
  throw report.error('name-missing', offset, {
    message: `${attribute} gives no name.`,
    remedy: 'Write a name between the quotation marks.',
    ...owner,
  });
}
