import { readFileSync } from 'node:fs';
import { addGrownOnFacing, trueEdges } from '@paperhinge/alter/edges';
import { shapeHem } from '@paperhinge/alter/length';
import { draftBand } from '@paperhinge/alter/made';
import {
  at,
  edgeNames,
  edgePath,
  line,
  type Pattern,
  type Piece,
  pathOf,
  pieceNamed,
  readPattern,
  validatePattern,
  walkSeams,
} from '@paperhinge/geometry';
import { transformedPath } from '@paperhinge/geometry/paths';
import { mirror } from '@paperhinge/geometry/plane';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { refusalOf, toldDid, toldFinding } from '../../support/told.js';
import {
  areaOf,
  edge,
  expectClosed,
  expectUntouched,
  lengthOf,
  only,
  patternOf,
  pieceOf,
  refusal,
} from '../hinge/pieces.js';

/** Half a panel on the fold, 600 long, 200 wide above and so much wider at its straight hem. */
const panel = (flare = 60): Piece =>
  pieceOf([
    edge('waist', 'seam', line(at(0, 0), at(200, 0))),
    edge('side', 'seam', line(at(200, 0), at(200 + flare, 600))),
    edge('hem', 'hem', line(at(200 + flare, 600), at(0, 600))),
    edge('centre', 'fold', line(at(0, 600), at(0, 0))),
  ]);
const hem = [{ piece: 'block', edge: 'hem' }];
type Given = Parameters<typeof addGrownOnFacing>[1];
const grow = (changes: Partial<Given> = {}, piece = panel()) =>
  addGrownOnFacing(patternOf(piece), { edges: hem, width: 80, ...changes });
const darted = (): Pattern => {
  const file = 'darted-dress.svg';
  return readPattern(readFileSync(new URL(`../../../demos/patterns/${file}`, import.meta.url)), { file })
    .pattern;
};

describe('a facing grown on to a hem', () => {
  // The side leans out by 8 on 80: the facing tapers to 252 at its free edge, a trapezium of 256 × 80.
  test('is the strip above the hem, turned over', () => {
    const done = grow();
    const after = only(done.pattern);
    expect(lengthOf(after, 'hem-facing')).toBeCloseTo(252, 9);
    expect(areaOf(after) - areaOf(panel())).toBeCloseTo(256 * 80, 6);
    expectUntouched(panel(), after, 'hem', 'centre');
    expectClosed(after);
    expect(toldDid(done)).toBe(
      'The hem of the block has a facing 80 mm wide cut in one; it is a fold line now.',
    );
  });
  test('lies edge on edge when it is folded up, and the fold runs on', () => {
    const after = only(grow().pattern);
    const folded = transformedPath(edgePath(after, 'side-facing'), mirror(at(0, 600), at(1, 0)));
    const [from, to] = folded.segments[0]! as readonly [{ x: number; y: number }, { x: number; y: number }];
    expect([from.x, from.y]).toEqual([expect.closeTo(260, 9), expect.closeTo(600, 9)]);
    expect([to.x, to.y]).toEqual([expect.closeTo(252, 9), expect.closeTo(520, 9)]);
    expect(lengthOf(after, 'centre')).toBeCloseTo(680, 9);
    expect(edgeNames(after)).toEqual(['waist', 'side', 'side-facing', 'hem-facing', 'centre']);
    expect(after.lines.find(l => l.name === 'hem fold')).toMatchObject({ kind: 'fold' });
  });
  test('has its free edge turned in by 10 mm, by as much as is asked, or raw', () => {
    const free = (turn?: number) =>
      only(grow(turn === undefined ? {} : { turn }).pattern).outline.parts.find(p => p.name === 'hem-facing');
    expect(free()).toMatchObject({ kind: 'seam', allowance: 10 });
    expect(free(6)).toMatchObject({ kind: 'seam', allowance: 6 });
    expect(free(0)).toMatchObject({ kind: 'raw', allowance: 0 });
  });
  test('of any straight hem has the area of the strip that it lies on', () => {
    const figures = [
      fc.double({ min: -40, max: 200, noNaN: true }),
      fc.double({ min: 5, max: 300, noNaN: true }),
    ] as const;
    fc.assert(
      fc.property(...figures, (flare, width) => {
        const { pattern } = grow({ width }, panel(flare));
        validatePattern(pattern);
        const lean = (flare * width) / 600;
        expect(areaOf(only(pattern)) - areaOf(panel(flare))).toBeCloseTo((200 + flare - lean / 2) * width, 6);
      }),
    );
  });
});

describe('a seam beside it', () => {
  const both = [
    { piece: 'skirt front', edge: 'hem' },
    { piece: 'skirt back', edge: 'hem' },
  ];
  test('is sewn through the facings of both its sides', () => {
    const { pattern, findings } = addGrownOnFacing(darted(), { edges: both, width: 80 });
    const walk = (name: string, of: Pattern) => walkSeams(of).find(w => w.seam === name)!;
    const was = walk('skirt side', darted()),
      is = walk('skirt side', pattern);
    expect(is.matches).toBe(true);
    expect(is.aMm - was.aMm).toBeCloseTo(lengthOf(pieceNamed(pattern, 'skirt front'), 'side-facing'), 6);
    expect(findings).toEqual([]);
  });
  test('with a facing on one side only ends where it did, and that is told', () => {
    const { pattern, findings } = addGrownOnFacing(darted(), { edges: both.slice(0, 1), width: 80 });
    expect(walkSeams(pattern).find(w => w.seam === 'skirt side')!.matches).toBe(true);
    expect(findings.map(f => toldFinding(f).message)).toEqual([
      'The side facing of the skirt front is sewn to nothing: the skirt back has no facing there.',
    ]);
  });
});

describe('what is refused, each with its remedy', () => {
  const withPart = (name: string, part: Piece['outline']['parts'][number]) => {
    const piece = panel();
    return { ...piece, outline: { parts: piece.outline.parts.map(p => (p.name === name ? part : p)) } };
  };
  /** The step that a remedy writes out, done to the piece; then the facing is asked for again. */
  const mended = (piece: Piece, remedy: string) => {
    const [, side] = /shape hem: \{ piece: block, edge: hem, side: (\S+) mm, line: straight \}/.exec(remedy)!;
    const given = { piece: 'block', edge: 'hem', side: Number(side), line: 'straight' } as const;
    return grow({}, only(shapeHem(patternOf(piece), given).pattern));
  };
  test('a curved edge; drawn straight as the remedy says it has its facing', () => {
    const curved = withPart('hem', {
      ...edge('hem', 'hem', line(at(260, 590), at(0, 600))),
      path: pathOf([at(260, 590), at(180, 605), at(80, 600), at(0, 600)]),
    });
    const piece = {
      ...curved,
      outline: {
        parts: curved.outline.parts.map(p =>
          p.name === 'side' ? edge('side', 'seam', line(at(200, 0), at(260, 590))) : p,
        ),
      },
    };
    const told = refusalOf(() => grow({}, piece));
    expect(told).toMatchObject({
      code: 'grown-on-edge-curved',
      remedy: expect.stringContaining('cut off band'),
    });
    expect(() => mended(piece, told.remedy)).not.toThrow();
  });
  test('a curved edge without a centre beside it, with how much it must be allowed to move', () => {
    const parts = withPart('hem', {
      ...edge('hem', 'hem', line(at(260, 600), at(0, 600))),
      path: pathOf([at(260, 600), at(180, 615), at(80, 615), at(0, 600)]),
    }).outline.parts.map(p => (p.name === 'centre' ? edge('panel', 'seam', line(at(0, 600), at(0, 0))) : p));
    const told = refusalOf(() => grow({}, pieceOf(parts)));
    const [, within] = /true: \{ edges: \[block.hem\], straight: "yes", within: (\d+) mm \}/.exec(
      told.remedy,
    )!;
    const straight = trueEdges(patternOf(pieceOf(parts)), {
      edges: hem,
      within: Number(within),
      straight: true,
    });
    expect(() => grow({}, only(straight.pattern))).not.toThrow();
  });
  test('a fold that is not square to the edge; the remedy says by how much, and mends it', () => {
    const slanted = pieceOf([
      edge('waist', 'seam', line(at(0, 0), at(200, 0))),
      edge('side', 'seam', line(at(200, 0), at(260, 640))),
      edge('hem', 'hem', line(at(260, 640), at(0, 600))),
      edge('centre', 'fold', line(at(0, 600), at(0, 0))),
    ]);
    const told = refusalOf(() => grow({}, slanted));
    expect(told).toMatchObject({ code: 'grown-on-off-square' });
    expect(() => mended(slanted, told.remedy)).not.toThrow();
  });
  test('a facing higher than its piece, and an edge that something is sewn to', () => {
    expect(() => grow({ width: 700 })).toThrow(refusal('grown-facing-too-wide', /narrower/));
    const banded = draftBand(patternOf(panel()), { name: 'band', along: hem, ratio: 1, width: 60 }).pattern;
    expect(() => addGrownOnFacing(banded, { edges: hem, width: 80 })).toThrow(
      refusal('grown-on-edge-sewn', /Remove/),
    );
  });
});
