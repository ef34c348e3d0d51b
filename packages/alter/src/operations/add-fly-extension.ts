import {
  type Edge,
  type Fastening,
  type Pattern,
  type Piece,
  type PieceLine,
  pathLength,
  pieceNamed,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { pathEnd, pathStart, reversedPath, subpath, transformedPath } from '@paperhinge/geometry/paths';
import { withPiece } from '@paperhinge/geometry/pattern';
import { mirror, subtract } from '@paperhinge/geometry/plane';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration } from '../alteration.js';
import { topstitchName } from '../derive/draft-fly.js';
import { alongWaist, type FlyFront, flyFront, flyLine } from '../derive/fly-shape.js';
import { refusal, saying } from '../derive/tellings.js';
import { requireFreeEdgeName } from '../dividing/names-free.js';
import { sameEdge } from '../edge-refs.js';
import { offStraight } from '../hinge/off-straight.js';
import { type Item, itemsOf, partOfRun, type Run, recomposed } from '../moved-edges/composed.js';
import { requireSimple } from '../moved-edges/tidy.js';
import { refusal as refusalOfRedrawn } from '../redrawn-edges/tellings.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';

/** Add a fly that is cut in one with both fronts. Lengths in mm. */
export interface AddFlyExtension {
  readonly piece: string;
  /** The centre front edge, from the waist down: the crotch of trousers. */
  readonly edge: string;
  /** Of the opening: how long it is from the waist, and how far below it the fly ends; default 15. */
  readonly length: number;
  readonly below?: number;
  /** Beyond the centre front; default 40. */
  readonly width?: number;
  /** From the centre front to the topstitching; default 33. */
  readonly topstitch?: number;
  /** How far the front that lies below stands beyond the centre front; default 8. */
  readonly underlap?: number;
  /** Which front lies uppermost, as the wearer has it on; default the right one. */
  readonly over?: 'right' | 'left';
}

/**
 * Adds a fly in one with the fronts: what lies within its width of the straight centre front stands beyond it turned
 * over, so that folded back it lies on the front with its end in the waist; below the opening it runs rounded into the
 * centre front, whose seam begins there. Left and right are cut alike and differ in the sewing: the uppermost front is
 * folded on the centre front and topstitched, the other so far beyond it that the zip lies hidden. The waist keeps its
 * length. Source: common practice, no source.
 *
 * @throws PatternError `fly-not-at-waist`, `fly-on-fold`, `fly-beyond-edge`, `fly-edge-bent`, `facing-end-too-wide`,
 *   `edge-name-taken`, `redrawn-crosses`; `unknown-piece`, `unknown-edge`; those of `perform`
 */
export const addFlyExtension = (pattern: Pattern, parameters: AddFlyExtension): Alteration =>
  perform(addFlyExtensionVerb, pattern, parameters);

export const addFlyExtensionForm = formOf<AddFlyExtension>()({
  verb: 'add fly extension',
  does: 'Adds a fly to the centre front in one with both fronts, with the fold of the front that lies uppermost, its topstitching, and the fold of the other beyond it.',
  fields: {
    piece: field.piece(),
    edge: field.edge(),
    length: field.size(),
    below: field.usually(field.length(), 15),
    width: field.usually(field.size(), 40),
    topstitch: field.usually(field.size(), 33),
    underlap: field.usually(field.length(), 8),
    over: field.usually(field.choice('right', 'left'), 'right'),
  },
  leaves: ({ piece }) => ({ changed: [piece] }),
  sentence:
    'Add a fly in one to the {edge} of the {piece}, opening by {length}[, reaching {below} below][, {width} wide][, topstitched at {topstitch}][, the {over} front uppermost][, the other {underlap} beyond it]',
  startsAt: { corner: ['piece', 'edge'], edge: ['piece', 'edge'] },
  example: {
    pattern: 'darted-dress',
    after: [{ 'fold to seam': { piece: 'skirt front' } }],
    step: { piece: 'skirt front', edge: 'centre', length: 180 },
  },
});
export const addFlyExtensionVerb = /* @__PURE__ */ verbFrom(addFlyExtensionForm, (pattern, wish) => {
  const ref = { piece: wish.piece, edge: wish.edge };
  return locating(ref, () => {
    const front = flyFront(pieceNamed(pattern, wish.piece), wish.edge, wish);
    for (const name of Object.values(added)) requireFreeEdgeName(front.piece, name);
    const straight = subpath(front.down, 0, wish.length);
    const offMm = offStraight(straight);
    if (offMm > tolerances.foldTolerance) throw refusal('fly-edge-bent', { edge: ref, offMm }, ref);
    const map = mirror(pathStart(straight), subtract(pathEnd(straight), pathStart(straight)));
    const across = transformedPath(front.across, map);
    const outer = flyLine(front, wish, across, 'beyond');
    const top = subpath(across, 0, alongWaist(across, outer));
    const drawn = recomposed(front.piece, withExtension(front, wish.length + wish.below, [outer, top]));
    const piece = withFolds(drawn.piece, front, wish);
    requireSimple(piece, () => refusalOfRedrawn('redrawn-crosses', { edge: ref }, ref));
    const altered = withPiece(pattern, piece);
    return {
      pattern: { ...altered, fastenings: movedZip(pattern, front, wish) },
      became: drawn.became,
      did: saying('added-fly-extension', {
        edge: ref,
        lengthMm: wish.length,
        widthMm: wish.width,
        over: wish.over,
      }),
      findings: drawn.findings,
    };
  });
});

/** The fly's free edge, and its end at the waist. */
const added = { outer: 'fly', top: 'fly-waist' } as const;

type Whole = Required<AddFlyExtension>;

/** The ring with the centre front cut off above the fly's end, and the fly between it and the waist. */
function withExtension(
  { piece, edge, waist, downwards }: FlyFront,
  reachMm: number,
  [outer, top]: readonly [Edge['path'], Edge['path']],
): readonly Item[] {
  const fresh = (of: Edge, name: string, path: Edge['path']): Run => {
    const { roleGuessed: _, opening: __, ...plain } = of;
    const role = name === added.top ? 'waist' : 'opening';
    return { type: 'run', edge: { ...plain, name, role, corners: {} }, path };
  };
  const runs = [fresh(edge, added.outer, outer), fresh(waist, added.top, top)];
  return itemsOf(piece).flatMap((item): readonly Item[] => {
    if (item.type !== 'run' || item.edge !== edge) return [item];
    const { opening: _, ...closed } = item.edge;
    const length = pathLength(item.path);
    const left = downwards ? partOfRun(item, reachMm, length) : partOfRun(item, 0, length - reachMm);
    const centre = { ...left, edge: closed };
    // The outer line runs from the waist down, the end at the waist from the corner outwards.
    return downwards
      ? [runs[1]!, runs[0]!, centre]
      : [centre, { ...runs[0]!, path: reversedPath(outer) }, { ...runs[1]!, path: reversedPath(top) }];
  });
}

/** Where either front is folded, and where the uppermost one is topstitched. */
function withFolds(piece: Piece, front: FlyFront, wish: Whole): Piece {
  const { length, below, underlap, topstitch, over } = wish;
  const other = over === 'right' ? 'left' : 'right';
  const fold = (name: string, path: Edge['path']): PieceLine => ({ kind: 'fold', name, path });
  const beyond = { length, below: 0, width: underlap };
  const across = front.across;
  const lines: readonly PieceLine[] = [
    fold(`fly fold, ${over} front`, subpath(front.down, 0, length + below)),
    ...(underlap > 0
      ? [fold(`fly fold, ${other} front`, flyLine(front, beyond, acrossTurned(front, length), 'beyond'))]
      : []),
    {
      kind: 'style',
      name: topstitchName({ name: 'fly', over }),
      path: flyLine(front, { length, below: 0, width: topstitch }, across),
    },
  ];
  return { ...piece, lines: [...piece.lines.filter(l => !lines.some(one => one.name === l.name)), ...lines] };
}

/** The waist turned over in the centre front. */
function acrossTurned({ down, across }: FlyFront, length: number): Edge['path'] {
  const straight = subpath(down, 0, length);
  return transformedPath(
    across,
    mirror(pathStart(straight), subtract(pathEnd(straight), pathStart(straight))),
  );
}

/** A zip that closed the centre front closes the fly now; where there was none there is one. */
function movedZip({ fastenings = [] }: Pattern, { downwards }: FlyFront, wish: Whole): readonly Fastening[] {
  const isIts = (one: Fastening): boolean => one.kind === 'zip' && sameEdge(one.along, wish);
  const along = { piece: wish.piece, edge: added.outer, reversed: !downwards };
  const { length } = wish;
  if (!fastenings.some(isIts)) return [...fastenings, { name: 'fly zip', kind: 'zip', along, length }];
  return fastenings.map(one => (isIts(one) ? { ...one, along, length } : one));
}
