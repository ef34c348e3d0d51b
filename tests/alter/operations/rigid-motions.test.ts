import type { Alteration } from '@paperhinge/alter';
import { recutNeckline, takeIn, trueEdges } from '@paperhinge/alter/edges';
import { lengthen, shorten } from '@paperhinge/alter/length';
import { draftBand, draftFacing, draftStay } from '@paperhinge/alter/made';
import {
  edgeNames,
  edgePath,
  type OutlinePart,
  type Pattern,
  type Piece,
  pathLength,
} from '@paperhinge/geometry';
import { reversedPath, transformedPath } from '@paperhinge/geometry/paths';
import { outlinePath } from '@paperhinge/geometry/pattern';
import { type Affine, apply, compose, mirror, rotation, translation } from '@paperhinge/geometry/plane';
import { signedArea } from '@paperhinge/geometry/regions';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { toldDid } from '../../support/told.js';

/** A pattern laid elsewhere on the table, or turned over: the same garment. */
function laid(pattern: Pattern, map: Affine, over: boolean): Pattern {
  const pieces = pattern.pieces.map((piece): Piece => {
    const turned = piece.outline.parts.map((part): OutlinePart => {
      if (part.type === 'edge') {
        const path = transformedPath(part.path, map);
        return { ...part, path: over ? reversedPath(path) : path };
      }
      if (part.type === 'pleat') {
        const mouth = transformedPath(part.mouth, map);
        return { ...part, mouth: over ? reversedPath(mouth) : mouth };
      }
      const [a, b] = part.legs.map(leg => transformedPath(leg, map)) as [
        (typeof part.legs)[0],
        (typeof part.legs)[1],
      ];
      const legs = over ? ([reversedPath(b), reversedPath(a)] as const) : ([a, b] as const);
      return { ...part, legs, apex: apply(map, part.apex) };
    });
    return {
      ...piece,
      outline: { parts: over ? turned.reverse() : turned },
      notches: piece.notches.map(n => ({
        ...n,
        at: over ? pathLength(edgePath(piece, n.edge)) - n.at : n.at,
      })),
      lines: piece.lines.map(l => ({ ...l, path: transformedPath(l.path, map) })),
      marks: piece.marks.map(m => ({ ...m, at: apply(map, m.at) })),
    };
  });
  const flip = (runs: Pattern['seams'][number]['a']) =>
    runs.map(r => (over ? { ...r, reversed: !r.reversed } : r));
  return { ...pattern, pieces, seams: pattern.seams.map(s => ({ ...s, a: flip(s.a), b: flip(s.b) })) };
}

const ref = (text: string) => ({ piece: text.split('.')[0]!, edge: text.split('.')[1]! });
const steps: readonly (readonly [string, (pattern: Pattern) => Alteration])[] = [
  ['shorten at the hem', p => shorten(p, { pieces: ['front', 'back', 'sleeve'], at: 'hem', by: 120 })],
  ['lengthen at a line', p => lengthen(p, { pieces: ['front', 'back'], at: 'waist', by: 35 })],
  ['take in', p => takeIn(p, { seam: 'side', by: 30, from: { share: 0.2 } })],
  [
    'take in between two places',
    p => takeIn(p, { seam: 'side', by: 60, between: [{ share: 0.1 }, { share: 0.9 }] }),
  ],
  ['inset V', p => recutNeckline(p, { piece: 'front', shape: 'inset V', depth: 85, halfWidth: 45 })],
  ['round', p => recutNeckline(p, { piece: 'front', shape: 'round', depth: 40, halfWidth: 130 })],
  ['true', p => trueEdges(p, { edges: [ref('front.hem'), ref('front.neck')], within: 2 })],
  [
    'band',
    p =>
      draftBand(p, {
        name: 'band',
        along: [ref('front.neck'), ref('back.neck')],
        ratio: 0.9,
        width: 60,
        join: 10,
        stretchedPart: 'whole',
      }),
  ],
  ['facing', p => draftFacing(p, { name: 'facing', along: [ref('front.neck')], width: 55, join: 0 })],
  ['stay', p => draftStay(p, { name: 'stay', along: [ref('back.neck')], width: 15, join: 0 })],
];

function figures(pattern: Pattern): Record<string, number> {
  return Object.fromEntries(
    pattern.pieces.flatMap(piece => [
      [`${piece.name} area`, signedArea(outlinePath(piece.outline))] as const,
      ...edgeNames(piece).map(edge => [`${piece.name}.${edge}`, pathLength(edgePath(piece, edge))] as const),
    ]),
  );
}

test.each(steps)('%s comes out the same wherever the pattern lies, and turned over', (_, step) => {
  const pattern = shiftPattern();
  const expected = step(pattern);
  const placed = fc.record({
    angle: fc.double({ min: -Math.PI, max: Math.PI, noNaN: true }),
    x: fc.double({ min: -2000, max: 2000, noNaN: true }),
    y: fc.double({ min: -2000, max: 2000, noNaN: true }),
    over: fc.boolean(),
  });
  fc.assert(
    fc.property(placed, ({ angle, x, y, over }) => {
      const rigid = compose(rotation(angle), translation({ x, y }));
      const map = over ? compose(mirror({ x: 0, y: 0 }, { x: 0, y: 1 }), rigid) : rigid;
      const found = step(laid(pattern, map, over));
      expect(toldDid(found)).toBe(toldDid(expected));
      expect(found.findings.map(f => f.code)).toEqual(expected.findings.map(f => f.code));
      const wanted = figures(expected.pattern),
        got = figures(found.pattern);
      expect(Object.keys(got).sort()).toEqual(Object.keys(wanted).sort());
      // Fitted and parallel curves are the same within their tolerance only: 0.005 mm, here on 400 mm of side.
      for (const [name, value] of Object.entries(wanted))
        expect(Math.abs(got[name]! - value), name).toBeLessThan(name.endsWith(' area') ? 0.1 : 0.01);
    }),
    { numRuns: 12 },
  );
});
