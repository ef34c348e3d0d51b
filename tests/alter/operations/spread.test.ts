import type { Spread } from '@paperhinge/alter/fullness';
import { spread } from '@paperhinge/alter/fullness';
import { at, edgePath, line, type Piece, pathOf } from '@paperhinge/geometry';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { describe, expect, test } from 'vitest';
import { toldDid } from '../../support/told.js';
import {
  areaOf,
  begunAt,
  block,
  dart,
  edge,
  expectClosed,
  expectUntouched,
  lengthOf,
  only,
  patternOf,
  pieceOf,
  refusal,
} from '../hinge/pieces.js';

const width = 240;
const height = 600;
/** A plain panel on the fold. */
const panel = (rest: Partial<Piece> = {}): Piece =>
  pieceOf(
    [
      edge('top', 'seam', line(at(0, 0), at(width, 0))),
      edge('side', 'seam', line(at(width, 0), at(width, height))),
      edge('hem', 'hem', line(at(width, height), at(0, height))),
      edge('centre', 'fold', line(at(0, height), at(0, 0))),
    ],
    rest,
  );
const open = (changes: Partial<Spread> = {}, piece = panel()) =>
  spread(patternOf(piece), {
    piece: 'block',
    from: { edge: 'hem' },
    to: { edge: 'top' },
    ...('angle' in changes ? {} : { by: 60 }),
    hinge: 'to',
    slashes: 1,
    ...changes,
  });

describe('one hinged slash', () => {
  test('opens the edge by the amount as a chord, turning by 2 asin(by / 2R)', () => {
    const done = open();
    const { pattern } = done;
    const after = only(pattern);
    expect(lengthOf(after, 'hem')).toBeCloseTo(width + 60, 9);
    const turn = 2 * Math.asin(60 / 2 / height);
    const side = pathEnd(edgePath(after, 'side'));
    expect(side.x).toBeCloseTo(width / 2 + (width / 2) * Math.cos(turn) + height * Math.sin(turn), 9);
    expect(areaOf(after)).toBeCloseTo(areaOf(panel()) + 0.5 * height ** 2 * Math.sin(turn), 6);
    expectUntouched(panel(), after, 'hem');
    expectClosed(after);
    expect(toldDid(done)).toBe(
      'The block was slashed 120 mm along the hem to 120 mm along the top and spread by 60 mm at the hem, hinged at the other end.',
    );
  });
  test('hinged at the other end opens the other edge', () => {
    const after = only(open({ hinge: 'from' }).pattern);
    expect(lengthOf(after, 'top')).toBeCloseTo(width + 60, 9);
    expectUntouched(panel(), after, 'top');
  });
  test('by an angle opens 2 R sin of half of it', () => {
    const after = only(open({ angle: Math.PI / 9 }).pattern);
    expect(lengthOf(after, 'hem')).toBeCloseTo(width + 2 * height * Math.sin(Math.PI / 18), 9);
  });
  test('says that the edge is bridged and how the other bends', () => {
    const { findings } = open();
    expect(findings.map(f => [f.code, f.severity, f.where.edge])).toEqual([
      ['hinge-kink', 'note', 'top'],
      ['edge-bridged', 'note', 'hem'],
    ]);
    expect(Math.abs(findings[0]!.figures!.kinkDeg!)).toBeCloseTo(5.732, 3);
    expect(findings[1]!.figures!.openedMm).toBeCloseTo(60, 9);
  });
  test('keeps the fold in place wherever the list of edges begins', () => {
    for (let k = 0; k < 4; k++) {
      const after = only(open({}, begunAt(panel(), k)).pattern);
      expect(edgePath(after, 'centre')).toEqual(edgePath(panel(), 'centre'));
      expect(lengthOf(after, 'hem')).toBeCloseTo(width + 60, 9);
      expectClosed(after);
    }
  });
  test('may hinge on a corner and open at a corner', () => {
    const after = only(
      open({ from: { edge: 'hem', at: { share: 0 } }, to: { edge: 'top', at: { share: 0.5 } } }).pattern,
    );
    expect(lengthOf(after, 'hem')).toBeCloseTo(width + 60, 9);
    expectUntouched(panel(), after, 'hem');
    expectClosed(after);
    const atTop = only(open({ to: { edge: 'side', at: { share: 0 } } }).pattern);
    expect(lengthOf(atTop, 'hem')).toBeCloseTo(width + 60, 9);
  });
});

describe('several slashes', () => {
  test('share the amount, each by its own length, and the strips follow one another', () => {
    const sloped = {
      ...panel(),
      outline: {
        parts: panel().outline.parts.map(p =>
          p.name === 'top'
            ? edge('top', 'seam', line(at(0, 0), at(width, 60)))
            : p.name === 'side'
              ? edge('side', 'seam', line(at(width, 60), at(width, height)))
              : p,
        ),
      },
    };
    const done = open({ slashes: 3, by: 90 }, sloped);
    const { pattern } = done;
    const after = only(pattern);
    expect(lengthOf(after, 'hem')).toBeCloseTo(width + 90, 9);
    // Slash i stands at i/4 of both edges; its length falls with the slope of the top.
    const turns = [1, 2, 3].map(i => 2 * Math.asin(15 / (height - 15 * i)));
    const along = subtractPoints(pathEnd(edgePath(after, 'side')), pathStart(edgePath(after, 'side')));
    const turned = Math.atan2(along.y, along.x) - Math.PI / 2;
    expect(-turned).toBeCloseTo(turns[0]! + turns[1]! + turns[2]!, 11);
    const wedges = [1, 2, 3].reduce(
      (sum, i) => sum + 0.5 * (height - 15 * i) ** 2 * Math.sin(turns[i - 1]!),
      0,
    );
    expect(areaOf(after) - areaOf(sloped)).toBeCloseTo(wedges, 6);
    expect(toldDid(done)).toContain('slashed at 3 places from the hem to the top and spread by 90 mm');
    expectUntouched(sloped, after, 'hem');
  });
  test('stand within the range they are given, the middle one in its middle', () => {
    const { did } = open({ slashes: 3, from: { edge: 'hem', at: [{ share: 0.2 }, { share: 0.6 }] } });
    expect(did).toMatchObject({ facts: { fromMm: [72, 96, 120], toMm: [180, 120, 60] } });
  });
  test('may all run to one hinge', () => {
    const { pattern } = open({ slashes: 3, to: { edge: 'top', at: { share: 0.5 } } });
    const after = only(pattern);
    expect(lengthOf(after, 'hem')).toBeCloseTo(width + 60, 9);
    expectUntouched(panel(), after, 'hem');
    expectClosed(after);
  });
  test('turn by equal angles where an angle is given', () => {
    const after = only(open({ slashes: 2, angle: 0.2 }).pattern);
    expect(lengthOf(after, 'hem')).toBeCloseTo(width + 4 * height * Math.sin(0.05), 9);
  });
});

describe('without a hinge', () => {
  test('both edges open alike and the area grows by amount times height', () => {
    const done = open({ hinge: 'none', slashes: 4 });
    const { pattern } = done;
    const after = only(pattern);
    expect(lengthOf(after, 'hem')).toBeCloseTo(width + 60, 9);
    expect(lengthOf(after, 'top')).toBeCloseTo(width + 60, 9);
    expect(areaOf(after)).toBeCloseTo(areaOf(panel()) + 60 * height, 6);
    expectUntouched(panel(), after, 'hem', 'top');
    expect(toldDid(done)).toContain('spread evenly by 60 mm');
  });
  test('each side moves square to the straight line of its slash', () => {
    const after = only(
      open({
        hinge: 'none',
        from: { edge: 'hem', at: { share: 0.25 } },
        to: { edge: 'top', at: { share: 0.25 } },
      }).pattern,
    );
    // From (180, 600) to (60, 0): the unit square to it, away from the fold, is (600, -120) / |.|.
    const norm = Math.hypot(600, 120);
    const corner = pathStart(edgePath(after, 'side'));
    expect(corner.x).toBeCloseTo(width + (60 * 600) / norm, 9);
    expect(corner.y).toBeCloseTo((-60 * 120) / norm, 9);
  });
});

describe('a negative amount', () => {
  test('hinged, overlaps and is cut where the two sides of the hem cross', () => {
    const done = open({ by: -60 });
    const { pattern, findings } = done;
    const after = only(pattern);
    // Square to the slash at R, the two sides cross on the middle line of the overlap, R tan(θ/2) from each side.
    const half = Math.asin(30 / height);
    expect(lengthOf(after, 'hem')).toBeCloseTo(width - 2 * height * Math.tan(half), 9);
    expect(areaOf(after)).toBeCloseTo(areaOf(panel()) - height ** 2 * Math.tan(half), 6);
    expect(toldDid(done)).toContain('overlapped by 60 mm at the hem');
    expect(findings.find(f => f.code === 'edge-overlapped')!.figures!.openedMm).toBeCloseTo(-60, 9);
    expectUntouched(panel(), after, 'hem');
    expectClosed(after);
  });
  test('parallel, takes the amount off both edges', () => {
    const after = only(open({ hinge: 'none', by: -60, slashes: 3 }).pattern);
    expect(lengthOf(after, 'hem')).toBeCloseTo(width - 60, 9);
    expect(lengthOf(after, 'top')).toBeCloseTo(width - 60, 9);
    expect(areaOf(after)).toBeCloseTo(areaOf(panel()) - 60 * height, 6);
  });
  test('where the sides do not cross, they are cut half way and the step is bridged and said', () => {
    const sloped = {
      ...panel(),
      outline: {
        parts: panel().outline.parts.map(p =>
          p.name === 'top'
            ? edge('top', 'seam', line(at(0, 0), at(width, 120)))
            : p.name === 'side'
              ? edge('side', 'seam', line(at(width, 120), at(width, height)))
              : p,
        ),
      },
    };
    const { pattern, findings } = open({ hinge: 'none', by: -40 }, sloped);
    const step = 40 * (120 / width);
    expect(findings.find(f => f.where.edge === 'top')!.figures!.stepMm).toBeCloseTo(step, 9);
    const after = only(pattern);
    expect(lengthOf(after, 'top')).toBeCloseTo(lengthOf(sloped, 'top') * (1 - 40 / width) + step, 9);
    expect(areaOf(after)).toBeCloseTo(areaOf(sloped) - 40 * (height - 60), 6);
  });
  test('takes a notch in the overlap away and says so', () => {
    const notches = [
      { edge: 'hem', at: 125, style: 'single' as const },
      { edge: 'hem', at: 20, style: 'single' as const },
    ];
    const { pattern, findings } = open({ by: -60 }, panel({ notches }));
    expect(only(pattern).notches.map(n => n.at)).toEqual([20]);
    expect(findings.filter(f => f.code === 'notch-cut-away')).toHaveLength(1);
  });
});

describe('spreading and overlapping again', () => {
  const curved = (): Piece => ({
    ...panel(),
    outline: {
      parts: panel().outline.parts.map(p =>
        p.name === 'hem'
          ? edge('hem', 'hem', [at(width, height - 12), at(160, height), at(80, height), at(0, height)])
          : p.name === 'side'
            ? edge('side', 'seam', line(at(width, 0), at(width, height - 12)))
            : p,
      ),
    },
  });
  test.each(['to', 'from'] as const)('hinged at "%s" restores the piece', hinge => {
    const ends = { from: { edge: 'hem', at: { mm: 100 } }, to: { edge: 'top', at: { mm: 110 } }, hinge };
    const there = open({ ...ends, angle: 0.1 }, curved());
    // The slash goes where the first one began: at the start of the bridge, on the side that stayed or moved.
    const back = spread(there.pattern, { piece: 'block', slashes: 1, ...ends, angle: -0.1 });
    const after = only(back.pattern);
    expectUntouched(curved(), after);
    expect(areaOf(after)).toBeCloseTo(areaOf(curved()), 5);
  });
  test('parallel restores the piece', () => {
    const ends = { from: { edge: 'hem' }, to: { edge: 'top' }, hinge: 'none' as const };
    const there = open({ ...ends, by: 40 });
    const back = spread(there.pattern, { piece: 'block', slashes: 1, ...ends, by: -40 });
    expectUntouched(panel(), only(back.pattern));
    expect(areaOf(only(back.pattern))).toBeCloseTo(areaOf(panel()), 6);
  });
});

describe('what stays', () => {
  test('without fold or centre, the strip with the grain line, the others going outwards from it', () => {
    const free = {
      ...panel({ lines: [{ kind: 'grain', name: 'grain', path: pathOf(line(at(120, 500), at(120, 100))) }] }),
    };
    const parts = free.outline.parts.map(p =>
      p.name === 'centre' ? edge('left', 'seam', line(at(0, height), at(0, 0))) : p,
    );
    const after = only(open({ slashes: 2, hinge: 'none' }, { ...free, outline: { parts } }).pattern);
    expect(pathStart(edgePath(after, 'left')).x).toBeCloseTo(-30, 9);
    expect(pathStart(edgePath(after, 'side')).x).toBeCloseTo(width + 30, 9);
    expect(after.lines[0]!.path).toEqual(free.lines[0]!.path);
  });
});

describe('slashing from the fold', () => {
  const ends = { from: { edge: 'centre', at: { share: 0.6 } }, to: { edge: 'side' } };
  test('hinged at the side bends the fold, and that is said', () => {
    const { findings } = open({ ...ends, by: -15 });
    const bent = findings.find(f => f.code === 'fold-bent')!;
    expect([bent.severity, bent.where.edge]).toEqual(['warning', 'centre']);
    expect(bent.figures!.offMm).toBeGreaterThan(1);
  });
  test('parallel and square to it keeps the fold straight', () => {
    const level = { from: { edge: 'centre' }, to: { edge: 'side' }, hinge: 'none' as const };
    const { pattern, findings } = open({ ...level, by: 30 });
    expect(findings.map(f => f.code)).not.toContain('fold-bent');
    expect(lengthOf(only(pattern), 'centre')).toBeCloseTo(height + 30, 9);
    expect(lengthOf(only(pattern), 'side')).toBeCloseTo(height + 30, 9);
  });
});

describe('what is refused', () => {
  test('a slash that would leave the piece', () => {
    const bent = {
      ...panel(),
      outline: {
        parts: panel().outline.parts.map(p =>
          p.name === 'side'
            ? edge('side', 'seam', line(at(width, 0), at(40, 300)), line(at(40, 300), at(width, height)))
            : p,
        ),
      },
    };
    expect(() => open({}, bent)).toThrow(refusal('slash-leaves-piece'));
  });
  test('a slash across a dart', () => {
    expect(() =>
      open({ from: { edge: 'hem', at: { share: 0.1 } }, to: { edge: 'top', at: { share: 0.9 } } }, block()),
    ).toThrow(refusal('slash-crosses-dart'));
  });
  test('a slash along an edge', () => {
    const ends = { from: { edge: 'hem', at: { share: 0.2 } }, to: { edge: 'hem', at: { share: 0.7 } } };
    expect(() => open(ends)).toThrow(refusal('slash-leaves-piece'));
  });
  test('more than a slash can open', () => {
    expect(() => open({ by: 1300 })).toThrow(refusal('spread-too-wide', /less, or make more/));
  });
  test('an angle without a hinge', () => {
    expect(() => open({ hinge: 'none', angle: 0.1 })).toThrow(refusal('spread-needs-length'));
  });
  test('several slashes at one place of the edge that opens', () => {
    expect(() => open({ slashes: 3, from: { edge: 'hem', at: { share: 0.5 } } })).toThrow(
      refusal('range-needed', /two places/),
    );
  });
  test('overlapping strips by more than their width', () => {
    expect(() => open({ slashes: 5, hinge: 'none', by: -300 })).toThrow(refusal('overlap-too-wide'));
  });
  test('a spread that would fold the piece over itself', () => {
    expect(() => open({ angle: -2, from: { edge: 'hem', at: { share: 0.1 } } })).toThrow(
      refusal('outline-tangled'),
    );
  });
  test('an edge that is not there', () => {
    expect(() => open({ to: { edge: 'yoke' } })).toThrow(refusal('unknown-edge'));
  });
});

describe('beside a dart', () => {
  test('a slash from its mouth opens the edge and leaves the dart alone', () => {
    const parts = panel().outline.parts.flatMap(p =>
      p.name === 'hem'
        ? [
            edge('hem', 'hem', line(at(width, height), at(135, height))),
            dart('waist', at(135, height), at(120, 400), at(105, height)),
            edge('hem', 'hem', line(at(105, height), at(0, height))),
          ]
        : [p],
    );
    const after = only(open({}, { ...panel(), outline: { parts } }).pattern);
    expect(lengthOf(after, 'hem')).toBeCloseTo(width - 30 + 60, 9);
    expect(after.outline.parts.find(p => p.type === 'dart')).toEqual(parts.find(p => p.type === 'dart'));
    expectClosed(after);
  });
});

const subtractPoints = (a: { x: number; y: number }, b: { x: number; y: number }) => ({
  x: a.x - b.x,
  y: a.y - b.y,
});
