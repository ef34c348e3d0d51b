import type { Pattern, Piece } from '@paperhinge/geometry';
import { add, distance, lerp, rightOf, scale, subtract, unit } from '@paperhinge/geometry/plane';
import type { Became } from '../became/became.js';
import { followed } from '../became/followed.js';
import { type Cut, pointOfEnd } from '../hinge/cut.js';
import type { CutPiece } from '../hinge/cut-piece.js';
import { dartMouth, type Mouth, pleatMouth } from '../hinge/mouth.js';
import { seamsTakingMore } from '../moved-edges/seams-taking-more.js';
import { refusal as verbRefusal } from '../verb/tellings.js';
import type { OneSlash, Slash } from './slash-wish.js';
import { foldsTowards } from './spread-taken-up.js';
import { folds } from './spread-wish.js';
import { refusal } from './tellings.js';

/** A slash and its first cut: the one that begins at the edge. */
export interface SlashCut {
  readonly wish: OneSlash;
  readonly cut: number;
}

/** Share of its slash, from the edge to where it hinges, that a dart is deep where nothing is said. */
const usualDepth = 2 / 3;

/**
 * The darts, pleats and tucks that stand where slashes open.
 * @throws PatternError `field-missing` for a name; `fold-needs-opening`, `pleat-name-taken`
 */
export function mouthsFor(
  piece: Piece,
  cutPiece: CutPiece,
  holding: number,
  slashes: readonly SlashCut[],
): readonly Mouth[] {
  const taken = new Set(piece.outline.parts.map(part => part.name));
  const where = { piece: piece.name };
  return slashes.flatMap(({ wish, cut }): readonly Mouth[] => {
    const { into, name, by, stitched = 0 } = wish;
    if (into === undefined || into === 'ease' || into === 'gathers') return [];
    if (name === undefined) throw verbRefusal('field-missing', { verb: 'slash', fields: ['name'] }, where);
    if (by <= 0) throw refusal('fold-needs-opening', {}, where);
    if (taken.has(name)) throw refusal('pleat-name-taken', { piece: where, name }, where);
    taken.add(name);
    if (into === 'dart') return [dartOf(piece, cutPiece.cuts[cut]!, { cut, name, wish })];
    const towards = foldsTowards(cutPiece, holding, cut, 'from');
    return [pleatMouth({ cut, end: 'from', name, kind: folds[into], towards, stitched })];
  });
}

/** A dart whose legs are equal: its point lies square to the middle of the opening. */
function dartOf(
  piece: Piece,
  { from, to }: Cut,
  { cut, name, wish }: SlashCut & { readonly name: string },
): Mouth {
  const depth = wish.depth ?? usualDepth * distance(pointOfEnd(piece, from), pointOfEnd(piece, to));
  return {
    cut,
    end: 'from',
    part: (a, b) => {
      // The outline runs clockwise: the cloth lies to the right of the way from side to side.
      const apex = add(lerp(a, b, 0.5), scale(unit(rightOf(subtract(b, a))), depth));
      return dartMouth({ cut, end: 'from', name, apex }).part(a, b);
    },
  };
}

/** Gathers and ease are taken up by the seams of the edges that opened. */
export function slashesTakenUp(before: Pattern, after: Pattern, became: Became, wish: Slash): Pattern {
  const taken = wish.slashes.filter(({ into }) => into === 'ease' || into === 'gathers');
  if (taken.length === 0) return after;
  const edges = new Set(taken.map(({ from }) => from.edge));
  return [...edges].reduce((now, edge) => {
    const gathered = taken.some(one => one.from.edge === edge && one.into === 'gathers');
    return seamsTakingMore(before, now, { piece: wish.piece, edge }, gathered ? 'gathered' : 'eased').pattern;
  }, followed({ before, after, became }));
}
