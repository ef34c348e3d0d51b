import type { OneSlash } from '@paperhinge/alter/fullness';
import { slash, spread } from '@paperhinge/alter/fullness';
import {
  at,
  type Dart,
  edgePath,
  line,
  type Piece,
  pathLength,
  validatePattern,
  walkSeam,
} from '@paperhinge/geometry';
import { pathEnd } from '@paperhinge/geometry/paths';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf, toldDid } from '../../support/told.js';
import {
  anyBodice,
  areaOf,
  edge,
  expectClosed,
  expectUntouched,
  lengthOf,
  only,
  patternOf,
  pieceOf,
  refusal,
} from '../hinge/pieces.js';

const [width, height] = [240, 600];
/** A plain panel on the fold, a mark 200 above the hem, 120 from the fold. */
const panel = (): Piece =>
  pieceOf(
    [
      edge('top', 'seam', line(at(0, 0), at(width, 0))),
      edge('side', 'seam', line(at(width, 0), at(width, height))),
      edge('hem', 'hem', line(at(width, height), at(0, height))),
      edge('centre', 'fold', line(at(0, height), at(0, 0))),
    ],
    { marks: [{ kind: 'point', name: 'hinge', at: at(120, 400) }] },
  );
/** Straight down, at mm from the side. */
const down = (mm: number, by: number, more: Partial<OneSlash> = {}): OneSlash => ({
  from: { edge: 'hem', at: { mm } },
  to: { edge: 'top', at: { mm: width - mm } },
  by,
  ...more,
});
const open = (slashes: readonly OneSlash[], piece = panel()) =>
  slash(patternOf(piece), { piece: 'block', slashes });

describe('slashes of unlike amounts', () => {
  // Each wedge has the sides 600, 600 and its own chord.
  test('open by their own chords, each adding its own wedge', () => {
    const done = open([down(60, 20), down(120, 50), down(180, 5)]);
    const after = only(done.pattern);
    expect(lengthOf(after, 'hem')).toBeCloseTo(width + 75, 9);
    const wedge = (by: number) => (by / 2) * Math.sqrt(height ** 2 - (by / 2) ** 2);
    expect(areaOf(after) - areaOf(panel())).toBeCloseTo(wedge(20) + wedge(50) + wedge(5), 6);
    expectUntouched(panel(), after, 'hem');
    expectClosed(after);
    expect(toldDid(open([down(60, 20), down(120, 30, { otherEnd: 10 })]))).toBe(
      'The block was slashed at 2 places: 60 mm along the hem opened by 20 mm (1.9°), 180 mm along the top hinged there; 120 mm along the hem opened by 30 mm (1.9°), 120 mm along the top opened by 10 mm there.',
    );
  });
  test('all alike are a spread', () => {
    const all = open([down(60, 20), down(120, 20), down(180, 20)]);
    const spreadOut = spread(patternOf(panel()), {
      piece: 'block',
      from: { edge: 'hem' },
      to: { edge: 'top' },
      by: 60,
      slashes: 3,
    });
    const corner = (piece: Piece) => pathEnd(edgePath(piece, 'side'));
    expect(corner(only(all.pattern)).x).toBeCloseTo(corner(only(spreadOut.pattern)).x, 9);
    expect(corner(only(all.pattern)).y).toBeCloseTo(corner(only(spreadOut.pattern)).y, 9);
  });
  // Openings of 30 and 10 over 600: the turn is 2 asin(20 / 1200), about a point 300 beyond the top.
  test('taper where both ends open, and go in parallel where they open alike', () => {
    const after = only(open([down(120, 30, { otherEnd: 10 })]).pattern);
    expect(lengthOf(after, 'hem')).toBeCloseTo(width + 30, 9);
    expect(lengthOf(after, 'top')).toBeCloseTo(width + 10, 9);
    const parallel = only(open([down(120, 25, { otherEnd: 25 })]).pattern);
    expect(areaOf(parallel) - areaOf(panel())).toBeCloseTo(25 * height, 6);
  });
});

describe('a slash that hinges within the piece', () => {
  // The mark lies 200 above the hem and 400 under the top: opened by 20 below, it overlaps by 40 above.
  const within = down(120, 20, { pivot: 'hinge' });
  test('overlaps on the far side as the distances from the mark are', () => {
    const turn = 2 * Math.asin(20 / 2 / 200);
    const done = open([within]);
    const after = only(done.pattern);
    expect(lengthOf(after, 'hem')).toBeCloseTo(width + 20, 9);
    // A straight top square to the slash loses 400 tan(θ/2) on either side of where its two halves cross.
    expect(lengthOf(after, 'top')).toBeCloseTo(width - 2 * 400 * Math.tan(turn / 2), 6);
    const won = 0.5 * 200 ** 2 * Math.sin(turn),
      lost = 400 ** 2 * Math.tan(turn / 2);
    expect(areaOf(after) - areaOf(panel())).toBeCloseTo(won - lost, 5);
    expectUntouched(panel(), after, 'hem', 'top');
    expect(toldDid(done)).toBe(
      'The block was slashed at one place: 120 mm along the hem opened by 20 mm (5.7°), hinged at the hinge mark, 120 mm along the top overlapped by 40 mm there.',
    );
  });
  test('may bend at the mark', () => {
    const bent = {
      from: { edge: 'hem', at: { mm: 60 } },
      to: { edge: 'top', at: { mm: 150 } },
      by: 15,
      pivot: 'hinge',
    };
    const after = only(open([bent]).pattern);
    expect(lengthOf(after, 'hem')).toBeCloseTo(width + 15, 9);
    expectUntouched(panel(), after, 'hem', 'top');
  });
});

test('on any bodice keeps every edge but the one that opens, which grows by what is asked', () => {
  const amount = fc.double({ min: 4, max: 30, noNaN: true });
  fc.assert(
    fc.property(anyBodice, amount, amount, (piece, a, b) => {
      const cut = (hem: number, neck: number, by: number): OneSlash => ({
        from: { edge: 'hem', at: { share: hem } },
        to: { edge: 'neck', at: { share: neck } },
        by,
      });
      const { pattern } = open([cut(0.82, 0.6, a), cut(0.92, 0.25, b)], piece);
      validatePattern(pattern);
      expectUntouched(piece, only(pattern), 'hem', 'neck');
      expect(lengthOf(only(pattern), 'neck')).toBeCloseTo(lengthOf(piece, 'neck'), 6);
      expect(lengthOf(only(pattern), 'hem')).toBeCloseTo(lengthOf(piece, 'hem') + a + b, 6);
    }),
    { numRuns: 60 },
  );
});

describe('what is refused, each with its remedy', () => {
  test('an amount at the other end beside a mark to hinge at; either alone will do', () => {
    expect(() => open([down(120, 20, { pivot: 'hinge', otherEnd: 5 })])).toThrow(
      refusal('slash-pivot-and-end', /other end/),
    );
    expect(() => open([down(120, 20, { otherEnd: 5 })])).not.toThrow();
  });
  test('slashes that cross, and one that opens wider than it is long', () => {
    const across: OneSlash = { ...down(60, 10), to: { edge: 'top', at: { mm: 30 } } };
    expect(() => open([across, down(120, 10)])).toThrow(refusal('slashes-cross'));
    expect(() => open([down(120, 1300)])).toThrow(refusal('spread-too-wide', /less/));
  });
  test('a mark and an edge that are not there', () => {
    expect(() => open([down(120, 10, { pivot: 'knee' })])).toThrow(refusal('unknown-mark', /hinge/));
    expect(() => open([{ ...down(120, 10), to: { edge: 'waist' } }])).toThrow(refusal('unknown-edge'));
  });
});

describe('what opens, taken up when it is sewn', () => {
  const folded = (mm: number, by: number, into: OneSlash['into'], more: Partial<OneSlash> = {}) =>
    down(mm, by, { ...(into === undefined ? {} : { into }), ...more });

  // Closed form: the hem is as long as it was but for what is gathered; each fold has the chord of its slash as mouth.
  test('by folds and a dart, each in its own way, the edge stays as long as it was', () => {
    const { pattern } = open([
      folded(60, 20, 'knife pleats', { name: 'left', stitched: 40 }),
      folded(120, 30, 'dart', { name: 'middle', depth: 90 }),
      folded(180, 12, 'tucks', { name: 'right' }),
    ]);
    validatePattern(pattern);
    const after = only(pattern);
    expect(lengthOf(after, 'hem')).toBeCloseTo(width, 9);
    const mouths = after.outline.parts.flatMap(part =>
      part.type === 'pleat' ? [[part.name, pathLength(part.mouth)]] : [],
    );
    expect(mouths).toEqual([
      ['left', expect.closeTo(20, 9)],
      ['right', expect.closeTo(12, 9)],
    ]);
    const dart = after.outline.parts.find(part => part.type === 'dart')!;
    const [a, b] = (dart as Dart).legs.map(leg => pathLength(leg));
    expect(a).toBeCloseTo(b!, 9);
    // Legs of an isosceles triangle: 90 deep, 30 wide.
    expect(a).toBeCloseTo(Math.hypot(90, 15), 9);
  });

  test('by gathers or ease, the seam of the edge wants as much more', () => {
    const shift = shiftPattern();
    const before = walkSeam(shift, shift.seams.find(s => s.name === 'armhole')!);
    const { pattern } = slash(shift, {
      piece: 'sleeve',
      slashes: [0.4, 0.5, 0.6].map(share => ({
        from: { edge: 'cap', at: { share } },
        to: { edge: 'hem', at: { share: 1 - share } },
        by: 25,
        into: 'gathers' as const,
      })),
    });
    const after = walkSeam(pattern, pattern.seams.find(s => s.name === 'armhole')!);
    expect(after).toMatchObject({ matches: true, takenUp: 'gathered' });
    expect(after.differenceMm - before.differenceMm).toBeCloseTo(75, 6);
  });

  test('a fold needs a name of its own and something to fold, and the remedies mend it', () => {
    const named = refusalOf(() => open([folded(60, 20, 'tucks')]));
    expect(named).toMatchObject({ code: 'field-missing', remedy: expect.stringContaining('name') });
    const overlapped = refusalOf(() => open([folded(60, -20, 'tucks', { name: 'tuck' })]));
    expect(overlapped.code).toBe('fold-needs-opening');
    const twice = refusalOf(() =>
      open([folded(60, 20, 'tucks', { name: 'hem' }), folded(120, 20, 'tucks', { name: 'hem' })]),
    );
    expect(twice).toMatchObject({ code: 'pleat-name-taken', remedy: 'Give the folds another name.' });
    validatePattern(open([folded(60, 20, 'tucks', { name: 'tuck' })]).pattern);
  });
});
