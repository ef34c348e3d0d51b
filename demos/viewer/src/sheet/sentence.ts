import { type Field, inSheet } from '@paperhinge/alter/verb';
import type { VerbWords } from '@paperhinge/sheet/words';
import type { Declared } from '../engine/view.js';

/** A sentence of a verb, part by part: words, and fields by their names in the library. */
export type SentencePart = { readonly words: string } | { readonly field: string };

/**
 * The sentence of a verb with its fields where they stand. What is in brackets is said only where its field is given,
 * or where the sentence is open to be filled in.
 */
export function partsOf(sentence: string, isGiven: (field: string) => boolean): readonly SentencePart[] {
  const shown = sentence.replace(/\[([^\]]*)\]/g, (_, inner: string) =>
    [...inner.matchAll(/\{([^}]+)\}/g)].every(m => isGiven(m[1]!)) ? inner : '',
  );
  return shown
    .split(/(\{[^}]+\})/)
    .filter(part => part !== '')
    .map(part => (part.startsWith('{') ? { field: part.slice(1, -1) } : { words: part }));
}

/** A field of a verb by its name in words, also one within a group: `to.edge`. */
export function fieldAt(verb: Declared, name: string): Field | undefined {
  let fields: Declared['fields'] | undefined = verb.fields;
  let field: Field | undefined;
  for (const part of name.split('.')) {
    // Which of several, each with the same fields.
    if (field?.kind === 'groups' && /^\d+$/.test(part)) continue;
    field = Object.entries(fields ?? {}).find(([own]) => inSheet(own) === part)?.[1];
    fields = field?.fields;
  }
  return field;
}

/** The value of a field within the fields of a written step: of mappings only, a text has no fields. */
export const valueAt = (fields: Readonly<Record<string, unknown>>, name: string): unknown =>
  name
    .split('.')
    .reduce<unknown>(
      (value, part) =>
        typeof value === 'object' && value !== null && Object.hasOwn(value, part)
          ? (value as Record<string, unknown>)[part]
          : undefined,
      fields,
    );

/** A field that holds several things with fields of their own, as a blank for each value that is there. */
export function eachSaid(
  part: SentencePart,
  verb: Declared,
  fields: Readonly<Record<string, unknown>>,
): readonly SentencePart[] {
  if (!('field' in part) || fieldAt(verb, part.field)?.kind !== 'groups') return [part];
  const several = valueAt(fields, part.field);
  if (!Array.isArray(several)) return [part];
  const paths = (value: unknown, path: string): readonly string[] =>
    typeof value === 'object' && value !== null && !Array.isArray(value)
      ? Object.entries(value).flatMap(([key, inner]) => paths(inner, `${path}.${key}`))
      : [path];
  return several.flatMap((one, i) =>
    paths(one, `${part.field}.${i}`).flatMap((field, k): readonly SentencePart[] => [
      ...(i + k === 0 ? [] : [{ words: k === 0 ? '; ' : ' ' }]),
      { field },
    ]),
  );
}

/** A value as a sentence says it: lists joined, `front.hem` as "front hem", dashes as spaces; what may be chosen in the reader's words. */
export function spoken(value: unknown, and: string, chosen: (word: string) => string = word => word): string {
  if (value === undefined || value === null) return '…';
  if (Array.isArray(value)) {
    const items = value.map(item => spoken(item, and, chosen));
    return items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} ${and} ${items.at(-1)}`;
  }
  if (typeof value === 'object')
    return Object.values(value)
      .map(item => spoken(item, and, chosen))
      .join(' ');
  if (typeof value === 'boolean') return chosen(value ? 'yes' : 'no');
  return chosen(String(value)).replace(/(?<=\p{L})[.-](?=\p{L})/gu, ' ');
}

/** The sentence of a verb in the reader's language. */
export const sentenceOf = (verb: Declared, own: VerbWords): string =>
  own[verb.verb]?.sentence ?? verb.sentence;

/** The words of a sentence without its blanks filled in: "Close the … dart of the … into the …". */
export const bareSentence = (
  verb: Declared,
  own: VerbWords,
  given: Readonly<Record<string, unknown>> = {},
): string =>
  partsOf(sentenceOf(verb, own), name => valueAt(given, name) !== undefined)
    .map(part => ('words' in part ? part.words : spoken(valueAt(given, part.field), '')))
    .join('');
