import { pathStart } from '../../path/path.js';
import { edgeNames, edgePath, outlinePath } from '../../pattern/outline.js';
import { renamed } from '../../pattern/rename.js';
import { sizeDifferences } from '../../pattern/sizes/size-differences.js';
import type { OutlinePart, Pattern, Piece } from '../../pattern/types.js';
import { centroid } from '../../region/area.js';
import type { Finding } from '../../telling.js';
import { distance, type Point, subtract } from '../../vector.js';
import type { ForeignDrawing } from './drawing.js';
import { type DrawingTrace, piecesOfDrawing } from './pieces-of-drawing.js';
import { refusal } from './tellings.js';

/** A size, and the layer or colour that it is drawn in. */
export interface SizeLayer {
  readonly size: string;
  readonly layer: string;
}

/** All sizes of a nest, each a pattern with the same names. */
export interface SizesTrace {
  readonly patterns: readonly Pattern[];
  readonly bothLines: boolean;
  readonly findings: readonly Finding[];
}

/**
 * Several sizes drawn in one another, each in a layer of its own: a pattern for each, pieces and edges called alike.
 * A piece is found in the next size by its middle, an edge by where it begins. Sizes that are not drawn alike are
 * told of.
 *
 * @throws PatternError those of `piecesOfDrawing`; `sizes-too-few`, `sizes-alike`
 */
export function sizesOfDrawing(
  name: string,
  drawing: ForeignDrawing,
  { gap, sizes }: { readonly gap: number; readonly sizes: readonly SizeLayer[] },
): SizesTrace {
  if (sizes.length < 2) throw refusal('sizes-too-few', {});
  const twice = twiceIn(sizes.map(one => one.size)) ?? twiceIn(sizes.map(one => one.layer));
  if (twice !== undefined) throw refusal('sizes-alike', { name: twice });
  const traces = sizes.map(({ layer }) => piecesOfDrawing(name, drawing, { gap, layer }));
  const [first, ...others] = traces as [DrawingTrace, ...DrawingTrace[]];
  const patterns = [first.pattern, ...others.map(({ pattern }) => calledAlike(first.pattern, pattern))].map(
    (pattern, i): Pattern => ({ ...pattern, size: sizes[i]!.size }),
  );
  return {
    patterns,
    bothLines: first.bothLines,
    findings: [
      ...first.findings,
      ...patterns.slice(1).flatMap(pattern => sizeDifferences(patterns[0]!, pattern)),
    ],
  };
}

const twiceIn = (names: readonly string[]): string | undefined =>
  names.find((name, i) => names.indexOf(name) < i);

/** A size with its pieces and edges called as those of another are. */
function calledAlike(model: Pattern, pattern: Pattern): Pattern {
  const free = new Set(pattern.pieces);
  const pairs = model.pieces.flatMap(piece => {
    const [nearest] = [...free].sort(
      (a, b) => distance(middleOf(a), middleOf(piece)) - distance(middleOf(b), middleOf(piece)),
    );
    if (!nearest) return [];
    free.delete(nearest);
    return [[piece, nearest] as const];
  });
  const turned = pairs.map(([piece, own]) => fromSameEdge(piece, own));
  const names = Object.fromEntries(
    pairs.map(([piece, own], i) => [
      own.name,
      {
        name: piece.name,
        ...(edgeNames(piece).length === edgeNames(own).length
          ? { edges: edgeNames(turned[i]!).map((_, k) => edgeNames(piece)[k]!) }
          : {}),
      },
    ]),
  );
  const pieces = [...turned, ...free];
  return renamed({ ...pattern, pieces }, names);
}

const middleOf = (piece: Piece): Point => centroid(outlinePath(piece.outline));

/** The piece with its outline listed from the edge that lies where the model's first does. */
function fromSameEdge(model: Piece, own: Piece): Piece {
  const starts = (piece: Piece): readonly Point[] =>
    edgeNames(piece).map(name => subtract(pathStart(edgePath(piece, name)), middleOf(piece)));
  const [theirs, ours] = [starts(model), starts(own)];
  const n = ours.length;
  if (theirs.length !== n) return own;
  const miss = (turn: number): number =>
    theirs.reduce((sum, p, k) => sum + distance(p, ours[(k + turn) % n]!), 0);
  const best = ours.map((_, turn) => turn).sort((a, b) => miss(a) - miss(b))[0]!;
  const first = edgeNames(own)[best]!;
  const { parts } = own.outline;
  const at = parts.findIndex((part, i) => part.name === first && !isContinued(parts, i));
  return { ...own, outline: { parts: [...parts.slice(at), ...parts.slice(0, at)] } };
}

/** Whether a part goes on with an edge that a dart interrupts. */
const isContinued = (parts: readonly OutlinePart[], i: number): boolean =>
  parts[(i + parts.length - 1) % parts.length]!.type !== 'edge' &&
  parts[(i + parts.length - 2) % parts.length]!.name === parts[i]!.name;
