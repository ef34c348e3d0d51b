import { bentBack, type Camera, straightened } from './camera.js';
import type { Quad } from './quad.js';
import type { SeenTarget } from './read-target.js';
import { crossing, lineThrough } from './side-line.js';

/**
 * A target's corners where its sides cross once the lens's bend is taken out of them: in the picture itself they are
 * not quite straight. Undefined where a side was not seen well enough.
 */
export function straightCorners(target: SeenTarget, camera: Camera): Quad | undefined {
  const { focal } = camera;
  // In dots, so that what counts as a stray is the same as in the picture.
  const lines = target.sides.map(points =>
    lineThrough(
      points.map(p => {
        const { x, y } = straightened(camera, p.x, p.y);
        return { x: x * focal, y: y * focal };
      }),
    ),
  );
  const corners = lines.map((line, i) => {
    const before = lines[(i + 3) % 4];
    const p = line && before && crossing(before, line);
    return p && bentBack(camera, { x: p.x / focal, y: p.y / focal });
  });
  return corners.every(p => p !== undefined) ? (corners as unknown as Quad) : undefined;
}
