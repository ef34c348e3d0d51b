import { nearestName, quoted } from '../naming.js';
import { meaningOf } from './gather.js';
import type { Report } from './report.js';
import { ourAttributes, speaks } from './vocabulary.js';
import type { Element, XmlDocument } from './xml.js';

/**
 * Finds `data-` attributes that say nothing here: misspelt ones, and ones that stand on the wrong element; and pieces
 * that show nothing. What was read but not understood must not pass in silence.
 */
export function checkVocabulary(document: XmlDocument, read: ReadonlySet<Element>, report: Report): void {
  const stack: Element[] = [document.root];
  const known = new Map<string, string | undefined>();
  const nearest = (word: string): string | undefined => {
    if (!known.has(word)) known.set(word, nearestName(word, ourAttributes));
    return known.get(word);
  };
  for (let element = stack.pop(); element; element = stack.pop()) {
    if (element.attributes.has('data-derived')) continue;
    checkElement(element, element === document.root, nearest, report);
    if (element.attributes.has('data-piece') && !read.has(element))
      report.add('warning', 'piece-left-out', element.offset, {
        message: 'A piece shows nothing and was left out: it is empty, hidden, or within defs.',
        remedy: 'Show its layer in the drawing program, or remove it.',
      });
    for (let i = element.children.length - 1; i >= 0; i--) stack.push(element.children[i]!);
  }
}

function checkElement(
  element: Element,
  isRoot: boolean,
  nearest: (word: string) => string | undefined,
  report: Report,
): void {
  for (const [name, { offset }] of element.attributes) {
    if (!name.startsWith('data-')) continue;
    const word = name.slice('data-'.length);
    const meaning = meaningOf(element);
    const roles = [
      ...(isRoot ? (['root'] as const) : []),
      ...(element.attributes.has('data-piece') ? (['piece'] as const) : []),
      ...(meaning ? [meaning] : []),
    ];
    if (speaks(word, roles)) continue;
    const isOurs = ourAttributes.includes(word);
    const near = isOurs ? undefined : nearest(word);
    if (isOurs)
      report.add('warning', 'attribute-misplaced', offset, {
        message: `${quoted(name)} says nothing on this element.`,
        remedy: 'Move it to the element it speaks of.',
      });
    else
      report.add(near === undefined ? 'note' : 'warning', 'attribute-unknown', offset, {
        message: `${quoted(name)} is not an attribute of a pattern; it was not read.`,
        remedy:
          near === undefined
            ? 'Nothing needs to be done if another program wrote it.'
            : `Did you mean "data-${near}"?`,
      });
  }
}
