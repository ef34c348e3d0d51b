import type { OtherFile } from './tellings.js';

/** How files begin that are given for a drawing by mistake; what begins with `<` is left to the XML reader. */
const beginnings: readonly (readonly [is: OtherFile, begins: string])[] = [
  ['pdf', '%PDF'],
  ['picture', '\x89PNG'],
  ['picture', '\xff\xd8\xff'],
  ['picture', 'GIF8'],
  ['picture', 'BM'],
  ['picture', 'II*\0'],
  ['picture', 'MM\0*'],
  ['picture', 'RIFF'],
  ['archive', 'PK\x03\x04'],
];

const encodingMarks = ['\ufeff', '\xef\xbb\xbf', '\xff\xfe', '\xfe\xff', '\x1f\x8b'];

/** What a file is that cannot be a drawing, told by how it begins; `undefined` where it may be one. */
export function otherFile(source: Uint8Array | string): OtherFile | undefined {
  const head =
    typeof source === 'string' ? source.slice(0, 512) : String.fromCharCode(...source.subarray(0, 512));
  const known = beginnings.find(([, begins]) => head.startsWith(begins));
  if (known) return known[0];
  // Marks of encodings, and the zeros of UTF-16, are the XML reader's.
  if (encodingMarks.some(mark => head.startsWith(mark)) || head.includes('\0')) return undefined;
  const text = head.trimStart();
  if (text === '') return head.length < 512 ? 'nothing' : undefined;
  if (/^<(!doctype html|html)\b/i.test(text)) return 'page';
  if (text.startsWith('<')) return undefined;
  return text.startsWith('{') || text.startsWith('[') ? 'json' : 'text';
}
