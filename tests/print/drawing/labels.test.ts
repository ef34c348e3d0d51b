import {
  at,
  cuttingLine,
  line,
  type Pattern,
  type Piece,
  type Point,
  pathOf,
  polyline,
} from '@paperhinge/geometry';
import { clearance, containsPoint } from '@paperhinge/geometry/regions';
import { loadTypefaces, type Typefaces } from '@paperhinge/print';
import { drawPattern, type Lettering, letteringBox, type PieceDrawing } from '@paperhinge/print/drawing';
import { beforeAll, describe, expect, test } from 'vitest';
import { fonts } from '../../../packages/cli/src/fonts.js';
import { shiftPattern } from '../../support/shift.js';
import { patternOf, polygonPiece, rectangle } from '../simple-pieces.js';

const longTitle =
  'Front yoke facing, upper layer, with the long title that somebody once typed without thinking of paper '.repeat(
    3,
  );
const tail = [at(0, 0), at(120, 0), at(120, 90), at(63, 92), at(61, 700), at(59, 700), at(57, 92), at(0, 90)];
const grain = (piece: Piece, from: Point, to: Point): Piece => ({
  ...piece,
  lines: [...piece.lines, { kind: 'grain', name: 'grain', path: pathOf(line(from, to)) }],
});

const ugly: Pattern = patternOf(
  rectangle('stamp', 9, 6, 2),
  rectangle('sliver', 400, 5, 3),
  rectangle('train', 1400, 3000, 15, { title: 'Train' }),
  polygonPiece('tail', tail, 6),
  rectangle('long title', 300, 200, 10, { title: longTitle }),
  rectangle('one word', 80, 60, 10, {
    title: 'Donaudampfschifffahrtsgesellschaftskapitänsmützenschirmfutter',
  }),
  rectangle('hostile', 200, 100, 10, { title: '\u202e\u0000<script>\n\r(x) Tj %\\)\uFEFF' }),
  rectangle('nameless', 100, 100, 10, { title: '   ' }),
  grain(rectangle('band', 620, 40, 7, { title: 'Band' }), at(300, 5), at(300, 35)),
  grain(
    polygonPiece('skew', [at(0, 0), at(300, 80), at(260, 380), at(-40, 300)], 10),
    at(60, 60),
    at(120, 300),
  ),
  rectangle('emoji', 160, 160, 10, { title: '👗🧵✂️ 縫い代 كم' }),
);

let typefaces: Typefaces;
beforeAll(async () => {
  typefaces = await loadTypefaces(fonts, ['👗🧵✂️ 縫い代 كم']);
});

const labels = (d: PieceDrawing) => d.drawing.inks.filter((i): i is Lettering => i.kind === 'text');
const boxPath = (l: Lettering) => {
  const box = letteringBox(l);
  return polyline(...box, box[0]!);
};

describe.each([
  ['the shift', shiftPattern()],
  ['ugly pieces', ugly],
])('labels of %s', (_, pattern) => {
  let drawings: readonly PieceDrawing[];
  beforeAll(() => {
    drawings = drawPattern(pattern, typefaces);
  });

  test('lie within the cutting line and keep clear of it, but for a title that no place inside could hold', () => {
    for (const [i, drawing] of drawings.entries()) {
      const { path } = cuttingLine(pattern.pieces[i]!, pattern);
      for (const label of labels(drawing)) {
        const inside = letteringBox(label).every(p => containsPoint(path, p));
        if (!inside) {
          expect(['title', 'detail']).toContain(label.role);
          expect(['stamp', 'sliver']).toContain(drawing.piece);
        }
        expect(clearance(path, boxPath(label))).toBeGreaterThan(0.4);
      }
    }
  });

  test('never lie on a line or on one another', () => {
    for (const drawing of drawings) {
      const all = labels(drawing);
      const lines = drawing.drawing.inks.filter(k => k.kind !== 'text');
      for (const label of all) {
        for (const ink of lines)
          expect(
            clearance(ink.path, boxPath(label)),
            `${drawing.piece}: ${label.text} on ${ink.role}`,
          ).toBeGreaterThan(0.3);
        for (const other of all)
          if (other !== label && !(other.role !== 'edge-label' && label.role !== 'edge-label'))
            expect(
              clearance(boxPath(other), boxPath(label)),
              `${label.text} on ${other.text}`,
            ).toBeGreaterThan(0.2);
      }
    }
  });

  test('every piece has its title', () => {
    for (const drawing of drawings) expect(labels(drawing).some(l => l.role === 'title')).toBe(true);
  });
});

describe('the title', () => {
  const titleOf = (piece: Piece) =>
    labels(drawPattern(patternOf(piece), typefaces)[0]!).find(l => l.role === 'title')!;

  test('reads along the grain', () => {
    const title = titleOf(
      grain(rectangle('p', 300, 500, 10, { title: 'Front' }), at(100, 100), at(100, 400)),
    );
    expect(title.direction).toEqual({ x: expect.closeTo(0, 9), y: expect.closeTo(-1, 9) });
  });

  test('of a piece whose grain leans leans with it', () => {
    const title = titleOf(
      grain(rectangle('p', 300, 500, 10, { title: 'Front' }), at(100, 100), at(180, 400)),
    );
    // Along the grain: no part of it lies across.
    expect(title.direction.x * 300 - title.direction.y * 80).toBeCloseTo(0, 6);
  });

  test('is smaller in a smaller piece', () => {
    const sizes = [400, 120, 60, 30].map(s => titleOf(rectangle('p', s, s, 5, { title: 'Front' })).size);
    expect([...sizes].sort((a, b) => b - a)).toEqual(sizes);
  });
});

describe('what is said of a piece', () => {
  const said = (piece: Piece) => labels(drawPattern(patternOf(piece), typefaces)[0]!).map(l => l.text);

  test('how many to cut, the fabric, the note', () => {
    const words = said(
      rectangle('p', 300, 300, 10, {
        cutting: { count: 2, mirrored: true, fabric: 'lining', note: 'on the bias' },
      }),
    );
    expect(words).toEqual(expect.arrayContaining(['cut 2, 1 mirrored', 'lining', 'on the bias']));
  });

  test('the allowance between stitching and cutting line, in the unit of the pattern alone', () => {
    expect(said(rectangle('p', 300, 300, 7))).toContain('7 mm');
    const inches = {
      ...patternOf(rectangle('p', 300, 300, 15.875), rectangle('q', 300, 300, 7.9)),
      unit: 'in',
    } as const;
    const words = drawPattern(inches, typefaces).flatMap(d => labels(d).map(l => l.text));
    expect(words).toEqual(expect.arrayContaining(['5/8 in', '5/16 in']));
    expect(words.filter(w => w.includes('mm'))).toEqual([]);
  });

  test('what an edge is sewn to, by the partner’s name', () => {
    const front = drawPattern(shiftPattern(), typefaces)[0]!;
    expect(labels(front).map(l => l.text)).toEqual(
      expect.arrayContaining(['shoulder → back shoulder', 'armhole → sleeve cap', 'place on fold', 'waist']),
    );
  });
});
