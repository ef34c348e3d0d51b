import { meaningOf } from './gather.js';
import type { Report } from './report.js';
import { attributeOf, type Element, type XmlDocument } from './xml.js';

/** The elements of a drawing that were taken note of: read, or passed over as another size's. */
export interface Noted {
  readonly pieces: ReadonlySet<Element>;
  readonly things: ReadonlySet<Element>;
}

/**
 * Tells of pieces that show nothing, and of edges, darts, notches ... of a piece that are not displayed: what was
 * drawn to mean something must not vanish in silence.
 */
export function checkShown(document: XmlDocument, noted: Noted, report: Report): void {
  interface Visit {
    readonly element: Element;
    readonly piece: Element | undefined;
  }
  const stack: Visit[] = [{ element: document.root, piece: undefined }];
  for (let here = stack.pop(); here; here = stack.pop()) {
    const { element } = here;
    if (element.attributes.has('data-derived')) continue;
    const isPiece = element.attributes.has('data-piece');
    const piece = isPiece ? element : here.piece;
    const name = piece && attributeOf(piece, 'data-piece')!.trim();
    const owner = name === undefined ? {} : { piece: name };
    if (isPiece && !noted.pieces.has(element))
      report.add('warning', 'piece-left-out', element.offset, { piece: owner }, owner);
    const what = meaningOf(element);
    if (what && piece && noted.pieces.has(piece) && !noted.things.has(element)) {
      const called = attributeOf(element, `data-${what}`)?.trim();
      report.add(
        'warning',
        'not-displayed',
        element.offset,
        { what, ...(called ? { name: called } : {}) },
        owner,
      );
    }
    for (let i = element.children.length - 1; i >= 0; i--)
      stack.push({ element: element.children[i]!, piece });
  }
}
