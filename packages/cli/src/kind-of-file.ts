import type { FileKind } from '@paperhinge/sheet/words';

const starts = (bytes: Uint8Array, ...head: readonly number[]): boolean =>
  head.every((b, i) => bytes[i] === b);
/** Bytes looked at: a drawing may begin with long remarks. */
const looked = 4096;

/** What a file is, by how it begins; undefined where that says nothing. Nothing of what it holds is told. */
export function kindOfFile(bytes: Uint8Array): FileKind | undefined {
  if (starts(bytes, 0x25, 0x50, 0x44, 0x46)) return 'pdf';
  const isPicture =
    starts(bytes, 0x89, 0x50, 0x4e, 0x47) ||
    starts(bytes, 0xff, 0xd8, 0xff) ||
    starts(bytes, 0x47, 0x49, 0x46, 0x38) ||
    (starts(bytes, 0x52, 0x49, 0x46, 0x46) && starts(bytes.subarray(8), 0x57, 0x45, 0x42, 0x50));
  if (isPicture) return 'picture';
  if (starts(bytes, 0x50, 0x4b, 0x03, 0x04) || starts(bytes, 0x1f, 0x8b)) return 'archive';
  const text = new TextDecoder()
    .decode(bytes.subarray(0, looked))
    .replace(/^\uFEFF/, '')
    .trimStart();
  if (/^(999[\r\n]|0[ \t]*\r?\n\s*SECTION)/.test(text) || text.startsWith('AutoCAD Binary DXF')) return 'dxf';
  if (text.startsWith('<')) return /<(\w+:)?svg[\s>]/.test(text) ? 'drawing' : undefined;
  if (/^\{\s*"sheet"\s*:/.test(text)) return 'record';
  return /^(pattern|pieces|steps)[ \t]*:/m.test(text) || /^\{\s*"(pattern|pieces|steps)"\s*:/.test(text)
    ? 'sheet'
    : undefined;
}
