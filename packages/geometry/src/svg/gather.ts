import { mostPatternSegments } from './limits.js';
import type { Subpath } from './pen.js';
import type { Report } from './report.js';
import type { SheetPieces } from './sheet-pieces.js';
import { type Meaning, meanings } from './vocabulary.js';
import type { Drawn, Shown } from './walk.js';
import { type Attribute, attributeOf, type Element } from './xml.js';

/** Something drawn that means something: the element that says so, and all strokes within it. */
export interface Item {
  readonly meaning: Meaning;
  readonly element: Element;
  readonly strokes: readonly Subpath[];
  readonly inherited: Inherited;
}

/** What an element has from itself or from the nearest element that encloses it. */
export interface Inherited {
  readonly piece: Shown | undefined;
  readonly meaning: Shown | undefined;
  readonly allowance: Attribute | undefined;
  readonly includedAllowance: Attribute | undefined;
  /** The element whose `data-line-drawn` counts. */
  readonly lineDrawn: Element | undefined;
  readonly size: string | undefined;
}

/** The drawing of one piece, before it is made sense of. */
export interface PieceDrawing {
  readonly name: string;
  /** The element that says `data-piece`; `undefined` for a piece that only the sheet names. */
  readonly element: Element | undefined;
  readonly items: readonly Item[];
  /** Shapes in it that carry no meaning. */
  readonly plain: readonly Element[];
}

/** All that a drawing shows of the pieces of one size. */
export interface Gathered {
  /** In document order. */
  readonly pieces: readonly PieceDrawing[];
  /** Elements that say `data-piece`, read or of another size. */
  readonly pieceElements: ReadonlySet<Element>;
  /** Elements that mean something, read or of another size. */
  readonly things: ReadonlySet<Element>;
  /** Outlines the sheet names that the drawing does not show, as [id, piece], and the ids there are. */
  readonly missing: readonly (readonly [string, string])[];
  readonly ids: readonly string[];
  /** The size that was read, and all that there are. */
  readonly size: string | undefined;
  readonly sizes: readonly string[];
}

interface Growing {
  readonly name: string;
  shown: Shown | undefined;
  readonly items: Map<Shown, Item & { strokes: Subpath[] }>;
  readonly plain: Element[];
}

/** What grows while a drawing is walked. */
interface Gathering {
  readonly report: Report;
  readonly pieces: Map<string, Growing>;
  /** Outlines that the sheet names and that were not seen yet: piece by id. */
  readonly outlines: Map<string, string>;
  readonly ids: string[];
  readonly memo: Map<Shown, Inherited>;
  readonly pieceElements: Set<Element>;
  readonly things: Set<Element>;
  readonly sizes: Set<string>;
  size: string | undefined;
  segments: number;
}

/**
 * Sorts what is shown by piece and meaning. A shape belongs to the nearest enclosing `data-piece`, or to the piece
 * whose outline the sheet names by its id. Of several sizes one is taken: the one asked for, else the first.
 */
export function gatherer(report: Report, sheet: SheetPieces, size: string | undefined) {
  const outlines = new Map(Object.entries(sheet).map(([name, piece]) => [piece.outline, name]));
  const twice = Object.entries(sheet).find(([name, piece]) => outlines.get(piece.outline) !== name);
  if (twice) throw report.refuse('duplicate-outline', 0, { piece: { piece: twice[0] } }, { piece: twice[0] });
  const all: Gathering = {
    report,
    pieces: new Map(),
    outlines,
    ids: [],
    memo: new Map(),
    pieceElements: new Set(),
    things: new Set(),
    sizes: new Set(),
    size,
    segments: 0,
  };
  return { add: (drawn: Drawn): void => add(drawn, all), gathered: (): Gathered => gathered(all) };
}

function add(drawn: Drawn, all: Gathering): void {
  const { element, strokes } = drawn;
  const id = attributeOf(element, 'id');
  if (id !== undefined) all.ids.push(id);
  const inherited = inheritedBy(drawn, all.memo);
  const named = id === undefined ? undefined : all.outlines.get(id);
  if (named !== undefined) {
    count(drawn, all);
    all.outlines.delete(id!);
    const item = { meaning: 'outline' as const, element, strokes: [...strokes], inherited };
    (all.pieces.get(named) ?? begun(named, undefined, all)).items.set(drawn, item);
    return;
  }
  const owner = inherited.meaning;
  if (!inherited.piece) {
    if (owner)
      all.report.add('warning', 'outside-piece', owner.element.offset, { what: meaningOf(owner.element)! });
    return;
  }
  if (owner) all.things.add(owner.element);
  all.pieceElements.add(inherited.piece.element);
  if (!isOfSize(inherited.size, all)) return;
  const piece = pieceOf(inherited.piece, all);
  // A mark is a spot: however it is drawn, its segments cost nothing further on.
  if (owner && meaningOf(owner.element) !== 'mark') count(drawn, all);
  const known = owner && piece.items.get(owner);
  if (known) known.strokes.push(...strokes);
  else if (owner)
    piece.items.set(owner, {
      meaning: meaningOf(owner.element)!,
      element: owner.element,
      strokes: [...strokes],
      inherited,
    });
  else piece.plain.push(element);
}

function gathered({ pieces, outlines, ids, pieceElements, things, size, sizes }: Gathering): Gathered {
  return {
    pieces: [...pieces.values()].map(({ name, shown, items, plain }) => ({
      name,
      element: shown?.element,
      items: [...items.values()],
      plain,
    })),
    pieceElements,
    things,
    missing: [...outlines],
    ids,
    size,
    sizes: [...sizes],
  };
}

/** What belongs to no size belongs to all. */
function isOfSize(size: string | undefined, all: Gathering): boolean {
  if (size === undefined) return true;
  all.sizes.add(size);
  all.size ??= size;
  return size === all.size;
}

function count(drawn: Drawn, all: Gathering): void {
  all.segments += drawn.strokes.reduce((n, stroke) => n + stroke.segments.length, 0);
  if (all.segments > mostPatternSegments)
    throw all.report.refuse('too-many-segments', drawn.element.offset, {
      of: 'pattern',
      most: mostPatternSegments,
    });
}

function pieceOf(shown: Shown, all: Gathering): Growing {
  const name = attributeOf(shown.element, 'data-piece')!.trim();
  const known = all.pieces.get(name);
  // The sheet may have named its outline before its group was seen to be a piece.
  if (known) known.shown ??= shown;
  if (known?.shown === shown) return known;
  if (known) throw all.report.refuse('duplicate-piece', shown.element.offset, { name }, { piece: name });
  return begun(name, shown, all);
}

function begun(name: string, shown: Shown | undefined, all: Gathering): Growing {
  const made: Growing = { name, shown, items: new Map(), plain: [] };
  all.pieces.set(name, made);
  return made;
}

export const meaningOf = (element: Element): Meaning | undefined =>
  meanings.find(meaning => element.attributes.has(`data-${meaning}`));

/** Follows the enclosing elements outwards; what was found for one of them serves all within it. */
function inheritedBy(shown: Shown, memo: Map<Shown, Inherited>): Inherited {
  const chain: Shown[] = [];
  let found: Inherited | undefined;
  for (let s: Shown | undefined = shown; s && !found; s = s.outer) {
    found = memo.get(s);
    if (!found) chain.push(s);
  }
  let result: Inherited = found ?? nothing;
  for (const s of chain.reverse()) {
    const { element } = s;
    const isPiece = element.attributes.has('data-piece');
    result = {
      piece: isPiece ? s : result.piece,
      meaning: meaningOf(element) ? s : isPiece ? undefined : result.meaning,
      allowance: element.attributes.get('data-allowance') ?? result.allowance,
      includedAllowance: element.attributes.get('data-included-allowance') ?? result.includedAllowance,
      lineDrawn: element.attributes.has('data-line-drawn') ? element : result.lineDrawn,
      size: attributeOf(element, 'data-size')?.trim() || result.size,
    };
    memo.set(s, result);
  }
  return result;
}

const nothing: Inherited = {
  piece: undefined,
  meaning: undefined,
  allowance: undefined,
  includedAllowance: undefined,
  lineDrawn: undefined,
  size: undefined,
};
