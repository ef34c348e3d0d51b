import { nearestName } from '../naming.js';
import { meaningOf } from './gather.js';
import type { Report } from './report.js';
import { ourAttributes, type Place, placesOf } from './vocabulary.js';
import type { Element, XmlDocument } from './xml.js';

/** An attribute that is most likely a misspelt one of ours. */
export interface Misspelling {
  readonly attribute: string;
  readonly near: string;
  readonly offset: number;
}

/**
 * Finds `data-` attributes that say nothing here: misspelt ones, and ones that stand on the wrong element. What was
 * read but not understood must not pass in silence; and it is told before what it caused.
 *
 * @returns the first that is most likely misspelt, one that draws the outline before others: without it nothing is whole
 */
export function checkVocabulary(document: XmlDocument, report: Report): Misspelling | undefined {
  const stack: Element[] = [document.root];
  const known = new Map<string, string | undefined>();
  const nearest = (word: string): string | undefined => {
    if (!known.has(word)) known.set(word, nearestName(word, ourAttributes));
    return known.get(word);
  };
  let first: Misspelling | undefined, drawing: Misspelling | undefined;
  for (let element = stack.pop(); element; element = stack.pop()) {
    if (element.attributes.has('data-derived')) continue;
    const found = checkElement(element, element === document.root, nearest, report);
    first ??= found;
    if (found && outlineWords.has(found.near)) drawing ??= found;
    for (let i = element.children.length - 1; i >= 0; i--) stack.push(element.children[i]!);
  }
  return drawing ?? first;
}

const outlineWords: ReadonlySet<string> = new Set(
  ['piece', 'edge', 'outline', 'dart', 'pleat'].map(word => `data-${word}`),
);

function checkElement(
  element: Element,
  isRoot: boolean,
  nearest: (word: string) => string | undefined,
  report: Report,
): Misspelling | undefined {
  let first: Misspelling | undefined;
  for (const [attribute, { offset }] of element.attributes) {
    if (!attribute.startsWith('data-')) continue;
    const word = attribute.slice('data-'.length);
    const places = placesOf(word);
    if (places.includes('any') || rolesOf(element, isRoot).some(role => places.includes(role))) continue;
    if (places.length > 0) {
      report.add('warning', 'attribute-misplaced', offset, { attribute, places });
      continue;
    }
    const near = nearest(word);
    if (near === undefined) report.add('note', 'attribute-unknown', offset, { attribute });
    else {
      report.add('warning', 'attribute-unknown', offset, { attribute, near: `data-${near}` });
      first ??= { attribute, near: `data-${near}`, offset };
    }
  }
  return first;
}

const rolesOf = (element: Element, isRoot: boolean): readonly Place[] => {
  const meaning = meaningOf(element);
  return [
    ...(isRoot ? (['root'] as const) : []),
    ...(element.attributes.has('data-piece') ? (['piece'] as const) : []),
    ...(meaning ? [meaning] : []),
  ];
};
