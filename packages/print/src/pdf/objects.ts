/** Refers to an object of the file by its number. */
export interface Ref {
  readonly number: number;
}
/** Words for readers, in any language. */
export interface Words {
  readonly words: string;
}
/** Characters of a program's own, such as a registry's name. */
export interface Characters {
  readonly characters: string;
}

/** What an object of the file may hold; a plain string is a name. Entries that are undefined are left out. */
export type Value = number | boolean | string | Ref | Words | Characters | readonly Value[] | Dictionary;
export interface Dictionary {
  readonly [key: string]: Value | undefined;
}

export const words = (text: string): Words => ({ words: text });
export const characters = (text: string): Characters => ({ characters: text });

/** An object as a PDF writes it (ISO 32000-1, 7.3). */
export function written(value: Value): string {
  if (typeof value === 'number') return number(value);
  if (typeof value === 'boolean') return String(value);
  if (typeof value === 'string') return name(value);
  if (isArray(value)) return `[${value.map(written).join(' ')}]`;
  if (isRef(value)) return `${value.number} 0 R`;
  if (isWords(value)) return `<${utf16(value.words)}>`;
  if (isCharacters(value)) return `(${value.characters.replace(/[\\()]/g, '\\$&')})`;
  const entries = Object.entries(value).flatMap(([key, own]) =>
    own === undefined ? [] : [`${name(key)} ${written(own)}`],
  );
  return `<<${entries.join(' ')}>>`;
}

const isArray = (value: Value): value is readonly Value[] => Array.isArray(value);
const isRef = (value: Dictionary | Ref | Words | Characters): value is Ref =>
  typeof (value as Ref).number === 'number';
const isWords = (value: Dictionary | Words | Characters): value is Words =>
  typeof (value as Words).words === 'string';
const isCharacters = (value: Dictionary | Characters): value is Characters =>
  typeof (value as Characters).characters === 'string';

/** Six decimals, none of them idle; never an exponent, which the format does not know. */
function number(value: number): string {
  if (Number.isSafeInteger(value)) return String(value);
  const short = value.toFixed(6).replace(/\.?0+$/, '');
  return short === '-0' ? '0' : short;
}

/** A name with every other than a plain character as its number (7.3.5). */
const name = (text: string): string =>
  `/${text.replace(/[^!-~]|[#()<>[\]{}/%]/g, c => `#${c.charCodeAt(0).toString(16).padStart(2, '0')}`)}`;

/** UTF-16 with its byte order mark, in hexadecimal (7.9.2.2). */
function utf16(text: string): string {
  let hex = 'FEFF';
  for (let i = 0; i < text.length; i++) hex += text.charCodeAt(i).toString(16).toUpperCase().padStart(4, '0');
  return hex;
}
