import { line, type Path, type Point, pathOf } from '@paperhinge/geometry';
import { add, apply, distance, dot, rotation, scale, subtract, unit } from '@paperhinge/geometry/plane';

/** The back of a collar that is drawn on from the neck's end at the shoulder. */
export interface LaidBack {
  /** Its neck edge at the centre back, and its outer edge there. */
  readonly nape: Point;
  readonly outer: Point;
  /** From the neck's end towards the nape. */
  readonly way: Point;
  /** From the neck's end to the nape, and from the nape square to the outer edge. */
  readonly neck: Path;
  readonly centreBack: Path;
}

/**
 * On paper: from the neck's end, parallel to the roll line upwards, half the back neck; its far end is swung away from
 * the outer edge by `lay` mm, so that this is long enough to lie round the shoulders; the centre back is square to it
 * at that end. The swing is a chord: the angle is 2 asin(lay / 2 length).
 */
export function laidBack(
  neckPoint: Point,
  { up, out }: { readonly up: Point; readonly out: Point },
  { lengthMm, lay, width }: { readonly lengthMm: number; readonly lay: number; readonly width: number },
): LaidBack {
  const upright = add(neckPoint, scale(up, lengthMm));
  const angle = 2 * Math.asin(Math.min(1, lay / (2 * lengthMm)));
  const swung = [angle, -angle].map(turn => rotation(turn, neckPoint));
  const away = (map: (typeof swung)[number]) => dot(subtract(apply(map, upright), upright), out);
  const map = away(swung[0]!) <= away(swung[1]!) ? swung[0]! : swung[1]!;
  const nape = apply(map, upright);
  const square = unit(subtract(apply(map, add(neckPoint, out)), neckPoint));
  const outer = add(nape, scale(square, width));
  return {
    nape,
    outer,
    way: scale(subtract(nape, neckPoint), 1 / distance(nape, neckPoint)),
    neck: pathOf(line(neckPoint, nape)),
    centreBack: pathOf(line(nape, outer)),
  };
}
