import {
  at,
  type Cutting,
  definePattern,
  definePiece,
  type Edge,
  type EdgeSpec,
  type Fastening,
  type Pattern,
  PatternError,
  type Pleat,
  polyline,
  readPattern,
  type Seam,
  writePattern,
} from '@paperhinge/geometry';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { told, toldFinding } from '../../support/told.js';

/** mm: what writing and reading must keep (design §4). */
const kept = 1e-6;

type Corner = readonly [number, number];
const edge = (name: string, points: readonly Corner[], more: Partial<EdgeSpec> = {}): EdgeSpec => ({
  name,
  allowance: more.kind === 'fold' ? 0 : 10,
  path: polyline(...points.map(([x, y]) => at(x, y))),
  ...more,
});

const pleat: Pleat = {
  type: 'pleat',
  name: 'front pleat',
  kind: 'box',
  mouth: polyline(at(120, 0), at(160, 0)),
  towards: 'start',
  stitched: 61.5,
};

/** A skirt with everything an edge, a piece and a seam can carry. */
const skirt = (
  changes: Partial<Pick<Pattern, 'seams' | 'fastenings' | 'tolerance' | 'size'>> = {},
): Pattern =>
  definePattern({
    name: 'skirt',
    pieces: [
      definePiece({
        name: 'skirt',
        role: 'skirt',
        outline: [
          edge('waist', [
            [0, 0],
            [120, 0],
          ]),
          pleat,
          edge('waist', [
            [160, 0],
            [300, 0],
          ]),
          edge(
            'side',
            [
              [300, 0],
              [320, 500],
            ],
            { opening: 200.125, topstitch: 6, interfacing: 25.4, role: 'side' },
          ),
          edge(
            'hem',
            [
              [320, 500],
              [0, 500],
            ],
            { kind: 'hem', allowance: 30, finish: 'turned twice' },
          ),
          edge(
            'centre',
            [
              [0, 500],
              [0, 0],
            ],
            { kind: 'fold' },
          ),
        ],
        cutting: {
          count: 4,
          mirrored: false,
          layers: 2,
          rightSideUp: true,
          fabric: 'main',
          note: 'nap down',
        },
        alsoCut: [
          { count: 2, mirrored: false, fabric: 'lining' },
          {
            count: 1,
            mirrored: true,
            layers: 3,
            rightSideUp: true,
            fabric: 'a "b", c (d)',
            note: 'less 2 mm, (all)',
          },
        ],
        greatestStretch: 'along',
      }),
      definePiece({
        name: 'band, from x',
        outline: [
          edge('top', [
            [400, 0],
            [700, 0],
          ]),
          edge('end', [
            [700, 0],
            [700, 40],
          ]),
          edge('sewn, to 2', [
            [700, 40],
            [400, 40],
          ]),
          edge('start', [
            [400, 40],
            [400, 0],
          ]),
        ],
      }),
    ],
    fabrics: [{ name: 'main', role: 'main' }],
    ...changes,
  });

const roundTrip = (pattern: Pattern) => readPattern(writePattern(pattern));

/** Numbers within what is kept, all else the same. */
function expectSame(a: unknown, b: unknown, path = ''): void {
  if (typeof a === 'number' && typeof b === 'number') {
    if (Math.abs(a - b) > kept) throw new Error(`${path}: ${a} and ${b}`);
  } else if (typeof a === 'object' && a !== null && typeof b === 'object' && b !== null) {
    expect([path, Object.keys(a).sort()]).toEqual([path, Object.keys(b).sort()]);
    for (const key of Object.keys(a))
      expectSame((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key], `${path}.${key}`);
  } else expect([path, a]).toEqual([path, b]);
}

describe('every fact of a garment is written and read again', () => {
  test('of pieces, edges and pleats', () => {
    const { pattern, findings } = roundTrip(skirt());
    expect(findings).toEqual([]);
    expectSame(pattern, skirt());
    const written = writePattern(skirt());
    expect(written).toContain('data-paperhinge="2"');
    expect(written).toContain('data-also-cut="2 lining, 1 ');
    expect(written).toContain('data-finish="turned twice"');
  });

  test('of the pattern: a size, a tolerance, fastenings of every kind', () => {
    const fastenings: readonly Fastening[] = [
      {
        name: 'side zip',
        kind: 'zip',
        along: { piece: 'skirt', edge: 'side', reversed: false, part: { from: 0, to: 200.125 } },
        length: 200,
        sort: 'invisible',
      },
      {
        name: 'buttons',
        kind: 'buttons',
        along: { piece: 'band, from x', edge: 'start', reversed: true },
        count: 3,
        spacing: 12.5,
        size: 11,
        overlap: 20,
        underlap: 25,
      },
      {
        name: 'elastic',
        kind: 'elastic',
        along: { piece: 'band, from x', edge: 'top', reversed: false },
        size: 25,
        relaxed: 250,
      },
    ];
    const pattern = skirt({ fastenings, tolerance: 2, size: '14' });
    expectSame(roundTrip(pattern).pattern, pattern);
    expect(roundTrip(pattern).findings).toEqual([]);
  });

  test('of seams: parts of edges, how a difference is taken up, tolerances', () => {
    const seams: readonly Seam[] = [
      {
        name: 'waist',
        a: [
          { piece: 'skirt', edge: 'waist', reversed: false, part: { from: 12.25, to: 220 } },
          { piece: 'skirt', edge: 'waist', reversed: true, part: { from: 230, to: 259.5 } },
        ],
        b: [{ piece: 'band, from x', edge: 'sewn, to 2', reversed: true, part: { from: 0, to: 150 } }],
        ease: { percent: 12.5 },
        takenUp: 'gathered',
        tolerance: 1.5,
      },
    ];
    const pattern = skirt({ seams });
    expectSame(roundTrip(pattern).pattern, pattern);
    expect(writePattern(pattern)).toContain('skirt.waist from centre, 12.25 mm to 220 mm');
  });

  test('any part of any edge in either direction', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.9, noNaN: true }),
        fc.double({ min: 0.05, max: 0.1, noNaN: true }),
        fc.boolean(),
        fc.constantFrom('takenUp', 'eased', 'stretched', 'pleated'),
        (start, share, reversed, takenUp) => {
          const run = {
            piece: 'skirt',
            edge: 'side',
            reversed,
            part: { from: start * 500, to: (start + share) * 500 },
          };
          const other = { piece: 'band, from x', edge: 'top', reversed: !reversed };
          const seam: Seam = { name: 's', a: [run], b: [other], ease: { mm: 0 } };
          const told = takenUp === 'takenUp' ? seam : { ...seam, takenUp: takenUp as 'eased' };
          expectSame(roundTrip(skirt({ seams: [told] })).pattern.seams, [told]);
        },
      ),
      { numRuns: 30 },
    );
  });

  test('whatever cloths a piece is cut from besides', () => {
    const anyCutting: fc.Arbitrary<Cutting> = fc.record(
      {
        count: fc.integer({ min: 1, max: 40 }),
        mirrored: fc.boolean(),
        layers: fc.integer({ min: 1, max: 9 }),
        rightSideUp: fc.constant(true as const),
        fabric: fc.string({ minLength: 1, unit: 'binary' }).filter(isWritable),
        note: fc.string({ unit: 'binary' }).filter(isWritable),
      },
      { requiredKeys: ['count', 'mirrored', 'fabric'] },
    );
    fc.assert(
      fc.property(fc.array(anyCutting, { minLength: 1, maxLength: 4 }), alsoCut => {
        const [piece] = skirt().pieces;
        const pattern: Pattern = { ...skirt(), pieces: [{ ...piece!, alsoCut }] };
        expect(roundTrip(pattern).pattern.pieces[0]!.alsoCut).toEqual(alsoCut);
      }),
      { numRuns: 60 },
    );
  });
});

/** What an XML file can hold, and what is a name. */
const isWritable = (text: string): boolean =>
  text.trim() === text &&
  [...text].every(
    c => c === '\t' || c === '\n' || (c >= ' ' && !/[\ud800-\udfff\ufffe\uffff]/.test(c)) || c > '\uffff',
  );

describe('places of a part', () => {
  const read = (run: string) => {
    const source = writePattern(
      skirt({
        seams: [
          {
            name: 's',
            a: [{ piece: 'skirt', edge: 'hem', reversed: false }],
            b: [{ piece: 'band, from x', edge: 'top', reversed: false }],
            ease: { mm: 0 },
          },
        ],
      }),
    );
    return readPattern(source.replace('skirt.hem from side', run)).pattern.seams[0]!.a[0]!;
  };

  test.each([
    ['skirt.hem from side, 60 mm to 220 mm', { reversed: false, part: { from: 60, to: 220 } }],
    ['skirt.hem from centre, 60 mm to 220 mm', { reversed: true, part: { from: 100, to: 260 } }],
    ['skirt.hem from side, 1/4 to 50 %', { reversed: false, part: { from: 80, to: 160 } }],
    ['skirt.hem from side, start to 6 cm', { reversed: false, part: { from: 0, to: 60 } }],
    ['skirt.hem from centre, 300 mm to end', { reversed: true, part: { from: 0, to: 20 } }],
  ])('%s', (run, expected) => {
    expect(read(run)).toMatchObject({ reversed: expected.reversed });
    expectSame(read(run).part, expected.part);
  });

  test.each([
    'skirt.hem from side, 220 mm to 60 mm',
    'skirt.hem from side, 60 mm to 400 mm',
    'skirt.hem from side, 60 mm to 60 mm',
  ])('%s is refused', run => {
    expect(() => read(run)).toThrow(expect.objectContaining({ code: 'position-off-edge' }));
  });
});

describe('files of before there were versions', () => {
  const written = (changes: Partial<Cutting>) => {
    const [piece, band] = skirt().pieces;
    const sides = piece!.outline.parts.map(part =>
      part.type === 'edge' && part.kind === 'fold' ? ({ ...part, kind: 'seam' } as Edge) : part,
    );
    const pattern = skirt({
      seams: [
        {
          name: 's',
          a: [{ piece: 'skirt', edge: 'side', reversed: false }],
          b: [{ piece: 'skirt', edge: 'centre', reversed: false }],
          ease: { mm: 0 },
        },
      ],
    });
    const one = {
      ...piece!,
      outline: { parts: sides },
      cutting: { count: 1, mirrored: false, fabric: 'main', ...changes },
    };
    return writePattern({ ...pattern, pieces: [one, band!] });
  };

  test.each([
    [{ count: 6 }, ['copies-count-now']],
    [{ count: 2 }, ['copies-count-now']],
    [{ count: 2, mirrored: true }, []],
    [{ count: 4, mirrored: true, layers: 2 }, []],
    [{ count: 1 }, []],
  ])('%j: read, with a note where copies count otherwise now', (cutting, codes) => {
    const now = written(cutting);
    expect(readPattern(now).findings).toEqual([]);
    const before = readPattern(now.replace(' data-paperhinge="2"', ''));
    expect(before.findings.map(found => found.code)).toEqual(codes);
    expectSame(before.pattern, readPattern(now).pattern);
  });

  test('what the note says', () => {
    const [found] = readPattern(written({ count: 6 }).replace(' data-paperhinge="2"', '')).findings;
    expect(toldFinding(found!).message).toBe(
      'The skirt counts 6 times in its seams now; when this file was written it counted once.',
    );
  });

  test('a version of later is told', () => {
    const source = written({}).replace('data-paperhinge="2"', 'data-paperhinge="3"');
    expect(readPattern(source).findings.map(found => found.code)).toEqual(['version-not-known']);
  });
});

describe('what is not understood', () => {
  const refused = (from: string, to: string) => {
    try {
      const source = writePattern(
        skirt({
          fastenings: [
            { name: 'zip', kind: 'zip', along: { piece: 'skirt', edge: 'side', reversed: false } },
          ],
        }),
      );
      expect(source).toContain(from);
      readPattern(source.replace(from, to));
    } catch (error) {
      if (error instanceof PatternError) return told(error);
      throw error;
    }
    return undefined;
  };

  test.each([
    [
      'data-finish="turned twice"',
      'data-finish="turned thrice"',
      'word-not-understood',
      'Did you mean "turned twice"?',
    ],
    ['data-pleat-kind="box"', 'data-pleat-kind="bax"', 'word-not-understood', 'Did you mean "box"?'],
    [
      'data-topstitch="6 mm"',
      'data-topstitch="-6 mm"',
      'length-not-positive',
      'Give its length, or leave it out.',
    ],
    ['data-layers="2"', 'data-layers="0"', 'cut-count', 'Write 1, or 2 for a pair.'],
    [
      'data-also-cut="2 lining',
      'data-also-cut="lining',
      'also-cut-not-understood',
      'as in "2 lining, 1 interfacing"',
    ],
    ['"kind": "zip"', '"kind": "zib"', 'metadata-not-understood', 'Did you mean "zip"?'],
    [
      '"along": "skirt.side from front pleat"',
      '"along": "skirt.sid"',
      'unknown-edge',
      'Did you mean "side"?',
    ],
  ])('%s written as %s', (from, to, code, remedy) => {
    const error = refused(from.replace('front pleat', 'waist'), to);
    expect(error?.code).toBe(code);
    expect(error?.remedy).toContain(remedy);
    expect(error?.where.line).toBeGreaterThan(1);
  });
});
