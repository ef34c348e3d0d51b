import { closeDart } from '@paperhinge/alter/darts';
import { at, edgeNames, edgePath, line, type Piece, pathOf, walkSeams } from '@paperhinge/geometry';
import { pathEnd, pathStart, pointAlong } from '@paperhinge/geometry/paths';
import { dartsOf } from '@paperhinge/geometry/pattern';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf, toldDid } from '../../support/told.js';
import {
  angleOf,
  areaOf,
  begunAt,
  block,
  dart,
  depth,
  edge,
  expectClosed,
  expectUntouched,
  leg,
  lengthOf,
  mouth,
  only,
  patternOf,
  pieceOf,
  radius,
  refusal,
} from '../hinge/pieces.js';

const close = (piece: Piece, changes: Partial<Parameters<typeof closeDart>[1]> = {}) =>
  closeDart(patternOf(piece), { piece: 'block', dart: 'bust', into: 'hem', share: 1, ...changes });

describe('closing a dart wholly', () => {
  // check-values §7 [derived]: w 30, L 120 turns by 2 asin(w / 2L) = 14.361512°; at R 400 the hem opens w R / L.
  test('opens the hem by w R / L: 100 mm exactly at 400 mm', () => {
    const done = close(block());
    const { pattern } = done;
    const opened = lengthOf(only(pattern), 'hem') - lengthOf(block(), 'hem');
    expect(Math.abs(opened - 100)).toBeLessThan(1e-9);
    expect(angleOf(block(), 'bust')).toBeCloseTo(14.361512, 6);
    expect(toldDid(done)).toBe(
      `The bust dart of the block (14.4°) was closed into the hem, slashed ${depth.toFixed(1)} mm from its start; it opened by 100 mm.`,
    );
  });
  test('takes the dart away, welds its mouth and keeps both edges’ names', () => {
    const after = only(close(block()).pattern);
    expect(dartsOf(after)).toEqual([]);
    expect(edgeNames(after)).toEqual(['top', 'side-upper', 'side-lower', 'hem', 'centre']);
    expect(pathStart(edgePath(after, 'side-lower'))).toEqual(pathEnd(edgePath(after, 'side-upper')));
    expectClosed(after);
  });
  test('keeps the length of every other edge and the fold where it was', () => {
    const after = only(close(block()).pattern);
    expectUntouched(block(), after, 'hem');
    expect(edgePath(after, 'centre')).toEqual(edgePath(block(), 'centre'));
  });
  test('adds exactly the opened wedge to the area', () => {
    const turn = 2 * Math.asin(mouth / 2 / leg);
    const wedge = 0.5 * radius ** 2 * Math.sin(turn);
    expect(Math.abs(areaOf(only(close(block()).pattern)) - areaOf(block()) - wedge)).toBeLessThan(1e-6);
  });
  test('moves the side under the dart rigidly: its lower corner swings about the apex', () => {
    const turn = 2 * Math.asin(mouth / 2 / leg);
    const corner = pathEnd(edgePath(only(close(block()).pattern), 'side-lower'));
    const x = depth * Math.cos(turn) + radius * Math.sin(turn);
    const y = radius * Math.cos(turn) - depth * Math.sin(turn);
    expect(corner.x).toBeCloseTo(100 + x, 9);
    expect(corner.y).toBeCloseTo(200 + y, 9);
  });
  test('into an edge that touches the dart swings only the corner between them', () => {
    const after = only(close(block(), { into: 'side-lower' }).pattern);
    const slash = Math.hypot(depth, 15 + 385 / 2);
    expect(lengthOf(after, 'side-lower') - 385).toBeCloseTo((2 * slash * mouth) / 2 / leg, 9);
    expectUntouched(block(), after, 'side-lower');
  });
  test('leaves its seams matching where it interrupts one side of a seam', () => {
    const before = shiftPattern();
    const { pattern } = closeDart(before, { piece: 'front', dart: 'bust', into: 'hem', share: 1 });
    expect(walkSeams(pattern).map(w => w.matches)).toEqual(walkSeams(before).map(() => true));
  });
});

describe('the place of the slash', () => {
  test('is where the grain line through the apex meets the edge', () => {
    const slanted = {
      ...block(),
      lines: [{ kind: 'grain' as const, name: 'grain', path: pathOf(line(at(20, 100), at(60, 500))) }],
    };
    const after = only(close(slanted).pattern);
    const place = pointAlong(edgePath(after, 'hem'), lengthOf(after, 'hem') - 140);
    expect(place.x).toBeCloseTo(140, 9);
    expect(place.y).toBeCloseTo(600, 9);
  });
  test('is the edge’s middle where the grain line misses the edge', () => {
    expect(toldDid(close(block(), { into: 'side-lower' }))).toContain(
      'the side lower, slashed 192.5 mm from its start',
    );
  });
  test('is what the sheet says, from the end it says', () => {
    expect(toldDid(close(block(), { at: { mm: 60, from: 'centre' } }))).toContain(
      `slashed ${(100 + depth - 60).toFixed(1)} mm from its start`,
    );
  });
});

describe('closing a dart in part', () => {
  test('keeps the dart with what is left of its angle, and opens 2 R sin of half the turn', () => {
    const after = only(close(block(), { share: 0.25 }).pattern);
    const whole = 2 * Math.asin(mouth / 2 / leg);
    expect(angleOf(after, 'bust')).toBeCloseTo((0.75 * whole * 180) / Math.PI, 10);
    const chord = 2 * radius * Math.sin(whole / 8);
    expect(Math.abs(lengthOf(after, 'hem') - lengthOf(block(), 'hem') - chord)).toBeLessThan(1e-9);
  });
  test('twice by half ends with the side where closing it at once puts it', () => {
    const half = close(block(), { share: 0.5 }).pattern;
    const twice = closeDart(half, { piece: 'block', dart: 'bust', into: 'hem', share: 1 });
    const corner = pathEnd(edgePath(only(twice.pattern), 'side-lower'));
    const once = pathEnd(edgePath(only(close(block()).pattern), 'side-lower'));
    expect(corner.x).toBeCloseTo(once.x, 9);
    expect(corner.y).toBeCloseTo(once.y, 9);
  });
  test('by nothing changes nothing', () => {
    const after = only(close(block(), { share: 0 }).pattern);
    expectUntouched(block(), after);
    expect(areaOf(after)).toBeCloseTo(areaOf(block()), 6);
  });
});

describe('what stays and what moves', () => {
  const x = 100 + depth;
  const open = (rest: Partial<Piece>) => {
    const parts = block().outline.parts.map(p =>
      p.name === 'centre' ? { ...p, name: 'front', kind: 'seam' as const } : p,
    );
    return pieceOf(parts as Piece['outline']['parts'], rest);
  };
  test('without fold or centre the part with the grain line stays', () => {
    const grain = [{ kind: 'grain' as const, name: 'grain', path: pathOf(line(at(200, 560), at(200, 300))) }];
    const after = only(close(open({ lines: grain }), { at: { mm: depth } }).pattern);
    expect(pathEnd(edgePath(after, 'side-lower'))).toEqual(at(x, 600));
    expect(pathEnd(edgePath(after, 'front'))).not.toEqual(at(0, 0));
  });
  test('a line named centre goes before the grain', () => {
    const lines = [
      { kind: 'grain' as const, name: 'grain', path: pathOf(line(at(200, 560), at(200, 300))) },
      { kind: 'placement' as const, name: 'centre front', path: pathOf(line(at(10, 10), at(10, 590))) },
    ];
    const { pattern, findings } = close(open({ lines }), { at: { mm: depth } });
    expect(pathEnd(edgePath(only(pattern), 'front'))).toEqual(at(0, 0));
    expect(findings.map(f => f.code)).toContain('grain-line-stays');
  });
  test('the list of edges may begin inside the part that moves', () => {
    for (let k = 0; k < 6; k++) {
      const after = only(close(begunAt(block(), k)).pattern);
      expectClosed(after);
      expect(lengthOf(after, 'hem')).toBeCloseTo(lengthOf(block(), 'hem') + 100, 9);
      expect(pathEnd(edgePath(after, 'centre'))).toEqual(at(0, 0));
    }
  });
  test('notches keep their cloth: one on the moved side and one past the opening', () => {
    const piece: Piece = {
      ...block(),
      notches: [
        { edge: 'hem', at: 30, style: 'single' },
        { edge: 'hem', at: 180, style: 'single' },
        { edge: 'side-lower', at: 100, style: 'single' },
      ],
    };
    const { notches } = only(close(piece).pattern);
    expect(notches.map(n => n.edge)).toEqual(['hem', 'hem', 'side-lower']);
    expect(notches[0]!.at).toBeCloseTo(30, 9);
    expect(notches[1]!.at).toBeCloseTo(280, 9);
    expect(notches[2]!.at).toBeCloseTo(100, 9);
  });
  test('a level stays in place at the centre, its other part swings, and a finding says so', () => {
    const waist = { kind: 'level' as const, name: 'waist', path: pathOf(line(at(0, 400), at(x, 400))) };
    const { pattern, findings } = close({ ...block(), lines: [...block().lines, waist] });
    const { path } = only(pattern).lines.find(l => l.name === 'waist')!;
    expect(path.segments[0]).toEqual([at(0, 400), at(100, 400)]);
    expect(path.segments).toHaveLength(3);
    expect(findings.map(f => f.code)).toContain('lines-parted');
  });
});

describe('a dart in the middle of one edge', () => {
  const hemDart = () =>
    pieceOf(
      [
        edge('top', 'seam', line(at(0, 0), at(300, 0))),
        edge('side', 'seam', line(at(300, 0), at(300, 400))),
        edge('hem', 'hem', line(at(300, 400), at(165, 400))),
        dart('bust', at(165, 400), at(150, 250), at(135, 400)),
        edge('hem', 'hem', line(at(135, 400), at(0, 400))),
        edge('centre', 'fold', line(at(0, 400), at(0, 0))),
      ],
      { notches: [{ edge: 'hem', at: 200, style: 'single' }] },
    );
  test('closed, leaves the edge whole again, its notch as far along as before', () => {
    const after = only(close(hemDart(), { into: 'top' }).pattern);
    expect(after.outline.parts.filter(p => p.name === 'hem')).toHaveLength(1);
    expect(lengthOf(after, 'hem')).toBeCloseTo(270, 9);
    expect(after.notches[0]!.at).toBeCloseTo(200, 9);
    expectClosed(after);
  });
  test('can be closed into the very edge it stands in', () => {
    const after = only(close(hemDart(), { into: 'hem', at: { mm: 60 } }).pattern);
    expect(after.outline.parts.filter(p => p.name === 'hem')).toHaveLength(1);
    const chord = 2 * Math.hypot(90, 150) * Math.sin(Math.atan(15 / 150));
    expect(lengthOf(after, 'hem')).toBeCloseTo(270 + chord, 9);
    expectClosed(after);
  });
  test('is refused where the slash would run through the dart itself', () => {
    expect(() => close(hemDart(), { into: 'hem', at: { mm: 135 } })).toThrow(refusal('slash-crosses-dart'));
  });
});

describe('legs that are not quite equal', () => {
  const withLegs = (longer: number) => {
    const unequal = block();
    const x = 100 + depth;
    const dx = (depth / leg) * longer;
    const dy = (mouth / 2 / leg) * longer;
    const parts = unequal.outline.parts.map(p =>
      p.name === 'bust'
        ? dart('bust', at(x, 185), at(100, 200), at(x + dx, 215 + dy))
        : p.name === 'side-lower'
          ? edge('side-lower', 'seam', line(at(x + dx, 215 + dy), at(x, 600)))
          : p,
    );
    return { ...unequal, outline: { parts } };
  };
  test('are laid direction on direction and the step is a finding', () => {
    const { pattern, findings } = close(withLegs(0.6));
    const step = findings.find(f => f.code === 'dart-step')!;
    expect(step.figures!.stepMm).toBeCloseTo(0.6, 9);
    expect(lengthOf(only(pattern), 'hem')).toBeCloseTo(lengthOf(block(), 'hem') + 100, 9);
    expect(lengthOf(only(pattern), 'side-lower')).toBeCloseTo(lengthOf(withLegs(0.6), 'side-lower'), 9);
    expectClosed(only(pattern));
  });
  test('that differ by more than 1 mm are refused', () => {
    expect(() => close(withLegs(1.2))).toThrow(refusal('dart-legs-unlike', /1 mm/));
  });
});

describe('hostile darts', () => {
  const x = 100 + depth;
  const replaced = (name: string, part: Piece['outline']['parts'][number]): Piece => ({
    ...block(),
    outline: { parts: block().outline.parts.map(p => (p.name === name ? part : p)) },
  });
  test('a dart a hundredth of a millimetre wide closes', () => {
    const parts = block().outline.parts.map(p => {
      if (p.name === 'side-upper') return edge('side-upper', 'seam', line(at(x, 0), at(x, 199.995)));
      if (p.name === 'bust') return dart('bust', at(x, 199.995), at(100, 200), at(x, 200.005));
      return p.name === 'side-lower' ? edge('side-lower', 'seam', line(at(x, 200.005), at(x, 600))) : p;
    });
    const after = only(close({ ...block(), outline: { parts } }).pattern);
    expect(dartsOf(after)).toEqual([]);
    const chord = (0.01 * radius) / Math.hypot(depth, 0.005);
    expect(lengthOf(after, 'hem') - x).toBeCloseTo(chord, 9);
  });
  test('a dart at a corner closes', () => {
    const parts = [
      edge('top', 'seam', line(at(0, 0), at(300, 0))),
      edge('side', 'seam', line(at(300, 0), at(300, 385))),
      dart('bust', at(300, 385), at(150, 250), at(285, 400)),
      edge('hem', 'hem', line(at(285, 400), at(0, 400))),
      edge('centre', 'fold', line(at(0, 400), at(0, 0))),
    ];
    const after = only(close(pieceOf(parts), { into: 'top' }).pattern);
    const turn = 2 * Math.asin(Math.hypot(15, 15) / 2 / Math.hypot(150, 135));
    expect(lengthOf(after, 'top')).toBeCloseTo(300 + 500 * Math.sin(turn / 2), 9);
    expectUntouched(pieceOf(parts), after, 'top');
  });
  test('a dart whose apex all but touches the edge it closes into', () => {
    const low = replaced(
      'hem',
      edge('hem', 'hem', line(at(x, 600), at(100, 200.001)), line(at(100, 200.001), at(0, 600))),
    );
    const after = only(close(low, { at: { mm: Math.hypot(depth, 399.999) } }).pattern);
    expect(lengthOf(after, 'hem') - lengthOf(low, 'hem')).toBeCloseTo((0.001 * mouth) / leg, 8);
  });
  test('curved legs close by their chords', () => {
    const curved = replaced('bust', {
      ...dart('bust', at(x, 185), at(100, 200), at(x, 215)),
      legs: [
        pathOf([at(x, 185), at(180, 185), at(140, 196), at(100, 200)]),
        pathOf([at(100, 200), at(140, 204), at(180, 215), at(x, 215)]),
      ],
    });
    const after = only(close(curved).pattern);
    expect(lengthOf(after, 'hem')).toBeCloseTo(lengthOf(block(), 'hem') + 100, 9);
  });
  test('a hem of several segments opens inside one of them and stays one edge', () => {
    const hem = edge(
      'hem',
      'hem',
      line(at(x, 600), at(150, 605)),
      line(at(150, 605), at(60, 605)),
      line(at(60, 605), at(0, 600)),
    );
    const after = only(close(replaced('hem', hem)).pattern);
    expect(after.outline.parts.filter(p => p.name === 'hem')).toHaveLength(1);
    expect(edgePath(after, 'hem').segments).toHaveLength(5);
    expect(lengthOf(after, 'hem') - lengthOf(replaced('hem', hem), 'hem')).toBeCloseTo(
      (405 * mouth) / leg,
      9,
    );
  });
});

describe('what is refused', () => {
  test.each([
    [1.2, 'field-out-of-range', '0 % to 100 %'],
    [-0.1, 'field-out-of-range', '0 % to 100 %'],
    [Number.NaN, 'field-not-usable', '80 %'],
  ] as const)('a share of %d', (share, code, remedy) => {
    expect(refusalOf(() => close(block(), { share }))).toMatchObject({
      code,
      remedy: expect.stringContaining(remedy),
    });
  });
  test('a dart that is not there, with the one that was meant', () => {
    expect(() => close(block(), { dart: 'bsut' })).toThrow(refusal('unknown-dart', /bust/));
  });
  test('an edge that is not there, with the edges there are', () => {
    expect(() => close(block(), { into: 'waist' })).toThrow(refusal('unknown-edge'));
  });
  test('a slash that would leave the piece', () => {
    const notched = edge(
      'hem',
      'hem',
      line(at(100 + depth, 600), at(100, 600)),
      line(at(100, 600), at(40, 300)),
      line(at(40, 300), at(0, 600)),
    );
    const parts = block().outline.parts.map(p => (p.name === 'hem' ? notched : p));
    expect(() => close({ ...block(), outline: { parts } }, { at: { share: 1 } })).toThrow(
      refusal('slash-leaves-piece', /other places/),
    );
  });
  test('a slash across another dart', () => {
    const second = [
      edge('hem', 'hem', line(at(100 + depth, 600), at(130, 600))),
      dart('waist', at(130, 600), at(40, 400), at(70, 600)),
      edge('hem', 'hem', line(at(70, 600), at(0, 600))),
    ];
    const parts = block().outline.parts.flatMap(p => (p.name === 'hem' ? second : [p]));
    expect(() => close({ ...block(), outline: { parts } }, { at: { share: 0.9 } })).toThrow(
      refusal('slash-crosses-dart', /clear of the dart/),
    );
  });
});
