import { edgeNamed, pieceNamed } from '@paperhinge/geometry';
import { describe, expect, test } from 'vitest';
import { laidOver, patternOfSheet, runSheet } from '../../packages/sheet/src/index.js';
import { shiftPattern } from '../support/shift.js';
import { told as inEnglish } from '../support/told.js';
import { faultsOf, read, refusals } from './sheets.js';

const over = (text: string) => laidOver(shiftPattern(), read(`pattern: shift.svg\n${text}`)).pattern;
const told = (work: () => unknown) =>
  faultsOf(work).map(f => `${f.where.line}:${f.where.column} ${inEnglish(f).message}`);

describe('seams of the sheet', () => {
  test('one of a new name comes after the drawing’s, one of its name is told anew', () => {
    const before = shiftPattern();
    const { seams } = over(
      'seams:\n  side: { a: [front.side-upper from armhole, front.side-lower], b: back.side from armhole, ease: 5, tolerance: 2, taken up: gathered }\n  extra: { a: sleeve.hem, b: sleeve.hem from end }',
    );
    expect(seams.map(s => s.name)).toEqual([...before.seams.map(s => s.name), 'extra']);
    const side = seams.find(s => s.name === 'side')!;
    const was = before.seams.find(s => s.name === 'side')!;
    // The second run continues the first across the dart, as in the drawing.
    expect(side.a).toEqual(was.a);
    expect(side.b).toEqual(was.b);
    expect(side).toMatchObject({ ease: { mm: 5 }, tolerance: 2, takenUp: 'gathered' });
  });

  test('a run that does not say where it begins is found, and one of no edge refused at its place', () => {
    const sheet = read('pattern: shift.svg\nseams: { extra: { a: sleeve.hem, b: sleeve.hem from end } }');
    expect(laidOver(shiftPattern(), sheet).findings).toMatchObject([
      { code: 'run-direction-not-given', where: { file: 'top.yaml', line: 2 } },
    ]);
    expect(
      told(() =>
        runSheet(
          read('pattern: shift.svg\nseams: { extra: { a: front.hemm, b: back.hem } }'),
          shiftPattern(),
        ),
      ),
    ).toEqual([expect.stringMatching(/^2:22 .*"hemm"/)]);
    expect(refusals('pattern: a.svg\nseams: { side: { a: front } }')).toEqual([
      '2:10 "side" lacks "b". | Add "b".',
      '2:21 "a" is not an edge of a piece. | Write PIECE.EDGE, such as front.neck.',
    ]);
  });

  test('a seam of an edge that a step makes is laid over once it stands', () => {
    const run = runSheet(
      read(
        'pattern: shift.svg\nseams: { inset join: { a: front.inset from neck, b: front.inset from neck } }\nsteps:\n  - recut neckline: { piece: front, shape: inset V, depth: 85, half width: 45 }',
      ),
      shiftPattern(),
    );
    expect(run.before.seams.map(s => s.name)).not.toContain('inset join');
    expect(run.altered.seams.map(s => s.name)).toContain('inset join');
  });
});

test('fastenings are found on the pattern, their lengths in the sheet’s unit', () => {
  const { fastenings } = over(
    'unit: cm\nfastenings: { back zip: { kind: zip, along: back.centre-back from neck, length: 40, sort: invisible } }',
  );
  expect(fastenings).toEqual([
    {
      name: 'back zip',
      kind: 'zip',
      length: 400,
      sort: 'invisible',
      along: { piece: 'back', edge: 'centre-back', reversed: expect.any(Boolean) },
    },
  ]);
});

describe('pieces of the sheet', () => {
  test('roles, cuttings and finishes are laid over the drawing’s', () => {
    const pattern = over(
      'pieces:\n  front: { role: bodice, cut: 2, layers: 2, also cut: { lining: 1, interfacing: { count: 2, mirrored: no } }, stretch: along, roles: { neck: neck }, finish: { hem: turned twice }, topstitch: { hem: 20 }, interfacing: { neck: 30 }, kinds: { centre-front: raw } }',
    );
    const front = pieceNamed(pattern, 'front');
    expect(front).toMatchObject({
      role: 'bodice',
      greatestStretch: 'along',
      cutting: { count: 2, layers: 2 },
    });
    expect(front.alsoCut).toEqual([
      { fabric: 'lining', count: 1, mirrored: false },
      { fabric: 'interfacing', count: 2, mirrored: false },
    ]);
    expect(edgeNamed(front, 'hem')).toMatchObject({ finish: 'turned twice', topstitch: 20 });
    expect(edgeNamed(front, 'neck')).toMatchObject({ role: 'neck', interfacing: 30 });
    expect(edgeNamed(front, 'centre-front')).toMatchObject({ kind: 'raw', allowance: 0 });
  });

  test('an edge it does not have, and a piece that never comes, are told at their place', () => {
    const run = (text: string) => () => runSheet(read(`pattern: shift.svg\n${text}`), shiftPattern());
    expect(told(run('pieces: { front: { finish: { hemm: rolled } } }'))).toEqual([
      '2:36 The front has no edge "hemm".',
    ]);
    expect(told(run('pieces: { frnt: { cut: 2 } }'))).toEqual(['2:24 The pattern has no piece "frnt".']);
  });
});

describe('scale and size', () => {
  const drawing = (edge: number, more = '') =>
    `<svg xmlns="http://www.w3.org/2000/svg" width="300mm" height="300mm" viewBox="0 0 300 300">${more}
<g data-piece="front" data-allowance="10"><path data-edge="top" d="M0,0 H${edge}"/><path data-edge="right" d="M${edge},0 V${edge}"/>
<path data-edge="bottom" d="M${edge},${edge} H0"/><path data-edge="left" d="M0,${edge} V0"/></g></svg>`;
  const topOf = (line: string, svg: string) => {
    const { pattern } = patternOfSheet(read(`pattern: p.svg\n${line}`), svg, 'p.svg');
    const [{ path }] = [edgeNamed(pattern.pieces[0]!, 'top')];
    const [first, last] = path.segments[0]! as readonly { readonly x: number }[];
    return Math.abs(last!.x - first!.x);
  };

  test.each([
    ['scale: 1/4', 200],
    ['scale: 25 %', 200],
    ['scale: 2 mm', 100],
    ['scale: 1 in', 1270],
  ])('%s', (line, expected) => {
    expect(topOf(line, drawing(50))).toBeCloseTo(expected, 9);
  });

  const sized = (edges: readonly number[]) => {
    const groups = edges.map((edge, i) =>
      drawing(edge)
        .replace(/^[\s\S]*?(?=<g )/, '')
        .replace('</svg>', '')
        .replace('data-piece', `data-size="${12 + 2 * i}" data-piece`),
    );
    return `<svg xmlns="http://www.w3.org/2000/svg" width="300mm" height="300mm" viewBox="0 0 300 300">${groups.join('')}</svg>`;
  };
  test.each([
    ['size: 14', 120],
    ['size: "12"', 100],
    ['size: { between: [12, 14], share: 25 % }', 105],
  ])('%s', (line, expected) => {
    expect(topOf(line, sized([100, 120]))).toBeCloseTo(expected, 6);
  });

  test('what is neither is told', () => {
    expect(refusals('pattern: a.svg\nscale: big')).toEqual([
      '2:8 "scale" is not a scale. | Write 1/4 for a drawing at a quarter, or what one unit of it is, such as 1 mm.',
    ]);
    expect(refusals('pattern: a.svg\nsize: { between: [12, 14] }')).toEqual([
      '2:1 "size" lacks "share" or "at". | Add one of them.',
    ]);
  });
});

describe('the wearer', () => {
  const doubts = (text: string) =>
    runSheet(read(`pattern: shift.svg\n${text}`), shiftPattern())
      .record.findings.filter(f => f.code === 'wearer-figure-doubted')
      .map(f => `${f.where.line}:${f.where.column} ${f.message} ${f.remedy}`);

  test('has a unit of her own', () => {
    expect(read('pattern: a.svg\nwearer: { unit: in, bust girth: 40, waist girth: 76 cm }').wearer).toEqual({
      'bust girth': 1016,
      'waist girth': 760,
    });
  });

  test('figures that are nobody’s are doubted aloud, with the unit that was likely meant', () => {
    expect(doubts('wearer: { bust girth: 40, head girth: 57 }').toSorted()).toEqual([
      expect.stringMatching(
        /^2:23 The wearer's bust girth is 40 mm, which is nobody's\. Write 40 cm or 40 in, if/,
      ),
      expect.stringMatching(/^2:39 The wearer's head girth is 57 mm, which is nobody's\. Write 57 cm, if/),
    ]);
    expect(doubts('unit: in\nwearer: { bust girth: 40, head girth: 22.5 }')).toEqual([]);
  });
});

test('one tolerance holds for all seams of the pattern', () => {
  expect(over('tolerance: 2').tolerance).toBe(2);
});
