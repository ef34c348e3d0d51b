import { follow } from '@paperhinge/alter';
import { spread } from '@paperhinge/alter/fullness';
import { cutApart } from '@paperhinge/alter/hinge';
import { unfold } from '@paperhinge/alter/seams';
import { at, edgePath, line, type Piece, type Pleat, pathLength, pathOf } from '@paperhinge/geometry';
import { pathEnd, pathStart, pointAlong } from '@paperhinge/geometry/paths';
import { pleatsOf } from '@paperhinge/geometry/pattern';
import { distance } from '@paperhinge/geometry/plane';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { edge, expectClosed, lengthOf, only, patternOf, pieceOf, refusal } from './pieces.js';

/** A skirt panel on the fold, 300 x 600, a knife pleat of 40 mm in its waist from 120 to 160 mm. */
function panel(stitched = 80): Piece {
  const pleat: Pleat = {
    type: 'pleat',
    name: 'front pleat',
    kind: 'knife',
    mouth: pathOf(line(at(120, 0), at(160, 0))),
    towards: 'start',
    stitched,
  };
  return pieceOf(
    [
      edge('waist', 'seam', line(at(0, 0), at(120, 0))),
      pleat,
      edge('waist', 'seam', line(at(160, 0), at(300, 0))),
      edge('side', 'seam', line(at(300, 0), at(300, 600))),
      edge('hem', 'hem', line(at(300, 600), at(0, 600))),
      edge('centre', 'fold', line(at(0, 600), at(0, 0))),
    ],
    {
      notches: [
        { edge: 'waist', at: 60, style: 'single' },
        { edge: 'waist', at: 200, style: 'double' },
      ],
    },
  );
}
const waistTo = (piece: Piece, place: number, hem: number, by = 40) =>
  spread(patternOf(piece), {
    piece: 'block',
    from: { edge: 'hem', at: { mm: hem, from: 'centre' } },
    to: { edge: 'waist', at: { mm: place } },
    hinge: 'to',
    by,
  });

describe('a pleat beside a slash', () => {
  test('moves with its cloth, as wide as it was, and so do the notches beyond it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 255, noNaN: true }),
        fc.double({ min: 20, max: 80, noNaN: true }),
        (place, by) => {
          // The hem straight below, so that the slash runs clear of the pleat.
          const x = place <= 120 ? place : place + 40;
          const before = panel();
          const done = waistTo(before, place, x, by);
          const after = only(done.pattern);
          const [pleat] = pleatsOf(after);
          expect(pathLength(pleat!.mouth)).toBeCloseTo(40, 9);
          expect({ ...pleat, mouth: 0 }).toEqual({ ...pleatsOf(before)[0], mouth: 0 });
          expect(lengthOf(after, 'waist')).toBeCloseTo(260, 9); // the mouth takes up the rest
          expect(after.notches.map(n => n.at)).toEqual([expect.closeTo(60, 9), expect.closeTo(200, 9)]);
          expectClosed(after);
          const spots = (piece: Piece) => [
            pathStart(pleatsOf(piece)[0]!.mouth),
            pathEnd(pleatsOf(piece)[0]!.mouth),
          ];
          if (place > 120) expect(spots(after)).toEqual(spots(before));
          expect(distance(spots(after)[0]!, spots(after)[1]!)).toBeCloseTo(40, 9);
        },
      ),
      { numRuns: 40 },
    );
  });
  test('keeps its name through the correspondence', () => {
    const pleat = { piece: 'block', pleat: 'front pleat' };
    expect(follow(waistTo(panel(), 60, 60).became!, pleat)).toEqual([pleat]);
  });
  test('a slash to either end of its mouth is one to the first', () => {
    const after = only(waistTo(panel(0), 120, 120).pattern);
    const [pleat] = pleatsOf(after);
    expect(distance(pathStart(pleat!.mouth), at(120, 0))).toBeLessThan(1e-9);
  });
});

describe('a slash through a pleat', () => {
  test('across its stitched folds is refused, and clear of the pleat it is done', () => {
    // From 110 mm on the waist to the hem below 300: across both folds at 120 and 160, which are stitched 80 mm down.
    expect(() => waistTo(panel(), 119, 290)).toThrow(refusal('slash-crosses-pleat', /clear of the pleat/));
    expect(only(waistTo(panel(), 60, 60).pattern).outline.parts).toHaveLength(6);
  });
  test('below where it is stitched it may pass', () => {
    expect(() => waistTo(panel(0), 119, 290)).not.toThrow();
  });
  test('that ends within its mouth is refused', () => {
    const cut = { from: { edge: 'hem', along: 160 }, to: { pivot: at(140, 0) } };
    expect(() => cutApart(panel(), [cut])).toThrow(refusal('slash-crosses-pleat'));
    expect(() => cutApart(panel(0), [cut])).toThrow(refusal('slash-crosses-pleat'));
  });
});

test('a pleat unfolded lies on both halves, laid the other way on the other', () => {
  const done = unfold(patternOf(panel()), { piece: 'block' });
  const after = only(done.pattern);
  expect(pleatsOf(after).map(p => [p.name, p.towards, pathLength(p.mouth)])).toEqual([
    ['front pleat', 'start', 40],
    ['other front pleat', 'end', 40],
  ]);
  // The waist runs across the fold, each notch with its mirror image.
  const spots = after.notches.map(n => pointAlong(edgePath(after, n.edge), n.at).x).sort((a, b) => a - b);
  expect(spots).toHaveLength(4);
});
