/**
 * Writes `src/pdf/carried-fonts.ts`: the letters, figures and signs of the languages written in Latin letters, out of
 * an open font under the SIL Open Font License, unhinted. Run once, by hand, after `tsc -b`:
 *
 *   node packages/print/fonts/carry.js
 *
 * The licence reserves the font's own name, so the part that is carried has another.
 */
import { readFile, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { deflateSync } from 'node:zlib';
import { fontTables } from '../dist/pdf/font-file.js';
import { fontProgram } from '../dist/pdf/font-program.js';
import { subsetFont } from '../dist/pdf/subset-font.js';

const resolve = createRequire(new URL('../../cli/package.json', import.meta.url)).resolve;
const from = name => readFile(resolve(`@expo-google-fonts/source-sans-3/${name}`));
const range = (first, last) => Array.from({ length: last - first + 1 }, (_, i) => first + i);
/** Latin with all its accents in Europe, quotation marks, dashes, fractions, arrows, signs of sums. */
const wanted = [
  ...range(0x20, 0x7e),
  ...range(0xa0, 0x17f),
  ...[0x218, 0x219, 0x21a, 0x21b, 0x1e9e],
  ...range(0x2010, 0x2026),
  ...[0x2030, 0x2032, 0x2033, 0x2039, 0x203a, 0x2044, 0x20ac, 0x2116, 0x2122],
  ...range(0x2150, 0x215e),
  ...range(0x2190, 0x2193),
  ...[0x2212, 0x221e, 0x2260, 0x2264, 0x2265],
];

const view = bytes => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

/** A cmap of one map in format 12. */
function characterMapTable(codes) {
  const groups = [];
  for (const [i, code] of codes.entries()) {
    const last = groups.at(-1);
    if (last && code === last.end + 1) last.end = code;
    else groups.push({ start: code, end: code, glyph: i + 1 });
  }
  const bytes = new Uint8Array(12 + 16 + 12 * groups.length);
  const v = view(bytes);
  v.setUint16(2, 1);
  v.setUint16(4, 3);
  v.setUint16(6, 10);
  v.setUint32(8, 12);
  v.setUint16(12, 12);
  v.setUint32(16, 16 + 12 * groups.length);
  v.setUint32(24, groups.length);
  for (const [i, { start, end, glyph }] of groups.entries())
    for (const [k, value] of [start, end, glyph].entries()) v.setUint32(28 + 12 * i + 4 * k, value);
  return bytes;
}

/** A name table with the PostScript name alone. */
function nameTable(name) {
  const bytes = new Uint8Array(18 + name.length);
  const v = view(bytes);
  for (const [i, value] of [0, 1, 18, 1, 0, 0, 6, name.length, 0].entries()) v.setUint16(2 * i, value);
  bytes.set(
    [...name].map(c => c.charCodeAt(0)),
    18,
  );
  return bytes;
}

/** WOFF 1.0: each table packed by itself. */
function woff(tables) {
  const entries = [...tables].sort(([a], [b]) => (a < b ? -1 : 1));
  const packed = entries.map(([tag, data]) => {
    const small = new Uint8Array(deflateSync(data, { level: 9 }));
    return { tag, length: data.length, data: small.length < data.length ? small : data };
  });
  const padded = n => (n + 3) & ~3;
  const bytes = new Uint8Array(
    44 + 20 * packed.length + packed.reduce((n, p) => n + padded(p.data.length), 0),
  );
  const v = view(bytes);
  v.setUint32(0, 0x774f4646);
  v.setUint32(4, 0x00010000);
  v.setUint32(8, bytes.length);
  v.setUint16(12, packed.length);
  let offset = 44 + 20 * packed.length;
  for (const [i, { tag, length, data }] of packed.entries()) {
    const at = 44 + 20 * i;
    for (let k = 0; k < 4; k++) bytes[at + k] = tag.charCodeAt(k);
    for (const [k, value] of [offset, data.length, length].entries()) v.setUint32(at + 4 + 4 * k, value);
    bytes.set(data, offset);
    offset += padded(data.length);
  }
  return bytes;
}

async function carried(file, name) {
  const program = await fontProgram(await from(file));
  const codes = wanted.filter(program.has);
  const small = await fontTables(subsetFont(program.tables, [0, ...codes.map(c => program.glyph(c).id)]));
  const font = woff(
    new Map([
      ...small,
      ['cmap', characterMapTable(codes)],
      ['name', nameTable(name)],
      ['OS/2', program.tables.get('OS/2')],
    ]),
  );
  return Buffer.from(font).toString('base64');
}

const regular = await carried('400Regular/SourceSans3_400Regular.ttf', 'HingeSans-Regular');
const bold = await carried('600SemiBold/SourceSans3_600SemiBold.ttf', 'HingeSans-SemiBold');
await writeFile(
  new URL('../src/pdf/carried-fonts.ts', import.meta.url),
  `/**
 * Written by \`fonts/carry.js\`: the Latin letters of an open sans in two weights, as WOFF in base64. Copyright 2010-2020
 * Adobe (http://www.adobe.com/), with Reserved Font Name 'Source'; SIL Open Font License 1.1, see \`fonts/OFL.txt\`.
 */
export const carriedFonts = {
  regular:
    '${regular}',
  bold:
    '${bold}',
} as const;
`,
);
