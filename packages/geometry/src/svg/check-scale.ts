import { boundsOfPath } from '../path/bounds.js';
import { outlinePath } from '../pattern/outline.js';
import type { Piece } from '../pattern/types.js';
import { largestLikelyPiece } from '../tolerance.js';
import type { Report } from './report.js';
import { type DrawingScale, outOfProportion, scaleSource } from './root.js';
import { attributeOf, type Element } from './xml.js';

/**
 * A foreign drawing may be of any size; a pattern read in the wrong unit would be cut in the wrong size.
 * @throws PatternError `scale-not-known`, `unit-not-known`; `scale-out-of-range` for a scale that is no number over 0
 */
export function refuseUnknownScale(root: Element, scale: DrawingScale | undefined, report: Report): void {
  if (scale) {
    const size = 'factor' in scale ? scale.factor : scale.unitMm;
    if (!(size > 0 && Number.isFinite(size))) throw report.refuse('scale-out-of-range', root.offset, {});
    if ('unitMm' in scale) return;
  }
  const source = scaleSource(root);
  const at = root.attributes.get(source === 'viewbox' ? 'viewBox' : source)?.offset ?? root.offset;
  if (source === 'viewbox' || source === 'percent')
    throw report.refuse('scale-not-known', at, { because: source });
  if (source === 'width' || source === 'height')
    throw report.refuse('unit-not-known', at, {
      attribute: source,
      isNothing: Number.parseFloat(attributeOf(root, source)!) <= 0,
    });
}

/** Says how large the largest piece is where its size was only assumed, or is not likely. */
export function tellSizes(
  pieces: readonly Piece[],
  root: Element,
  scale: DrawingScale | undefined,
  report: Report,
): void {
  const reaches = pieces.map(reachOf);
  const reachMm = Math.max(...reaches);
  const source = scaleSource(root);
  if (!scale && (source === 'pixels' || source === 'nothing')) {
    const piece = pieces[reaches.indexOf(reachMm)]!.name;
    const facts = { piece, reachMm, hasSize: source === 'pixels' };
    report.add('warning', 'scale-assumed', root.offset, facts);
  }
  const meant = scale ? undefined : outOfProportion(root);
  if (meant) report.add('warning', 'size-out-of-proportion', root.offset, meant);
  for (const [i, { name: piece }] of pieces.entries())
    if (reaches[i]! > largestLikelyPiece)
      report.add(
        'warning',
        'piece-very-large',
        root.offset,
        { piece: { piece }, reachMm: reaches[i]! },
        { piece },
      );
}

/** The longer side of the upright box round a piece, in mm. */
function reachOf({ outline }: Piece): number {
  const { min, max } = boundsOfPath(outlinePath(outline));
  return Math.max(max.x - min.x, max.y - min.y);
}
