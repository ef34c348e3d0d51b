import { type Point, pathLength } from '@paperhinge/geometry';
import { pathStart, pointAlong } from '@paperhinge/geometry/paths';
import type { PhotoTrace } from '@paperhinge/geometry/trace';

/** Colours of what was taken: the edges in turn, so that neighbours differ, and the corners. */
const edgeColours = [
  [226, 0, 116],
  [0, 122, 255],
] as const;
const cornerColour = [255, 160, 0] as const;

/** The floor from straight above at true scale, with the edges that were traced and their corners, as PNG. */
export async function pictureOfTrace({ floor, pieces, sizes }: PhotoTrace): Promise<Uint8Array> {
  const { width, height, cell, origin } = floor;
  const data = Uint8Array.from(floor.rgb);
  const blot = ({ x, y }: Point, reach: number, colour: readonly number[]) => {
    const i0 = Math.round((x - origin.x) / cell - 0.5),
      j0 = Math.round((y - origin.y) / cell - 0.5);
    for (let j = Math.max(0, j0 - reach); j <= Math.min(height - 1, j0 + reach); j++)
      for (let i = Math.max(0, i0 - reach); i <= Math.min(width - 1, i0 + reach); i++)
        data.set(colour, 3 * (j * width + i));
  };
  for (const { edges } of sizes?.flatMap(one => one.pieces) ?? pieces) {
    for (const [k, edge] of edges.entries()) {
      const length = pathLength(edge);
      for (let at = 0; at < length; at += cell / 2) blot(pointAlong(edge, at), 0, edgeColours[k % 2]!);
    }
    for (const edge of edges) blot(pathStart(edge), 2, cornerColour);
  }
  const { encode } = await import('fast-png');
  return encode({ width, height, data, channels: 3, depth: 8 });
}
