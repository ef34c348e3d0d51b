import type { EdgeRef, Fabric, Fastening, Piece, Seam } from '../pattern/types.js';
import type { LengthUnit } from '../units.js';
import { type Json, JsonFault, jsonError, parseJson } from './json.js';
import type { MetadataContext } from './metadata-values.js';
import { entriesOf, tellUnread } from './metadata-values.js';
import { readFabric } from './read-fabric.js';
import { readFastening } from './read-fastening.js';
import type { PieceReading } from './read-piece.js';
import { readSeams } from './read-seams.js';
import type { Report } from './report.js';
import { findRun } from './run-text.js';
import { metadataKeys } from './vocabulary.js';
import { type Element, offsetWithin, type XmlDocument } from './xml.js';

export interface Metadata {
  readonly seams: readonly Seam[];
  readonly fabrics: readonly Fabric[];
  readonly fastenings: readonly Fastening[];
  /** By piece name: the edges it was drafted for. */
  readonly madeFor: ReadonlyMap<string, readonly EdgeRef[]>;
}

/**
 * Seams, fabrics and fastenings from the JSON in the drawing's `metadata`. Other metadata (of drawing programs) are
 * passed over.
 * @throws PatternError `metadata-not-json`, `metadata-not-understood`, and those of what it holds, each with line
 */
export function readMetadata(
  document: XmlDocument,
  readings: readonly PieceReading[],
  unit: LengthUnit,
  report: Report,
): Metadata {
  const element = metadataOf(document.root);
  if (!element) return { seams: [], fabrics: [], fastenings: [], madeFor: new Map() };
  const text = element.text.slice(element.text.indexOf('{'));
  const start = document.text.indexOf('{', element.textOffset);
  const offset = (at: number): number => offsetWithin(document.text, { value: text, offset: start }, at);
  const pieces = readings.map(({ piece }) => piece);
  const context: MetadataContext = { report, unit, pieces, offset };
  const top = entriesOf(parsed(text, context), {}, context);
  tellUnread(top, metadataKeys, undefined, context);
  const list = (key: (typeof metadataKeys)[number]) => {
    const entry = top.get(key);
    return entry ? [...entriesOf(entry.value, { key }, context)] : [];
  };
  return {
    fabrics: list('fabrics').map(([name, { value }]) => readFabric(name, value, context)),
    seams: readSeams(list('seams'), context),
    fastenings: list('fastenings').map(([name, entry]) => readFastening(name, entry, context)),
    madeFor: new Map(list('madeFor').map(([name, { value }]) => [name, refsOf(value, pieces)])),
  };
}

function parsed(text: string, context: MetadataContext): Json {
  try {
    return parseJson(text.trimEnd());
  } catch (error) {
    if (error instanceof JsonFault) throw jsonError(error, context.report.where(context.offset(error.at)));
    throw error;
  }
}

/** The first metadata element whose own text is a JSON object. */
function metadataOf(root: Element): Element | undefined {
  const stack = [root];
  for (let element = stack.pop(); element; element = stack.pop()) {
    if (element.name === 'metadata' && element.text.trimStart().startsWith('{')) return element;
    for (let i = element.children.length - 1; i >= 0; i--) stack.push(element.children[i]!);
  }
  return undefined;
}

function refsOf(json: Json, pieces: readonly Piece[]): readonly EdgeRef[] {
  const items = json.kind === 'array' ? json.items : [json];
  return items
    .flatMap(item => (item.kind === 'string' ? [findRun(item.value, pieces)] : []))
    .flatMap(found => (found ? [{ piece: found.piece, edge: found.edge }] : []));
}
