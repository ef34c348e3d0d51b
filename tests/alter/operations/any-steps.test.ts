import type { Alteration } from '@paperhinge/alter';
import { closeDart } from '@paperhinge/alter/darts';
import { letOut, recutNeckline, setAllowance, takeIn, trueEdges } from '@paperhinge/alter/edges';
import { lengthen, shorten } from '@paperhinge/alter/length';
import { draftBand, draftBinding, draftFacing, draftStay, draftStrip } from '@paperhinge/alter/made';
import { unfold } from '@paperhinge/alter/seams';
import { type Pattern, PatternError, validatePattern, walkSeams } from '@paperhinge/geometry';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { told, toldDid, toldFinding } from '../../support/told.js';

const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const share = mm(0, 1);
const pieces = ['front', 'back', 'sleeve'] as const;
const edges = [
  'front.neck',
  'front.inset',
  'front.armhole',
  'front.side-lower',
  'front.hem',
  'back.neck',
  'back.armhole',
  'back.side',
  'back.hem',
  'sleeve.cap',
  'sleeve.hem',
].map(text => ({ piece: text.split('.')[0]!, edge: text.split('.')[1]! }));
const someEdges = fc.uniqueArray(fc.constantFrom(...edges), { minLength: 1, maxLength: 3 });
const position = fc.oneof(fc.record({ share }), fc.record({ mm: mm(0, 900) }));

/** A step with what it does in words, for the report of a failure. */
interface Step {
  readonly say: string;
  readonly run: (pattern: Pattern) => Alteration;
}
const made =
  <P>(name: string, run: (pattern: Pattern, parameters: P) => Alteration) =>
  (parameters: P): Step => ({
    say: `${name} ${JSON.stringify(parameters)}`,
    run: pattern => run(pattern, parameters),
  });
const step: fc.Arbitrary<Step> = fc.oneof(
  fc
    .record({
      pieces: fc.uniqueArray(fc.constantFrom(...pieces), { minLength: 1 }),
      at: fc.constantFrom('hem', 'waist', 'hip', 'bust', 'upper arm'),
      by: mm(0, 700),
    })
    .chain(p => fc.constantFrom(made('shorten', shorten)(p), made('lengthen', lengthen)(p))),
  fc
    .record(
      {
        seam: fc.constantFrom('side', 'shoulder', 'underarm', 'armhole', 'neck'),
        by: fc.oneof(mm(0, 400), fc.tuple(mm(0, 200), mm(0, 200))),
        from: position,
        to: position,
        between: fc.tuple(position, position),
      },
      { requiredKeys: ['seam', 'by'] },
    )
    .chain(p => fc.constantFrom(made('take in', takeIn)(p), made('let out', letOut)(p))),
  fc
    .record({
      piece: fc.constantFrom(...pieces),
      shape: fc.constantFrom('inset V', 'V', 'round', 'square'),
      depth: mm(-20, 400),
      halfWidth: mm(5, 250),
    })
    .map(made('recut neckline', recutNeckline)),
  fc.record({ edges: someEdges, within: mm(0.2, 20) }).map(made('true', trueEdges)),
  fc.record({ edges: someEdges, to: mm(0, 60) }).map(made('set allowance', setAllowance)),
  fc.constant({ piece: 'front', dart: 'bust', into: 'hem', share: 1 }).map(made('close dart', closeDart)),
  fc.record({ piece: fc.constantFrom('front', 'back') }).map(made('unfold', unfold)),
  fc
    .record(
      {
        name: fc.constant('neckband'),
        along: someEdges,
        ratio: mm(0.3, 2),
        width: mm(10, 150),
        join: mm(0, 20),
        stretchedPart: fc.constantFrom('whole', 'sewn'),
        gap: fc.constant({ piece: 'front', edge: 'inset' }),
      },
      { requiredKeys: ['name', 'along', 'ratio', 'width', 'join', 'stretchedPart'] },
    )
    .map(made('draft band', draftBand)),
  fc
    .record({
      name: fc.constant('binding'),
      along: someEdges,
      width: mm(2, 150),
      join: mm(0, 20),
    })
    .chain(p => fc.constantFrom(made('strip', draftStrip)(p), made('binding', draftBinding)(p))),
  fc
    .record({
      name: fc.constant('facing'),
      along: someEdges,
      width: mm(2, 150),
      join: fc.constant(0),
    })
    .chain(p => fc.constantFrom(made('facing', draftFacing)(p), made('stay', draftStay)(p))),
);

test('any steps leave a sound pattern, or are refused with a remedy and leave it as it was', () => {
  fc.assert(
    fc.property(fc.array(step, { minLength: 1, maxLength: 4 }), steps => {
      let pattern = shiftPattern();
      for (const one of steps) {
        try {
          const done = one.run(pattern);
          validatePattern(done.pattern);
          for (const walk of walkSeams(done.pattern)) expect(Number.isFinite(walk.differenceMm)).toBe(true);
          expect(toldDid(done)).not.toMatch(/NaN|undefined|Infinity/);
          for (const finding of done.findings)
            expect(toldFinding(finding).message).not.toMatch(/NaN|undefined|Infinity/);
          pattern = done.pattern;
        } catch (error) {
          if (!(error instanceof PatternError)) throw error;
          // What validation refuses, the step itself should have.
          expect(validated).not.toContain(error.code);
          expect(told(error).remedy).not.toBe('');
        }
      }
    }),
    { numRuns: 60 },
  );
});

const validated = [
  'open-outline',
  'self-crossing',
  'outline-anticlockwise',
  'outline-without-area',
  'duplicate-edge',
  'edge-in-parts',
  'edge-without-length',
  'notch-off-edge',
  'empty-seam',
];
