import { quoted, suggestion } from '../naming.js';
import type { EdgeRef, Fabric, Piece, Seam } from '../pattern/types.js';
import type { LengthUnit } from '../units.js';
import { type Json, JsonFault, jsonError, parseJson } from './json.js';
import { readFabric } from './read-fabric.js';
import { readSeams } from './read-seams.js';
import type { Report } from './report.js';
import { findRun } from './run-text.js';
import { type Element, offsetWithin, type XmlDocument } from './xml.js';

export interface Metadata {
  readonly seams: readonly Seam[];
  readonly fabrics: readonly Fabric[];
  /** By piece name: the edges it was drafted for. */
  readonly madeFor: ReadonlyMap<string, readonly EdgeRef[]>;
}

/** Reads values of the metadata; knows where each stands in the file. */
export interface MetadataContext {
  readonly report: Report;
  readonly unit: LengthUnit;
  readonly pieces: readonly Piece[];
  /** Offset in the file of a place in the JSON. */
  readonly offset: (at: number) => number;
}

const keys = ['seams', 'fabrics', 'madeFor'];

/**
 * Seams and fabrics from the JSON in the drawing's `metadata`. Other metadata (of drawing programs) are passed over.
 * @throws PatternError `metadata-not-json`, `metadata-not-understood`, and those of seams and fabrics, each with line
 */
export function readMetadata(
  document: XmlDocument,
  pieces: readonly Piece[],
  unit: LengthUnit,
  report: Report,
): Metadata {
  const element = metadataOf(document.root);
  if (!element) return { seams: [], fabrics: [], madeFor: new Map() };
  const text = element.text.slice(element.text.indexOf('{'));
  const start = document.text.indexOf('{', element.textOffset);
  const offset = (at: number): number => offsetWithin(document.text, { value: text, offset: start }, at);
  const context: MetadataContext = { report, unit, pieces, offset };
  const top = entriesOf(parsed(text, context), 'The metadata', context);
  for (const [key, { keyAt }] of top)
    if (!keys.includes(key))
      report.add('warning', 'metadata-not-read', offset(keyAt), {
        message: `The metadata hold ${quoted(key)}, which is not read.`,
        remedy: suggestion(key, keys.slice(0, 2), 'keys'),
      });
  const list = (key: string) => {
    const entry = top.get(key);
    return entry ? [...entriesOf(entry.value, quoted(key), context)] : [];
  };
  return {
    fabrics: list('fabrics').map(([name, { value }]) => readFabric(name, value, context)),
    seams: readSeams(list('seams'), context),
    madeFor: new Map(list('madeFor').map(([name, { value }]) => [name, refsOf(value, context)])),
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

/** The entries of a JSON object. @throws PatternError `metadata-not-understood` where it is anything else */
export function entriesOf(json: Json, what: string, context: MetadataContext) {
  if (json.kind === 'object') return json.entries;
  throw notUnderstood(json, `${what} must be an object.`, 'Write it as { "name": ... }.', context);
}

export const notUnderstood = (json: Json, message: string, remedy: string, context: MetadataContext) =>
  context.report.error('metadata-not-understood', context.offset(json.at), { message, remedy });

function refsOf(json: Json, context: MetadataContext): readonly EdgeRef[] {
  const items = json.kind === 'array' ? json.items : [json];
  return items
    .flatMap(item => (item.kind === 'string' ? [findRun(item.value, context.pieces)] : []))
    .flatMap(found =>
      found && found.piece !== undefined && found.edge !== undefined
        ? [{ piece: found.piece, edge: found.edge }]
        : [],
    );
}
