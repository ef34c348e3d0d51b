import type { Report } from './report.js';
import { declarationsOf, type StyleSheet } from './style.js';
import { attributeOf, type Element, type XmlDocument } from './xml.js';

/** The properties that hide or move geometry; all else in a style sheet is paint. */
const heeded: ReadonlySet<string> = new Set([
  'display',
  'visibility',
  'transform',
  'transform-origin',
  'd',
  'x',
  'y',
  'width',
  'height',
  'cx',
  'cy',
  'r',
  'rx',
  'ry',
  'font-size',
]);

interface Rule {
  readonly specificity: number;
  readonly order: number;
  readonly declarations: ReadonlyMap<string, string>;
}

/**
 * The file's `style` elements, as far as drawing programs use them to hide things: selectors of one element name,
 * class or id. Rules with other selectors that would hide or move something become a finding.
 */
export function styleSheetOf(document: XmlDocument, report: Report): StyleSheet {
  const byKey = new Map<string, Rule[]>();
  let order = 0;
  for (const style of stylesOf(document.root)) {
    let isPassedOver = false;
    for (const [, selectors, body] of style.text
      .replace(/\/\*[\s\S]*?\*\/|<!--|-->/g, ' ')
      .matchAll(/([^{}]+)\{([^{}]*)\}/g)) {
      const declarations = new Map([...declarationsOf(body!)].filter(([name]) => heeded.has(name)));
      if (declarations.size === 0) continue;
      for (const selector of selectors!.split(',').map(s => s.trim())) {
        const simple = /^(?:(\*|[a-z]+)|([a-z]*)([.#])([\w-]+))$/i.exec(selector);
        if (!simple) {
          isPassedOver = true;
          continue;
        }
        const specificity = simple[3] === '#' ? 100 : simple[3] === '.' ? 10 : selector === '*' ? 0 : 1;
        byKey.set(selector, [...(byKey.get(selector) ?? []), { specificity, order: order++, declarations }]);
      }
    }
    if (isPassedOver) report.add('warning', 'style-rule-left-out', style.offset, {});
  }
  if (byKey.size === 0) return () => undefined;
  return element => matching(element, byKey);
}

function matching(
  element: Element,
  byKey: ReadonlyMap<string, readonly Rule[]>,
): ReadonlyMap<string, string> | undefined {
  const { name } = element;
  const id = attributeOf(element, 'id');
  const classes = (attributeOf(element, 'class') ?? '').split(/\s+/).filter(c => c !== '');
  const keys = [
    '*',
    name,
    ...classes.flatMap(c => [`.${c}`, `${name}.${c}`]),
    ...(id === undefined ? [] : [`#${id}`, `${name}#${id}`]),
  ];
  const rules = keys.flatMap(key => byKey.get(key) ?? []);
  if (rules.length === 0) return undefined;
  rules.sort((a, b) => a.specificity - b.specificity || a.order - b.order);
  return new Map(rules.flatMap(rule => [...rule.declarations]));
}

function stylesOf(root: Element): readonly Element[] {
  const found: Element[] = [];
  const stack = [root];
  for (let element = stack.pop(); element; element = stack.pop()) {
    if (element.name === 'style' && element.text !== '') found.push(element);
    for (let i = element.children.length - 1; i >= 0; i--) stack.push(element.children[i]!);
  }
  return found;
}
