import paperCore from 'paper/dist/paper-core.js';
import { isLine, reversed, type Segment } from '../curve/segment.js';
import type { Path } from '../path/path.js';
import { requirePath } from '../path/sound.js';
import type { Point } from '../vector.js';
import { signedArea } from './area.js';
import { windingNumber } from './contains.js';

// Its types leave out that the module is a scope, with the class of scopes on it.
const main = paperCore as unknown as paper.PaperScope & { readonly PaperScope: typeof paper.PaperScope };

// The one place that knows `paper`. Its objects live in a scope of their own for the length of a call; nothing is
// inserted into a project, and the scope that was active before is active again.

/** The surface covered by any of `a` or any of `b`; see {@link combined}. */
export const union = (a: readonly Path[], b: readonly Path[]): readonly Path[] => combined(a, b, 'unite');
/** The surface covered by `a` and by `b`; see {@link combined}. */
export const intersection = (a: readonly Path[], b: readonly Path[]): readonly Path[] =>
  combined(a, b, 'intersect');
/** The surface covered by `a` but not by `b`; see {@link combined}. */
export const difference = (a: readonly Path[], b: readonly Path[]): readonly Path[] =>
  combined(a, b, 'subtract');

/**
 * Sets of closed paths as surfaces: a place is covered where the paths of a set wind round it. The result's outer
 * paths run clockwise as seen, its holes anticlockwise; an empty result is an empty list. Error: about 1e-6 mm, that
 * of `paper`; it takes outlines for the sum of their parts, so edges have no names here.
 */
function combined(
  a: readonly Path[],
  b: readonly Path[],
  operation: 'unite' | 'intersect' | 'subtract',
): readonly Path[] {
  [...a, ...b].forEach(requirePath);
  const scope = new main.PaperScope();
  scope.setup(new scope.Size(1, 1));
  try {
    scope.activate();
    const result = compound(scope, a)[operation](compound(scope, b), { insert: false });
    return oriented(pathsOf(result));
  } finally {
    scope.project.remove();
    main.activate();
  }
}

function compound(scope: paper.PaperScope, paths: readonly Path[]): paper.CompoundPath {
  const children = paths.map(path => {
    const start = path.segments[0]![0];
    const child = new scope.Path({ insert: false });
    child.moveTo(start);
    for (const s of path.segments)
      if (isLine(s)) child.lineTo(s[1]);
      else child.cubicCurveTo(s[1], s[2], s[3]);
    child.closePath();
    return child;
  });
  return new scope.CompoundPath({ children, fillRule: 'nonzero', insert: false });
}

function pathsOf(item: paper.PathItem): readonly Path[] {
  const children = item instanceof main.CompoundPath ? (item.children as paper.Path[]) : [item as paper.Path];
  return children.flatMap(child => {
    const segments = child.curves.map(segmentOf);
    return segments.length > 0 ? [{ segments }] : [];
  });
}

function segmentOf(curve: paper.Curve): Segment {
  const at = (p: paper.Point): Point => ({ x: p.x, y: p.y });
  const from = at(curve.point1),
    to = at(curve.point2);
  if (curve.handle1.isZero() && curve.handle2.isZero()) return [from, to];
  return [from, at(curve.point1.add(curve.handle1)), at(curve.point2.add(curve.handle2)), to];
}

/** Paths that do not cross: one within an odd number of others is a hole. */
function oriented(paths: readonly Path[]): readonly Path[] {
  return paths.map(path => {
    const inside = paths.filter(
      other => other !== path && windingNumber(other, path.segments[0]![0]) !== 0,
    ).length;
    const wanted = inside % 2 === 0 ? 1 : -1;
    return signedArea(path) * wanted >= 0 ? path : { segments: path.segments.map(reversed).reverse() };
  });
}
