import type { Piece } from '@paperhinge/geometry';
import { expect, test } from 'vitest';
import { sheetGarments } from '../../support/fresh/sheet-garments.js';
import type { Unnamed } from '../../support/fresh/unnamed.js';

// What the seams of garments off a sheet measure, by chords of their curves: no sum of ours has a part in it.

type Handles = readonly { readonly x: number; readonly y: number }[];

const placeAt = (handles: Handles, t: number): readonly [x: number, y: number] => {
  const shares =
    handles.length === 2 ? [1 - t, t] : [(1 - t) ** 3, 3 * (1 - t) ** 2 * t, 3 * (1 - t) * t * t, t ** 3];
  return [sum(handles.map(({ x }, i) => x * shares[i]!)), sum(handles.map(({ y }, i) => y * shares[i]!))];
};
const sum = (all: readonly number[]): number => all.reduce((a, b) => a + b, 0);

const chords = 64;
const mmOf = (handles: Handles): number =>
  sum(
    Array.from({ length: chords }, (_, i) => {
      const [[ax, ay], [bx, by]] = [placeAt(handles, i / chords), placeAt(handles, (i + 1) / chords)];
      return Math.hypot(bx - ax, by - ay);
    }),
  );

const edgeOf = ({ pattern }: Unnamed, ref: string): readonly [piece: Piece, edge: string] => {
  const [piece, edge] = ref.split('.') as [string, string];
  return [pattern.pieces.find(own => own.name === piece)!, edge];
};

const mmAlong = (garment: Unnamed, ref: string): number => {
  const [piece, edge] = edgeOf(garment, ref);
  return sum(
    piece.outline.parts.flatMap(part =>
      part.type === 'edge' && part.name === edge ? part.path.segments.map(mmOf) : [],
    ),
  );
};

const garments = sheetGarments();

test.each(garments)('the seams of the $title walk', garment => {
  const off = garment.walks.map(({ seam, times, mm }) => {
    const [a, b] = seam.map(side => sum(side.map(ref => mmAlong(garment, ref)))) as [number, number];
    return {
      seam: seam.map(side => side.map(ref => garment.words[ref]).join(' + ')).join(' = '),
      offMm: a - times * b - mm,
    };
  });
  expect(off.filter(({ offMm }) => !(Math.abs(offMm) < 0.5))).toEqual([]);
});

test.each(garments)('notches on both sides of a seam of the $title meet', garment => {
  const places = (ref: string): readonly number[] => {
    const [piece, edge] = edgeOf(garment, ref);
    return piece.notches
      .filter(notch => notch.edge === edge)
      .map(({ at }) => at)
      .sort((a, b) => a - b);
  };
  const meeting = garment.walks.flatMap(({ seam: [a, b], times }) => {
    if (a.length > 1 || b.length > 1 || times !== 1 || a[0] === b[0]) return [];
    const [on, over] = [places(a[0]!), places(b[0]!)];
    if (on.length === 0 || on.length !== over.length) return [];
    const long = mmAlong(garment, b[0]!);
    const apart = (other: readonly number[]): number =>
      Math.max(...on.map((at, i) => Math.abs(at - other[i]!)));
    return [Math.min(apart(over), apart(over.map(at => long - at).reverse()))];
  });
  expect(meeting.length).toBeGreaterThan(0);
  expect(Math.max(...meeting)).toBeLessThan(4.5);
});
