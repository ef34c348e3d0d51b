import { largestFile } from './limits.js';
import { otherFile } from './other-file.js';
import { refusal } from './tellings.js';

/** Part of every browser and of Node; named here because the language's own library does not know it. */
declare const TextDecoder: new (
  label: string,
  options: { readonly fatal: boolean },
) => { decode(bytes: Uint8Array): string };

/**
 * The text of an SVG file: UTF-8, UTF-16 or Latin-1, told by byte order mark, by the zeros of UTF-16, or by the
 * XML declaration, in that order; UTF-8 where nothing is said (XML 1.0, appendix F).
 *
 * @throws PatternError `file-too-large`; `not-a-drawing`; `file-compressed`; `encoding-unknown`; `encoding-broken`
 */
export function decodeXml(source: Uint8Array | string): string {
  // Plain JavaScript may hand in anything.
  if (typeof source !== 'string' && !(source instanceof Uint8Array))
    throw refusal('not-a-drawing', { is: 'nothing' });
  if (source.length > largestFile) throw refusal('file-too-large', {});
  const other = otherFile(source);
  if (other) throw refusal('not-a-drawing', { is: other });
  if (typeof source === 'string') return source.charCodeAt(0) === byteOrderMark ? source.slice(1) : source;
  const [a, b, c] = source;
  if (a === 0x1f && b === 0x8b) throw refusal('file-compressed', {});
  if (a === 0xef && b === 0xbb && c === 0xbf) return decodeAs('utf-8', source);
  if ((a === 0xff && b === 0xfe) || (a === 0x3c && b === 0)) return decodeAs('utf-16le', source);
  if ((a === 0xfe && b === 0xff) || (a === 0 && b === 0x3c)) return decodeAs('utf-16be', source);
  return decodeAs(declaredEncoding(source), source);
}
const byteOrderMark = 0xfeff;

function declaredEncoding(source: Uint8Array): string {
  const head = String.fromCharCode(...source.subarray(0, 256));
  const declared = /^\s*<\?xml[^>]*?\bencoding\s*=\s*["']([\w.:-]+)["']/.exec(head)?.[1]?.toLowerCase();
  if (declared === undefined) return 'utf-8';
  const known = encodings[declared];
  if (known !== undefined) return known;
  throw refusal('encoding-unknown', {});
}

/** A file whose bytes are one to a character cannot be UTF-16, whatever it declares; it is read as UTF-8 then. */
const encodings: Readonly<Record<string, string>> = {
  'utf-8': 'utf-8',
  utf8: 'utf-8',
  'us-ascii': 'utf-8',
  ascii: 'utf-8',
  'utf-16': 'utf-8',
  'iso-8859-1': 'windows-1252',
  'iso8859-1': 'windows-1252',
  latin1: 'windows-1252',
  'windows-1252': 'windows-1252',
};

function decodeAs(encoding: string, source: Uint8Array): string {
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(source);
  } catch {
    throw refusal('encoding-broken', {});
  }
}
