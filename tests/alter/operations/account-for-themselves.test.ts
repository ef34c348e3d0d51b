// Properties of operations that had none: what is rigid stays rigid, areas and lengths account for themselves, and an
// operation with its inverse gives back the piece.
import { trueDart } from '@paperhinge/alter/darts';
import { letOut, setAllowance, takeIn } from '@paperhinge/alter/edges';
import { refit } from '@paperhinge/alter/fit';
import { addVent, leaveSlit } from '@paperhinge/alter/fullness';
import { lengthen, shorten } from '@paperhinge/alter/length';
import {
  draftBinding,
  draftCasing,
  draftCuff,
  draftPlacket,
  draftTie,
  removePiece,
} from '@paperhinge/alter/made';
import { foldToSeam, seamToFold, separatePair, setSeam } from '@paperhinge/alter/seams';
import { walkCap } from '@paperhinge/alter/sleeves';
import {
  at,
  edgeNames,
  edgePath,
  type Pattern,
  type Piece,
  pathLength,
  pathOf,
  pieceNamed,
  walkSeam,
} from '@paperhinge/geometry';
import { dartsOf, outlinePath } from '@paperhinge/geometry/pattern';
import { signedArea } from '@paperhinge/geometry/regions';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { block, only, patternOf } from '../hinge/pieces.js';

const areaOf = (piece: Piece): number => signedArea(outlinePath(piece.outline));
const lengthIn = (piece: Piece, edge: string): number => pathLength(edgePath(piece, edge));
const lengthOf = (pattern: Pattern, piece: string, edge: string): number =>
  lengthIn(pieceNamed(pattern, piece), edge);
const amount = fc.integer({ min: 3, max: 40 });
const few = { numRuns: 10 };

/** Outlines of the pieces named, or all, measured: areas and edges. */
const figures = ({ pieces }: Pattern): readonly number[] =>
  pieces.flatMap(piece => [areaOf(piece) / 1000, ...edgeNames(piece).map(edge => lengthIn(piece, edge))]);
function expectAlike(is: Pattern, was: Pattern, digits = 6): void {
  const [a, b] = [figures(is), figures(was)];
  expect(a).toHaveLength(b.length);
  for (const [i, mm] of a.entries()) expect(mm).toBeCloseTo(b[i]!, digits);
}

describe('undone by the contrary', () => {
  test('lengthened and shortened at the hem or at a line', () => {
    const before = shiftPattern();
    fc.assert(
      fc.property(amount, fc.constantFrom('hem', 'waist'), (by, place) => {
        const wish = { pieces: ['front', 'back'], at: place, by };
        expectAlike(shorten(lengthen(before, wish).pattern, wish).pattern, before, 4);
      }),
      few,
    );
  });

  test('let out and taken in', () => {
    const before = shiftPattern();
    fc.assert(
      fc.property(amount, by => {
        const wish = { seam: 'underarm', by };
        expectAlike(takeIn(letOut(before, wish).pattern, wish).pattern, before, 3);
      }),
      few,
    );
  });

  test('a fold made a seam and a fold again', () => {
    const before = shiftPattern();
    fc.assert(
      fc.property(fc.constantFrom('front', 'back'), fc.integer({ min: 0, max: 25 }), (piece, allowance) => {
        const centre = edgeNames(pieceNamed(before, piece)).find(name => name.startsWith('centre'))!;
        const cut = foldToSeam(before, { piece, allowance }).pattern;
        expectAlike(cut, before);
        expectAlike(seamToFold(cut, { piece, edge: centre }).pattern, before);
      }),
      few,
    );
  });
});

describe('no line moves', () => {
  test('where allowances and eases are set, caps walked, slits left', () => {
    const before = shiftPattern();
    const quiet = fc.constantFrom<(by: number) => Pattern>(
      by => setAllowance(before, { edges: 'all seams', to: by }).pattern,
      by => setSeam(before, { seam: 'armhole', ease: { mm: by } }).pattern,
      by => walkCap(before, { seam: 'armhole', front: by / 100 }).pattern,
      by => leaveSlit(before, { edge: { piece: 'back', edge: 'side' }, length: by * 5 }).pattern,
    );
    fc.assert(
      fc.property(quiet, amount, (change, by) => expectAlike(change(by), before)),
      { numRuns: 24 },
    );
  });

  test('where a piece goes, of the others', () => {
    const before = shiftPattern();
    fc.assert(
      fc.property(fc.constantFrom(...before.pieces.map(({ name }) => name)), piece => {
        const { pattern } = removePiece(before, { piece });
        const rest = { ...before, pieces: before.pieces.filter(({ name }) => name !== piece) };
        expectAlike(pattern, rest);
        expect(pattern.seams.flatMap(({ a, b }) => [...a, ...b]).some(run => run.piece === piece)).toBe(
          false,
        );
      }),
      few,
    );
  });
});

describe('what is made accounts for itself', () => {
  const before = shiftPattern();
  const hem = [{ piece: 'sleeve', edge: 'hem' }];

  // Left and right of a pair are mirror images, of one area and with the same edges.
  test('a pair separated is two alike', () => {
    fc.assert(
      fc.property(amount, by => {
        const start = lengthen(before, { pieces: ['sleeve'], at: 'hem', by }).pattern;
        const { pattern } = separatePair(start, { piece: 'sleeve', name: 'other' });
        const [one, other] = ['sleeve', 'other'].map(name => pieceNamed(pattern, name));
        expect(areaOf(one!)).toBeCloseTo(areaOf(other!), 6);
        const sizes = (piece: Piece) =>
          edgeNames(piece)
            .map(edge => lengthIn(piece, edge))
            .toSorted((a, b) => a - b);
        for (const [i, mm] of sizes(one!).entries()) expect(mm).toBeCloseTo(sizes(other!)[i]!, 6);
      }),
      few,
    );
  });

  // Closed form: a binding is as long as the neck all round, on the fold twice what is drawn, and its joins; cut 4 wide.
  test('a binding is as long as its edges and four times as wide', () => {
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 15 }), fc.integer({ min: 0, max: 15 }), (width, join) => {
        const along = ['front', 'back'].map(piece => ({ piece, edge: 'neck' }));
        const { derived } = draftBinding(before, { name: 'binding', along, width, join });
        const round = 2 * along.reduce((sum, { piece, edge }) => sum + lengthOf(before, piece, edge), 0);
        expect(derived![0]!.lengthMm).toBeCloseTo(round + 2 * join, 6);
        expect(derived![0]!.widthMm).toBeCloseTo(4 * width, 9);
      }),
      few,
    );
  });

  test('a tie is two of its widths by its length, with allowances left outside', () => {
    fc.assert(
      fc.property(fc.integer({ min: 80, max: 900 }), fc.integer({ min: 10, max: 60 }), (length, width) => {
        const { pattern } = draftTie(before, { name: 'tie', length, width });
        expect(areaOf(pieceNamed(pattern, 'tie'))).toBeCloseTo(2 * length * width, 4);
      }),
      few,
    );
  });

  test('a cuff and a casing walk into their edge, whatever its length', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 30 }), fc.boolean(), (by, cuff) => {
        const start = takeIn(before, { seam: 'underarm', by }).pattern;
        const { pattern } = cuff
          ? draftCuff(start, {
              name: 'end',
              along: hem,
              width: 60,
              length: 220,
              overlap: 20,
              takenUp: 'gathered',
            })
          : draftCasing(start, { name: 'end', along: hem, elastic: 12, length: 190 });
        const own = pattern.seams.filter(({ a, b }) => [...a, ...b].some(run => run.piece === 'end'));
        expect(own.length).toBeGreaterThan(0);
        for (const seam of own) expect(walkSeam(pattern, seam).matches, seam.name).toBe(true);
      }),
      few,
    );
  });

  test('a placket leaves its piece as it was and walks into its slit', () => {
    fc.assert(
      fc.property(fc.integer({ min: 60, max: 160 }), length => {
        const along = { piece: 'sleeve', edge: 'underarm-back' };
        const { pattern } = draftPlacket(before, { name: 'placket', along, length });
        expect(areaOf(pieceNamed(pattern, 'sleeve'))).toBeCloseTo(areaOf(pieceNamed(before, 'sleeve')), 6);
        const own = pattern.seams.filter(({ a, b }) => [...a, ...b].some(run => run.piece === 'placket'));
        for (const seam of own) expect(walkSeam(pattern, seam).matches, seam.name).toBe(true);
      }),
      few,
    );
  });

  // A vent is a strip beside the edge: its area is its width by its length, within what slants at its ends.
  test('a vent adds its own strip', () => {
    fc.assert(
      fc.property(fc.integer({ min: 80, max: 200 }), fc.integer({ min: 20, max: 50 }), (length, width) => {
        const { pattern } = addVent(before, { edge: { piece: 'back', edge: 'side' }, length, width });
        const added = areaOf(pieceNamed(pattern, 'back')) - areaOf(pieceNamed(before, 'back'));
        expect(added).toBeGreaterThan(width * (length - width));
        expect(added).toBeLessThan(width * (length + 2 * width));
      }),
      few,
    );
  });
});

// The legs of a dart that was drawn askew come out straight and of one length, its point where it was.
test('a dart trued has straight legs of one length about the same point', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -0.45, max: 0.45, noNaN: true }),
      fc.integer({ min: 3, max: 12 }),
      (off, bow) => {
        const [dart] = dartsOf(block());
        const apex = { x: dart!.apex.x, y: dart!.apex.y + off };
        const [a, b] = dart!.legs.map(leg => leg.segments);
        const [from, to] = [a![0]!.at(0)!, b!.at(-1)!.at(-1)!];
        const drawn = {
          ...dart!,
          apex,
          legs: [
            pathOf([from, at(from.x - 20, from.y + bow / 3), at(apex.x + 20, apex.y - bow), apex]),
            pathOf([apex, to]),
          ] as const,
        };
        const piece = {
          ...block(),
          outline: { parts: block().outline.parts.map(p => (p.name === dart!.name ? drawn : p)) },
        };
        const [trued] = dartsOf(
          only(trueDart(patternOf(piece), { piece: 'block', dart: dart!.name }).pattern),
        );
        const [one, other] = trued!.legs.map(leg => pathLength(leg));
        expect(one).toBeCloseTo(other!, 9);
        expect(trued!.apex).toEqual(apex);
        for (const leg of trued!.legs) expect(leg.segments.every(segment => segment.length === 2)).toBe(true);
      },
    ),
    few,
  );
});

// Every seam of the body that walked does afterwards, and the cap has the ease asked, for any ease taken out or let in.
test('a garment refitted walks in every seam, with the ease asked in its cap', () => {
  fc.assert(
    fc.property(
      fc.constantFrom('knit' as const, 'woven' as const),
      amount,
      fc.integer({ min: 2, max: 30 }),
      (cloth, by, capEase) => {
        const { pattern } = refit(shiftPattern(), { for: cloth, by, capEase });
        for (const name of ['side', 'shoulder', 'underarm', 'armhole']) {
          const walk = walkSeam(pattern, pattern.seams.find(seam => seam.name === name)!);
          expect(walk.matches, name).toBe(true);
          if (name === 'armhole') expect(walk.differenceMm).toBeCloseTo(capEase, 2);
        }
      },
    ),
    { numRuns: 8 },
  );
});
