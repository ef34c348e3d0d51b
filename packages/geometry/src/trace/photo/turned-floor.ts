import { matrixOf, product, turnOf, viewOf } from './camera.js';
import type { Solution } from './solve.js';

/**
 * The same solution with the floor turned so that what lies to the right in the first picture lies to the right on the
 * floor: pieces come out the way the maker saw them.
 */
export function turnedAsSeen(solution: Solution): Solution {
  const size = solution.sighting.sizes[0]!;
  const view = viewOf(solution.cameras[0]!);
  const a = view.toFloor(size.width / 2 - 1, size.height / 2),
    b = view.toFloor(size.width / 2 + 1, size.height / 2);
  const angle = Math.atan2(b.y - a.y, b.x - a.x);
  const cos = Math.cos(angle),
    sin = Math.sin(angle);
  return {
    ...solution,
    cameras: solution.cameras.map(camera => ({
      ...camera,
      turn: turnOf(product(matrixOf(camera.turn), matrixOf([0, 0, angle]))),
    })),
    places: solution.places.map(({ x, y, angle: own }) => ({
      x: cos * x + sin * y,
      y: cos * y - sin * x,
      angle: own - angle,
    })),
  };
}
