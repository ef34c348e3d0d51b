import { refusal } from './tellings.js';

/** Everything XML 1.0 allows in a document (section 2.2); lone surrogates are not among it. */
const notXml = /[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/u;

const escapes: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  '\t': '&#9;',
  '\n': '&#10;',
  '\r': '&#13;',
};

/**
 * A text as an attribute's value or as character data; hostile ones come back on reading just as they were.
 * @throws PatternError `name-not-writable` for characters that no XML file can hold
 */
export function xmlText(text: string): string {
  if (notXml.test(text)) throw refusal('name-not-writable', { name: text });
  return text.replace(/[&<>"\t\n\r]/g, character => escapes[character]!);
}

/**
 * JSON as character data; it stays JSON, whatever it holds. Maps become objects in their own order (an object would
 * put names that are numbers first), one entry a line down to the second level.
 */
export const xmlJson = (value: unknown, indent: string): string =>
  jsonText(value, indent, 0)
    // JSON's own escape keeps it readable by programs that do not undo XML's, and hides what XML cannot hold.
    .replace(/[&<>]|[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, character =>
      [...Array(character.length).keys()].map(i => escaped(character.charCodeAt(i))).join(''),
    );

const escaped = (unit: number): string => `\\u${unit.toString(16).padStart(4, '0')}`;

function jsonText(value: unknown, indent: string, level: number): string {
  if (Array.isArray(value)) return `[${value.map(item => jsonText(item, indent, level + 1)).join(', ')}]`;
  if (!(value instanceof Map)) return JSON.stringify(value);
  const entries = [...value].filter(([, v]) => v !== undefined);
  const inner = entries.map(([key, v]) => `${JSON.stringify(key)}: ${jsonText(v, indent, level + 1)}`);
  if (entries.length === 0) return '{}';
  if (level > 1) return `{ ${inner.join(', ')} }`;
  const line = `\n${indent}${'  '.repeat(level)}`;
  return `{${inner.map(entry => `${line}  ${entry}`).join(',')}${line}}`;
}

/** ` name="value"`, or nothing where there is no value. */
export const attribute = (name: string, value: string | number | undefined): string =>
  value === undefined ? '' : ` ${name}="${xmlText(String(value))}"`;
