import type { PatternError } from '@paperhinge/geometry';
import type { Picture } from '@paperhinge/geometry/trace';
import { commandRefusal } from '@paperhinge/sheet/words';
import { orientationOf, upright } from './exif-orientation.js';
import { readInput } from './read-input.js';

/** A picture larger than any camera takes would fill the memory: dots. */
const mostDots = 150e6;

/**
 * A photograph or scan, JPEG or PNG by its content, upright as it was taken. The decoders are loaded only here.
 * @throws PatternError `not-a-picture`, `picture-damaged`, `picture-too-large`; what `readInput` refuses
 */
export async function loadPicture(file: string): Promise<Picture> {
  const bytes = await readInput(file, 'picture', { file });
  const starts = (...head: readonly number[]) => head.every((b, i) => bytes[i] === b);
  const isJpeg = starts(0xff, 0xd8, 0xff),
    isPng = starts(0x89, 0x50, 0x4e, 0x47);
  if (!isJpeg && !isPng) throw notAPicture(file, bytes);
  let picture: Picture;
  try {
    picture = isJpeg ? await fromJpeg(bytes) : await fromPng(bytes);
  } catch (error) {
    if (error instanceof RangeError && /resolution|memory/i.test(error.message)) throw tooLarge(file);
    if (error instanceof Error && /maxResolutionInMP|maxMemoryUsageInMB/.test(error.message))
      throw tooLarge(file);
    throw commandRefusal('picture-damaged', {}, { file });
  }
  if (picture.width * picture.height > mostDots) throw tooLarge(file);
  return picture;
}

async function fromJpeg(bytes: Uint8Array): Promise<Picture> {
  const { default: jpeg } = await import('jpeg-js');
  const { width, height, data } = jpeg.decode(bytes, {
    useTArray: true,
    formatAsRGBA: true,
    maxResolutionInMP: mostDots / 1e6,
    maxMemoryUsageInMB: 4096,
  });
  return upright({ width, height, rgba: data }, orientationOf(bytes));
}

async function fromPng(bytes: Uint8Array): Promise<Picture> {
  const { convertIndexedToRgb, decode } = await import('fast-png');
  const image = decode(bytes);
  const { width, height, depth } = image;
  const indexed = image.palette !== undefined;
  const data = indexed ? convertIndexedToRgb(image) : image.data;
  const channels = indexed ? data.length / (width * height) : image.channels;
  const level = depth === 16 ? (v: number) => v >> 8 : (v: number) => v;
  const rgba = new Uint8Array(4 * width * height);
  for (let k = 0, at = 0; k < width * height; k++, at += channels) {
    const opacity = channels % 2 === 0 ? level(data[at + channels - 1]!) / 255 : 1;
    for (let c = 0; c < 3; c++) {
      const v = level(data[at + (channels < 3 ? 0 : c)]!);
      // What is see-through lies on white.
      rgba[4 * k + c] = Math.round(255 + (v - 255) * opacity);
    }
    rgba[4 * k + 3] = 255;
  }
  return { width, height, rgba };
}

function notAPicture(file: string, bytes: Uint8Array): PatternError {
  const head = new TextDecoder('latin1').decode(bytes.subarray(0, 64));
  const looksLike = /ftyp(heic|heix|hevc|mif1|avif)/.test(head)
    ? 'heic'
    : /^(II\*|MM\0\*)/.test(head)
      ? 'tiff'
      : /^RIFF....WEBP/s.test(head)
        ? 'webp'
        : head.startsWith('%PDF')
          ? 'pdf'
          : 'other';
  return commandRefusal('not-a-picture', { looksLike }, { file });
}

const tooLarge = (file: string): PatternError =>
  commandRefusal('picture-too-large', { mostMillions: mostDots / 1e6 }, { file });
