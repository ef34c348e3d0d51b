import { SaxesParser } from 'saxes';
import { locating } from '../errors.js';
import type { Finding } from '../telling.js';
import { decodeXml } from './decode.js';
import { mostElements } from './limits.js';
import { finding, refusal } from './tellings.js';

/** One attribute: its value and where in the file's text that value starts. */
export interface Attribute {
  readonly value: string;
  readonly offset: number;
}

export interface Element {
  /** Place in document order, and that of its last descendant: `a` encloses `b` iff a.index < b.index <= a.last. */
  readonly index: number;
  readonly last: number;
  /** Name without prefix; empty for an element that is not SVG's. */
  readonly name: string;
  readonly attributes: ReadonlyMap<string, Attribute>;
  readonly children: readonly Element[];
  /** Character data directly inside; kept of `metadata`, `style` and what is written in the drawing. */
  readonly text: string;
  readonly textOffset: number;
  readonly offset: number;
}

const keepsText: ReadonlySet<string> = new Set(['metadata', 'style', 'text', 'tspan']);

/** A drawing as a tree. Nothing in it has been expanded, fetched or run. */
export interface XmlDocument {
  readonly text: string;
  readonly root: Element;
  /** Line and column, both from 1, of a place in the text. */
  readonly place: (offset: number) => Place;
  readonly findings: readonly Finding[];
}

export interface Place {
  readonly line: number;
  readonly column: number;
}

type Growing = { -readonly [K in keyof Element]: Element[K] } & {
  attributes: Map<string, Attribute>;
  children: Element[];
  /** Namespaces declared here or above. */
  prefixes: ReadonlyMap<string, string>;
};

const svgNamespace = 'http://www.w3.org/2000/svg';

/**
 * Reads XML into a tree, however deep. Entities that the file declares are never expanded: a reference to one stays
 * as it is written and becomes a finding. No document type, no outside file is read.
 *
 * @throws PatternError `not-xml` with line and column, never quoting the file; `too-many-elements`; and those of {@link decodeXml}
 */
export function parseXml(source: Uint8Array | string, file?: string): XmlDocument {
  const named = file === undefined ? {} : { file };
  const text = locating(named, () => decodeXml(source));
  const findings: Finding[] = [];
  const place = placesIn(text);
  const parser = new SaxesParser({ xmlns: false, position: true });
  // The parser's own table would also find what every JavaScript object inherits.
  parser.ENTITIES = Object.assign(Object.create(null), { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" });
  const open: Growing[] = [];
  let root: Growing | undefined;
  let count = 0;
  let attributes = new Map<string, Attribute>();
  let start = 0;

  parser.on('error', error => {
    const isEntity = error.message.endsWith('undefined entity.');
    if (!isEntity) throw refusal('not-xml', {}, { ...named, ...place(Math.max(0, parser.position - 1)) });
    if (findings.length === 0)
      findings.push(finding('warning', 'entity-not-expanded', { ...named, ...place(parser.position) }, {}));
  });
  parser.on('opentagstart', tag => {
    attributes = new Map();
    start = Math.max(0, parser.position - tag.name.length - 2);
  });
  parser.on('attribute', ({ name, value }) => {
    // The event comes right after the closing quote, and a value cannot hold its own quote.
    const end = parser.position - 1;
    attributes.set(name, { value, offset: text.lastIndexOf(text[end]!, end - 1) + 1 });
  });
  parser.on('opentag', tag => {
    if (count >= mostElements)
      throw refusal('too-many-elements', { most: mostElements }, { ...named, ...place(start) });
    const parent = open.at(-1);
    const element: Growing = {
      ...namedIn(parent?.prefixes ?? noPrefixes, tag.name, attributes),
      index: count++,
      last: 0,
      attributes,
      children: [],
      text: '',
      textOffset: parser.position,
      offset: start,
    };
    if (parent) parent.children.push(element);
    else root = element;
    open.push(element);
  });
  parser.on('closetag', () => {
    open.pop()!.last = count - 1;
  });
  const keepText = (written: string): void => {
    const element = open.at(-1);
    if (element && keepsText.has(element.name)) element.text += written;
  };
  parser.on('text', keepText);
  parser.on('cdata', keepText);
  parser.write(text).close();
  return { text, root: root!, place, findings };
}

const noPrefixes: ReadonlyMap<string, string> = new Map();

/** Its name without prefix if it is SVG's, and the namespaces declared on it or above. */
function namedIn(
  outer: ReadonlyMap<string, string>,
  tag: string,
  attributes: ReadonlyMap<string, Attribute>,
): Pick<Growing, 'name' | 'prefixes'> {
  const prefixes = namespaces(outer, attributes);
  const colon = tag.indexOf(':');
  const prefix = colon < 0 ? '' : tag.slice(0, colon);
  return { name: speaksSvg(prefixes.get(prefix), prefix) ? tag.slice(colon + 1) : '', prefixes };
}

function namespaces(outer: ReadonlyMap<string, string>, attributes: ReadonlyMap<string, Attribute>) {
  let inner: Map<string, string> | undefined;
  for (const [name, { value }] of attributes) {
    if (name !== 'xmlns' && !name.startsWith('xmlns:')) continue;
    inner ??= new Map(outer);
    inner.set(name.slice(6), value);
  }
  return inner ?? outer;
}

/** A file that declares no namespace at all, or only by an entity we do not expand, is taken at its word. */
const speaksSvg = (namespace: string | undefined, prefix: string): boolean =>
  namespace === svgNamespace ||
  (namespace === undefined && (prefix === '' || prefix === 'svg')) ||
  /^&\w+;$/.test(namespace ?? '');

function placesIn(text: string): (offset: number) => Place {
  let starts: number[] | undefined;
  return offset => {
    if (!starts) {
      starts = [0];
      for (let i = text.indexOf('\n'); i >= 0; i = text.indexOf('\n', i + 1)) starts.push(i + 1);
    }
    let low = 0,
      high = starts.length;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (starts[middle]! <= offset) low = middle;
      else high = middle;
    }
    return { line: low + 1, column: offset - starts[low]! + 1 };
  };
}

/** Where in the file's text a character of an attribute's value stands; references such as `&#10;` are stepped over. */
export function offsetWithin(text: string, attribute: Attribute, index: number): number {
  let offset = attribute.offset;
  for (let i = 0; i < index; i++) {
    const reference = text[offset] === '&' ? text.indexOf(';', offset) : -1;
    offset =
      reference > 0 ? reference + 1 : offset + (text[offset] === '\r' && text[offset + 1] === '\n' ? 2 : 1);
  }
  return offset;
}

export const attributeOf = (element: Element, name: string): string | undefined =>
  element.attributes.get(name)?.value;

/** For tellings: an element by its name and id. */
export function elementFacts(element: Element): { readonly element: string; readonly id?: string } {
  const id = attributeOf(element, 'id');
  return { element: element.name, ...(id === undefined ? {} : { id }) };
}
