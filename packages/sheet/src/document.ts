import type { PatternError } from '@paperhinge/geometry';
import {
  type Alias,
  type Document,
  isAlias,
  isMap,
  isScalar,
  isSeq,
  LineCounter,
  type Node,
  parseDocument,
  type YAMLMap,
} from 'yaml';
import { SheetFaults } from './faults.js';
import { deepestNesting, largestSheet, mostAliases, mostValues } from './limits.js';
import { faultOf, unquoted } from './syntax-fault.js';
import { refusal, type SheetTellings } from './tellings.js';

/** Line and column in the sheet, both from 1. */
export interface Place {
  readonly line: number;
  readonly column: number;
}

/** A value of the sheet with the place it stands at. */
export type Tree =
  | { readonly kind: 'scalar'; readonly place: Place; readonly value: string | number | boolean | null }
  | { readonly kind: 'list'; readonly place: Place; readonly items: readonly Tree[] }
  | { readonly kind: 'mapping'; readonly place: Place; readonly entries: ReadonlyMap<string, Entry> };
export interface Entry {
  /** Where the key stands. */
  readonly place: Place;
  readonly value: Tree;
}

/**
 * Reads YAML 1.2 or JSON (which YAML includes) as plain values: core schema, no tags, no merge keys, aliases bounded.
 * Messages never repeat the text, only keys.
 * @throws SheetFaults each fault of the syntax with its line and column
 */
export function readDocument(text: string, file: string): Tree {
  if (text.length > largestSheet)
    throw alone(refusal('sheet-too-large', { mostCharacters: largestSheet }, { file, ...top }));
  const deep = tooDeep(text);
  if (deep) throw alone(refusal('sheet-too-deep', { mostLevels: deepestNesting }, { file, ...deep }));
  const lines = new LineCounter();
  const place = (offset: number): Place => {
    const { line, col } = lines.linePos(offset);
    return { line: Math.max(line, 1), column: Math.max(col, 1) };
  };
  const document = parseDocument(text, {
    version: '1.2',
    schema: 'core',
    merge: false,
    // Looked after below: the parser's own check compares each key with all others.
    uniqueKeys: false,
    stringKeys: true,
    prettyErrors: false,
    logLevel: 'error',
    lineCounter: lines,
  });
  // What follows a fault of syntax is often only its echo, so the first alone is told.
  const [first] = document.errors;
  if (first) {
    const { fault, at } = faultOf(text, first.code, first.pos[0]);
    throw alone(refusal('sheet-not-read', { fault }, { file, ...place(at) }));
  }
  const faults: PatternError[] = [];
  const tree = treeOf(document, place, (at, code, facts) =>
    faults.push(refusal(code, facts, { file, ...at })),
  );
  const [one, ...others] = faults;
  if (one) throw new SheetFaults([one, ...others]);
  return tree;
}
const top: Place = { line: 1, column: 1 };
const alone = (fault: PatternError): SheetFaults => new SheetFaults([fault]);

/**
 * Where brackets or list dashes open deeper than a sheet needs: told before the parser, which works by recursion.
 * Brackets within quotes count as well; a sheet has no use for dozens of those.
 */
function tooDeep(text: string): Place | undefined {
  let depth = 0;
  for (const [index, row] of text.split('\n').entries()) {
    if (/^(?:[ \t]*[-?](?=[ \t])){25}/.test(row)) return { line: index + 1, column: 1 };
    for (let i = 0; i < row.length; i++) {
      const c = row[i];
      if (c === '[' || c === '{') depth++;
      else if (c === ']' || c === '}') depth = Math.max(0, depth - 1);
      if (depth > deepestNesting) return { line: index + 1, column: i + 1 };
    }
  }
  return undefined;
}

type Tell = <C extends keyof SheetTellings & string>(at: Place, code: C, facts: SheetTellings[C]) => void;

/** The document as a tree; whatever is told, the tree goes on without it. */
function treeOf(document: Document, placeOf: (offset: number) => Place, tell: Tell): Tree {
  let values = 0;
  const nothing = (place: Place): Tree => ({ kind: 'scalar', place, value: null });
  const placeNear = (node: unknown, near: Place): Place =>
    (node as Node | null)?.range ? placeOf((node as Node).range![0]) : near;
  const targetOf = aliases(document, tell);

  const walk = (node: unknown, near: Place, depth: number): Tree => {
    const here = placeNear(node, near);
    if (++values > mostValues || depth > deepestNesting) {
      if (values === mostValues + 1 || depth === deepestNesting + 1) tell(here, 'sheet-too-large', {});
      return nothing(here);
    }
    if (isAlias(node)) {
      const target = targetOf(node, here);
      return target ? walk(target, here, depth + 1) : nothing(here);
    }
    if ((isScalar(node) || isMap(node) || isSeq(node)) && node.tag !== undefined)
      tell(here, 'tag-refused', {});
    if (isSeq(node))
      return { kind: 'list', place: here, items: node.items.map(item => walk(item, here, depth + 1)) };
    if (isMap(node)) return { kind: 'mapping', place: here, entries: entriesOf(node, here, depth) };
    const value = isScalar(node) ? node.value : undefined;
    if (typeof value === 'string') return { kind: 'scalar', place: here, value: unquoted(value) };
    if (typeof value === 'number' || typeof value === 'boolean')
      return { kind: 'scalar', place: here, value };
    // An empty value is best told at its key.
    return nothing(isScalar(node) ? near : here);
  };
  const entriesOf = ({ items }: YAMLMap, here: Place, depth: number): ReadonlyMap<string, Entry> => {
    const entries = new Map<string, Entry>();
    for (const { key, value } of items) {
      const name = isScalar(key) && typeof key.value === 'string' ? key.value : undefined;
      const at = placeNear(key, here);
      if (name === undefined) tell(at, 'sheet-not-read', { fault: 'key' });
      else if (entries.has(name)) tell(at, 'duplicate-key', { name });
      else entries.set(name, { place: at, value: walk(value, at, depth + 1) });
    }
    return entries;
  };
  return walk(document.contents, top, 0);
}

/** What an alias stands for, as long as there are few of them. */
function aliases(document: Document, tell: Tell) {
  let followed = 0;
  return (alias: Alias, here: Place): Node | undefined => {
    const target = ++followed <= mostAliases ? alias.resolve(document) : undefined;
    if (followed === mostAliases + 1) tell(here, 'too-many-aliases', { most: mostAliases });
    else if (followed <= mostAliases && !target) tell(here, 'unknown-alias', {});
    return target;
  };
}

/** Every value within a tree by its dotted path: `pieces.0`, `to.edge`. */
export function placesIn(tree: Tree, prefix = ''): Readonly<Record<string, Place>> {
  if (tree.kind === 'scalar') return prefix ? { [prefix]: tree.place } : {};
  const inner: readonly (readonly [string, Tree])[] =
    tree.kind === 'list'
      ? tree.items.map((item, i) => [String(i), item])
      : [...tree.entries].map(([key, { value }]) => [key, value]);
  return Object.assign(
    {},
    ...inner.map(([key, value]) => placesIn(value, prefix ? `${prefix}.${key}` : key)),
  );
}
