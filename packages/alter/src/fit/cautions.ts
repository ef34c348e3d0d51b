import { edgeNames, type Pattern } from '@paperhinge/geometry';
import type { Derived } from '../alteration.js';
import { neckOpening } from './over-the-head.js';
import { smallestAdultHeadGirth, type Wearer } from './wearer.js';

/** A caution to show a maker; `code` is stable and meant for programs. */
export interface Caution {
  readonly code: string;
  readonly text: string;
}

/** What only the maker can say of the garment; each is taken as no where it is absent. */
export interface GarmentUse {
  readonly child?: boolean;
  readonly sleepwear?: boolean;
  /** The wearer dresses alone and cannot reach behind, or not lift the arms. */
  readonly dressesAlone?: boolean;
  readonly afterSurgery?: boolean;
}

const decides = 'Local rules and licensed practice decide.';

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
  const head = wearer['head girth'];
  const child =
    use.child ??
    ((head !== undefined && head < smallestAdultHeadGirth) ||
      named(pattern, /child|baby|infant|toddler|\b(boy|girl)s?\b/i));
  const sleepwear = use.sleepwear ?? named(pattern, /pyjama|pajama|night(gown|shirt|dress|wear)|sleepwear/i);
  const cords = named(pattern, /cord|drawstring|\bties?\b|casing/i);
  const neck = neckOpening(pattern, derived);
  const backCloses = pattern.pieces.some(p =>
    p.outline.parts.some(
      part => part.type === 'edge' && part.opening !== undefined && /back/i.test(`${p.name} ${part.name}`),
    ),
  );
  const cautions: readonly (Caution | false | undefined)[] = [
    {
      code: 'printed-square',
      text: 'Measure the printed test square before you cut; a page printed "to fit" makes every piece too small.',
    },
    {
      code: 'blades',
      text: 'Rotary blades, shears and pins cut more than cloth: close, cap and count them, and keep them from children.',
    },
    neck && {
      code: 'head-opening',
      text: 'The neck must pass the head without force. Try it on, or measure the finished edge stretched, before the last stitching.',
    },
    child && {
      code: 'children-small-parts',
      text: `Buttons, snaps and beads that come off can choke a small child: sew them so that they hold, or leave them out. ${decides}`,
    },
    (child || cords) && {
      code: 'cords',
      text: `Cords and drawstrings at the hood, neck, waist or hem of children's clothing catch and strangle; many places forbid or limit them. ${decides}`,
    },
    (sleepwear || child) && {
      code: 'sleepwear-flame',
      text: `Children's sleepwear must in many places resist flame or fit tightly; loose cotton burns fast. ${decides}`,
    },
    (use.dressesAlone || backCloses) && {
      code: 'back-closure',
      text: 'Someone who dresses alone may not reach a closure at the back: ask, and move it to the front or the side if need be.',
    },
    use.afterSurgery && {
      code: 'after-surgery',
      text: `After surgery keep seams, bands and fastenings clear of scars, ports and swelling; ask the wearer and those who care for them. ${decides}`,
    },
  ];
  return cautions.filter((c): c is Caution => Boolean(c));
}

/** Whether the pattern's name, or that of a piece, its title or an edge, says a thing. */
const named = (pattern: Pattern, word: RegExp): boolean =>
  word.test(pattern.name) ||
  pattern.pieces.some(p => word.test(p.name) || word.test(p.title) || edgeNames(p).some(e => word.test(e)));
