import { type Pattern, type Piece, pieceRoleOf, roleOf, type Saying } from '@paperhinge/geometry';
import { isNamedFor, requireWhole } from '@paperhinge/geometry/internal';
import { looseEnds } from '@paperhinge/geometry/measure';
import type { Derived } from '../alteration.js';
import { isBack } from './front-and-back.js';
import { neckOpening } from './over-the-head.js';
import { type FitSentences, saying } from './sentences.js';
import { measurementOf, smallestAdultHeadGirth, type Wearer } from './wearer.js';

/** A caution to show a maker; `code` is stable and meant for programs. */
export interface Caution extends Saying {
  readonly code: keyof FitSentences;
}

/** What only the maker can say of the garment; each is taken as no where it is absent. */
export interface GarmentUse {
  readonly child?: boolean;
  readonly sleepwear?: boolean;
  /** The wearer dresses alone and cannot reach behind, or not lift the arms. */
  readonly dressesAlone?: boolean;
  readonly afterSurgery?: boolean;
}

/**
 * The cautions that apply to a garment, in the order to read them. Those on printing and blades always do; the others
 * where the pattern, the wearer's measurements or what the maker says of its use call for them. They name dangers and
 * send the reader to the rules: no figure here is a legal limit.
 */
export function cautionsFor(input: {
  readonly pattern: Pattern;
  readonly wearer?: Wearer;
  readonly derived?: readonly Derived[];
  readonly use?: GarmentUse;
}): readonly Caution[] {
  const { pattern, wearer = {}, derived = [], use = {} } = input;
  requireWhole(pattern);
  const head = measurementOf(wearer, 'head girth');
  const child =
    use.child ?? ((head !== undefined && head < smallestAdultHeadGirth) || isNamedFor(pattern, 'child'));
  const sleepwear = use.sleepwear ?? isNamedFor(pattern, 'sleepwear');
  const hasCords =
    isNamedFor(pattern, 'cords') ||
    pattern.pieces.some(p => pieceRoleOf(p) === 'hood' || isLooseStrip(p)) ||
    looseEnds(pattern).length > 0 ||
    (pattern.fastenings ?? []).some(f => f.kind === 'drawcord');
  const codes: readonly (keyof FitSentences | false)[] = [
    'printed-square',
    'blades',
    neckOpening(pattern, derived) !== undefined && 'head-opening',
    child && 'children-small-parts',
    (child || hasCords) && 'cords',
    (sleepwear || child) && 'sleepwear-flame',
    (use.dressesAlone === true || closesAtBack(pattern)) && 'back-closure',
    use.afterSurgery === true && 'after-surgery',
  ];
  return codes.filter(code => code !== false).map(code => saying(code, {}) as Caution);
}

/** A strip that is made for no edge: a tie, a belt, a loop. */
const isLooseStrip = (piece: Piece): boolean => pieceRoleOf(piece) === 'strip' && piece.madeFor === undefined;

/** A slit in the centre edge of a back. */
const closesAtBack = (pattern: Pattern): boolean =>
  pattern.pieces.some(p =>
    p.outline.parts.some(part => {
      if (part.type !== 'edge' || roleOf(part) !== 'centre') return false;
      const fastened = (pattern.fastenings ?? []).some(
        f => f.along.piece === p.name && f.along.edge === part.name,
      );
      return (part.opening !== undefined || fastened) && isBack(pattern, p);
    }),
  );
