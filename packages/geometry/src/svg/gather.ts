import { quoted } from '../naming.js';
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

interface Growing {
  readonly name: string;
  shown: Shown | undefined;
  readonly items: Map<Shown, Item & { strokes: Subpath[] }>;
  readonly plain: Element[];
}

/**
 * Sorts what is shown by piece and meaning. A shape belongs to the nearest enclosing `data-piece`, or to the piece
 * whose outline the sheet names by its id.
 */
export function gatherer(report: Report, sheet: SheetPieces) {
  const pieces = new Map<string, Growing>();
  const outlines = new Map(Object.entries(sheet).map(([name, piece]) => [piece.outline, name]));
  const twice = Object.entries(sheet).find(([name, piece]) => outlines.get(piece.outline) !== name);
  if (twice)
    throw report.error('duplicate-outline', 0, {
      message: `The sheet names one outline for two pieces, one of them ${quoted(twice[0])}.`,
      remedy: 'Give each piece an outline of its own.',
      piece: twice[0],
    });
  const ids: string[] = [];
  const memo = new Map<Shown, Inherited>();
  let segments = 0;
  const count = (drawn: Drawn): void => {
    segments += drawn.strokes.reduce((n, stroke) => n + stroke.segments.length, 0);
    if (segments > mostPatternSegments)
      throw report.error('too-many-segments', drawn.element.offset, {
        message: `The lines of the pattern have over ${mostPatternSegments} segments.`,
        remedy: 'Simplify its paths in the drawing program.',
      });
  };

  const pieceOf = (shown: Shown): Growing => {
    const name = attributeOf(shown.element, 'data-piece')!.trim();
    const known = pieces.get(name);
    // The sheet may have named its outline before its group was seen to be a piece.
    if (known) known.shown ??= shown;
    if (known?.shown === shown) return known;
    if (known)
      throw report.error('duplicate-piece', shown.element.offset, {
        message: `There are two pieces called ${quoted(name)}.`,
        remedy: 'Give each a name of its own.',
        piece: name,
      });
    const made: Growing = { name, shown, items: new Map(), plain: [] };
    pieces.set(name, made);
    return made;
  };
  const sheetPiece = (name: string): Growing => {
    const known = pieces.get(name);
    if (known) return known;
    const made: Growing = { name, shown: undefined, items: new Map(), plain: [] };
    pieces.set(name, made);
    return made;
  };

  return {
    add(drawn: Drawn): void {
      const { element, strokes } = drawn;
      const id = attributeOf(element, 'id');
      if (id !== undefined) ids.push(id);
      const inherited = inheritedBy(drawn, memo);
      const named = id === undefined ? undefined : outlines.get(id);
      if (named !== undefined) {
        count(drawn);
        outlines.delete(id!);
        const item = { meaning: 'outline' as const, element, strokes: [...strokes], inherited };
        sheetPiece(named).items.set(drawn, item);
        return;
      }
      const owner = inherited.meaning;
      if (!inherited.piece) {
        if (owner)
          report.add('warning', 'outside-piece', owner.element.offset, {
            message: `A ${meaningOf(owner.element)} stands outside every piece and was left out.`,
            remedy: 'Put it into the group of its piece (data-piece).',
          });
        return;
      }
      const piece = pieceOf(inherited.piece);
      if (owner) count(drawn);
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
    },
    /** The pieces in document order; every outline that the sheet names must have been seen. */
    pieces(): readonly PieceDrawing[] {
      return [...pieces.values()].map(({ name, shown, items, plain }) => ({
        name,
        element: shown?.element,
        items: [...items.values()],
        plain,
      }));
    },
    /** Outlines the sheet names that the drawing does not show, as [id, piece], and the ids there are. */
    missing: (): {
      readonly outlines: readonly (readonly [string, string])[];
      readonly ids: readonly string[];
    } => ({
      outlines: [...outlines],
      ids,
    }),
  };
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
};
