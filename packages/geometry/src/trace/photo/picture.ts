/** A picture as it comes out of a decoder: red, green, blue and opacity of each dot, row by row. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly rgba: Uint8Array;
}

/** Brightness of each dot, 0 to 255, row by row. The middle of the first dot is at 0.5, 0.5. */
export interface Grey {
  readonly width: number;
  readonly height: number;
  readonly values: Uint8Array;
}

/** Brightness by the weights of ITU-R BT.601, which photographs are stored by. */
export function greyOf({ width, height, rgba }: Picture): Grey {
  const values = new Uint8Array(width * height);
  for (let i = 0, k = 0; i < values.length; i++, k += 4)
    values[i] = (rgba[k]! * 77 + rgba[k + 1]! * 150 + rgba[k + 2]! * 29 + 128) >> 8;
  return { width, height, values };
}

/** The picture at half its size, four dots to one. */
export function halved({ width: w, height: h, values }: Grey): Grey {
  const width = w >> 1,
    height = h >> 1;
  const half = new Uint8Array(width * height);
  for (let y = 0, to = 0; y < height; y++)
    for (let x = 0, from = 2 * y * w; x < width; x++, from += 2, to++)
      half[to] = (values[from]! + values[from + 1]! + values[from + w]! + values[from + w + 1]! + 2) >> 2;
  return { width, height, values: half };
}

/** Brightness between the dots, linear; beyond the edge that of the edge. */
export function brightnessAt({ width, height, values }: Grey, x: number, y: number): number {
  const u = Math.min(Math.max(x - 0.5, 0), width - 1.001),
    v = Math.min(Math.max(y - 0.5, 0), height - 1.001);
  const i = Math.floor(u),
    j = Math.floor(v);
  const a = u - i,
    b = v - j,
    k = j * width + i;
  const top = values[k]! + (values[k + 1]! - values[k]!) * a;
  const bottom = values[k + width]! + (values[k + width + 1]! - values[k + width]!) * a;
  return top + (bottom - top) * b;
}
