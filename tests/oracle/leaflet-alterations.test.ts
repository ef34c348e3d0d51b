// The alterations that a clothing leader must know: USDA Home Economics Research Report 32, Pattern Alteration (ARS 1966,
// public domain), contents [read: check-values §7]. The leaflet's figures are not at hand: each line runs end to end as a
// maker would write it, and what it changes is held against hand-worked arithmetic. Where several verbs do one
// alteration they stand in the order of the handwork.
import { readFileSync } from 'node:fs';
import { edgePath, pathLength, pieceNamed, readPattern, validatePattern } from '@paperhinge/geometry';
import { describe, expect, test } from 'vitest';
import { readSheet } from '../../packages/sheet/src/read-sheet.js';
import { runSteps } from '../../packages/sheet/src/run-steps.js';
import { stateOf } from '../../packages/sheet/src/state.js';

interface Line {
  readonly alteration: string;
  readonly pattern: 'woven-shift' | 'darted-dress' | 'trousers' | 'shirt';
  readonly steps: readonly string[];
  /** Edges and by how much each must change, in mm, within a tenth. */
  readonly changes: Readonly<Record<string, number>>;
}

const lines: readonly Line[] = [
  {
    alteration: 'waist length: longer',
    pattern: 'woven-shift',
    steps: ['lengthen: { pieces: [front, back], at: waist, by: 25 mm }'],
    changes: { 'front.centre-front': 25, 'back.centre-back': 25 },
  },
  {
    alteration: 'waist length: shorter',
    pattern: 'woven-shift',
    steps: ['shorten: { pieces: [front, back], at: waist, by: 20 mm }'],
    changes: { 'front.centre-front': -20, 'back.centre-back': -20 },
  },
  {
    alteration: 'broad shoulders',
    pattern: 'woven-shift',
    steps: [
      'spread: { piece: back, from: { edge: shoulder, at: 1/2 }, to: { edge: armhole, at: 1/2 }, by: 12 mm }',
    ],
    changes: { 'back.shoulder': 12, 'back.armhole': 0, 'back.neck': 0 },
  },
  {
    alteration: 'narrow shoulders',
    pattern: 'woven-shift',
    steps: ['recut armhole: { pieces: [front, back], in: 12 mm }'],
    changes: { 'front.shoulder': -12, 'back.shoulder': -12 },
  },
  {
    alteration: 'square shoulders',
    pattern: 'woven-shift',
    steps: ['recut edge: { piece: back, edge: shoulder, out: [0 mm, 10 mm] }'],
    changes: { 'back.neck': 0, 'back.side': 0 },
  },
  {
    alteration: 'sloping shoulders',
    pattern: 'woven-shift',
    steps: ['recut edge: { piece: back, edge: shoulder, in: [0 mm, 10 mm] }'],
    changes: { 'back.neck': 0, 'back.side': 0 },
  },
  {
    alteration: 'narrow chest',
    pattern: 'woven-shift',
    steps: [
      'spread: { piece: front, from: { edge: shoulder, at: 20 mm from neck }, to: { edge: hem, at: 80 mm from centre-front }, by: -10 mm }',
    ],
    changes: { 'front.armhole': 0, 'front.side-lower': 0 },
  },
  {
    alteration: 'flat or thin chest',
    pattern: 'woven-shift',
    steps: [
      'spread: { piece: front, from: { edge: centre-front, at: 60 mm from neck }, to: { edge: armhole, at: 1/2 }, by: -8 mm }',
    ],
    changes: { 'front.shoulder': 0, 'front.hem': 0 },
  },
  {
    alteration: 'large bust: the dart takes in more, the front is longer over it',
    pattern: 'darted-dress',
    steps: [
      'spread: { piece: front, from: { edge: centre, at: 175 mm from neck }, to: { edge: armhole, at: 95 % }, by: 12 mm }',
      'resize dart: { piece: front, dart: bust, to: 42 mm }',
    ],
    changes: { 'front.side': -12, 'front.shoulder': 0 },
  },
  {
    alteration: 'small bust',
    pattern: 'darted-dress',
    steps: ['resize dart: { piece: front, dart: bust, to: 18 mm }'],
    changes: { 'front.side': 12, 'front.waist': 0 },
  },
  {
    alteration: 'low bust',
    pattern: 'darted-dress',
    steps: [
      'move dart point: { piece: front, dart: bust, up: -20 mm }',
      'move dart point: { piece: front, dart: under-bust, deeper: -20 mm }',
    ],
    changes: { 'front.waist': 0, 'front.armhole': 0 },
  },
  {
    alteration: 'large abdomen, bodice',
    pattern: 'darted-dress',
    steps: [
      'spread: { piece: front, from: { edge: waist, at: 20 % from centre }, to: { edge: shoulder, at: 30 % }, by: 20 mm }',
    ],
    changes: { 'front.waist': 20, 'front.shoulder': 0, 'front.side': 0 },
  },
  {
    alteration: 'large abdomen, skirt',
    pattern: 'darted-dress',
    steps: [
      'spread: { piece: skirt front, from: { edge: waist, at: 20 % from centre }, to: { edge: hem, at: 60 % }, by: 24 mm, other end: 12 mm }',
    ],
    changes: { 'skirt front.waist': 24, 'skirt front.hem': 12, 'skirt front.side': 0 },
  },
  {
    alteration: 'full neck',
    pattern: 'woven-shift',
    steps: [
      'recut neckline: { piece: front, shape: round, depth: 8 mm, shoulder: 106 mm }',
      'recut neckline: { piece: back, shape: round, depth: 4 mm, shoulder: 106 mm }',
    ],
    changes: { 'front.shoulder': -6, 'back.shoulder': -6 },
  },
  {
    alteration: 'dowager’s hump: length over it, and a dart at the neck',
    pattern: 'woven-shift',
    steps: [
      'spread: { piece: back, from: { edge: centre-back, at: 50 mm from neck }, to: { edge: shoulder, at: 80 % }, by: 12 mm }',
      'open dart: { piece: back, edge: neck, at: 1/2, intake: 8 mm, depth: 70 mm, name: neck dart }',
    ],
    changes: { 'back.centre-back': 12, 'back.neck': -8 },
  },
  {
    alteration: 'round shoulders or back',
    pattern: 'woven-shift',
    steps: [
      'spread: { piece: back, from: { edge: centre-back, at: 130 mm from neck }, to: { edge: armhole, at: 1/2 }, by: 15 mm }',
      'open dart: { piece: back, edge: shoulder, at: 45 %, intake: 12 mm, depth: 80 mm, name: shoulder blade }',
    ],
    changes: { 'back.centre-back': 15, 'back.shoulder': -12 },
  },
  {
    alteration: 'over-erect or sway back',
    pattern: 'woven-shift',
    steps: [
      'spread: { piece: back, from: { edge: centre-back, at: 405 mm from neck }, to: { edge: side, at: 30 % }, by: -15 mm }',
    ],
    changes: { 'back.side': 0, 'back.hem': 0 },
  },
  {
    alteration: 'wide upper back',
    pattern: 'woven-shift',
    steps: [
      'spread: { piece: back, from: { edge: shoulder, at: 1/2 }, to: { edge: hem, at: 1/2 }, by: 16 mm, hinge: none, into: ease }',
    ],
    changes: { 'back.shoulder': 16, 'back.hem': 16 },
  },
  {
    alteration: 'narrow upper back',
    pattern: 'woven-shift',
    steps: [
      'spread: { piece: back, from: { edge: shoulder, at: 1/2 }, to: { edge: hem, at: 1/2 }, by: -12 mm }',
    ],
    changes: { 'back.armhole': 0, 'back.side': 0 },
  },
  {
    alteration: 'high armhole: lowered',
    pattern: 'woven-shift',
    steps: ['recut armhole: { pieces: [front, back], lower: 12 mm }'],
    changes: { 'front.side-upper': -12, 'back.side': -12 },
  },
  {
    alteration: 'low armhole: raised',
    pattern: 'woven-shift',
    steps: ['recut armhole: { pieces: [front, back], lower: -12 mm }'],
    changes: { 'front.side-upper': 12, 'back.side': 12 },
  },
  {
    alteration: 'prominent blades',
    pattern: 'darted-dress',
    steps: ['resize dart: { piece: back, dart: shoulder-blade, to: 18 mm }'],
    changes: { 'back.shoulder': -6, 'back.waist': 0 },
  },
  {
    alteration: 'large arm',
    pattern: 'woven-shift',
    steps: [
      'spread: { piece: sleeve, from: { edge: cap, at: 1/2 }, to: { edge: hem, at: 1/2 }, by: 30 mm, hinge: none }',
    ],
    changes: { 'sleeve.hem': 30, 'sleeve.underarm-front': 0, 'sleeve.underarm-back': 0 },
  },
  {
    alteration: 'large upper arm',
    pattern: 'woven-shift',
    steps: ['spread: { piece: sleeve, from: { edge: cap, at: 1/2 }, to: { edge: hem, at: 1/2 }, by: 30 mm }'],
    changes: { 'sleeve.cap': 30, 'sleeve.hem': 0 },
  },
  {
    alteration: 'large elbow',
    pattern: 'woven-shift',
    steps: [
      'spread: { piece: sleeve, from: { edge: underarm-back, at: 1/2 }, to: { edge: underarm-front, at: 1/2 }, by: 20 mm }',
      'open dart: { piece: sleeve, edge: underarm-back, at: 52 %, intake: 20 mm, depth: 70 mm, name: elbow }',
    ],
    changes: { 'sleeve.underarm-front': 0, 'sleeve.underarm-back': 0 },
  },
  {
    alteration: 'large forearm',
    pattern: 'woven-shift',
    steps: ['spread: { piece: sleeve, from: { edge: hem, at: 1/2 }, to: { edge: cap, at: 1/2 }, by: 24 mm }'],
    changes: { 'sleeve.hem': 24, 'sleeve.cap': 0 },
  },
  {
    alteration: 'thin arm',
    pattern: 'woven-shift',
    steps: ['take in: { seam: underarm, by: 24 mm }'],
    changes: {},
  },
  {
    alteration: 'cap too wide',
    pattern: 'woven-shift',
    steps: [
      'spread: { piece: sleeve, from: { edge: cap, at: 1/2 }, to: { edge: hem, at: 1/2 }, by: -16 mm }',
    ],
    changes: { 'sleeve.underarm-front': 0, 'sleeve.hem': 0 },
  },
  {
    alteration: 'no elbow fullness',
    pattern: 'woven-shift',
    steps: [
      'spread: { piece: sleeve, from: { edge: underarm-back, at: 1/2 }, to: { edge: underarm-front, at: 1/2 }, by: 12 mm, into: ease }',
    ],
    changes: { 'sleeve.underarm-back': 12, 'sleeve.underarm-front': 0 },
  },
  {
    alteration: 'hip size',
    pattern: 'darted-dress',
    steps: ['let out: { seam: skirt side, by: 40 mm, from: 1/3, to: start }'],
    changes: {},
  },
  {
    alteration: 'one hip larger: that side of the opened-out piece',
    pattern: 'darted-dress',
    steps: [
      'unfold: { piece: skirt front }',
      'recut edge: { piece: skirt front, edge: side, out: [0 mm, 12 mm] }',
    ],
    changes: {},
  },
  {
    alteration: 'large derrière',
    pattern: 'darted-dress',
    steps: [
      'spread: { piece: skirt back, from: { edge: centre, at: 180 mm from waist }, to: { edge: side, at: 170 mm from waist }, by: 25 mm }',
      'resize dart: { piece: skirt back, dart: hip, to: 40 mm }',
    ],
    changes: { 'skirt back.centre': 25, 'skirt back.side': 0, 'skirt back.waist': -10 },
  },
  {
    alteration: 'flat derrière',
    pattern: 'darted-dress',
    steps: [
      'resize dart: { piece: skirt back, dart: hip, to: 18 mm }',
      'recut edge: { piece: skirt back, edge: side, in: [12 mm, 0 mm] }',
    ],
    changes: {},
  },
  {
    alteration: 'skirt too short',
    pattern: 'darted-dress',
    steps: ['lengthen: { pieces: [skirt front, skirt back], at: hem, by: 60 mm }'],
    changes: { 'skirt front.side': 60, 'skirt back.centre': 60 },
  },
  {
    alteration: 'skirt too narrow',
    pattern: 'darted-dress',
    steps: [
      'spread: { piece: skirt front, from: { edge: hem, at: [1/4, 3/4] }, to: { edge: waist, at: [10 %, 35 %] }, by: 60 mm, slashes: 2 }',
    ],
    changes: { 'skirt front.hem': 60, 'skirt front.waist': 0 },
  },
  {
    alteration: 'skirt straight at the sides',
    pattern: 'darted-dress',
    steps: [
      'recut edge: { piece: skirt front, edge: side, out: [0 mm, 40 mm] }',
      'recut edge: { piece: skirt back, edge: side, out: [0 mm, 40 mm] }',
    ],
    changes: { 'skirt front.hem': 40, 'skirt back.hem': 40 },
  },
  {
    alteration: 'neckline too large: the gape taken up in the bust dart',
    pattern: 'woven-shift',
    steps: [
      'open dart: { piece: front, edge: neck, at: 30.6 mm from centre-front, intake: 10 mm, to: bust point, name: gape }',
      'join darts: { piece: front, dart: gape, into: bust, pivot: bust point }',
    ],
    changes: { 'front.neck': -10, 'front.shoulder': 0 },
  },
  {
    alteration: 'collar too long: made as long as the stand',
    pattern: 'shirt',
    steps: [
      'spread: { piece: collar, from: { edge: lower, at: 1/2 }, to: { edge: outer, at: 46.64 % }, by: -6 mm, hinge: none }',
    ],
    changes: { 'collar.lower': -6 },
  },
  {
    alteration: 'slacks: crotch depth',
    pattern: 'trousers',
    steps: ['lengthen: { pieces: [front, back], at: hip, by: 15 mm }'],
    changes: {},
  },
  {
    alteration: 'slacks: full thigh',
    pattern: 'trousers',
    steps: ['let out: { seam: inseam, by: 20 mm, from: end, to: 1/2 }'],
    changes: {},
  },
  {
    alteration: 'large bust, by its name: what is rigid keeps its length',
    pattern: 'woven-shift',
    steps: ['adjust: { for: full bust, by: 50 mm }'],
    changes: { 'front.armhole': 0, 'front.shoulder': 0, 'front.neck': 0 },
  },
  {
    alteration: 'small bust, by its name',
    pattern: 'woven-shift',
    steps: ['adjust: { for: small bust, by: 30 mm }'],
    changes: { 'front.armhole': 0, 'front.shoulder': 0, 'front.neck': 0 },
  },
  {
    alteration: 'square shoulders, by their name: the whole armhole rises',
    pattern: 'woven-shift',
    steps: ['adjust: { for: square shoulder, by: 12 mm }'],
    changes: { 'front.armhole': 0, 'back.armhole': 0, 'back.side': 12 },
  },
  {
    alteration: 'large upper arm, by its name: cap, underarms and hem as long as before',
    pattern: 'woven-shift',
    steps: ['adjust: { for: full upper arm, by: 40 mm }'],
    changes: { 'sleeve.cap': 0, 'sleeve.hem': 0 },
  },
  {
    alteration: 'one hip larger and higher, by its name: the side of one half alone',
    pattern: 'darted-dress',
    steps: ['adjust: { for: high left hip, by: 15 mm }'],
    changes: { 'skirt front.side': 15, 'skirt back.side': 0 },
  },
  {
    alteration: 'over-erect or sway back, by its name',
    pattern: 'woven-shift',
    steps: ['adjust: { for: sway back, by: 15 mm }'],
    changes: { 'back.side': 0 },
  },
  {
    alteration: 'no elbow fullness, by its name',
    pattern: 'woven-shift',
    steps: ['bend sleeve: { piece: sleeve, by: 12 mm, into: ease }'],
    changes: { 'sleeve.underarm-back': 12, 'sleeve.underarm-front': 0 },
  },
  {
    alteration: 'large elbow, by its name',
    pattern: 'woven-shift',
    steps: ['bend sleeve: { piece: sleeve, by: 20 mm }'],
    changes: { 'sleeve.underarm-front': 0, 'sleeve.underarm-back': 0 },
  },
  {
    alteration: 'slacks: full thigh, by its name',
    pattern: 'trousers',
    steps: ['adjust: { for: full thigh, by: 30 mm }'],
    changes: { 'front.crotch': 0, 'front.inseam': 0, 'front.outseam': 0, 'back.inseam': 0 },
  },
];

describe('every alteration of the leaflet', () => {
  test.each(lines.map(line => [line.alteration, line] as const))('%s', (_, line) => {
    const file = `${line.pattern}.svg`;
    const { pattern } = readPattern(readFileSync(new URL(`../../demos/patterns/${file}`, import.meta.url)), {
      file,
    });
    const sheet = `pattern: ${file}\nunit: mm\nsteps:\n${line.steps.map(step => `  - ${step}`).join('\n')}`;
    const done = runSteps(stateOf(pattern), readSheet(sheet, { file: 'leaflet' }).steps);
    expect(done).toHaveLength(line.steps.length);
    const after = done.at(-1)!.state.pattern;
    validatePattern(after);
    expect(after).not.toEqual(pattern);
    for (const [name, change] of Object.entries(line.changes)) {
      const stop = name.lastIndexOf('.');
      const [was, is] = [pattern, after].map(p =>
        pathLength(edgePath(pieceNamed(p, name.slice(0, stop)), name.slice(stop + 1))),
      );
      expect(Math.abs(is! - was! - change), name).toBeLessThan(0.1);
    }
  });
});

test('names every line of the leaflet’s list', () => {
  // The list as check-values §7 gives it, each line by a word of its own.
  const wanted = [
    'waist length',
    'broad shoulders',
    'narrow shoulders',
    'square shoulders',
    'sloping shoulders',
    'narrow chest',
    'flat or thin chest',
    'large bust',
    'small bust',
    'low bust',
    'large abdomen, bodice',
    'large abdomen, skirt',
    'full neck',
    'dowager',
    'round shoulders',
    'sway back',
    'wide upper back',
    'narrow upper back',
    'high armhole',
    'low armhole',
    'prominent blades',
    'large arm',
    'large upper arm',
    'large elbow',
    'large forearm',
    'thin arm',
    'cap too wide',
    'no elbow fullness',
    'hip size',
    'one hip larger',
    'large derrière',
    'flat derrière',
    'skirt too short',
    'skirt too narrow',
    'straight at the sides',
    'neckline too large',
    'collar too long',
    'slacks',
  ];
  for (const line of wanted)
    expect(
      lines.some(({ alteration }) => alteration.includes(line)),
      line,
    ).toBe(true);
});
