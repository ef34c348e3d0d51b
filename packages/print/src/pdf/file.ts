import { zlibSync } from 'fflate';
import { type Dictionary, type Ref, type Value, written } from './objects.js';

/** A PDF while it is written: objects get their numbers before or as they are given. */
export interface PdfFile {
  /** The number of an object that is given later, by `assign`. */
  next(): Ref;
  assign(ref: Ref, value: Value): void;
  add(value: Value): Ref;
  /** A stream as it is: packing a few dozen bytes would make them more. */
  plain(content: string): Ref;
  /** A packed stream; text is of Latin-1 letters. */
  packed(content: string | Uint8Array, dictionary?: Dictionary): Ref;
  /** The whole file. */
  bytes(catalog: Ref, info: Ref): Uint8Array;
}

/** Objects without a stream that are packed together: readers unpack all to find one. */
const inOneStream = 400;

/**
 * The file of ISO 32000-1, 7.5: objects packed in streams of many, and where each stands as a stream, too. No clock and
 * no chance: the same objects give the same bytes.
 */
export function pdfFile(): PdfFile {
  let last = 0;
  const values: (readonly [ref: Ref, text: string])[] = [];
  const streams: (readonly [ref: Ref, head: string, body: Uint8Array])[] = [];
  const next = (): Ref => ({ number: ++last });
  const stream = (ref: Ref, body: Uint8Array, dictionary: Dictionary): Ref => {
    streams.push([ref, written({ ...dictionary, Length: body.length }), body]);
    return ref;
  };
  const packed = (content: string | Uint8Array, dictionary: Dictionary = {}): Ref =>
    stream(next(), zlibSync(bytesOf(content), packing), { Filter: 'FlateDecode', ...dictionary });
  return {
    next,
    packed,
    assign: (ref, value) => void values.push([ref, written(value)]),
    add(value) {
      const ref = next();
      values.push([ref, written(value)]);
      return ref;
    },
    plain: content => stream(next(), bytesOf(content), {}),
    bytes(catalog, info) {
      const within = new Map<number, Entry>();
      for (let i = 0; i < values.length; i += inOneStream) {
        const own = values.slice(i, i + inOneStream);
        const ref = objectStream(own, packed);
        for (const [at, [{ number }]] of own.entries()) within.set(number, [2, ref.number, at]);
      }
      return assembled(streams, within, { Root: catalog, Info: info, index: next() });
    },
  };
}

/** Of 1 to 9: pages of a garment come out one part in a hundred larger than at the most, in half the time. */
const packing = { level: 5 } as const;

/** Values as one stream: their numbers and where each begins, then they themselves (7.5.7). */
function objectStream(values: readonly (readonly [Ref, string])[], packed: PdfFile['packed']): Ref {
  let at = 0;
  const index = values.map(([{ number }, text]) => {
    const entry = `${number} ${at}`;
    at += text.length + 1;
    return entry;
  });
  const head = `${index.join(' ')}\n`;
  return packed(head + values.map(([, text]) => text).join('\n'), {
    Type: 'ObjStm',
    N: values.length,
    First: head.length,
  });
}

/** Kind, and where: 1 and bytes from the start, or 2, the stream it is packed in and its place there (7.5.8). */
type Entry = readonly [kind: number, at: number, place: number];

function assembled(
  streams: readonly (readonly [Ref, string, Uint8Array])[],
  within: ReadonlyMap<number, Entry>,
  { Root, Info, index }: { readonly Root: Ref; readonly Info: Ref; readonly index: Ref },
): Uint8Array {
  const parts: Uint8Array[] = [];
  let length = 0;
  const put = (part: string | Uint8Array): void => {
    const bytes = bytesOf(part);
    parts.push(bytes);
    length += bytes.length;
  };
  const entries = new Map(within);
  const putStream = ({ number }: Ref, head: string, body: Uint8Array): void => {
    entries.set(number, [1, length, 0]);
    put(`${number} 0 obj\n${head}\nstream\n`);
    put(body);
    put('\nendstream\nendobj\n');
  };
  // Four letters beyond ASCII tell whatever carries the file that it is none of text.
  put('%PDF-1.7\n%\u00e2\u00e3\u00cf\u00d3\n');
  for (const [ref, head, body] of streams) putStream(ref, head, body);
  const start = length;
  entries.set(index.number, [1, start, 0]);
  const table = zlibSync(tableOf(entries, index.number + 1), packing);
  const dictionary = { Type: 'XRef', Size: index.number + 1, W: widths, Root, Info };
  putStream(index, written({ ...dictionary, Filter: 'FlateDecode', Length: table.length }), table);
  put(`startxref\n${start}\n%%EOF\n`);
  return joined(parts, length);
}

/** Bytes of each column of the table. */
const widths = [1, 4, 2] as const;

function tableOf(entries: ReadonlyMap<number, Entry>, count: number): Uint8Array {
  const row = widths.reduce((a, b) => a + b, 0);
  const view = new DataView(new ArrayBuffer(count * row));
  for (const [number, [kind, at, place]] of entries) {
    view.setUint8(number * row, kind);
    view.setUint32(number * row + 1, at);
    view.setUint16(number * row + 5, place);
  }
  view.setUint16(5, 0xffff); // Object 0 heads the free ones and is never used again.
  return new Uint8Array(view.buffer);
}

function joined(parts: readonly Uint8Array[], length: number): Uint8Array {
  const whole = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

function bytesOf(content: string | Uint8Array): Uint8Array {
  if (typeof content !== 'string') return content;
  const bytes = new Uint8Array(content.length);
  for (let i = 0; i < content.length; i++) bytes[i] = content.charCodeAt(i);
  return bytes;
}
