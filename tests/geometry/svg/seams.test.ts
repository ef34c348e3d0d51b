import { type EdgeRun, PatternError, readPattern } from '@paperhinge/geometry';
import { describe, expect, test } from 'vitest';
import { told, toldFinding } from '../../support/told.js';

/** Front and back on the fold, each with neck, shoulder, armhole and a side; the front's side has a dart. */
const front =
  '<g data-piece="front" data-allowance="10"><path data-edge="neck" d="M0 20L20 0"/><path data-edge="shoulder" d="M20 0H60"/><path data-edge="armhole" d="M60 0L80 40"/><path data-edge="side-upper" d="M80 40V60"/><path data-dart="bust" d="M80 60L40 65L80 70"/><path data-edge="side-lower" d="M80 70V150"/><path data-edge="hem" d="M80 150H0"/><path data-edge="centre" data-kind="fold" d="M0 150V20"/></g>';
const back =
  '<g data-piece="back" data-allowance="10" transform="translate(200)"><path data-edge="neck" d="M0 10L20 0"/><path data-edge="shoulder" d="M20 0H60"/><path data-edge="armhole" d="M60 0L80 40"/><path data-edge="side" d="M80 40V140"/><path data-edge="hem" d="M80 140H0"/><path data-edge="centre" data-kind="fold" d="M0 140V10"/></g>';
const collar =
  '<g data-piece="collar" data-allowance="10" transform="translate(400)"><path data-edge="outer" d="M0 0C20 -30 60 -30 80 0"/><path data-edge="inner" d="M80 0C60 -10 20 -10 0 0"/></g>';

const drawing = (metadata: string) =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="600mm" height="200mm" viewBox="0 0 600 200" data-unit="in">\n<metadata>\n${metadata}\n</metadata>${front}${back}${collar}</svg>`;
const read = (seams: string) => readPattern(drawing(`{ "seams": {\n${seams}\n} }`), { file: 's.svg' });
const refusal = (metadata: string): ReturnType<typeof told> => {
  try {
    readPattern(drawing(metadata), { file: 's.svg' });
  } catch (error) {
    if (error instanceof PatternError) return told(error);
    throw error;
  }
  throw new Error('it was read');
};
const seamRefusal = (seams: string) => refusal(`{ "seams": {\n${seams}\n} }`);
const runs = (side: readonly EdgeRun[]) =>
  side.map(r => `${r.piece}.${r.edge}${r.reversed ? ' reversed' : ''}`);

describe('runs', () => {
  test('begin at the neighbour they name: an edge or a dart that shares a corner', () => {
    const { pattern, findings } = read(
      '"shoulder": { "a": "front.shoulder from neck", "b": "back.shoulder from armhole" }, "lower": { "a": "front.side-lower from bust", "b": "back.side from hem" }',
    );
    expect(findings).toEqual([]);
    expect(pattern.seams.map(s => [runs(s.a), runs(s.b)])).toEqual([
      [['front.shoulder'], ['back.shoulder reversed']],
      [['front.side-lower'], ['back.side reversed']],
    ]);
  });

  test('where one neighbour touches both ends, begin at start or end', () => {
    const { pattern } = read('"c": { "a": "collar.inner from start", "b": "front.neck from end" }');
    expect(runs(pattern.seams[0]!.a)).toEqual(['collar.inner']);
    expect(runs(pattern.seams[0]!.b)).toEqual(['front.neck reversed']);
    expect(seamRefusal('"c": { "a": "collar.inner from outer", "b": "front.neck from end" }')).toMatchObject({
      code: 'ambiguous-end',
      where: { file: 's.svg', line: 4, piece: 'collar', edge: 'inner' },
      remedy: expect.stringContaining('Write "from start" or "from end"'),
    });
  });

  test('without a word begin at the start, with a finding', () => {
    const { pattern, findings } = read('"side": { "a": "front.side-lower", "b": "back.side from armhole" }');
    expect(runs(pattern.seams[0]!.a)).toEqual(['front.side-lower']);
    expect(findings).toMatchObject([
      {
        code: 'run-direction-not-given',
        severity: 'note',
        where: { file: 's.svg', line: 4, piece: 'front', edge: 'side-lower' },
      },
    ]);
  });

  test('later in a list go on across a dart', () => {
    const { pattern, findings } = read(
      '"side": { "a": ["front.side-lower from hem", "front.side-upper"], "b": "back.side from hem" }',
    );
    expect(runs(pattern.seams[0]!.a)).toEqual(['front.side-lower reversed', 'front.side-upper reversed']);
    expect(findings).toEqual([]);
  });

  test('later in a list go on across a seam, whichever way that seam was written', () => {
    for (const shoulder of [
      '"a": "front.shoulder from neck", "b": "back.shoulder from neck"',
      '"b": "front.shoulder from armhole", "a": "back.shoulder from armhole"',
    ])
      for (const list of [
        '"neck": { "a": ["front.neck from centre", "back.neck"], "b": "collar.inner from start" }',
      ]) {
        const { pattern, findings } = read(`${list}, "shoulder": { ${shoulder} }`);
        expect(runs(pattern.seams[0]!.a)).toEqual(['front.neck', 'back.neck reversed']);
        expect(findings).toEqual([]);
      }
    const { pattern } = read(
      '"armhole": { "a": ["front.armhole from side-upper", "back.armhole"], "b": "collar.outer from start" }, "shoulder": { "a": "front.shoulder from neck", "b": "back.shoulder from neck" }',
    );
    expect(runs(pattern.seams[0]!.a)).toEqual(['front.armhole reversed', 'back.armhole']);
  });

  test('later in a list with nothing to go on across begin at the start, with a finding', () => {
    const { pattern, findings } = read(
      '"neck": { "a": ["front.neck from centre", "back.neck"], "b": "collar.inner from start" }',
    );
    expect(runs(pattern.seams[0]!.a)).toEqual(['front.neck', 'back.neck']);
    expect(findings.map(f => f.code)).toEqual(['run-direction-not-given']);
  });

  test.each([
    [
      '"side": {\n "a": "frnt.side-lower from bust", "b": "back.side from hem" }',
      'unknown-piece',
      'Did you mean "front"?',
      5,
    ],
    [
      '"side": {\n\n "a": "front.side-lowr from bust", "b": "back.side from hem" }',
      'unknown-edge',
      'Did you mean "side-lower"?',
      6,
    ],
    [
      '"side": { "a": "front.side-lower from neck", "b": "back.side from hem" }',
      'not-a-neighbour',
      'Write "from bust" or "from hem".',
      4,
    ],
    [
      '"side": { "a": "front", "b": "back.side from hem" }',
      'metadata-not-understood',
      'Write it as "piece.edge from neighbour".',
      4,
    ],
    [
      '"side": { "a": 7, "b": "back.side from hem" }',
      'metadata-not-understood',
      'Write it as "piece.edge from neighbour".',
      4,
    ],
    ['"side": { "a": [], "b": "back.side from hem" }', 'empty-seam', 'Give both sides, a and b.', 4],
    ['"side": { "b": "back.side from hem" }', 'empty-seam', 'Give both sides, a and b.', 4],
    ['"side": "front"', 'metadata-not-understood', 'Write it in braces', 4],
    [
      '"side": { "a": "front.hem from centre", "b": "back.hem from centre", "ease": "3" , "ease": "4" }',
      'metadata-not-json',
      'Mend it there',
      4,
    ],
    [
      '"side": { "a": "front.hem from centre", "b": "back.hem from centre", "ease": "some" }',
      'metadata-not-understood',
      'Write it as "12 mm" or "-3 %".',
      4,
    ],
  ])('%s is refused with its line and a remedy', (seams, code, remedy, line) => {
    const error = seamRefusal(seams);
    expect(error.code).toBe(code);
    expect(error.remedy).toContain(remedy);
    expect(error.where).toMatchObject({ file: 's.svg', line });
  });
});

describe('ease', () => {
  test.each([
    ['"12 mm"', { mm: 12 }],
    ['"1/2"', { mm: 12.7 }],
    ['2', { mm: 50.8 }],
    ['"-3 %"', { percent: -3 }],
    ['"7.5%"', { percent: 7.5 }],
  ])('%s is understood', (written, ease) => {
    const { pattern } = read(
      `"hem": { "a": "front.hem from centre", "b": "back.hem from centre", "ease": ${written} }`,
    );
    expect(pattern.seams[0]!.ease).toEqual(ease);
  });

  test('not given is none', () => {
    expect(
      read('"hem": { "a": "front.hem from centre", "b": "back.hem from centre" }').pattern.seams[0]!.ease,
    ).toEqual({ mm: 0 });
  });
});

describe('fabrics', () => {
  const fabrics = (json: string) => readPattern(drawing(`{ "fabrics": ${json} }`)).pattern.fabrics;

  test('have width, stretch in one direction or two, recovery, nap, repeat and role', () => {
    expect(fabrics('{ "main": { "width": "150 cm", "stretch": "35 %" } }')).toEqual([
      { name: 'main', width: 1500, stretch: { across: 35 }, role: 'main' },
    ]);
    expect(
      fabrics(
        '{ "rib": { "width": 40, "stretch": { "across": "60 %", "along": "20 %" }, "recovery": "90 %", "nap": true, "repeat": "4 in", "role": "contrast" }, "lining": {} }',
      ),
    ).toEqual([
      {
        name: 'rib',
        width: 1016,
        stretch: { across: 60, along: 20 },
        recovery: 90,
        nap: true,
        repeat: 101.6,
        role: 'contrast',
      },
      { name: 'lining', role: 'lining' },
    ]);
  });

  test.each([
    ['{ "main": { "stretch": 35 } }', 'percent-not-understood', 'Write 35 %'],
    ['{ "main": { "stretch": "400 %" } }', 'stretch-out-of-range', 'Check the figure.'],
    ['{ "main": { "stretch": "-5 %" } }', 'stretch-out-of-range', 'Check the figure.'],
    ['{ "main": { "width": "wide" } }', 'length-not-understood', '12 mm'],
    ['{ "main": { "width": "-3 cm" } }', 'length-not-positive', 'Give its length'],
    ['{ "main": { "role": "linning" } }', 'metadata-not-understood', 'Did you mean "lining"?'],
    ['[]', 'metadata-not-understood', 'Write it in braces'],
  ])('%s is refused', (json, code, remedy) => {
    const error = refusal(`{ "fabrics": ${json} }`);
    expect(error).toMatchObject({ code, where: { line: 3 } });
    expect(error.remedy).toContain(remedy);
  });
});

describe('the metadata', () => {
  test.each([
    '{ "seams": }',
    '{ "seams": {}',
    '{ "a": 1 "b": 2 }',
    "{ 'seams': {} }",
    '{ "a": 01 }',
    '{} {}',
    `${'{"a":'.repeat(200)}1${'}'.repeat(200)}`,
  ])('that are no JSON are refused with the place, not quoted: %s', json => {
    const error = refusal(json);
    expect(error).toMatchObject({
      code: 'metadata-not-json',
      where: { file: 's.svg', line: 3, column: expect.any(Number) },
    });
  });

  test('of other programs are passed over, keys of ours that are unknown are a finding', () => {
    expect(
      readPattern(drawing('<rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"/>')).findings,
    ).toEqual([]);
    const { findings } = readPattern(drawing('{ "seams": {}, "fabric": {} }'));
    expect(findings.map(found => toldFinding(found))).toMatchObject([
      { code: 'metadata-not-read', where: { line: 3 }, remedy: 'Did you mean "fabrics"?' },
    ]);
    expect(
      readPattern(drawing('{ "fabrics": { "main": { "colour": "black" } } }')).findings.map(f => f.code),
    ).toEqual(['metadata-not-read']);
  });

  test('may stand in a CDATA section or be written with references', () => {
    const seam = '{ "seams": { "hem": { "a": "front.hem from centre", "b": "back.hem from centr" } } }';
    for (const written of [`<![CDATA[${seam}]]>`, seam.replaceAll('"', '&quot;')])
      expect(refusal(written)).toMatchObject({ code: 'not-a-neighbour', where: { line: 3 } });
  });
});

test('names with dots, spaces and the word "from" are found', () => {
  const piece = (name: string, x: number) =>
    `<g data-piece="${name}" data-allowance="1" transform="translate(${x})"><path data-edge="a from b" d="M0 0H9"/><path data-edge="side.left" d="M9 0V9"/><path data-edge="b" d="M9 9L0 0"/></g>`;
  const source = `<svg xmlns="http://www.w3.org/2000/svg"><metadata>{"seams":{"s":{"a":"my.piece.a from b from b","b":"my.side.left from a from b"}}}</metadata>${piece('my.piece', 0)}${piece('my', 99)}</svg>`;
  const { seams } = readPattern(source).pattern;
  expect(seams[0]!.a).toEqual([{ piece: 'my.piece', edge: 'a from b', reversed: false }]);
  expect(seams[0]!.b).toEqual([{ piece: 'my', edge: 'side.left', reversed: false }]);
});
