import type { Point } from '@paperhinge/geometry';
import * as clipper from 'js-angusj-clipper';

// An independent judge of layouts: Clipper, on a grid of 1e-5 mm.

const grid = 1e5;
const library = await clipper.loadNativeClipperLibInstanceAsync(
  clipper.NativeClipperLibRequestedFormat.WasmWithAsmJsFallback,
);

/** mm², by the trapezoids under a polygon's sides. */
export const areaOf = (polygon: readonly Point[]): number =>
  Math.abs(
    polygon.reduce((sum, p, i) => {
      const q = polygon[(i + 1) % polygon.length]!;
      return sum + ((q.x - p.x) * (p.y + q.y)) / 2;
    }, 0),
  );

/** mm² by which polygons lie over one another: their areas, less that of all of them together. */
export function overlapArea(polygons: readonly (readonly Point[])[]): number {
  const together = library.clipToPaths({
    clipType: clipper.ClipType.Union,
    subjectFillType: clipper.PolyFillType.NonZero,
    subjectInputs: polygons.map(p => {
      const data = p.map(({ x, y }) => ({ x: Math.round(x * grid), y: Math.round(y * grid) }));
      return { data: library.orientation(data) ? data : data.reverse(), closed: true };
    }),
  });
  const sum = polygons.reduce((total, p) => total + areaOf(p), 0);
  return sum - together.reduce((total, p) => total + library.area(p), 0) / grid ** 2;
}
