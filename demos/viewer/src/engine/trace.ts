import { writePattern } from '@paperhinge/geometry';
import type { Picture } from '@paperhinge/geometry/trace';

/** A pattern from photographs with the sheets of a photo frame in them; loaded once a picture is laid on the table. */
export async function tracedPattern(pictures: readonly Blob[], name: string): Promise<string> {
  const { patternOfTrace, tracePhotos } = await import('@paperhinge/geometry/trace');
  const { pieces } = tracePhotos(await Promise.all(pictures.map(decoded)));
  return writePattern(patternOfTrace(name, pieces));
}

/** The dots of a picture, turned upright as its camera says. */
async function decoded(picture: Blob): Promise<Picture> {
  const bitmap = await createImageBitmap(picture);
  const { width, height } = bitmap;
  const canvas = new OffscreenCanvas(width, height);
  const pen = canvas.getContext('2d', { willReadFrequently: true });
  if (!pen) throw new Error('This browser gives no canvas to read a picture by.');
  pen.drawImage(bitmap, 0, 0);
  bitmap.close();
  const { data } = pen.getImageData(0, 0, width, height);
  return { width, height, rgba: new Uint8Array(data.buffer) };
}
