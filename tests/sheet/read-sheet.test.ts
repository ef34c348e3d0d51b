import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { read, refusals, withSteps } from './sheets.js';

const step = (text: string, unit = 'mm') => read(`unit: ${unit}\n${withSteps(text)}`).steps[0]!;
const parameters = (text: string, unit?: string) => step(text, unit).parameters;

describe('what a sheet may say', () => {
  test('the demo is read whole, each step with its place', () => {
    const text = readFileSync(new URL('../../demos/sheets/cellist-top.yaml', import.meta.url), 'utf8');
    const sheet = read(text);
    expect(sheet).toMatchObject({
      pattern: '../patterns/woven-shift.svg',
      unit: 'mm',
      wearer: { 'bust girth': 1020, 'head girth': 572 },
      print: { paper: ['a4', 'letter'] },
    });
    expect(sheet.fabrics).toContainEqual({ name: 'contrast', width: 1400, stretch: { across: 45 } });
    const lines = text.split('\n');
    expect(sheet.steps.length).toBe(lines.filter(line => line.startsWith('  - ')).length);
    for (const [i, { verb }] of sheet.steps.entries()) {
      const place = sheet.stepPlaces[i]!.verb;
      expect(lines[place.line - 1]!.slice(place.column - 1)).toMatch(new RegExp(`^${verb}:`));
    }
  });

  test('a heading with all under it struck out says no more than if it were not there', () => {
    const bare = read(withSteps('shorten: { pieces: front, at: hem, by: 20 }'));
    for (const heading of ['wearer', 'fabrics', 'let', 'pieces', 'seams', 'fastenings', 'opening', 'print']) {
      const struck = read(
        `${heading}:\n  # struck out\n${withSteps('shorten: { pieces: front, at: hem, by: 20 }')}`,
      );
      const { places: _, stepPlaces: __, ...said } = struck;
      const { places: ___, stepPlaces: ____, ...without } = bare;
      expect({ ...said, given: {} }).toEqual({ ...without, given: {} });
    }
  });

  test('JSON is read like YAML', () => {
    const yaml = read(withSteps('unfold: { piece: front }'));
    const json = read('{\n\t"pattern": "shift.svg",\n\t"steps": [ { "unfold": { "piece": "front" } } ]\n}');
    expect(json.steps[0]!.parameters).toEqual(yaml.steps[0]!.parameters);
  });

  test('lengths are read in every written form, bare numbers in the unit of the sheet', () => {
    const by = (text: string, unit?: string) =>
      (parameters(`shorten: { pieces: front, at: hem, by: ${text} }`, unit) as { by: number }).by;
    expect(by('12')).toBe(12);
    expect(by('12 mm')).toBe(12);
    expect(by('1.2 cm')).toBe(12);
    expect(by('3/8 in')).toBeCloseTo(9.525, 12);
    expect(by('2 7/8"')).toBeCloseTo(73.025, 12);
    expect(by('2⅞ in')).toBeCloseTo(73.025, 12);
    expect(by('2', 'in')).toBe(50.8);
    expect(by('2', 'cm')).toBe(20);
  });

  test('places on an edge are fractions, percentages, lengths, each from either end', () => {
    const at = (text: string) =>
      (parameters(`close dart: { piece: front, dart: bust, into: hem, at: ${text} }`) as { at: unknown }).at;
    expect(at('1/3')).toEqual({ share: 1 / 3 });
    expect(at('40 %')).toEqual({ share: 0.4 });
    expect(at('1/3 from side')).toEqual({ share: 1 / 3, from: 'side' });
    expect(at('60 mm from centre front')).toEqual({ mm: 60, from: 'centre front' });
  });

  test.each([
    ['shorten: { pieces: front, at: hem, by: 10 }', { pieces: ['front'], at: 'hem', by: 10 }],
    [
      'lengthen: { pieces: [front, back], at: waist, by: 10 }',
      { pieces: ['front', 'back'], at: 'waist', by: 10 },
    ],
    ['close dart: { piece: front, dart: bust, into: hem }', { piece: 'front', dart: 'bust', into: 'hem' }],
    [
      'close dart: { piece: front, dart: bust, into: hem, at: 1/2, share: 50 % }',
      { piece: 'front', dart: 'bust', into: 'hem', at: { share: 0.5 }, share: 0.5 },
    ],
    [
      'move dart: { piece: front, dart: bust, to: { edge: shoulder, at: 1/2 }, pivot: bust point, point back: 25 }',
      {
        piece: 'front',
        dart: 'bust',
        to: { edge: 'shoulder', at: { share: 0.5 } },
        pivot: 'bust point',
        pointBack: 25,
      },
    ],
    [
      'spread: { piece: back, from: { edge: hem, at: [1/4, 3/4] }, to: { edge: neck }, angle: 90°, hinge: none, slashes: 3 }',
      {
        piece: 'back',
        from: { edge: 'hem', at: [{ share: 0.25 }, { share: 0.75 }] },
        to: { edge: 'neck' },
        angle: Math.PI / 2,
        hinge: 'none',
        slashes: 3,
      },
    ],
    [
      'spread: { piece: back, from: { edge: hem }, to: { edge: neck }, by: -20 }',
      {
        piece: 'back',
        from: { edge: 'hem' },
        to: { edge: 'neck' },
        by: -20,
      },
    ],
    [
      'take in: { seam: side, by: 20, from: 30 mm, to: 100 % }',
      { seam: 'side', by: 20, from: { mm: 30 }, to: { share: 1 } },
    ],
    ['let out: { seam: side, by: 20 }', { seam: 'side', by: 20 }],
    [
      'recut neckline: { piece: front, shape: inset V, depth: 85, half width: 45 }',
      { piece: 'front', shape: 'inset V', depth: 85, halfWidth: 45 },
    ],
    [
      'recut neckline: { piece: front, shape: drawn, line: boat neck }',
      { piece: 'front', shape: 'drawn', line: 'boat neck' },
    ],
    ['set allowance: { edges: all seams, to: 7 }', { edges: 'all seams', to: 7 }],
    ['set allowance: { edges: front.neck, to: 0 }', { edges: [{ piece: 'front', edge: 'neck' }], to: 0 }],
    [
      'true: { edges: [front.hem, back.hem] }',
      {
        edges: [
          { piece: 'front', edge: 'hem' },
          { piece: 'back', edge: 'hem' },
        ],
      },
    ],
    ['true: { edges: front.hem, within: 5 }', { edges: [{ piece: 'front', edge: 'hem' }], within: 5 }],
    ['unfold: { piece: front }', { piece: 'front' }],
    ['remove piece: { piece: neckband }', { piece: 'neckband' }],
    [
      'draft band: { name: band, along: front.neck, gap: front.inset, ratio: 80 %, width: 56, join: 7, stretched part: sewn, fabric: rib }',
      {
        name: 'band',
        along: [{ piece: 'front', edge: 'neck' }],
        gap: { piece: 'front', edge: 'inset' },
        ratio: 0.8,
        width: 56,
        join: 7,
        stretchedPart: 'sewn',
        fabric: 'rib',
      },
    ],
    [
      'draft binding: { name: binding, along: front.neck, width: 10 }',
      { name: 'binding', along: [{ piece: 'front', edge: 'neck' }], width: 10 },
    ],
    [
      'draft facing: { name: facing, along: front.neck, width: 60 }',
      { name: 'facing', along: [{ piece: 'front', edge: 'neck' }], width: 60 },
    ],
  ])('%s', (text, expected) => {
    expect(parameters(text)).toEqual(expected);
  });

  test('fabrics, openings and the mapping of a foreign pattern are read', () => {
    const sheet = read(`
pattern: foreign.svg
unit: cm
fabrics: { rib: { width: 140, stretch: { across: 80 %, along: 7 % }, recovery: 90 %, nap: yes, repeat: 4, role: contrast } }
opening: { back.centre-back: 12 }
pieces: { front: { outline: path12, edges: [neck, shoulder, side, hem], kinds: { hem: hem }, allowance: 15 mm } }
print: { paper: [letter, letter] }`);
    expect(sheet.fabrics).toEqual([
      {
        name: 'rib',
        width: 1400,
        stretch: { across: 80, along: 7 },
        recovery: 90,
        nap: true,
        repeat: 40,
        role: 'contrast',
      },
    ]);
    expect(sheet.openings).toMatchObject([{ piece: 'back', edge: 'centre-back', length: 120 }]);
    expect(sheet.pieces.front).toEqual({
      outline: 'path12',
      edges: ['neck', 'shoulder', 'side', 'hem'],
      kinds: { hem: 'hem' },
      allowance: 15,
    });
    expect(sheet.print.paper).toEqual(['letter']);
  });
});

describe('what a sheet may not say, and the remedy', () => {
  // One fault a row: the step on line 3, where its value stands, what is wrong, what to do.
  test.each([
    ['close drat: { piece: front }', '3:5 There is no verb "close drat". | Did you mean "close dart"?'],
    ['kürzen: { pieces: [front] }', '3:5 There is no verb "kürzen". | Did you mean "shorten"?'],
    ['Saum verlaengern: { by: 2 }', '3:5 There is no verb "Saum verlaengern". | Did you mean "lengthen"?'],
    [
      'take in: { seam: side, by: 20, from: armhole, to: 1/2 }',
      '3:42 "from" is not a place on an edge. | Write 0 mm from armhole for the end at that edge, 60 mm from armhole, 1/3 or 40 %.',
    ],
    ['Close-Dart: { piece: front }', '3:5 There is no verb "Close-Dart". | Did you mean "close dart"?'],
    ['unfold: { pice: front, piece: front }', '3:15 "unfold" has no field "pice". | Did you mean "piece"?'],
    ['unfold: {}', '3:5 "unfold" lacks "piece". | Add "piece".'],
    ['unfold:', '3:5 "unfold" has no fields. | Write its fields as "name: value".'],
    ['unfold', '3:5 A step has no verb. | Write it as "verb: { field: value }".'],
    ['unfold: { piece: 1 }', '3:22 "piece" is not a name. | Write a name; one made of digits needs quotes.'],
    [
      'shorten: { pieces: [front, 2], at: hem, by: 1 }',
      '3:32 "pieces", item 2, is not a name. | Write a name; one made of digits needs quotes.',
    ],
    [
      'shorten: { pieces: front, at: hem, by: -1 }',
      '3:44 "by" is negative. | Give 0 or more, or use "lengthen".',
    ],
    [
      'shorten: { pieces: front, at: hem, by: twelve }',
      '3:44 "by" is not a length. | Write a length such as 12, 12 mm, 1.2 cm, 3/8 in or 2 7/8".',
    ],
    [
      'shorten: { pieces: front, at: hem, by: 10001 }',
      '3:44 "by" is over 5 m. | Give at most 5000 mm; check its unit.',
    ],
    ['shorten: { pieces: front, at: hem, by: 1e300 }', '3:44 "by" is beyond any garment. | Check its unit.'],
    [
      'close dart: { piece: front, dart: bust, into: hem, share: 120 % }',
      '3:63 "share" is over 100 %. | Give 0 % to 100 %.',
    ],
    [
      'close dart: { piece: front, dart: bust, into: hem, share: 50 }',
      '3:63 "share" is not a percentage with its sign. | Write 50 %, if that is what you mean.',
    ],
    [
      'close dart: { piece: front, dart: bust, into: hem, at: 101 % }',
      '3:60 "at" lies off its edge. | Give a share from 0 to 100 % or a length within the edge.',
    ],
    [
      'draft band: { name: band, along: front.neck, ratio: 80, width: 56 }',
      '3:57 "ratio" is not a percentage with its sign. | Write 80 %, if that is what you mean.',
    ],
    [
      'draft band: { name: band, along: front.neck, ratio: 0 %, width: 56 }',
      '3:57 "ratio" is 0 %. | Give more than 0 %, up to 200 %.',
    ],
    [
      'draft band: { name: band, along: front.neck, ratio: 201 %, width: 56 }',
      '3:57 "ratio" is over 200 %. | Give more than 0 %, up to 200 %.',
    ],
    [
      'draft band: { name: band, along: neck, ratio: 80 %, width: 56 }',
      '3:38 "along" is not an edge of a piece. | Write PIECE.EDGE, such as front.neck.',
    ],
    ['set allowance: { edges: all seams, to: -7 }', '3:44 "to" is negative. | Give 0 or more.'],
    [
      'set allowance: { edges: all seams, to: 301 }',
      '3:44 "to" is over 300 mm. | Give at most 300 mm; check its unit.',
    ],
    [
      'set allowance: { edges: all seam, to: 7 }',
      '3:29 "edges" is none of its choices. | Did you mean "all seams"?',
    ],
    [
      'recut neckline: { piece: front, shape: inset v, depth: 8, half width: 4 }',
      '3:44 "shape" is none of its choices. | Did you mean "inset V"?',
    ],
    [
      'recut neckline: { piece: front, shape: inset V, depth: 8 }',
      '3:5 "recut neckline" lacks "half width". | Add "half width".',
    ],
    ['recut neckline: { piece: front, shape: round }', '3:5 "recut neckline" lacks "depth". | Add "depth".'],
    [
      'spread: { piece: back, from: { edge: hem }, to: { edge: neck }, by: 1, angle: 1 }',
      '3:5 "spread" has both "by" and "angle". | Keep one of the two.',
    ],
    [
      'spread: { piece: back, from: { edge: hem }, to: { edge: neck } }',
      '3:5 "spread" lacks "by" or "angle" or "ratio". | Add one of them.',
    ],
    [
      'spread: { piece: back, from: { edge: hem }, to: { edge: neck }, angle: 180 }',
      '3:76 "angle" is half a turn or more. | Give less than 180 degrees.',
    ],
    [
      'spread: { piece: back, from: { edge: hem }, to: { edge: neck }, by: 1, slashes: 1.5 }',
      '3:85 "slashes" is not a whole number. | Write a whole number.',
    ],
  ])('%s', (text, expected) => {
    expect(refusals(withSteps(text))).toEqual([expected]);
  });

  test.each([
    ['unit: inch', '1:7 "unit" is none of its choices. | Write one of: mm, cm, in.'],
    ['titel: x', '1:1 The sheet has no field "titel". | Did you mean "title"?'],
    ['wearer: { bust grith: 1000 }', '1:11 "wearer" has no field "bust grith". | Did you mean "bust girth"?'],
    [
      'wearer: { bust girth: 10000 }',
      '1:23 "bust girth" is over 4 m. | Give at most 4000 mm; check its unit.',
    ],
    ['wearer: { bust girth: 3 }', '1:23 "bust girth" is under 20 mm. | Give 20 mm to 4000 mm.'],
    ['fabrics: { main: { stretch: 301 % } }', '1:29 "stretch" is over 300 %. | Give 0 % to 300 %.'],
    [
      'fabrics: { main: { stretch: 40 } }',
      '1:29 "stretch" is not a percentage with its sign. | Write 40 %, if that is what you mean.',
    ],
    [
      'opening: { back: 3 }',
      '1:12 "back" is not an edge of a piece. | Write PIECE.EDGE and a length, such as back.centre-back: 120 mm.',
    ],
    [
      'print: { paper: a9 }',
      '1:17 "paper" is none of its choices. | Write one of: a4, a3, a2, a1, a0, letter, legal, tabloid, arch-e, roll-24, roll-36, roll-42.',
    ],
    ['steps: 3', '1:8 "steps" is not a list. | Write each item on its own line after "- ".'],
  ])('%s', (line, expected) => {
    expect(refusals(`${line}\npattern: shift.svg`)).toEqual([expected]);
  });

  test('a sheet without a pattern is refused', () => {
    expect(refusals('steps: []')).toEqual(['1:1 The sheet lacks "pattern". | Add "pattern".']);
  });

  test('fields beside their verb instead of under it are explained', () => {
    expect(refusals('pattern: a.svg\nsteps:\n  - unfold:\n    piece: front')).toEqual([
      '4:5 The step has "piece" beside its verb. | Indent the fields deeper than the verb.',
    ]);
  });

  test('all faults are told at once, in the order they stand', () => {
    const text = `unit: inch\n${withSteps('unfold: { pice: front }', 'close drat: {}', 'draft stay: { name: stay, along: front.neck, width: 0 }')}`;
    expect(refusals(text)).toEqual([
      '1:7 "unit" is none of its choices. | Write one of: mm, cm, in.',
      '4:15 "unfold" has no field "pice". | Did you mean "piece"?',
      '5:5 There is no verb "close drat". | Did you mean "close dart"?',
      '6:57 "width" is nothing. | Give a length over 0.',
    ]);
  });

  test('each fault in a step gives its number', () => {
    expect(() => read(withSteps('unfold: { piece: front }', 'unfold: {}'))).toThrow(
      expect.objectContaining({
        code: 'missing-field',
        where: { file: 'top.yaml', line: 4, column: 5, step: 2 },
      }),
    );
  });

  test('of very many faults the first fifty are told, and how many more there are', () => {
    const told = refusals(withSteps(...Array.from({ length: 120 }, () => 'unfold: {}')));
    expect(told).toHaveLength(51);
    expect(told.at(-1)).toContain('The sheet has 70 more faults.');
  });
});
