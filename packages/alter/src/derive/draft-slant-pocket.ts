import {
  type Edge,
  type EdgeRun,
  line,
  type Path,
  type Pattern,
  type Piece,
  pathLength,
  pathOf,
  pieceNamed,
  type Seam,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { pathEnd, pathStart, subpath } from '@paperhinge/geometry/paths';
import { withPiece } from '@paperhinge/geometry/pattern';
import type { Alteration } from '../alteration.js';
import { requireFreeEdgeName } from '../dividing/names-free.js';
import { type Item, itemsOf, partOfRun, type Run, recomposed } from '../moved-edges/composed.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { seamEdge } from './collar-shapes.js';
import { derivedPocket, pocketPieces, tail, withPocket } from './slant-pocket-pieces.js';
import type { DraftSlantPocket, WholeSlantPocket } from './slant-pocket-wish.js';
import { refusal, saying } from './tellings.js';

/**
 * Drafts a slant pocket: the corner between waist and side is cut off the piece along the mouth; a side piece, traced
 * with that corner and the bag, lies behind it and closes waist and side seam again; a facing bag is sewn to the mouth.
 * On paper the same; common practice, no source. Rigid: all of the piece that stays. Waist and side seam are told anew
 * over both pieces. `refresh` draws both pieces again for mouth, waist and side as they are then.
 *
 * @throws PatternError `corner-not-there`, `pocket-beyond-edge`; `unknown-piece`, `unknown-edge`; those of `perform`
 */
export const draftSlantPocket = (pattern: Pattern, parameters: DraftSlantPocket): Alteration =>
  perform(draftSlantPocketVerb, pattern, parameters);

export const draftSlantPocketForm = formOf<DraftSlantPocket>()({
  verb: 'draft slant pocket',
  does: 'Cuts the mouth of a pocket slanting from waist to side, and drafts the side piece behind it and the bag that faces it.',
  fields: {
    name: field.newName(),
    piece: field.piece(),
    waist: field.edge(),
    side: field.edge(),
    in: field.usually(field.size(), 40),
    down: field.usually(field.size(), 160),
    depth: field.usually(field.size(), 90),
    below: field.usually(field.size(), 100),
    allowance: field.usually(field.length({ most: tolerances.largestAllowance }), 10),
    fabric: field.optional(field.cloth()),
  },
  leaves: ({ name, piece }) => ({
    pieces: [`${name} side`, `${name} facing`],
    changed: [piece],
    seams: [`${name} mouth`, `${name} bag`],
  }),
  sentence:
    'Draft a slant pocket "{name}" for the {piece} between its {waist} and its {side}[, from {in} in][ to {down} down][, its bag {depth} deeper][ and {below} lower][, of the {fabric} cloth]',
  startsAt: { corner: ['piece', 'waist'], piece: ['piece'] },
  example: {
    pattern: 'trousers',
    step: { name: 'pocket', piece: 'front', waist: 'waist', side: 'outseam' },
  },
});
export const draftSlantPocketVerb = /* @__PURE__ */ verbFrom(draftSlantPocketForm, drawnPocket);

/** The two runs that meet at the corner, in clockwise order, and how much of each the mouth and the bag take. */
interface Corner {
  readonly items: readonly Item[];
  readonly first: { readonly at: number; readonly run: Run; readonly mouth: number; readonly bag: number };
  readonly second: { readonly at: number; readonly run: Run; readonly mouth: number; readonly bag: number };
}

function drawnPocket(given: Pattern, wish: WholeSlantPocket): Alteration {
  const { name, allowance } = wish;
  const source = pieceNamed(given, wish.piece);
  requireFreeEdgeName(source, 'mouth');
  const corner = cornerOf(source, wish);
  const { first, second } = corner;
  const mouth = pathOf(line(placeOn(first.run.path, -first.mouth), placeOn(second.run.path, second.mouth)));
  const slant = { ...seamEdge('mouth', mouth, allowance) };
  const cut = recomposed(source, cutOff(corner, slant));
  const made = pocketPieces(source, wish, {
    mouth,
    first: {
      edge: first.run.edge,
      bag: subpath(tail(first.run.path, first.mouth + first.bag), 0, first.bag),
      closing: tail(first.run.path, first.mouth),
    },
    second: {
      edge: second.run.edge,
      closing: subpath(second.run.path, 0, second.mouth),
      bag: subpath(second.run.path, second.mouth, second.mouth + second.bag),
    },
  });
  const { pattern, side } = withPocket(withPiece(given, cut.piece), made, wish);
  const run = (piece: string, edge: string): EdgeRun => ({ piece, edge, reversed: false });
  const [sideName, facingName] = [side.name, made.facing.name];
  const own: readonly Seam[] = [
    { name: `${name} mouth`, a: [run(source.name, 'mouth')], b: [run(facingName, 'mouth')], ease: { mm: 0 } },
    { name: `${name} bag`, a: [run(sideName, 'bag')], b: [run(facingName, 'bag')], ease: { mm: 0 } },
  ];
  const kept = pattern.seams.filter(({ name: other }) => !own.some(seam => seam.name === other));
  const closing = kept.map(seam => closedAgain(seam, source.name, sideName, corner));
  return {
    pattern: { ...pattern, seams: [...closing, ...own] },
    did: saying('drafted-slant-pocket', {
      piece: { piece: source.name },
      mouthMm: pathLength(mouth),
      pieces: [{ piece: sideName }, { piece: facingName }],
    }),
    findings: cut.findings,
    became: cut.became,
    derived: [made.side, made.facing].map(derivedPocket),
  };
}

/** A place so far from the start, or where negative from the end. */
const placeOn = (path: Path, along: number) =>
  along < 0 ? pathStart(tail(path, -along)) : pathEnd(subpath(path, 0, along));

function cornerOf(piece: Piece, { waist, side, in: inMm, down, depth, below }: WholeSlantPocket): Corner {
  const items = itemsOf(piece);
  const named = (item: Item | undefined, edge: string): item is Run =>
    item?.type === 'run' && item.edge.name === edge;
  const takes = { [waist]: { mouth: inMm, bag: depth }, [side]: { mouth: down, bag: below } };
  for (const [at, item] of items.entries()) {
    const nextAt = (at + 1) % items.length;
    const next = items[nextAt];
    for (const [one, other] of [
      [waist, side],
      [side, waist],
    ] as const) {
      if (!named(item, one) || !named(next, other)) continue;
      for (const [edge, { path }] of [
        [one, item],
        [other, next],
      ] as const) {
        const { mouth, bag } = takes[edge]!;
        const lengthMm = pathLength(path);
        if (mouth + bag >= lengthMm)
          throw refusal(
            'pocket-beyond-edge',
            { edge: { piece: piece.name, edge }, wantedMm: mouth + bag, lengthMm },
            { piece: piece.name, edge },
          );
      }
      return {
        items,
        first: { at, run: item, ...takes[one]! },
        second: { at: nextAt, run: next, ...takes[other]! },
      };
    }
  }
  throw refusal(
    'corner-not-there',
    { first: { piece: piece.name, edge: waist }, second: { piece: piece.name, edge: side } },
    { piece: piece.name },
  );
}

/** The ring with the mouth in place of the corner. */
function cutOff({ items, first, second }: Corner, mouth: Edge): readonly Item[] {
  const length = pathLength(first.run.path);
  return items.flatMap((item, i): readonly Item[] => {
    if (i === first.at)
      return [partOfRun(first.run, 0, length - first.mouth), { type: 'run', edge: mouth, path: mouth.path }];
    if (i === second.at) return [partOfRun(second.run, second.mouth, pathLength(second.run.path))];
    return [item];
  });
}

/** A seam that ran into the corner runs over the side piece's part of it now. */
function closedAgain(seam: Seam, source: string, sidePiece: string, { first, second }: Corner): Seam {
  const over = (runs: readonly EdgeRun[]): readonly EdgeRun[] =>
    runs.flatMap((run): readonly EdgeRun[] => {
      if (run.piece !== source || run.part) return [run];
      const isFirst = run.edge === first.run.edge.name,
        isSecond = run.edge === second.run.edge.name;
      if (!isFirst && !isSecond) return [run];
      const { mouth, bag } = isFirst ? first : second;
      // The first run ends at the corner, the second begins there.
      const part = isFirst ? { from: bag, to: bag + mouth } : { from: 0, to: mouth };
      const closing: EdgeRun = { piece: sidePiece, edge: run.edge, reversed: run.reversed, part };
      return isFirst === run.reversed ? [closing, run] : [run, closing];
    });
  return { ...seam, a: over(seam.a), b: over(seam.b) };
}
