import { PatternError, quoted } from '@paperhinge/geometry';
import { type Document, isAlias, isMap, isScalar, isSeq, LineCounter, type Node, parseDocument } from 'yaml';
import { SheetFaults } from './faults.js';
import { deepestNesting, largestSheet, mostAliases, mostValues } from './limits.js';

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
  const fault = (code: string, place: Place, message: string, remedy: string) =>
    new PatternError(code, { message, remedy, where: { file, ...place } });
  const top = { line: 1, column: 1 };
  if (text.length > largestSheet)
    throw new SheetFaults([
      fault(
        'sheet-too-large',
        top,
        'The sheet is over 250 000 characters long.',
        'Give an alteration sheet; they are a few thousand long.',
      ),
    ]);
  const deep = tooDeep(text);
  if (deep)
    throw new SheetFaults([
      fault(
        'sheet-too-deep',
        deep,
        `Values are nested more than ${deepestNesting} deep.`,
        'Keep to the fields of an alteration sheet.',
      ),
    ]);
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
    const [message, remedy] = syntax[first.code] ?? syntax.other;
    throw new SheetFaults([fault('sheet-not-read', place(first.pos[0]), message, remedy)]);
  }
  const faults: PatternError[] = [];
  const tree = treeOf(document, place, (code, at, message, remedy) =>
    faults.push(fault(code, at, message, remedy)),
  );
  const [one, ...others] = faults;
  if (one) throw new SheetFaults([one, ...others]);
  return tree;
}

const check = 'Check the brackets, quotes and indentation at this place.';
const syntax: Readonly<Record<string, readonly [message: string, remedy: string]>> & {
  readonly other: readonly [string, string];
} = {
  other: ['This is neither YAML nor JSON from here on.', check],
  TAB_AS_INDENT: ['A tab stands where spaces must.', 'Indent with spaces.'],
  MULTIPLE_DOCS: [
    'The file holds more than one document.',
    'Keep one sheet in a file; take out the line "---".',
  ],
  MISSING_CHAR: ['A bracket, quote, comma or colon is missing here.', check],
  BAD_INDENT: ['The indentation does not fit here.', check],
  BAD_DQ_ESCAPE: [
    'A backslash in quotes stands before a letter it cannot go with.',
    'Use single quotes, or double the backslash.',
  ],
  BLOCK_AS_IMPLICIT_KEY: [
    'A second "key: value" stands on one line.',
    'Put each on its own line, or the value in quotes.',
  ],
  NON_STRING_KEY: ['A key is not a plain word.', 'Use words as keys.'],
  RESOURCE_EXHAUSTION: ['Values are nested too deep.', 'Keep to the fields of an alteration sheet.'],
  KEY_OVER_1024_CHARS: ['A key is over 1024 characters long.', 'Use the field names of an alteration sheet.'],
};

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

type Tell = (code: string, at: Place, message: string, remedy: string) => void;

/** The document as a tree; whatever is told, the tree goes on without it. */
function treeOf(document: Document, placeOf: (offset: number) => Place, tell: Tell): Tree {
  let aliases = 0,
    values = 0;
  const nothing = (place: Place): Tree => ({ kind: 'scalar', place, value: null });

  const walk = (node: unknown, near: Place, depth: number): Tree => {
    const here = (node as Node | null)?.range ? placeOf((node as Node).range![0]) : near;
    if (++values > mostValues || depth > deepestNesting) {
      if (values === mostValues + 1 || depth === deepestNesting + 1)
        tell(
          'sheet-too-large',
          here,
          'The sheet holds too much, or holds itself.',
          'Keep to the fields of an alteration sheet.',
        );
      return nothing(here);
    }
    if (isAlias(node)) {
      const target = ++aliases <= mostAliases ? node.resolve(document) : undefined;
      if (aliases === mostAliases + 1)
        tell('too-many-aliases', here, `More than ${mostAliases} aliases are used.`, 'Write the values out.');
      else if (aliases <= mostAliases && !target)
        tell('unknown-alias', here, 'An alias stands for nothing named before it.', 'Write the value out.');
      return target ? walk(target, here, depth + 1) : nothing(here);
    }
    if ((isScalar(node) || isMap(node) || isSeq(node)) && node.tag !== undefined)
      tell(
        'tag-refused',
        here,
        'A tag ("!...") stands before a value.',
        'Take the tag out; values are plain.',
      );
    if (isSeq(node))
      return { kind: 'list', place: here, items: node.items.map(item => walk(item, here, depth + 1)) };
    if (isMap(node)) {
      const entries = new Map<string, Entry>();
      for (const { key, value } of node.items) {
        const name = isScalar(key) && typeof key.value === 'string' ? key.value : undefined;
        const at = (key as Node | null)?.range ? placeOf((key as Node).range![0]) : here;
        if (name === undefined) tell('sheet-not-read', at, ...syntax.NON_STRING_KEY!);
        else if (entries.has(name))
          tell('duplicate-key', at, `${quoted(name)} is given twice.`, 'Keep one of the two.');
        else entries.set(name, { place: at, value: walk(value, at, depth + 1) });
      }
      return { kind: 'mapping', place: here, entries };
    }
    if (!isScalar(node)) return nothing(here);
    const value = node.value;
    if (typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean')
      return { kind: 'scalar', place: here, value };
    // An empty value is best told at its key.
    return nothing(near);
  };
  return walk(document.contents, { line: 1, column: 1 }, 0);
}

/** The tree as plain values; mappings have no prototype, so that no key means anything but itself. */
export function plain(tree: Tree): unknown {
  if (tree.kind === 'scalar') return tree.value;
  if (tree.kind === 'list') return tree.items.map(plain);
  const result: Record<string, unknown> = Object.create(null);
  for (const [key, { value }] of tree.entries) result[key] = plain(value);
  return result;
}

/** The place of the value at a path of keys and indices; of the nearest thing round it where there is none. */
export function placeAt(tree: Tree, path: readonly PropertyKey[]): Place {
  let at = tree,
    place = tree.place;
  for (const step of path) {
    const entry = at.kind === 'mapping' ? at.entries.get(String(step)) : undefined;
    const next = entry?.value ?? (at.kind === 'list' ? at.items[Number(step)] : undefined);
    if (!next) return place;
    // A mapping or list starts where it is written, but is best told at its key.
    place = next.kind === 'scalar' || !entry ? next.place : entry.place;
    at = next;
  }
  return place;
}

/** The value at a path of keys and indices, if there is one. */
export function treeAt(tree: Tree, path: readonly PropertyKey[]): Tree | undefined {
  let at: Tree | undefined = tree;
  for (const step of path) {
    if (at?.kind === 'mapping') at = at.entries.get(String(step))?.value;
    else at = at?.kind === 'list' ? at.items[Number(step)] : undefined;
  }
  return at;
}

/** The place of a key within the mapping at a path. */
export function keyPlaceAt(tree: Tree, path: readonly PropertyKey[], key: string): Place {
  const mapping = treeAt(tree, path);
  const entry = mapping?.kind === 'mapping' ? mapping.entries.get(key) : undefined;
  return entry?.place ?? placeAt(tree, path);
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
