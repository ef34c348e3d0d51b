// Edges that nothing finishes, of a top drawn by its figures and of a hooded coat: what would be left raw is told, and what
// its remedy says is followed.
import { checkPattern, type Pattern, type Piece, pieceNamed } from '@paperhinge/geometry';
import { withPiece } from '@paperhinge/geometry/pattern';
import { readSheet, runSheet } from '@paperhinge/sheet';
import { english, wordsOf } from '@paperhinge/sheet/words';
import { describe, expect, test } from 'vitest';
import { foundPattern } from '../../found/found.js';
import { bodySeams, facedTop, facingSeam, front } from '../../support/faced-top.js';
import { patternOf, pieceOf, seam, side } from '../../support/polygon-piece.js';

const rawIn = (pattern: Pattern) =>
  checkPattern(pattern)
    .filter(f => f.code === 'edges-left-raw' || f.code === 'lining-edges-loose')
    .flatMap(f =>
      (f.about!.edges as readonly { piece: string; edge: string }[]).map(e => `${e.piece}.${e.edge}`),
    );
const remedies = (pattern: Pattern) =>
  checkPattern(pattern)
    .filter(f => f.code === 'edges-left-raw')
    .map(f => wordsOf(english, 'mm').finding(f).remedy);
const run = (pattern: Pattern, text: string) =>
  runSheet(readSheet(`pattern: p.svg\n${text}`, { file: 's.yaml' }), pattern).altered;
const changed = (piece: Piece, edge: string, change: object): Piece => ({
  ...piece,
  outline: { parts: piece.outline.parts.map(part => (part.name === edge ? { ...part, ...change } : part)) },
});

describe('a faced top', () => {
  test('has its armholes left raw, and its neck if only the facings are joined', () => {
    expect(rawIn(facedTop())).toEqual(['front.armhole', 'back.armhole']);
    expect(rawIn(facedTop([...bodySeams, facingSeam]))).toEqual([
      'front.neck',
      'back.neck',
      'front.armhole',
      'back.armhole',
      'front facing.neck',
      'back facing.neck',
    ]);
  });

  test('has a hem that is drawn as a seam left raw; turned up as the remedy says, it is not', () => {
    const seamed = withPiece(facedTop(), changed(front, 'hem', { kind: 'seam' }));
    expect(rawIn(seamed)).toContain('front.hem');
    expect(remedies(seamed).at(-1)).toContain('data-kind="hem"');
    expect(rawIn(withPiece(seamed, front))).not.toContain('front.hem');
  });

  test('is not raw where a zip closes it, or where it says how it is finished', () => {
    const opens = changed(front, 'centre', { kind: 'seam', role: 'opening', allowance: 10 });
    const top = withPiece(facedTop(), opens);
    expect(rawIn(top)).toContain('front.centre');
    const along = { piece: 'front', edge: 'centre', reversed: false };
    expect(rawIn({ ...top, fastenings: [{ name: 'zip', kind: 'zip', along }] })).not.toContain(
      'front.centre',
    );
    const turned = withPiece(top, changed(opens, 'centre', { finish: 'turned twice' }));
    expect(rawIn(turned)).not.toContain('front.centre');
  });
});

test('a drafted facing whose ends lie on other edges hangs nowhere loose', () => {
  const { pattern } = foundPattern('own-strap-top');
  const faced = run(
    pattern,
    'steps:\n  - draft facing: { name: facing, along: [front.neck, back.neck], width: 60 mm }',
  );
  expect(rawIn(pattern)).toEqual(['front.neck', 'back.neck', 'front.armhole', 'back.armhole']);
  expect(rawIn(faced)).toEqual(['front.armhole', 'back.armhole']);
});

describe('a collar of one layer', () => {
  const collar = (layers?: number): Piece => ({
    ...pieceOf(
      'collar',
      [
        side('outer', [
          [0, 0],
          [320, 0],
        ]),
        side('end', [
          [320, 0],
          [300, 60],
        ]),
        side('neck', [
          [300, 60],
          [20, 60],
        ]),
        side('other end', [
          [20, 60],
          [0, 0],
        ]),
      ],
      { cutting: layers === undefined ? { count: 1 } : { count: layers, layers } },
    ),
    role: 'collar',
  });
  const withCollar = (piece: Piece) =>
    patternOf(
      [...facedTop().pieces, piece],
      [...facedTop().seams, seam('collar', ['collar.neck'], ['front.neck'])],
    );

  test('is raw round its outer edge; in two it is turned', () => {
    expect(rawIn(withCollar(collar())).filter(edge => edge.startsWith('collar'))).toEqual([
      'collar.outer',
      'collar.end',
      'collar.other end',
    ]);
    expect(rawIn(withCollar(collar(2))).filter(edge => edge.startsWith('collar'))).toEqual([]);
  });
});

describe('a hooded coat with a lining', () => {
  const { pattern } = foundPattern('trial-hooded-coat');

  test('is told of the hood’s face and of what hangs loose at the neck, and of nothing else', () => {
    expect(rawIn(pattern)).toEqual([
      'hood.face',
      'front lining.neck',
      'back lining.neck',
      'front facing.neck',
    ]);
  });

  test('has its hood faced by the step that the remedy writes', () => {
    const step = /draft facing: \{.*?\}/.exec(remedies(pattern)[0]!)![0];
    expect(rawIn(run(pattern, `steps:\n  - ${step}`))).not.toContain('hood.face');
    const turned = withPiece(pattern, changed(pieceNamed(pattern, 'hood'), 'face', { finish: 'bound' }));
    expect(rawIn(turned)).not.toContain('hood.face');
  });

  test('has nothing loose at its neck once the seam there is listed', () => {
    const listed = `seams: { neck lining: { a: [front facing.neck from front, front lining.neck from facing-edge, back lining.neck from shoulder], b: [front.neck from centre-front, back.neck from shoulder] } }`;
    expect(rawIn(run(pattern, `${listed}\nsteps: []`))).toEqual(['hood.face']);
  });
});
