import type { Element } from './xml.js';
import { attributeOf } from './xml.js';

/** The declarations of a `style` attribute, names in lower case; `!important` set aside, comments dropped. */
export function declarationsOf(text: string): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  for (const declaration of text.replace(/\/\*.*?\*\//gs, '').split(';')) {
    const colon = declaration.indexOf(':');
    if (colon < 0) continue;
    const value = declaration.slice(colon + 1).replace(/!\s*important\s*$/i, '');
    found.set(declaration.slice(0, colon).trim().toLowerCase(), value.trim());
  }
  return found;
}

/** What a style sheet of the file says about one element; see `style-sheet.ts`. */
export type StyleSheet = (element: Element) => ReadonlyMap<string, string> | undefined;

/** A property of an element: from its `style`, else from the file's style sheet, else from the attribute of that name. */
export function propertyOf(element: Element, name: string, sheet: StyleSheet): string | undefined {
  const style = attributeOf(element, 'style');
  const inline = style?.includes(name) ? declarationsOf(style).get(name) : undefined;
  return inline ?? sheet(element)?.get(name) ?? attributeOf(element, name);
}
