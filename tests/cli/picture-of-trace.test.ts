import { at, polyline } from '@paperhinge/geometry';
import type { PhotoTrace, TracedPiece } from '@paperhinge/geometry/trace';
import { decode } from 'fast-png';
import { expect, test } from 'vitest';
import { pictureOfTrace } from '../../packages/cli/src/picture-of-trace.js';

/** A triangle with its upright side at so many mm from the left. */
const piece = (x: number): TracedPiece => {
  const corners = [at(x, 5), at(38, 5), at(x, 35)];
  return {
    name: 'piece-1',
    edges: corners.map((corner, i) => polyline(corner, corners[(i + 1) % 3]!)),
    points: corners,
    onPaper: 0,
    isClear: true,
  };
};
const [width, height] = [40, 40];
const floor: PhotoTrace['floor'] = {
  origin: at(0, 0),
  cell: 1,
  width,
  height,
  rgb: new Uint8Array(3 * width * height).fill(255),
  from: new Uint8Array(width * height).fill(1),
};

test('the picture of a tracing shows the lines of every size that was told apart', async () => {
  const trace = { pieces: [piece(6)], dotMm: 1, sheets: [], floor, findings: [] };
  const coloured = async (of: PhotoTrace, x: number): Promise<boolean> => {
    const { data } = decode(await pictureOfTrace(of));
    return data[3 * (20 * width + x)] !== 255 || data[3 * (20 * width + x) + 1] !== 255;
  };
  expect(await coloured(trace, 6)).toBe(true);
  expect(await coloured(trace, 14)).toBe(false);
  const sizes = [6, 14].map((x, i) => ({ size: 'SM'[i]!, pieces: [piece(x)] }));
  for (const x of [6, 14]) expect(await coloured({ ...trace, sizes }, x)).toBe(true);
});
