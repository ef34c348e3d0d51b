import type { Picture } from '@paperhinge/geometry/trace';
import { commandSaying, type Words } from '@paperhinge/sheet/words';
import type { PicturesGiven } from './questions.js';
import type { Tell } from './tell.js';

const stages = {
  targets: 'looking-for-sheets',
  camera: 'measuring-floor',
  floor: 'flattening-picture',
  outlines: 'tracing-pieces',
} as const;

/**
 * A pattern from photographs with the sheets of a photo frame in them; loaded once a picture is laid on the table. Its
 * allowances are left open, as nothing is known of them; the line that is seen is said.
 * @throws PatternError what `tracePhotos` refuses
 */
export async function tracedPattern(
  { pictures, name, taken = {} }: PicturesGiven,
  { sentence }: Words,
  tell: Tell,
): Promise<string> {
  tell(sentence(commandSaying('reading-pictures', {})));
  const { checkedSquare, patternOfTrace, tracePhotos, writeTrace } = await import(
    '@paperhinge/geometry/trace'
  );
  const stretch = (taken.square ?? checkedSquare) / checkedSquare;
  const { pieces } = tracePhotos(await Promise.all(pictures.map(decoded)), {
    printed: { across: stretch, down: stretch },
    onProgress: (stage, share) => tell(sentence(commandSaying(stages[stage], {})), share),
  });
  return writeTrace(
    { patterns: [patternOfTrace(name, pieces)], bothLines: false },
    taken.line ?? 'stitching',
  );
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
