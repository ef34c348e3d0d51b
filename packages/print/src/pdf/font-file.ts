import { refusal } from '../tellings.js';

/** The tables of a TrueType font by their four-letter tags. Source: OpenType 1.9, "Font tables". */
export type FontTables = ReadonlyMap<string, Uint8Array>;

/**
 * The tables of a font file, TrueType or WOFF 1.0.
 * @throws PatternError `font-not-usable`: no TrueType outlines, or not a font at all
 */
export async function fontTables(file: Uint8Array): Promise<FontTables> {
  try {
    // A subclass of Uint8Array may slice without copying; these tables are copied before they are changed.
    const bytes = new Uint8Array(file.buffer, file.byteOffset, file.byteLength);
    const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
    const tables =
      view.getUint32(0) === woffSignature ? await woffTables(bytes, view) : plainTables(bytes, view);
    if (['head', 'hhea', 'hmtx', 'maxp', 'loca', 'glyf'].every(tag => tables.has(tag))) return tables;
  } catch (error) {
    if (!(error instanceof RangeError || error instanceof TypeError)) throw error;
  }
  throw refusal('font-not-usable', { broken: false });
}

const woffSignature = 0x774f4646;

function plainTables(bytes: Uint8Array, view: DataView): FontTables {
  const count = view.getUint16(4);
  return new Map(
    Array.from({ length: count }, (_, i) => {
      const at = 12 + 16 * i;
      const offset = view.getUint32(at + 8);
      return [tagAt(bytes, at), bytes.subarray(offset, offset + view.getUint32(at + 12))] as const;
    }),
  );
}

async function woffTables(bytes: Uint8Array, view: DataView): Promise<FontTables> {
  const count = view.getUint16(12);
  const entries = Array.from({ length: count }, async (_, i) => {
    const at = 44 + 20 * i;
    const offset = view.getUint32(at + 4),
      packed = view.getUint32(at + 8),
      length = view.getUint32(at + 12);
    const data = bytes.subarray(offset, offset + packed);
    return [tagAt(bytes, at), packed < length ? await inflated(data) : data] as const;
  });
  return new Map(await Promise.all(entries));
}

/** zlib as the web platform has it, in browsers and in Node alike; declared here, as the library knows neither. */
declare const DecompressionStream: new (format: 'deflate') => unknown;
declare const Response: new (
  body: unknown,
) => { readonly body: { pipeThrough(stream: unknown): unknown }; arrayBuffer(): Promise<ArrayBuffer> };

async function inflated(data: Uint8Array): Promise<Uint8Array> {
  const stream = new Response(new Uint8Array(data)).body.pipeThrough(new DecompressionStream('deflate'));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

const tagAt = (bytes: Uint8Array, at: number): string => String.fromCharCode(...bytes.subarray(at, at + 4));

/** A TrueType file of these tables, in order of their tags. */
export function fontFile(tables: FontTables): Uint8Array {
  const entries = [...tables].sort(([a], [b]) => (a < b ? -1 : 1));
  const padded = (n: number) => (n + 3) & ~3;
  const bytes = new Uint8Array(
    12 + 16 * entries.length + entries.reduce((n, [, t]) => n + padded(t.length), 0),
  );
  const view = new DataView(bytes.buffer);
  const power = Math.floor(Math.log2(entries.length));
  view.setUint32(0, 0x00010000);
  for (const [i, value] of [
    entries.length,
    16 << power,
    power,
    16 * entries.length - (16 << power),
  ].entries())
    view.setUint16(4 + 2 * i, value);
  let offset = 12 + 16 * entries.length;
  for (const [i, [tag, data]] of entries.entries()) {
    const at = 12 + 16 * i;
    for (let k = 0; k < 4; k++) bytes[at + k] = tag.charCodeAt(k);
    bytes.set(data, offset);
    view.setUint32(at + 4, checksum(view, offset, padded(data.length)));
    view.setUint32(at + 8, offset);
    view.setUint32(at + 12, data.length);
    offset += padded(data.length);
  }
  return bytes;
}

function checksum(view: DataView, offset: number, length: number): number {
  let sum = 0;
  for (let i = 0; i < length; i += 4) sum = (sum + view.getUint32(offset + i)) >>> 0;
  return sum;
}
