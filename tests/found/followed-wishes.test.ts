// Truing, figures, amounts given by what they bring about, the doors of verbs: told, and done as the remedy says.
import { type AnyVerb, perform, verbs } from '@paperhinge/alter';
import type { Pattern } from '@paperhinge/geometry';
import { adjust } from '../../packages/sheet/src/words/english/adjust.js';
import { goal } from '../../packages/sheet/src/words/english/goal.js';
import { truing } from '../../packages/sheet/src/words/english/truing.js';
import { verb } from '../../packages/sheet/src/words/english/verb.js';
import { type Corner, patternOf, pieceOf, side } from '../support/polygon-piece.js';
import { shiftPattern } from '../support/shift.js';
import { lengthsIn, withEdge } from './followed.js';
import {
  completeOver,
  type Doing,
  demo,
  type FollowedCase,
  followAll,
  panel,
  steps,
  withPiece,
  work,
} from './followed-steps.js';

const shift = shiftPattern();
const dress = demo('darted-dress');
const trousers = demo('trousers');
const one = patternOf([panel()]);
const unnamed = (piece: string, edge: string, role?: 'armhole' | 'cap'): Pattern => {
  const renamed = withPiece(shift, piece, p => ({
    ...p,
    outline: { parts: p.outline.parts.map(part => (part.name === edge ? { ...part, name: 'x' } : part)) },
    notches: [],
  }));
  const loose = { ...renamed, seams: [] };
  return role ? withEdge(loose, piece, 'x', e => ({ ...e, role })) : loose;
};

const spread = (fields: string) => `spread: { piece: panel, ${fields} }`;
const across = 'from: { edge: top }, to: { edge: bottom }';
/** A piece with a slot 0.4 mm wide that bows in many corners: a fair line along one side runs into the other. */
const slotted = (() => {
  const bow = Array.from({ length: 11 }, (_, i): Corner => {
    const x = 50 + 20 * i;
    return [x, 40 + 30 * (1 + Math.cos((Math.PI * (x - 150)) / 100))];
  });
  const below = bow.map(([x, y]): Corner => [x, y + 0.4]);
  const end = bow.at(-1)!;
  return patternOf([
    pieceOf('panel', [
      side('top', [
        [0, 0],
        [300, 0],
      ]),
      side('right', [
        [300, 0],
        [300, 200],
      ]),
      side('foot', [
        [300, 200],
        [0, 200],
      ]),
      side('left', [
        [0, 200],
        [0, 40.4],
      ]),
      side('lower', [[0, 40.4], ...below]),
      side('end', [below.at(-1)!, end]),
      side('hem', [...bow.toReversed(), [0, 40]]),
      side('upper left', [
        [0, 40],
        [0, 0],
      ]),
    ]),
  ]);
})();
const trueHem = (fields: string) => `true: { edges: [panel.bottom]${fields} }`;
const trued: Readonly<Record<string, FollowedCase>> = {
  'straight-over-dart': [
    steps(dress, 'true: { edges: [back.shoulder], straight: yes, from: 20 mm, to: 90 mm }'),
    'on one side of it',
    steps(dress, 'true: { edges: [back.shoulder], straight: yes, from: 5 mm, to: 40 mm }'),
  ],
  'truing-crosses': [
    steps(slotted, 'true: { edges: [panel.hem], within: 20 }'),
    'Allow it less',
    steps(slotted, 'true: { edges: [panel.hem], within: 0.1 }'),
  ],
  'straight-without-length': [
    steps(one, trueHem(', straight: yes, from: 20 mm, to: 20 mm')),
    'two places that lie apart',
    steps(one, trueHem(', straight: yes, from: 20 mm, to: 120 mm')),
  ],
  'places-without-straight': [
    steps(one, trueHem(', from: 20 mm, to: 120 mm')),
    'straight: yes',
    steps(one, trueHem(', from: 20 mm, to: 120 mm, straight: yes')),
  ],
};

const figure = (what: string, by: number) => `adjust: { for: ${what}, by: ${by} }`;
const unmarked = withPiece(shift, 'front', piece => ({ ...piece, marks: [] }));
const upperArm = (mm: number) => steps(shift, figure('full upper arm', mm));
const adjusted: Readonly<Record<string, FollowedCase>> = {
  'bust-point-unknown': [
    steps(unmarked, figure('full bust', 20)),
    'data-name="bust point"',
    steps(shift, figure('full bust', 20)),
  ],
  'adjust-too-much': [
    upperArm(900),
    'at the very most',
    () => upperArm(lengthsIn(upperArm(900)().find(f => f.code === 'adjust-too-much')!.remedy)[0]!)(),
  ],
  'adjust-needs-dart': [
    steps(shift, 'close dart: { piece: front, dart: bust, into: hem }', figure('high bust', 10)),
    'Open one first',
    steps(
      shift,
      'close dart: { piece: front, dart: bust, into: hem }',
      'open dart: { piece: front, edge: side-lower, at: 40 mm, intake: 20, depth: 120, name: new bust }',
      figure('high bust', 10),
    ),
  ],
  'adjust-needs-piece': [
    steps(unnamed('back', 'shoulder'), figure('broad back', 20)),
    'list the shoulder seam',
    steps(shift, figure('broad back', 20)),
  ],
  'adjust-needs-edge': [
    steps(unnamed('sleeve', 'cap'), figure('full upper arm', 20)),
    'data-role="cap"',
    steps(unnamed('sleeve', 'cap', 'cap'), figure('full upper arm', 20)),
  ],
  'adjust-needs-level': [
    steps(dress, figure('sway back', 10)),
    'data-name="waist"',
    steps(
      withPiece(shift, 'back', p => p),
      figure('sway back', 10),
    ),
  ],
  'adjust-needs-seam': [
    steps({ ...trousers, seams: [] }, figure('long crotch point', 10)),
    'under seams',
    steps(trousers, figure('long crotch point', 10)),
  ],
};

const soThat = (measure: string, is: number) => `{ so that: ${measure}, is: ${is} }`;
const goals: Readonly<Record<string, FollowedCase>> = {
  'goal-not-reached': [
    steps(shift, 'shorten: { pieces: front, at: hem, by: { so that: height of front, is: 3000 } }'),
    'Write is: [',
    () => {
      const bad = 'shorten: { pieces: front, at: hem, by: { so that: height of front, is: 3000 } }';
      const { remedy } = steps(shift, bad)().find(f => f.code === 'goal-not-reached')!;
      return steps(shift, bad.replace('is: 3000', /is: \[[^\]]*\]/.exec(remedy)![0]))();
    },
  ],
  'goal-level-unknown': [
    steps(shift, 'take in: { seam: side, by: { so that: girth at hips, is: 1080 } }'),
    '"hip"',
    steps(shift, 'take in: { seam: side, by: { so that: girth at hip, is: 1080 } }'),
  ],
  'goal-body-unknown': [
    steps(shift, 'take in: { seam: side, by: { so that: ease at hip, is: 60 } }'),
    '"hip girth"',
    steps(
      shift,
      'wearer: { hip girth: 1020 }',
      'take in: { seam: side, by: { so that: ease at hip, is: 60 } }',
    ),
  ],
  'goal-hem-unknown': [
    steps(shift, 'take in: { seam: side, by: { so that: sweep of front.neck, is: 160 } }'),
    'length of front.neck',
    steps(shift, 'take in: { seam: shoulder, by: { so that: length of front.armhole, is: [230, 236] } }'),
  ],
  'too-many-goals': [
    steps(
      one,
      spread(
        `${across}, by: ${soThat('length of panel.top', 330)}, other end: ${soThat('length of panel.bottom', 320)}, stitched: ${soThat('height of panel', 400)}, into: tucks, name: t`,
      ),
    ),
    'Give figures for all but 2',
    steps(
      one,
      spread(
        `${across}, by: ${soThat('length of panel.top', 330)}, other end: ${soThat('length of panel.bottom', 320)}`,
      ),
    ),
  ],
  'amount-found': [
    steps(shift, 'take in: { seam: side, by: { so that: girth at hip, is: 1080 } }'),
    'Write this amount',
    steps(shift, 'take in: { seam: side, by: 20 }'),
  ],
};

const byName = (name: string): AnyVerb => verbs.find(v => v.verb === name)!;
const call = (name: string, given: unknown): Doing =>
  work(() => perform(byName(name), shift, given as never));
const shorter = { pieces: ['front'], at: 'hem', by: 20 };
const damaged = { ...shift, seams: undefined } as unknown as typeof shift;
const doors: Readonly<Record<string, FollowedCase>> = {
  'pattern-not-usable': [
    work(() => perform(byName('shorten'), damaged, shorter)),
    'again from its file',
    call('shorten', shorter),
  ],
  'fields-expected': [call('shorten', 'front'), '"pieces", "at"', call('shorten', shorter)],
  'field-missing': [call('shorten', { pieces: ['front'], at: 'hem' }), 'Add "by"', call('shorten', shorter)],
  'field-unknown': [call('shorten', { ...shorter, bye: 1 }), '"by"', call('shorten', shorter)],
  'field-not-usable': [call('shorten', { ...shorter, by: 'much' }), 'a length', call('shorten', shorter)],
  'field-out-of-range': [
    call('shorten', { ...shorter, by: -4 }),
    '0 mm to 5000 mm',
    call('shorten', shorter),
  ],
  'fields-exclude': [
    call('add notches', { seam: 'side', count: 2, at: { share: 0.5 } }),
    'Keep one',
    call('add notches', { seam: 'side', count: 2 }),
  ],
  'choice-unknown': [
    call('recut neckline', { piece: 'front', shape: 'rond', depth: 30 }),
    '"round"',
    call('recut neckline', { piece: 'front', shape: 'round', depth: 30 }),
  ],
};

followAll(trued);
followAll(adjusted);
followAll(goals);
followAll(doors);
// Both are followed by their figures in `followed-figures`.
completeOver([truing], trued, ['truing-left', 'straight-left']);
completeOver([adjust], adjusted, []);
completeOver([goal], goals, []);
completeOver([verb], doors, []);
