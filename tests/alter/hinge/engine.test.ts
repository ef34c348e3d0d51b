import { type Cut, cutApart, holdingSection, sectionAt, swing } from '@paperhinge/alter/hinge';
import { at, edgePath, line, type PatternError, type Piece, type Point, pathOf } from '@paperhinge/geometry';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { dartsOf, outlinePath } from '@paperhinge/geometry/pattern';
import { type Affine, distance, identity, rotation, translation } from '@paperhinge/geometry/plane';
import { selfCrossings, signedArea } from '@paperhinge/geometry/regions';
import { describe, expect, test } from 'vitest';
import { pointOfEnd } from '../../../packages/alter/src/hinge/cut.js';
import {
  angleOf,
  areaOf,
  block,
  dart,
  depth,
  edge,
  expectClosed,
  expectUntouched,
  lengthOf,
  pieceOf,
  refusal,
} from './pieces.js';

/** A plain panel on the fold, 240 by 600. */
const panel = (): Piece =>
  pieceOf([
    edge('top', 'seam', line(at(0, 0), at(240, 0))),
    edge('side', 'seam', line(at(240, 0), at(240, 600))),
    edge('hem', 'hem', line(at(240, 600), at(0, 600))),
    edge('centre', 'fold', line(at(0, 600), at(0, 0))),
  ]);
const refusedBy = (run: () => unknown): PatternError => {
  try {
    run();
  } catch (error) {
    return error as PatternError;
  }
  throw new Error('Nothing was refused.');
};
const hub: Point = at(120, 300);
const from = (name: string, along: number): Cut => ({ from: { edge: name, along }, to: { pivot: hub } });

describe('cutting apart', () => {
  test('sections share out the area of the piece', () => {
    const { sections } = cutApart(panel(), [
      from('top', 100),
      from('side', 200),
      from('hem', 90),
      from('centre', 250),
    ]);
    expect(sections).toHaveLength(4);
    const areas = sections.map(s => signedArea(s.border));
    expect(Math.min(...areas)).toBeGreaterThan(0);
    expect(areas.reduce((a, b) => a + b)).toBeCloseTo(areaOf(panel()), 6);
    // Between the cuts to the top and to the side, by the shoelace: (100, 0), (240, 0), (240, 200), (120, 300).
    const corner = Math.abs(polygon([at(100, 0), at(240, 0), at(240, 200), hub])) / 2;
    expect(Math.min(...areas.map(a => Math.abs(a - corner)))).toBeLessThan(1e-9);
  });
  test('names the sections before and after a cut in clockwise order', () => {
    const cutPiece = cutApart(panel(), [
      { from: { edge: 'top', along: 120 }, to: { edge: 'hem', along: 120 } },
    ]);
    const holding = holdingSection(cutPiece);
    expect(sectionAt(cutPiece, 0, 'from', 'before')).toBe(holding);
    expect(sectionAt(cutPiece, 0, 'to', 'after')).toBe(holding);
    expect(sectionAt(cutPiece, 0, 'from', 'after')).not.toBe(holding);
  });
  test('a cut that ends within parts nothing: the piece comes back as it was', () => {
    const cutPiece = cutApart(panel(), [from('hem', 100)]);
    expect(cutPiece.sections).toHaveLength(1);
    const { piece } = swing(cutPiece, [identity], 0);
    expectUntouched(panel(), piece);
    expect(areaOf(piece)).toBeCloseTo(areaOf(panel()), 6);
  });
  test('cuts that close round a place within make a section of it', () => {
    const [p, q, r] = [at(100, 200), at(160, 200), at(100, 280)];
    const cutPiece = cutApart(panel(), [
      { from: { edge: 'top', along: 100 }, to: { pivot: p } },
      { from: { pivot: p }, to: { pivot: q } },
      { from: { pivot: q }, to: { pivot: r } },
      { from: { pivot: r }, to: { pivot: p } },
    ]);
    const areas = cutPiece.sections.map(s => signedArea(s.border)).sort((a, b) => a - b);
    expect(areas).toEqual([expect.closeTo((60 * 80) / 2, 9), expect.closeTo(240 * 600 - (60 * 80) / 2, 9)]);
  });
  test('a curved cut is followed', () => {
    const course = pathOf([at(120, 0), at(60, 200), at(180, 400), at(120, 600)]);
    const cutPiece = cutApart(panel(), [
      { from: { edge: 'top', along: 120 }, to: { edge: 'hem', along: 120 }, course },
    ]);
    expect(cutPiece.sections.reduce((sum, s) => sum + signedArea(s.border), 0)).toBeCloseTo(
      areaOf(panel()),
      6,
    );
    const after = sectionAt(cutPiece, 0, 'from', 'after');
    const motions = cutPiece.sections.map((_, i) => (i === after ? translation(at(30, 0)) : identity));
    const { piece } = swing(cutPiece, motions, 1 - after);
    expect(areaOf(piece)).toBeCloseTo(areaOf(panel()) + 30 * 600, 6);
  });
  test('a cut that hangs on nothing is refused', () => {
    expect(() => cutApart(panel(), [{ from: { pivot: at(60, 100) }, to: { pivot: hub } }])).toThrow(
      refusal('slash-not-attached', /join it/),
    );
    const held: Cut = { from: { edge: 'top', along: 30 }, to: { pivot: at(30, 60) } };
    expect(() => cutApart(panel(), [held, { from: { pivot: at(60, 100) }, to: { pivot: hub } }])).toThrow(
      refusal('slash-not-attached'),
    );
    const chained: Cut = { from: { pivot: at(30, 60) }, to: { pivot: hub } };
    expect(cutApart(panel(), [chained, held]).sections).toHaveLength(1);
  });
  test('a place beyond the edge is its end', () => {
    expect(pointOfEnd(panel(), { edge: 'top', along: 500 })).toEqual(at(240, 0));
  });
  test('a piece that crosses itself as drawn may still be moved', () => {
    const crossed = pieceOf([
      edge('top', 'seam', line(at(0, 0), at(240, 0))),
      edge(
        'side',
        'seam',
        line(at(240, 0), at(240, 200)),
        line(at(240, 200), at(260, 230)),
        line(at(260, 230), at(260, 220)),
        line(at(260, 220), at(240, 240)),
        line(at(240, 240), at(240, 600)),
      ),
      edge('hem', 'hem', line(at(240, 600), at(0, 600))),
      edge('centre', 'fold', line(at(0, 600), at(0, 0))),
    ]);
    expect(selfCrossings(outlinePath(crossed.outline))).toHaveLength(1);
    const cut = cutApart(crossed, [{ from: { edge: 'top', along: 100 }, to: { edge: 'hem', along: 140 } }]);
    const motions = cut.sections.map((_, i) =>
      i === cut.beside[0]!.left ? translation(at(20, 0)) : identity,
    );
    expect(lengthOf(swing(cut, motions, cut.beside[0]!.right).piece, 'top')).toBeCloseTo(260, 9);
  });
  test('cuts that cross are refused, cuts that meet at a pivot are not', () => {
    const across: Cut = { from: { edge: 'side', along: 100 }, to: { edge: 'centre', along: 100 } };
    const down: Cut = { from: { edge: 'top', along: 100 }, to: { edge: 'hem', along: 100 } };
    expect(() => cutApart(panel(), [across, down])).toThrow(refusal('slashes-cross'));
  });
  test.each([0.00001, 0.001, 0.049])('cuts that come as near as %s mm to one another are refused', gap => {
    const down = (x: number): Cut => ({
      from: { edge: 'top', along: x },
      to: { edge: 'hem', along: 240 - x },
    });
    const near = refusal('slashes-too-near', /meet in one point, or place them at least 1 mm/);
    expect(() => cutApart(panel(), [down(100), down(100 + gap)])).toThrow(near);
    const beside: Cut = { from: { edge: 'side', along: 100 }, to: { pivot: at(100 + gap, 300) } };
    expect(() => cutApart(panel(), [down(100), beside])).toThrow(near);
    const hub: Cut = { from: { edge: 'top', along: 60 }, to: { pivot: at(60, 300) } };
    const below: Cut = { from: { edge: 'hem', along: 180 }, to: { pivot: at(60, 300 + gap) } };
    expect(() => cutApart(panel(), [hub, below])).toThrow(near);
  });
  // Both ends fall on one place of the outline, so there is no paper between: 1e-8 to 1e-6 mm lost both openings once.
  test.each([0, 1e-10, 1e-8, 1e-7, 9e-7])('cuts %s mm apart at one end are one cut, made twice', gap => {
    const cut = (x: number): Cut => ({ from: { edge: 'top', along: x }, to: { edge: 'hem', along: 140 } });
    const again = refusal('slash-twice', /by what both were to open/);
    expect(() => cutApart(panel(), [cut(100), cut(100 + gap)])).toThrow(again);
    const { from, to } = cut(100 - gap);
    expect(() => cutApart(panel(), [cut(100), { from: to, to: from }])).toThrow(again);
  });
  test('1 mm apart, or met in one point, as the remedy says, they are made', () => {
    const down = (x: number): Cut => ({
      from: { edge: 'top', along: x },
      to: { edge: 'hem', along: 240 - x },
    });
    expect(cutApart(panel(), [down(100), down(101)]).sections).toHaveLength(3);
    const hub: Cut = { from: { edge: 'top', along: 60 }, to: { pivot: at(60, 300) } };
    const below: Cut = { from: { edge: 'hem', along: 180 }, to: { pivot: at(60, 300) } };
    expect(cutApart(panel(), [hub, below]).sections).toHaveLength(2);
  });
  test('cuts that lie on one another for a while are refused', () => {
    const down: Cut = { from: { edge: 'top', along: 100 }, to: { edge: 'hem', along: 140 } };
    const on: Cut = { from: { edge: 'top', along: 100 }, to: { pivot: at(100, 300) } };
    expect(() => cutApart(panel(), [down, on])).toThrow(refusal('slashes-cross'));
  });
  test('a cut that ends on another, short of its end, is refused', () => {
    const down: Cut = { from: { edge: 'top', along: 100 }, to: { edge: 'hem', along: 140 } };
    const onto: Cut = { from: { edge: 'side', along: 300 }, to: { pivot: at(100, 300) } };
    expect(() => cutApart(panel(), [down, onto])).toThrow(refusal('slashes-cross'));
    expect(() => cutApart(panel(), [onto, down])).toThrow(refusal('slashes-cross'));
  });
  test('a cut across a dart is refused, and both are named', () => {
    // From the side above the dart to the side below it, behind which the dart lies.
    const behind: Cut = {
      from: { edge: 'side-upper', along: 150 },
      to: { edge: 'side-lower', along: 40 },
      course: pathOf(line(at(100 + depth, 150), at(160, 200)), line(at(160, 200), at(100 + depth, 255))),
    };
    expect(() => cutApart(block(), [behind])).toThrow(refusal('slash-crosses-dart'));
    const through: Cut = { from: { dart: 'bust' }, to: { edge: 'side-lower', along: 0 } };
    const refused = refusedBy(() => cutApart(block(), [through]));
    expect(refused.facts).toMatchObject({
      slash: {
        facts: {
          from: { code: 'slash-at-dart', facts: { dart: { dart: 'bust' } } },
          to: { code: 'slash-at-edge', facts: { edge: { edge: 'side-lower' }, alongMm: 0 } },
        },
      },
    });
  });
  test('a cut whose two ends are one place is refused, with the edge it lies on', () => {
    const none: Cut = { from: { edge: 'top', along: 100 }, to: { pivot: at(100, 0) } };
    expect(() => cutApart(panel(), [none])).toThrow(refusal('slash-too-short'));
    expect(refusedBy(() => cutApart(panel(), [none])).where).toEqual({ piece: 'block', edge: 'top' });
    const within: Cut = { from: { pivot: hub }, to: { pivot: hub } };
    expect(refusedBy(() => cutApart(panel(), [within])).where).toStrictEqual({ piece: 'block' });
  });
  test('a pivot outside the piece, or on its outline, is refused', () => {
    const to = (pivot: Point): Cut => ({ from: { edge: 'top', along: 100 }, to: { pivot } });
    expect(() => cutApart(panel(), [to(at(300, 300))])).toThrow(refusal('slash-leaves-piece'));
    expect(() => cutApart(panel(), [to(at(240, 300))])).toThrow(refusal('slash-leaves-piece'));
  });
});

describe('moving sections', () => {
  test('round a hub, the wedges add to the area and every edge opens by its own chord', () => {
    const cutPiece = cutApart(panel(), [from('top', 120), from('side', 300), from('hem', 120)]);
    const holding = holdingSection(cutPiece);
    // The right half is in two: the upper turns back by 0.1, the lower by −0.2, about the hub.
    const upper = sectionAt(cutPiece, 0, 'from', 'after');
    const lower = sectionAt(cutPiece, 1, 'from', 'after');
    const turned: Record<number, Affine> = { [upper]: rotation(0.1, hub), [lower]: rotation(0.3, hub) };
    const { piece, openings } = swing(
      cutPiece,
      cutPiece.sections.map((_, i) => turned[i] ?? identity),
      holding,
    );
    const chord = (radius: number, turn: number) => 2 * radius * Math.sin(turn / 2);
    expect(lengthOf(piece, 'top')).toBeCloseTo(240 + chord(300, 0.1), 9);
    expect(lengthOf(piece, 'side')).toBeCloseTo(600 + chord(120, 0.2), 9);
    // Below, the lower section turns on to the part that stays: an overlap of 0.3, cut on its middle line.
    expect(lengthOf(piece, 'hem')).toBeCloseTo(240 - 2 * 300 * Math.tan(0.15), 9);
    expect(openings.map(o => o.fate)).toEqual(['bridged', 'bridged', 'overlapped']);
    const wedges = 0.5 * (300 ** 2 * Math.sin(0.1) + 120 ** 2 * Math.sin(0.2)) - 300 ** 2 * Math.tan(0.15);
    expect(areaOf(piece)).toBeCloseTo(areaOf(panel()) + wedges, 6);
    expectClosed(piece);
  });
  test('an opening at a corner belongs to the edge it was cut in', () => {
    const cut: Cut = { from: { edge: 'hem', along: 0 }, to: { edge: 'top', along: 120 } };
    const cutPiece = cutApart(panel(), [cut]);
    const holding = holdingSection(cutPiece);
    const motions = cutPiece.sections.map((_, i) => (i === holding ? identity : rotation(-0.1, at(120, 0))));
    const { piece } = swing(cutPiece, motions, holding);
    expectUntouched(panel(), piece, 'hem');
    expect(lengthOf(piece, 'hem')).toBeCloseTo(240 + 2 * Math.hypot(120, 600) * Math.sin(0.05), 9);
  });
  test('old places are found again: the correspondence follows every run of every edge', () => {
    const cutPiece = cutApart(panel(), [
      { from: { edge: 'hem', along: 100 }, to: { edge: 'top', along: 100 } },
    ]);
    const holding = holdingSection(cutPiece);
    const motions = cutPiece.sections.map((_, i) => (i === holding ? identity : translation(at(50, 0))));
    const { places } = swing(cutPiece, motions, holding);
    const hem = places.filter(p => p.edge === 'hem').map(({ from, to, newFrom }) => [from, to, newFrom]);
    expect(hem).toEqual([
      [0, 100, 0],
      [100, 240, 150],
    ]);
  });
  test('tearing a dart’s legs apart at its point is refused', () => {
    const cutPiece = cutApart(block(), [{ from: { edge: 'hem', along: 100 }, to: { dart: 'bust' } }]);
    const motions = cutPiece.sections.map((_, i) => (i === 0 ? translation(at(10, 0)) : identity));
    expect(() => swing(cutPiece, motions, 1)).toThrow(refusal('dart-torn', /about the point/));
  });
  test('turning a dart past closed is refused', () => {
    const cutPiece = cutApart(block(), [{ from: { edge: 'hem', along: 100 }, to: { dart: 'bust' } }]);
    const holding = holdingSection(cutPiece);
    const motions = cutPiece.sections.map((_, i) =>
      i === holding ? identity : rotation(-0.4, at(100, 200)),
    );
    expect(() => swing(cutPiece, motions, holding)).toThrow(refusal('dart-overclosed'));
  });
});

// Trade-notes §9, common practice, no source: armhole to bust point leaving a hinge, dart to bust point, bust point
// to hem, centre to that slash. The side swings about the armhole hinge until the bust point has moved g.
describe('a full bust adjustment', () => {
  const g = 20;
  const bust = at(120, 250);
  const level = at(120, 320);
  const front = (): Piece =>
    pieceOf([
      edge('neck', 'seam', line(at(0, 80), at(80, 0))),
      edge('shoulder', 'seam', line(at(80, 0), at(190, 40))),
      edge('armhole', 'seam', line(at(190, 40), at(180, 140)), line(at(180, 140), at(260, 200))),
      edge('side-upper', 'seam', line(at(260, 200), at(260, 240))),
      dart('bust', at(260, 240), bust, at(260, 260)),
      edge('side-lower', 'seam', line(at(260, 260), at(260, 600))),
      edge('hem', 'hem', line(at(260, 600), at(0, 600))),
      edge('centre', 'fold', line(at(0, 600), at(0, 80))),
    ]);
  const hingeAlong = Math.hypot(10, 100) + 40;
  const hinge = at(180 + 40 * 0.8, 140 + 40 * 0.6);
  const cuts: readonly Cut[] = [
    { from: { dart: 'bust' }, to: { edge: 'armhole', along: hingeAlong } },
    { from: { dart: 'bust' }, to: { pivot: level } },
    { from: { pivot: level }, to: { edge: 'hem', along: 140 } },
    { from: { edge: 'centre', along: 280 }, to: { pivot: level } },
  ];
  /** Turns about the armhole hinge until the bust point lies g further from the centre. */
  const radius = distance(hinge, bust);
  const start = Math.atan2(bust.y - hinge.y, bust.x - hinge.x);
  const end = 2 * Math.PI - Math.acos((bust.x + g - hinge.x) / radius);
  const swung = 2 * Math.PI - end - start;
  const drop = radius * Math.sin(start + swung) - (bust.y - hinge.y);

  const adjusted = () => {
    const cutPiece = cutApart(front(), cuts);
    const holding = holdingSection(cutPiece);
    const side = sectionAt(cutPiece, 0, 'to', 'after');
    const below = sectionAt(cutPiece, 2, 'to', 'before');
    const middle = sectionAt(cutPiece, 2, 'to', 'after');
    const motions = cutPiece.sections.map((_, i) => {
      if (i === side) return rotation(swung, hinge);
      if (i === below) return translation(at(g, drop));
      return i === middle ? translation(at(0, drop)) : identity;
    });
    return { sections: cutPiece.sections.length, ...swing(cutPiece, motions, holding) };
  };

  test('cuts the front into the four parts of the trade', () => {
    expect(adjusted().sections).toBe(4);
  });
  test('moves the dart’s point by g along and by its drop down, and opens it by the swing', () => {
    const [moved] = dartsOf(adjusted().piece);
    expect(moved!.apex.x).toBeCloseTo(bust.x + g, 9);
    expect(moved!.apex.y).toBeCloseTo(bust.y + drop, 9);
    expect(angleOf(adjusted().piece, 'bust')).toBeCloseTo(
      angleOf(front(), 'bust') + (Math.abs(swung) * 180) / Math.PI,
      9,
    );
  });
  test('widens the hem by g, lengthens the centre by the drop, leaves every other edge as long as it was', () => {
    const { piece, openings } = adjusted();
    expect(lengthOf(piece, 'hem')).toBeCloseTo(260 + g, 9);
    expect(lengthOf(piece, 'centre')).toBeCloseTo(520 + drop, 9);
    expectUntouched(front(), piece, 'hem', 'centre');
    expect(openings.map(o => [o.edge, o.fate])).toEqual([
      ['armhole', 'welded'],
      ['hem', 'bridged'],
      ['centre', 'bridged'],
    ]);
    expect(pathStart(edgePath(piece, 'centre')).x).toBeCloseTo(0, 9);
    expect(pathEnd(edgePath(piece, 'side-lower')).x).toBeCloseTo(260 + g, 9);
    expectClosed(piece);
  });
  test('adds the opened paper to the area: triangle at the armhole, strip below, strip across', () => {
    // Outline areas: all that opened inside the piece, as a polygon round the parts that moved.
    const moved = at(bust.x + g, bust.y + drop);
    const triangle =
      0.5 * Math.abs((bust.x - hinge.x) * (moved.y - hinge.y) - (bust.y - hinge.y) * (moved.x - hinge.x));
    const across = drop * level.x;
    const down = g * (600 + drop - moved.y);
    // Between bust point and level, beside the fold: the strip from the old slash to the moved one.
    const beside = 0.5 * Math.abs(polygon([bust, moved, at(level.x + g, moved.y), at(level.x, moved.y)]));
    expect(areaOf(adjusted().piece) - areaOf(front())).toBeCloseTo(triangle + across + down + beside, 6);
  });
});

const polygon = (points: readonly Point[]): number =>
  points.reduce((sum, p, i) => {
    const q = points[(i + 1) % points.length]!;
    return sum + p.x * q.y - p.y * q.x;
  }, 0);
