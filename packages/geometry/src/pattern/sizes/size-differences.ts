import type { Finding } from '../../telling.js';
import { edgeNamed, edgeNames } from '../outline.js';
import { requireWhole } from '../require-whole.js';
import { finding, type SizePart } from '../tellings.js';
import type { Pattern, Piece, Seam } from '../types.js';

/**
 * In what two sizes of one pattern are not the same pattern: pieces, and of each piece its edges, darts and pleats in
 * their order, kinds, notches, lines and marks by their names; seams. Lengths may differ. Nothing where one can be
 * graded into the other. Each piece is told of once.
 */
export function sizeDifferences(a: Pattern, b: Pattern): readonly Finding[] {
  requireWhole(a);
  requireWhole(b);
  const sizes = [a.size ?? a.name, b.size ?? b.name] as const;
  const unlike = (part: SizePart, piece?: string): Finding =>
    finding('fault', 'sizes-differ', piece === undefined ? {} : { piece }, {
      part,
      sizes,
      ...(piece === undefined ? {} : { piece: { piece } }),
    });
  const names = (pattern: Pattern): readonly string[] => pattern.pieces.map(piece => piece.name);
  if (!same([...names(a)].sort(), [...names(b)].sort())) return [unlike('pieces')];
  const pieces = a.pieces.flatMap((piece): readonly Finding[] => {
    const other = b.pieces.find(p => p.name === piece.name)!;
    const part = firstDifference(piece, other);
    return part ? [unlike(part, piece.name)] : [];
  });
  return same(a.seams.map(seamText).sort(), b.seams.map(seamText).sort())
    ? pieces
    : [...pieces, unlike('seams')];
}

function firstDifference(a: Piece, b: Piece): SizePart | undefined {
  const looks: readonly (readonly [SizePart, (piece: Piece) => readonly string[]])[] = [
    ['outline', piece => piece.outline.parts.map(({ type, name }) => `${type} ${name}`)],
    ['kinds', piece => edgeNames(piece).map(name => edgeNamed(piece, name).kind)],
    [
      'notches',
      piece => sortedNotches(piece).map(({ edge, style, name }) => `${edge} ${style} ${name ?? ''}`),
    ],
    ['lines', piece => piece.lines.map(({ kind, name }) => `${kind} ${name}`).sort()],
    ['marks', piece => piece.marks.map(({ kind, name }) => `${kind} ${name}`).sort()],
  ];
  return looks.find(([, look]) => !same(look(a), look(b)))?.[0];
}

/** Notches by edge, each edge's in their order along it. */
export const sortedNotches = (piece: Piece): Piece['notches'] => {
  const names = edgeNames(piece);
  return [...piece.notches].sort((m, n) => names.indexOf(m.edge) - names.indexOf(n.edge) || m.at - n.at);
};

const seamText = ({ name, a, b }: Seam): string =>
  JSON.stringify([
    name,
    ...[a, b].map(side => side.map(({ piece, edge, reversed }) => [piece, edge, reversed])),
  ]);

const same = (a: readonly string[], b: readonly string[]): boolean =>
  a.length === b.length && a.every((text, i) => text === b[i]);
