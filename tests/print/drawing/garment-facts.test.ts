import { at, type Fastening, line, type Pattern, type Piece, type Pleat, pathOf } from '@paperhinge/geometry';
import { drawPattern, type Ink, letteringBox } from '@paperhinge/print/drawing';
import { describe, expect, test } from 'vitest';
import { inkChords } from '../../../packages/print/src/drawing/piece-shape.js';
import { isFree } from '../../../packages/print/src/drawing/room.js';
import { patternOf, rectangle } from '../simple-pieces.js';

/** Half as wide as high, near enough to any sans. */
const measure = { width: (text: string, size: number) => text.length * size * 0.5 };
const drawn = (pattern: Pattern, language: 'en' | 'de' = 'en'): readonly Ink[] =>
  drawPattern(pattern, measure, { language })[0]!.drawing.inks;
const words = (inks: readonly Ink[]): readonly string[] =>
  inks.flatMap(i => (i.kind === 'text' ? [i.text] : []));
const points = (inks: readonly Ink[], role: string) =>
  inks
    .filter(i => i.role === role && i.kind === 'stroke')
    .map(i => (i.kind === 'stroke' ? i.path : undefined)!);

const panel = (changes: Partial<Piece> = {}): Piece => rectangle('front', 400, 500, 15, changes);
const mouth = pathOf(line(at(150, 0), at(210, 0)));

function pleated(pleat: Partial<Pleat>): Pattern {
  const piece = panel();
  const [top, ...rest] = piece.outline.parts;
  if (top?.type !== 'edge') throw new Error('the rectangle starts with an edge');
  const fold: Pleat = {
    type: 'pleat',
    name: 'p',
    kind: 'knife',
    mouth,
    towards: 'start',
    stitched: 0,
    ...pleat,
  };
  const parts = [
    { ...top, path: pathOf(line(at(0, 0), at(150, 0))) },
    fold,
    { ...top, path: pathOf(line(at(210, 0), at(400, 0))) },
    ...rest,
  ];
  return patternOf({ ...piece, outline: { parts } });
}

describe('a pleat', () => {
  test('shows its folds, the way it is laid and how far it is stitched', () => {
    const inks = drawn(pleated({ stitched: 80 }));
    expect(words(inks)).toContain('knife pleat, stitch 80 mm down');
    const stitched = points(inks, 'stitch').filter(
      p => p.segments[0]![0].x === 150 && p.segments[0]!.at(-1)!.x === 150,
    );
    expect(stitched.map(p => p.segments[0]!.at(-1)!.y)).toEqual([80]);
    // Laid towards its start: the arrow's head points to x = 150.
    const arrow = points(inks, 'grain').at(-1)!;
    expect([arrow.segments[0]![0].x, arrow.segments[0]!.at(-1)!.x]).toEqual([210, 150]);
  });

  test.each([
    ['box', 2],
    ['inverted', 2],
    ['tuck', 1],
  ] as const)('%s has %i folds within its mouth', (kind, folds) => {
    const inks = drawn(pleated({ kind }));
    const xs = points(inks, 'fold-line')
      .filter(({ segments: [s] }) => s![0].x === s!.at(-1)!.x && s![0].x > 150 && s![0].x < 210)
      .map(({ segments: [s] }) => s![0].x);
    expect(new Set(xs).size).toBe(folds);
  });
});

describe('how a piece is cut', () => {
  test('a line for each cloth, and that it is not turned over', () => {
    const said = words(
      drawn(
        patternOf(
          panel({
            cutting: { count: 1, mirrored: false, rightSideUp: true, fabric: 'main' },
            alsoCut: [
              { count: 2, mirrored: true, fabric: 'lining' },
              { count: 1, mirrored: false, fabric: 'interfacing' },
            ],
          }),
        ),
      ),
    );
    expect(said).toEqual(
      expect.arrayContaining([
        'cut 1 of main',
        'cut 2 of lining, 1 mirrored',
        'cut 1 of interfacing',
        'right side up only',
      ]),
    );
  });

  test('in how many layers copies lie on one another, on the line of their count', () => {
    const cutting = { count: 4, mirrored: true, layers: 2, fabric: 'main' };
    const collar = patternOf(panel({ cutting }));
    expect(words(drawn(collar))).toContain('cut 4, 2 mirrored, in 2 layers');
    expect(words(drawn(collar, 'de'))).toContain('4 × zuschneiden, 2 davon gegengleich, in 2 Lagen');
    const single = { ...cutting, count: 2, mirrored: false, layers: 1 };
    expect(words(drawn(patternOf(panel({ cutting: single }))))).toContain('cut 2');
    const lined = panel({ cutting: single, alsoCut: [{ ...cutting, fabric: 'lining' }] });
    expect(words(drawn(patternOf(lined)))).toContain('cut 4 of lining, 2 mirrored, in 2 layers');
    expect(words(drawn(patternOf(lined), 'de'))).toContain('4 × Futter, 2 davon gegengleich, in 2 Lagen');
  });

  test('a stamp of a piece has count and cloth beside it, at the end of a line', () => {
    const inks = drawn(
      patternOf(rectangle('stamp', 9, 6, 2, { cutting: { count: 4, mirrored: false, fabric: 'main' } })),
    );
    expect(words(inks)).toContain('cut 4 · main fabric');
    expect(points(inks, 'leader')).toHaveLength(1);
  });
});

describe('what closes an edge', () => {
  const along = { piece: 'front', edge: 'edge-2', reversed: false };
  const closed = (fastening: Omit<Fastening, 'name' | 'along'>): Pattern => ({
    ...patternOf(panel()),
    fastenings: [{ name: 'f', along, ...fastening }],
  });

  test('a zip by its kind and length', () => {
    expect(words(drawn(closed({ kind: 'zip', sort: 'invisible', length: 220 })))).toContain(
      'invisible zip 220 mm',
    );
  });

  test('each button in its place, half an overlap inside the edge', () => {
    const inks = drawn(closed({ kind: 'buttons', count: 5, size: 15, overlap: 30 }));
    const rings = points(inks, 'mark').filter(p => p.segments.length === 4);
    expect(rings.map(p => p.segments[0]![0].y)).toEqual([15, 132.5, 250, 367.5, 485]);
    expect(new Set(rings.map(p => p.segments[0]![0].x))).toEqual(new Set([400 - 15 + 3]));
    expect(words(inks)).toContain('5 × buttons 15 mm');
  });

  test('buttons that the maker has marked are not marked again', () => {
    const marks = [{ kind: 'button', name: 'top', at: at(380, 40) }];
    const inks = drawn({ ...closed({ kind: 'buttons', count: 5, size: 15 }), pieces: [panel({ marks })] });
    expect(points(inks, 'mark').filter(p => p.segments.length === 4)).toHaveLength(1);
  });

  test('an elastic by its relaxed length', () => {
    expect(words(drawn(closed({ kind: 'elastic', relaxed: 380 })))).toContain('elastic 380 mm');
  });
});

test('an edge says how it is finished and where it is topstitched', () => {
  const piece = panel();
  const parts = piece.outline.parts.map((p, i) =>
    p.type === 'edge' && i === 2
      ? { ...p, kind: 'hem' as const, finish: 'turned twice' as const, topstitch: 12 }
      : p,
  );
  const inks = drawn(patternOf({ ...piece, outline: { parts } }));
  expect(words(inks)).toContain('hem 15 mm, turned twice, topstitch at 12 mm');
  for (const p of points(inks, 'topstitch').flatMap(l => l.segments.flat())) expect(p.y).toBeCloseTo(488, 9);
});

test('a part of an edge that is gathered shows its ends and what it becomes', () => {
  const cuff = rectangle('cuff', 200, 60, 10);
  const inks = drawn({
    ...patternOf(panel(), cuff),
    seams: [
      {
        name: 'cuff',
        a: [{ piece: 'front', edge: 'edge-1', reversed: false, part: { from: 50, to: 350 } }],
        b: [{ piece: 'cuff', edge: 'edge-1', reversed: false }],
        ease: { mm: 100 },
        takenUp: 'gathered',
      },
    ],
  });
  expect(words(inks)).toContain('gather to 200 mm');
  const ends = points(inks, 'mark').map(p => p.segments[0]![0].x);
  expect(ends).toEqual(expect.arrayContaining([50, 350]));
});

test('greatest stretch is an arrow across the piece', () => {
  const inks = drawn(patternOf(panel({ greatestStretch: 'across' })));
  expect(words(inks)).toContain('greatest stretch');
  const arrow = points(inks, 'grain')[0]!.segments[0]!;
  expect(arrow[0].y).toBeCloseTo(arrow.at(-1)!.y, 9);
});

test('notches are named beside their tick', () => {
  const notches = [{ edge: 'edge-1', at: 120, style: 'single', name: 'sleeve top' }] as const;
  expect(words(drawn(patternOf(panel({ notches }))))).toContain('sleeve top');
});

test('no word lies on a line or another word, none is under 7 pt', () => {
  const inks = drawn({
    ...pleated({ stitched: 60 }),
    fastenings: [
      { name: 'z', kind: 'zip', length: 200, along: { piece: 'front', edge: 'edge-2', reversed: false } },
    ],
  });
  const everywhere = [at(-1e4, -1e4), at(1e4, -1e4), at(1e4, 1e4), at(-1e4, 1e4)];
  for (const label of inks) {
    if (label.kind !== 'text') continue;
    expect(label.size).toBeGreaterThanOrEqual((7 / 72) * 25.4);
    const others = inks.filter(i => i !== label && i.role !== 'tint').flatMap(inkChords);
    expect([label.text, isFree({ inside: everywhere, ink: others }, letteringBox(label), 0.05)]).toEqual([
      label.text,
      true,
    ]);
  }
});

test('another language is complete on a piece', () => {
  const said = words(drawn({ ...pleated({ stitched: 60 }), fastenings: [] }, 'de')).join(' ');
  expect(said).toContain('Falte, 60 mm tief zusteppen');
  expect(said).not.toMatch(/\b(cut|fold|fabric|pleat|stitch|hem)\b/);
});

test('figures are in the reader’s unit, whatever the pattern’s is', () => {
  const [piece] = drawPattern(patternOf(panel()), measure, { unit: 'in' });
  const said = words(piece!.drawing.inks);
  expect(said).toContain('9/16 in');
  expect(said.join(' ')).not.toMatch(/\d ?mm/);
});
