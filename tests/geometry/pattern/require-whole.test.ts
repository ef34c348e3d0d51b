import { at, cuttingLine, type Pattern, PatternError, polyline, walkSeam } from '@paperhinge/geometry';
import { requireWhole, requireWholePiece } from '@paperhinge/geometry/internal';
import { describe, expect, test } from 'vitest';
import { type PlaceWithin, placesWithin, valueAt, withValueAt } from '../../support/places-within.js';
import { refusalOf } from '../../support/told.js';

/** A pattern that says all that the model has words for. */
function fullPattern(): Pattern {
  const line = (...points: readonly (readonly [number, number])[]) =>
    polyline(...points.map(([x, y]) => at(x, y)));
  return {
    name: 'skirt',
    unit: 'cm',
    tolerance: 2,
    size: '12',
    leftToTrue: [{ piece: 'front', edge: 'hem', at: 20 }],
    fabrics: [
      {
        name: 'wool',
        role: 'main',
        width: 1400,
        repeat: 20,
        nap: true,
        recovery: 90,
        stretch: { across: 5, along: 1 },
      },
    ],
    pieces: [
      {
        name: 'front',
        title: 'Skirt front',
        role: 'skirt',
        roleGuessed: true,
        outline: {
          parts: [
            {
              type: 'edge',
              name: 'waist',
              role: 'waist',
              roleGuessed: true,
              kind: 'seam',
              allowance: 10,
              corners: { start: 'mitre', end: 'pressed-open' },
              path: line([0, 0], [60, 0]),
              finish: 'faced',
              topstitch: 3,
              interfacing: 30,
              opening: 40,
            },
            {
              type: 'dart',
              name: 'dart',
              apex: at(70, 60),
              legs: [line([60, 0], [70, 60]), line([70, 60], [80, 0])],
              pressed: 'start',
            },
            {
              type: 'edge',
              name: 'waist',
              kind: 'seam',
              allowance: 10,
              corners: {},
              path: line([80, 0], [120, 0]),
            },
            {
              type: 'pleat',
              name: 'pleat',
              kind: 'knife',
              mouth: line([120, 0], [160, 0]),
              towards: 'end',
              stitched: 30,
            },
            {
              type: 'edge',
              name: 'waist',
              kind: 'seam',
              allowance: 10,
              corners: {},
              path: line([160, 0], [200, 0]),
            },
            {
              type: 'edge',
              name: 'side',
              kind: 'seam',
              allowance: 15,
              corners: {},
              path: { segments: [[at(200, 0), at(215, 150), at(220, 300), at(220, 500)]] },
            },
            {
              type: 'edge',
              name: 'hem',
              kind: 'hem',
              allowance: 30,
              corners: {},
              path: line([220, 500], [0, 500]),
            },
            {
              type: 'edge',
              name: 'centre',
              kind: 'fold',
              allowance: 0,
              corners: {},
              path: line([0, 500], [0, 0]),
            },
          ],
        },
        notches: [{ edge: 'side', at: 120, style: 'double', name: 'hip' }],
        lines: [
          {
            kind: 'level',
            name: 'hip',
            role: 'hip',
            roleGuessed: true,
            path: line([0, 200], [215, 200]),
          },
        ],
        marks: [{ kind: 'point', name: 'button 1', role: 'button', roleGuessed: true, at: at(30, 30) }],
        cutting: { count: 1, mirrored: false, layers: 1, rightSideUp: true, fabric: 'wool', note: 'on fold' },
        alsoCut: [{ count: 2, mirrored: true, fabric: 'lining' }],
        greatestStretch: 'along',
        madeFor: [{ piece: 'back', edge: 'hem' }],
        recipe: { verb: 'draft band', parameters: { width: 30, along: ['hem'] } },
      },
    ],
    seams: [
      {
        name: 'side',
        a: [{ piece: 'front', edge: 'side', reversed: false, part: { from: 0, to: 200 } }],
        b: [{ piece: 'front', edge: 'side', reversed: true }],
        ease: { mm: 2 },
        takenUp: 'gathered',
        tolerance: 1,
      },
      {
        name: 'hem',
        a: [{ piece: 'front', edge: 'hem', reversed: false }],
        b: [{ piece: 'front', edge: 'hem', reversed: true }],
        ease: { percent: 5 },
      },
    ],
    fastenings: [
      {
        name: 'zip',
        kind: 'zip',
        along: { piece: 'front', edge: 'side', reversed: false, part: { from: 0, to: 200 } },
        length: 180,
        count: 1,
        spacing: 20,
        size: 10,
        relaxed: 100,
        sort: 'invisible',
        overlap: 5,
        underlap: 5,
      },
    ],
  };
}

const pattern = fullPattern();
const places = placesWithin(pattern);
const isFree = (place: PlaceWithin): boolean => place.includes('recipe') && place.at(-1) !== 'verb';
const kindOf = (value: unknown): string =>
  Array.isArray(value) ? 'list' : value === null ? 'nothing' : typeof value;
const atPlace = (place: PlaceWithin): string => ['pattern', ...place].join('.');

describe('a whole pattern', () => {
  test('is let through, and what may be left out of it may be', () => {
    expect(() => requireWhole(pattern)).not.toThrow();
    const { fastenings: _1, tolerance: _2, leftToTrue: _3, size: _4, ...bare } = pattern;
    expect(() => requireWhole(bare)).not.toThrow();
    const undefinedSize = { ...pattern, size: undefined } as unknown as Pattern;
    expect(() => requireWhole(undefinedSize)).not.toThrow();
  });

  test('has nothing of another kind in any of its places', () => {
    expect(places.length).toBeGreaterThan(250);
    for (const place of places)
      for (const value of [null, {}, [], 7, 'x', true, Symbol('x'), () => 1, 12n]) {
        const whole = valueAt(pattern, place);
        if (kindOf(value) === kindOf(whole) || isFree(place)) continue;
        const told = refusalOf(() => requireWhole(withValueAt(pattern, place, value) as Pattern));
        expect([place, told.code]).toEqual([place, 'pattern-not-usable']);
        expect(told.facts.at).toBe(atPlace(place));
        expect(told.remedy).toContain('from its file');
      }
  });

  test('has no number that is none', () => {
    const numbers = places.filter(place => typeof valueAt(pattern, place) === 'number');
    expect(numbers.length).toBeGreaterThan(60);
    for (const place of numbers)
      for (const value of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
        const told = refusalOf(() => requireWhole(withValueAt(pattern, place, value) as Pattern));
        expect(told.remedy).not.toBe('');
        // Who knows what the number is of tells more.
        if (told.code === 'pattern-not-usable') expect(told.facts.at).toBe(atPlace(place));
      }
  });

  test('has no word that nobody knows', () => {
    const words = places.filter(place =>
      ['unit', 'role', 'kind', 'type', 'finish', 'pressed', 'towards', 'style', 'takenUp', 'greatestStretch']
        .concat('start', 'end')
        .includes(place.at(-1)!),
    );
    expect(words.length).toBeGreaterThan(25);
    for (const place of words) {
      if (place.includes('marks') && place.at(-1) === 'kind') continue;
      for (const word of ['nonsense', '', 'constructor']) {
        const told = refusalOf(() => requireWhole(withValueAt(pattern, place, word) as Pattern));
        expect([place, word, ['word-not-understood', 'pattern-not-usable'].includes(told.code)]).toEqual([
          place,
          word,
          true,
        ]);
      }
    }
  });

  test('misses nothing that it must have', () => {
    const needed = ['pieces', 'seams', 'fabrics', 'name', 'unit'].map(name => [name]);
    const ofPiece = ['name', 'title', 'outline', 'notches', 'lines', 'marks', 'cutting'];
    for (const place of [...needed, ...ofPiece.map(name => ['pieces', '0', name])]) {
      const told = refusalOf(() => requireWhole(withValueAt(pattern, place, undefined) as Pattern));
      expect(told).toMatchObject({ code: 'pattern-not-usable', facts: { at: atPlace(place) } });
    }
  });

  test('has pieces with an outline, and paths with lengths of some segments', () => {
    const parts = ['pieces', '0', 'outline', 'parts'];
    expect(refusalOf(() => requireWhole(withValueAt(pattern, parts, []) as Pattern))).toMatchObject({
      code: 'piece-without-outline',
      where: { piece: 'front' },
    });
    const segments = [...parts, '0', 'path', 'segments'];
    expect(refusalOf(() => requireWhole(withValueAt(pattern, segments, []) as Pattern))).toMatchObject({
      code: 'path-empty',
      where: { piece: 'front', edge: 'waist' },
    });
    const three = [[at(0, 0), at(30, 0), at(60, 0)]];
    expect(refusalOf(() => requireWhole(withValueAt(pattern, segments, three) as Pattern)).code).toBe(
      'not-a-segment',
    );
    const legs = [...parts, '1', 'legs'];
    const oneLeg = (valueAt(pattern, legs) as readonly unknown[]).slice(1);
    expect(refusalOf(() => requireWhole(withValueAt(pattern, legs, oneLeg) as Pattern)).facts.at).toBe(
      atPlace(legs),
    );
  });

  test('a piece and a seam by themselves are asked the same', () => {
    const [piece] = pattern.pieces;
    expect(() => requireWholePiece(piece!)).not.toThrow();
    for (const given of [undefined, null, 7, 'front', [], {}])
      expect(refusalOf(() => cuttingLine(given as never))).toMatchObject({ code: 'pattern-not-usable' });
    expect(refusalOf(() => cuttingLine({ ...piece!, marks: undefined } as never)).facts.at).toBe(
      'piece.marks',
    );
    expect(refusalOf(() => cuttingLine(piece!, {} as never)).facts.at).toBe('pattern.name');
    for (const given of [undefined, null, 7, 'side', [], {}, { ...pattern.seams[0], ease: null }])
      expect(refusalOf(() => walkSeam(pattern, given as never)).facts.at).toMatch(/^seam/);
  });

  test('whatever holds it, nothing but a typed error comes of what is none', () => {
    for (const given of [undefined, null, 0, Number.NaN, '', 'x', true, [], new Map(), new Date(), () => 1])
      expect(() => requireWhole(given as never)).toThrow(PatternError);
  });
});
