import type { Path, Point, Segment } from '@paperhinge/geometry';
import { add, scale, subtract } from '@paperhinge/geometry/plane';
import { endingIn } from '../moved-edges/meet.js';

/**
 * A quarter of an ellipse from `lowest` (square to the centre line) to `end` (along it), by cubics of 15 degrees.
 * Its centre lies `down` above `lowest`. Each cubic is the affine image of one of a circle with handles
 * (4/3) tan(φ/4). Error: 2.7e-4 of the radius at φ = 90° [read: spencermortensen.com/articles/bezier-circle], and it
 * falls with the sixth power of φ: 6e-9 of the larger half axis here, 1e-6 mm for a neck.
 *
 * @param out half axis from the centre outwards
 * @param down half axis from the centre to `lowest`
 */
export function quarterEllipse(lowest: Point, out: Point, down: Point, end: Point): Path {
  const centre = subtract(lowest, down);
  const at = (x: number, y: number): Point => add(centre, add(scale(out, x), scale(down, y)));
  const step = Math.PI / 2 / pieces;
  const handle = (4 / 3) * Math.tan(step / 4);
  const segments = Array.from({ length: pieces }, (_, i): Segment => {
    const [s0, c0, s1, c1] = [
      Math.sin(i * step),
      Math.cos(i * step),
      Math.sin((i + 1) * step),
      Math.cos((i + 1) * step),
    ];
    return [
      i === 0 ? lowest : at(s0, c0),
      at(s0 + handle * c0, c0 - handle * s0),
      at(s1 - handle * c1, c1 + handle * s1),
      at(s1, c1),
    ];
  });
  return endingIn({ segments }, end);
}

const pieces = 6;
