import { oncePer } from '../../once-per.js';

/**
 * Words that tell a role, with commas between them, by the way they stand in a name: `neck` is a word by itself (a plural too), `neck-` begins
 * one, `-naht` ends one, `-ausschnitt-` stands anywhere in one, and `tete de manche` are words that follow each other.
 */
export type RoleWords<Role extends string> = readonly (readonly [role: Role, words: string])[];

/** The first role one of whose words stands in a name; `undefined` where none does. */
export function roleInName<Role extends string>(name: string, table: RoleWords<Role>): Role | undefined {
  const text = ` ${plainWords(name)} `;
  return (sought(table) as Sought<Role>).find(([, texts]) => texts.some(one => text.includes(one)))?.[0];
}

type Sought<Role extends string> = readonly (readonly [role: Role, texts: readonly string[]])[];

/** What to look for in a name with a space before and after it, for each role. Words of a table are many, and asked for again and again. */
const sought = /* @__PURE__ */ oncePer(
  (table: RoleWords<string>): Sought<string> =>
    table.map(([role, words]) => [role, words.split(', ').flatMap(textsOf)] as const),
);

function textsOf(word: string): readonly string[] {
  const begins = word.startsWith('-'),
    ends = word.endsWith('-');
  const stem = plainWords(word);
  if (begins && ends) return [stem];
  if (begins) return [`${stem} `];
  return ends ? [` ${stem}`] : [` ${stem} `, ` ${stem}s `];
}

/**
 * A name as small letters of the plain alphabet with single spaces: `vorderesHalsloch_2` is `vorderes halsloch`.
 * Umlauts count as written with and without their `e`, so that `ärmel`, `aermel` and `armel` are one word.
 */
export function plainWords(name: string): string {
  return name
    .slice(0, longestRead)
    .replace(/(\p{Ll})(\p{Lu})/gu, '$1 $2')
    .toLowerCase()
    .replaceAll('ß', 'ss')
    .replaceAll('æ', 'a')
    .replaceAll('ø', 'o')
    .replaceAll('ł', 'l')
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/([aou])e/g, '$1')
    .replace(/[^\p{L}]+/gu, ' ')
    .trim();
}

/** Characters: a name is a few words; one longer than this tells nothing further on. */
const longestRead = 100;
