import { type Affine, compose, translation } from '../affine.js';
import { locating } from '../errors.js';
import { budget } from './budget.js';
import { deepestUse } from './limits.js';
import type { Subpath } from './pen.js';
import type { Report } from './report.js';
import { type DrawingScale, outerViewport } from './root.js';
import { drawShape, type ShapeFault, shapeNames } from './shapes.js';
import { propertyOf, type StyleSheet } from './style.js';
import { type LengthBasis, parseTransform, svgLength, transformOrigin } from './transform.js';
import { parseViewBox, viewBoxMap } from './viewport.js';
import { attributeOf, type Element, elementFacts, type XmlDocument } from './xml.js';

/** An element where it is shown: `outer` leads outwards through groups and, from a `use`, on to what encloses that. */
export interface Shown {
  readonly element: Element;
  readonly outer: Shown | undefined;
  /** From the coordinates inside this element to mm of the outer viewport. */
  readonly map: Affine;
}

export interface Drawn extends Shown {
  readonly strokes: readonly Subpath[];
}

export interface WalkOptions {
  /** Elements to pass over with all they hold. */
  readonly skip?: (element: Element) => boolean;
  /** What is done about faulty geometry: a finding, or an error thrown. */
  readonly onFault: (element: Element, fault: ShapeFault, outer: Shown | undefined) => void;
  readonly sheet: StyleSheet;
  /** What is done about writing that is shown. */
  readonly onText?: (text: Shown) => void;
  /** Instead of the size that the drawing gives itself. */
  readonly scale?: DrawingScale | undefined;
}

/** How many of what was not read, for one finding each. */
export interface LeftOut {
  readonly texts: readonly Element[];
  readonly hidden: readonly Element[];
}

interface Visit extends Shown {
  readonly basis: LengthBasis;
  readonly visible: boolean;
  /** Targets of the `use` elements that this stands in, innermost first. */
  readonly within: UseChain | undefined;
  /** Width and height that a `use` gives the symbol or svg it shows. */
  readonly size?: { readonly width: string | undefined; readonly height: string | undefined };
}
interface UseChain {
  readonly target: Element;
  readonly next: UseChain | undefined;
  readonly depth: number;
}

/** What is no shape and yet seen. */
const written: ReadonlySet<string> = new Set(['text', 'image', 'foreignObject']);
const containers: ReadonlySet<string> = new Set(['g', 'a', 'svg', 'switch', 'use', 'symbol']);

/**
 * Visits every shown shape of a drawing in document order, `use` resolved where it stands, mapped to mm of the outer
 * viewport. What is in `defs`, not displayed or not visible is passed over. A loop of its own, not recursion: files
 * nest as deep as they like.
 *
 * @throws PatternError `too-many-instances`, `too-many-segments`, `coordinate-out-of-range`; what `onFault` throws
 */
export function walk(
  document: XmlDocument,
  report: Report,
  options: WalkOptions,
  visit: (shape: Drawn) => void,
): LeftOut {
  const { sheet } = options;
  const texts: Element[] = [],
    hidden: Element[] = [];
  const left = budget(report);
  let ids: ReadonlyMap<string, Element> | undefined;
  const { map, basis } = outerViewport(document.root, report, options.scale);
  const stack: Visit[] = [
    { element: document.root, outer: undefined, map, basis, visible: true, within: undefined },
  ];
  for (let here = stack.pop(); here; here = stack.pop()) {
    const { element, within } = here;
    if (options.skip?.(element)) continue;
    const isShape = shapeNames.has(element.name);
    if (!isShape && !containers.has(element.name)) {
      if (written.has(element.name)) texts.push(element);
      if (element.name === 'text') visitText(here, options);
      continue;
    }
    if (within) left.instance(element);
    if (propertyOf(element, 'display', sheet) === 'none') {
      hidden.push(element);
      continue;
    }
    const inside = enter(here, options);
    if (isShape) {
      if (!inside.visible) {
        hidden.push(element);
        continue;
      }
      const { subpaths: strokes, fault } = locating(report.where(element.offset), () =>
        drawShape(element.name, n => geometryOf(element, n, sheet), inside.basis, inside.map, left.points()),
      );
      if (fault) options.onFault(element, fault, here.outer);
      left.shape(strokes, element, within !== undefined);
      visit({ element, outer: here.outer, map: inside.map, strokes });
      continue;
    }
    if (element.name === 'use') {
      ids ??= idsOf(document.root);
      const target = targetOf(inside, ids, report);
      if (target) stack.push(target);
      continue;
    }
    const content = contentOf(inside);
    if (!content) continue;
    const children = element.name === 'switch' ? chosen(element) : element.children;
    for (let i = children.length - 1; i >= 0; i--) {
      const child = children[i]!;
      if (child.name === 'symbol') continue;
      stack.push({ ...content, element: child, outer: here });
    }
  }
  return { texts, hidden };
}

function visitText(here: Visit, options: WalkOptions): void {
  const { element, outer } = here;
  if (!options.onText || propertyOf(element, 'display', options.sheet) === 'none') return;
  const { visible, map } = enter(here, options);
  if (visible) options.onText({ element, outer, map });
}

/** An element's own transform, font size and visibility. */
function enter(here: Visit, { sheet, onFault }: WalkOptions): Visit {
  const { element, basis } = here;
  let { map } = here;
  const fault = (attribute: string): void =>
    onFault(element, { attribute, reason: 'not-understood' }, here.outer);
  const style = attributeOf(element, 'style');
  const fromCss = style?.includes('transform') || sheet(element)?.has('transform');
  const written = fromCss ? propertyOf(element, 'transform', sheet) : attributeOf(element, 'transform');
  if (written !== undefined && element !== undefined) {
    let own = parseTransform(written, written !== attributeOf(element, 'transform'), basis);
    if (!own) fault('transform');
    const originText = propertyOf(element, 'transform-origin', sheet);
    const origin = originText === undefined ? undefined : transformOrigin(originText, basis);
    if (originText !== undefined && !origin) fault('transform-origin');
    if (own && origin)
      own = compose(compose(translation({ x: -origin.x, y: -origin.y }), own), translation(origin));
    if (own) map = compose(own, map);
  }
  const size = propertyOf(element, 'font-size', sheet);
  const fontSize =
    size === undefined
      ? undefined
      : svgLength(size, { ...basis, width: basis.fontSize, height: basis.fontSize }, 'x');
  const visibility = propertyOf(element, 'visibility', sheet);
  return {
    ...here,
    map,
    basis:
      fontSize === undefined
        ? basis
        : { ...basis, fontSize, ...(here.outer === undefined ? { rootFontSize: fontSize } : {}) },
    visible:
      visibility === undefined || visibility === 'inherit'
        ? here.visible
        : visibility !== 'hidden' && visibility !== 'collapse',
  };
}

/** What the children of a container stand in; `undefined` where a viewport of no size hides them. */
function contentOf(here: Visit): Omit<Visit, 'element' | 'outer'> | undefined {
  const { element, basis, visible, within, size } = here;
  const isRoot = here.outer === undefined;
  if (isRoot || (element.name !== 'svg' && element.name !== 'symbol'))
    return { map: here.map, basis, visible, within };
  const length = (name: 'x' | 'y' | 'width' | 'height', otherwise: string): number => {
    const own = attributeOf(element, name);
    const text =
      (size && (name === 'width' || name === 'height') ? size[name] : undefined) ?? own ?? otherwise;
    return (
      svgLength(text === 'auto' ? otherwise : text, basis, name === 'x' || name === 'width' ? 'x' : 'y') ?? 0
    );
  };
  const width = length('width', '100%'),
    height = length('height', '100%');
  const box = parseViewBox(attributeOf(element, 'viewBox'));
  if (width <= 0 || height <= 0 || box === 'nothing') return undefined;
  const fitted = box
    ? viewBoxMap(box, width, height, attributeOf(element, 'preserveAspectRatio'))
    : undefined;
  const placed = translation(
    element.name === 'svg' ? { x: length('x', '0'), y: length('y', '0') } : { x: 0, y: 0 },
  );
  return {
    map: compose(fitted ? compose(fitted, placed) : placed, here.map),
    basis: { ...basis, width: box ? box.width : width, height: box ? box.height : height },
    visible,
    within,
  };
}

/** What a `use` shows, standing where it does; a finding where it cannot be shown. */
function targetOf(here: Visit, ids: ReadonlyMap<string, Element>, report: Report): Visit | undefined {
  const { element, basis, within } = here;
  const href = (attributeOf(element, 'href') ?? attributeOf(element, 'xlink:href') ?? '').trim();
  const say = (code: 'reference-outside' | 'reference-missing' | 'reference-loop'): undefined => {
    report.add('warning', code, element.offset, elementFacts(element));
  };
  if (!href.startsWith('#')) return say('reference-outside');
  const target = ids.get(href.slice(1));
  if (!target) return say('reference-missing');
  const encloses = (a: Element, b: Element): boolean => a.index <= b.index && b.index <= a.last;
  let isLoop = encloses(target, element);
  for (let link = within; link && !isLoop; link = link.next) isLoop = link.target === target;
  if (isLoop) return say('reference-loop');
  const depth = (within?.depth ?? 0) + 1;
  if (depth > deepestUse) {
    report.add('warning', 'reference-too-deep', element.offset, { most: deepestUse });
    return undefined;
  }
  const x = svgLength(attributeOf(element, 'x') ?? '0', basis, 'x') ?? 0;
  const y = svgLength(attributeOf(element, 'y') ?? '0', basis, 'y') ?? 0;
  return {
    ...here,
    element: target,
    outer: here,
    map: compose(translation({ x, y }), here.map),
    within: { target, next: within, depth },
    size: { width: attributeOf(element, 'width'), height: attributeOf(element, 'height') },
  };
}

function idsOf(root: Element): ReadonlyMap<string, Element> {
  const ids = new Map<string, Element>();
  const stack = [root];
  for (let element = stack.pop(); element; element = stack.pop()) {
    const id = attributeOf(element, 'id');
    // Of several elements with one id the first in the document counts.
    if (id !== undefined && (ids.get(id)?.index ?? Number.POSITIVE_INFINITY) > element.index)
      ids.set(id, element);
    for (const child of element.children) stack.push(child);
  }
  return ids;
}

/** The first child of a `switch` whose conditions hold; extensions never do, languages do if English or none is asked. */
function chosen(element: Element): readonly Element[] {
  const holds = (child: Element): boolean => {
    const language = attributeOf(child, 'systemLanguage');
    return (
      (shapeNames.has(child.name) || containers.has(child.name)) &&
      !attributeOf(child, 'requiredExtensions') &&
      (language === undefined || /(^|,)\s*en\b/i.test(language))
    );
  };
  const first = element.children.find(holds);
  return first ? [first] : [];
}

/** CSS may set the geometry of a shape too; `d: path("...")` is read in its simple form. */
function geometryOf(element: Element, name: string, sheet: StyleSheet): string | undefined {
  if (name === 'points' || /^[xy][12]$/.test(name)) return attributeOf(element, name);
  const value = propertyOf(element, name, sheet);
  return name === 'd' ? (/^path\(\s*["'](.*)["']\s*\)$/s.exec(value ?? '')?.[1] ?? value) : value;
}
