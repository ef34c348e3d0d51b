import type { Picture } from '@paperhinge/geometry/trace';

/**
 * How a JPEG's dots are to be turned to stand as the camera was held: 1 to 8, as the Exif standard (JEITA CP-3451,
 * tag 0x0112) counts them; 1 where it does not say.
 */
export function orientationOf(jpeg: Uint8Array): number {
  const view = new DataView(jpeg.buffer, jpeg.byteOffset, jpeg.byteLength);
  let at = 2;
  while (at + 10 < jpeg.length && view.getUint8(at) === 0xff) {
    const marker = view.getUint8(at + 1),
      length = view.getUint16(at + 2);
    // "Exif" and two zeros begin the segment.
    if (marker === 0xe1 && view.getUint32(at + 4) === 0x45786966) return orientationIn(view, at + 10);
    if (marker === 0xda) break;
    at += 2 + length;
  }
  return 1;
}

function orientationIn(view: DataView, tiff: number): number {
  try {
    const little = view.getUint16(tiff) === 0x4949;
    const directory = tiff + view.getUint32(tiff + 4, little);
    const count = view.getUint16(directory, little);
    for (let i = 0; i < count; i++) {
      const entry = directory + 2 + 12 * i;
      if (view.getUint16(entry, little) !== 0x0112) continue;
      const value = view.getUint16(entry + 8, little);
      return value >= 1 && value <= 8 ? value : 1;
    }
  } catch (error) {
    // A directory that runs out of the file says nothing.
    if (!(error instanceof RangeError)) throw error;
  }
  return 1;
}

/** A picture turned, or mirrored back, as its orientation says. */
export function upright(picture: Picture, orientation: number): Picture {
  if (orientation === 1) return picture;
  const { width: w, height: h, rgba } = picture;
  const across = orientation > 4;
  const [width, height] = across ? [h, w] : [w, h];
  const from = new Uint32Array(rgba.buffer, rgba.byteOffset, w * h);
  const to = new Uint32Array(w * h);
  for (let y = 0, k = 0; y < height; y++)
    for (let x = 0; x < width; x++, k++) to[k] = from[sourceOf(orientation, x, y, w, h)]!;
  return { width, height, rgba: new Uint8Array(to.buffer) };
}

/** Which stored dot is shown at x, y. */
function sourceOf(orientation: number, x: number, y: number, w: number, h: number): number {
  switch (orientation) {
    case 2:
      return y * w + (w - 1 - x);
    case 3:
      return (h - 1 - y) * w + (w - 1 - x);
    case 4:
      return (h - 1 - y) * w + x;
    case 5:
      return x * w + y;
    case 6:
      return (h - 1 - x) * w + y;
    case 7:
      return (h - 1 - x) * w + (w - 1 - y);
    default:
      return x * w + (w - 1 - y);
  }
}
