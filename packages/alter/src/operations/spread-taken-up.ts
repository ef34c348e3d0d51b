import type { Pattern } from '@paperhinge/geometry';
import type { Became } from '../became/became.js';
import { followed } from '../became/followed.js';
import type { CutPiece } from '../hinge/cut-piece.js';
import { type Mouth, pleatMouth } from '../hinge/mouth.js';
import { sectionAt } from '../hinge/sections.js';
import { seamsTakingMore } from '../moved-edges/seams-taking-more.js';
import { type Fold, folds, openEnd, type WholeSpread } from './spread-wish.js';
import { refusal } from './tellings.js';

/** The folds that stand where the slashes open, laid away from what stays. */
export function pleatsFor(cutPiece: CutPiece, holding: number, parameters: WholeSpread): readonly Mouth[] {
  const { into, name, by = 0, angle = 0, stitched, piece } = parameters;
  if (into === undefined || !(into in folds)) return [];
  if (by + angle <= 0) throw refusal('fold-needs-opening', {}, { piece });
  const end = openEnd(parameters);
  const { cuts } = cutPiece;
  const names = cuts.map((_, i) => (cuts.length === 1 ? name! : `${name} ${i + 1}`));
  const taken = cutPiece.piece.outline.parts.find(part => names.includes(part.name));
  if (taken) throw refusal('pleat-name-taken', { piece: { piece }, name: taken.name }, { piece });
  return cuts.map((_, cut) => {
    const kind = folds[into as Fold];
    const towards = foldsTowards(cutPiece, holding, cut, end);
    return pleatMouth({ cut, end, name: names[cut]!, kind, towards, stitched });
  });
}

/** Which way a fold where a cut opens is laid: away from what stays. */
export function foldsTowards(
  cutPiece: CutPiece,
  holding: number,
  cut: number,
  end: 'from' | 'to',
): 'start' | 'end' {
  const away = stepsFrom(cutPiece, holding);
  const [before, after] = (['before', 'after'] as const).map(
    side => away[sectionAt(cutPiece, cut, end, side)]!,
  );
  return before! < after! ? 'end' : 'start';
}

/** How many slashes lie between each section and the one that stays. */
function stepsFrom({ sections, beside }: CutPiece, holding: number): readonly number[] {
  const away = sections.map((_, i) => (i === holding ? 0 : Number.POSITIVE_INFINITY));
  for (const _ of sections)
    for (const { left, right } of beside) {
      away[left] = Math.min(away[left]!, away[right]! + 1);
      away[right] = Math.min(away[right]!, away[left]! + 1);
    }
  return away;
}

/** Gathers and ease are taken up by the seams of the edge that opened. */
export function takenUp(
  before: Pattern,
  after: Pattern,
  became: Became,
  wish: WholeSpread,
): { readonly pattern: Pattern } {
  const { into, piece } = wish;
  if (into !== 'ease' && into !== 'gathers') return { pattern: after };
  const edge = { piece, edge: wish[openEnd(wish)].edge };
  const carried = followed({ before, after, became });
  return { pattern: seamsTakingMore(before, carried, edge, into === 'ease' ? 'eased' : 'gathered').pattern };
}
