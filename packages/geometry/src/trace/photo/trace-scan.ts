import { tell } from '../watch.js';
import { flatView, groundAtRim } from './flat-shot.js';
import { floorMap } from './floor-map.js';
import type { PhotoTrace } from './photo-trace.js';
import type { Picture } from './picture.js';
import { faintFindings } from './seen-faintly.js';
import { finding, refusal } from './tellings.js';
import { type PhotoOptions, piecesOn } from './trace-photo.js';

/** What a scan is traced by. */
export interface ScanOptions
  extends Pick<PhotoOptions, 'at' | 'pen' | 'sizes' | 'onStage' | 'onProgress' | 'signal'> {
  /** The scan's scale: dots to a mm, from its dpi (dpi / 25.4) or from two of its points whose distance is known. */
  readonly dotsToMm: number;
}

/** Dots to a mm: below the first nothing is measured, beyond the second no scanner goes. */
const leastScale = 1,
  mostScale = 100;
/** mm. A narrower picture is no scan of a piece, but a small copy of one, or its scale is another. */
const leastSide = 15;

/**
 * Traces the pieces in a flat scan, or in a picture taken as one: straight from above, one scale everywhere. How true
 * that is nothing in the picture can say.
 *
 * @throws PatternError `scan-scale-out-of-range`, `picture-too-small`, `scan-ground-not-seen`, `no-piece-on-scan`; for drawn
 *   pieces `too-few-clicks`, `click-outside`, `no-line-between`, `size-not-drawn-there`
 */
export function traceScan(picture: Picture, options: ScanOptions): PhotoTrace {
  const { dotsToMm, at, onStage = () => {} } = options;
  if (!(dotsToMm >= leastScale && dotsToMm <= mostScale))
    throw refusal('scan-scale-out-of-range', { dotsToMm });
  const { width, height } = picture;
  const isWhole = width > 0 && height > 0 && width * height * 4 <= picture.rgba.length;
  if (!isWhole || Math.min(width, height) < leastSide * dotsToMm)
    throw refusal('picture-too-small', { picture: 1, width, height });
  onStage('floor');
  tell(options, 'floor', 0);
  const shots = [{ picture, view: flatView(dotsToMm), tone: 1 }];
  const corners = [0, 1].flatMap(i =>
    [0, 1].map(j => ({ x: (i * width) / dotsToMm, y: (j * height) / dotsToMm })),
  );
  const map = floorMap(shots, corners);
  const known = groundAtRim(map, picture, dotsToMm);
  const { pieces, sizes, cutOff, loose } = piecesOn({ map, shots, sheets: [], known }, options);
  if (pieces.length === 0) throw refusal('no-piece-on-scan', { faint: loose.length, cutOff: cutOff.length });
  return {
    pieces,
    ...(sizes ? { sizes } : {}),
    dotMm: 1 / dotsToMm,
    sheets: [],
    floor: map,
    findings: [
      finding('note', 'scan-scale', {}, { dotsToMm }),
      ...(cutOff.length > 0 ? [finding('warning', 'scan-cuts-off', {}, { pieces: cutOff.length })] : []),
      ...(at ? [] : faintFindings(pieces, loose, { map, shots, known })),
    ],
  };
}
