import { createRequire } from 'node:module';
import type { Point } from '@paperhinge/geometry';

/** What the independent reader makes of an entity; y turned back to run down. */
export interface Entity {
  readonly type: string;
  readonly layer: string;
  readonly text: string;
  readonly closed: boolean;
  /** Vertices, ends or the place of it. */
  readonly points: readonly Point[];
}
export interface DxfFile {
  readonly header: Readonly<Record<string, unknown>>;
  readonly layers: readonly string[];
  readonly blocks: ReadonlyMap<string, readonly Entity[]>;
  readonly inserts: readonly { readonly name: string; readonly at: Point }[];
  readonly texts: readonly string[];
}

interface Raw {
  readonly type: string;
  readonly layer: string;
  readonly text?: string;
  readonly shape?: boolean;
  readonly name?: string;
  readonly vertices?: readonly Point[];
  readonly position?: Point;
  readonly startPoint?: Point;
}
interface Parsed {
  readonly header: Readonly<Record<string, unknown>>;
  readonly tables: { readonly layer: { readonly layers: Readonly<Record<string, unknown>> } };
  readonly blocks: Readonly<Record<string, { readonly entities?: readonly Raw[] }>>;
  readonly entities: readonly Raw[];
}

// Its type declarations do not match what Node loads of it, so it is loaded by hand.
const DxfParser = createRequire(import.meta.url)('dxf-parser') as new () => {
  parseSync(text: string): Parsed;
};

/** A DXF file as the open-source `dxf-parser` reads it. */
export function readDxf(text: string): DxfFile {
  const { header, tables, blocks, entities } = new DxfParser().parseSync(text);
  return {
    header,
    layers: Object.keys(tables.layer.layers),
    blocks: new Map(Object.entries(blocks).map(([name, b]) => [name, (b.entities ?? []).map(entity)])),
    inserts: entities
      .filter(e => e.type === 'INSERT')
      .map(e => ({ name: e.name ?? '', at: down(e.position!) })),
    texts: entities.filter(e => e.type === 'TEXT').map(e => decoded(e.text ?? '')),
  };
}

const down = ({ x, y }: Point): Point => ({ x, y: -y });

const entity = (raw: Raw): Entity => ({
  type: raw.type,
  layer: raw.layer,
  text: decoded(raw.text ?? ''),
  closed: raw.shape ?? false,
  points: [
    ...(raw.vertices ?? []),
    ...[raw.position, raw.startPoint].filter((p): p is Point => p !== undefined),
  ].map(down),
});

/** `\U+XXXX` back to characters, which this reader leaves to its caller. */
const decoded = (text: string): string =>
  text.replace(/\\U\+([0-9A-F]{4})/g, (_, hex) => String.fromCharCode(Number.parseInt(hex, 16)));
