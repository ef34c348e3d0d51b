import type { Finding } from '../../telling.js';
import type { Point } from '../../vector.js';
import { tell, type Watch } from '../watch.js';
import { isBlurred } from './blur.js';
import { viewOf } from './camera.js';
import { drawnOutline, inkOfPen } from './drawn-outline.js';
import type { TonedShot } from './edge-of-patch.js';
import { findTargets } from './find-targets.js';
import { cellAt, dotAt, type FloorMap, floorMap, type Shot } from './floor-map.js';
import { floorOfSheets, type PlacedSheet } from './floor-of-sheets.js';
import { type FloorKnown, unlikeGround } from './ground.js';
import type { Patch } from './patches.js';
import type { PenSeen, SizeDrawn } from './pen.js';
import type { PhotoTrace, SizeTraced, TracedPiece } from './photo-trace.js';
import { greyOf, type Picture } from './picture.js';
import { inTone } from './read-target.js';
import { faintFindings } from './seen-faintly.js';
import { type PrintedStretch, sameSheet, seenSheets } from './seen-sheets.js';
import { sizesDrawn } from './sizes-drawn.js';
import { type SeenPicture, type Solution, solved } from './solve.js';
import { paperCorners } from './target-sheet.js';
import { finding, refusal } from './tellings.js';
import { toneOf } from './tone.js';
import { traceFloor } from './trace-floor.js';
import { namedPieces, namedSizes } from './traced-piece.js';
import { truthFindings, truthOf } from './truth.js';
import { turnedAsSeen } from './turned-floor.js';
import { mapOf } from './unknowns.js';

/** What a tracing goes by. */
export interface PhotoOptions extends Watch<TraceStage> {
  /** Printed mm for a mm of the sheets: what their checked squares measured, over 50 mm. */
  readonly printed?: PrintedStretch;
  /**
   * Pieces drawn on paper, by the corners that their maker clicked, in dots of the first picture: the lines between are
   * followed. Without, whatever lies on the ground is traced along its edge.
   */
  readonly at?: readonly (readonly Point[])[];
  /** How the lines between the corners are drawn, where those of several sizes run beside one another. */
  readonly pen?: PenSeen;
  /** All sizes of a nest, told apart by their pens: the corners that were clicked are those of the first of them. */
  readonly sizes?: readonly SizeDrawn[];
  /** Told before each stage of the work; may throw to stop it. */
  readonly onStage?: (stage: TraceStage) => void;
}
/** The stages of the work, in order. */
export type TraceStage = 'targets' | 'camera' | 'floor' | 'outlines';

/** Dots of the shorter side: fewer show no cell of a target on a floor of a metre. */
const leastDots = 600;
/** Sheets without which lens and camera are not settled. */
const leastSheets = 3;

/**
 * Traces the pieces on a floor from photographs with the sheets of a photo frame in them: any angle to 35 degrees, any
 * lens short of a fish eye, several pictures joined by the sheets that they share.
 *
 * @throws PatternError `picture-too-small`, `picture-blurred`, `no-target-found`, `too-few-targets`,
 *   `pictures-share-no-sheets`, `ground-not-seen`, `no-piece-found`, `work-stopped`
 */
export function tracePhotos(pictures: readonly Picture[], options: PhotoOptions = {}): PhotoTrace {
  const { printed = { across: 1, down: 1 }, onStage = () => {} } = options;
  onStage('targets');
  const looked = pictures.map((picture, i) => {
    tell(options, 'targets', i / pictures.length);
    return sheetsIn(picture, i + 1, printed);
  });
  onStage('camera');
  tell(options, 'camera', 0);
  const solution = solvedTogether(looked);
  onStage('floor');
  tell(options, 'floor', 0);
  const shots = solution.order.map((i, k) => ({
    picture: pictures[i]!,
    view: viewOf(solution.cameras[k]!),
    tone: looked[i]!.tone,
  }));
  const sheets = solution.sheets.map((sheet, i) => ({
    sheet,
    at: solution.places[i]!,
    targets: looked.flatMap(l => l.sheets.filter(s => sameSheet(s.sheet, sheet)).flatMap(s => s.targets)),
  }));
  const map = floorMap(
    shots,
    sheets.flatMap(({ sheet, at }) => paperCorners(sheet.paper, mapOf(at))),
  );
  const floor = { map, shots, sheets, known: floorOfSheets(map, sheets) };
  const { pieces, sizes, cutOff, loose } = piecesOn(floor, options);
  if (pieces.length === 0) throw refusal('no-piece-found', { faint: loose.length, cutOff: cutOff.length });
  const { residualMm, worstMm } = truthOf(solution, shots);
  return {
    pieces,
    ...(sizes ? { sizes } : {}),
    residualMm,
    worstMm,
    dotMm: Math.min(...shots.map(dotAt)),
    sheets,
    floor: map,
    findings: [
      ...truthFindings(solution, shots, pieces),
      ...cutOff.map(patch => cutOffFinding(patch, shots)),
      ...(options.at ? [] : faintFindings(pieces, loose, floor)),
    ],
  };
}

interface Measured {
  readonly map: FloorMap;
  readonly shots: readonly TonedShot[];
  readonly sheets: readonly PlacedSheet[];
  readonly known: FloorKnown;
}

/** The pieces of a measured floor: drawn ones where corners were clicked, else those that lie on the ground. */
export function piecesOn(
  { map, shots, sheets, known }: Measured,
  options: PhotoOptions,
): {
  readonly pieces: readonly TracedPiece[];
  readonly sizes?: readonly SizeTraced[];
  readonly cutOff: readonly Patch[];
  readonly loose: readonly Point[];
} {
  const { at, onStage = () => {} } = options;
  if (at) {
    onStage('outlines');
    const clicks = at.map(corners => corners.map((click, i) => onFloor(shots[0]!, map, click, i + 1)));
    const done = (share: number) => tell(options, 'outlines', share);
    const drawn = { cutOff: [], loose: [] };
    if (!options.sizes) {
      const ink = inkOfPen(map, options.pen ?? {});
      const outlines = clicks.map((corners, k) => {
        done(k / clicks.length);
        return drawnOutline({ map, shots }, ink, corners);
      });
      return { pieces: namedPieces(outlines), ...drawn };
    }
    const traced = namedSizes(sizesDrawn({ map, shots }, options.sizes, clicks, done));
    const sizes = options.sizes.map(({ size }, i) => ({ size, pieces: traced[i]! }));
    return { pieces: traced[0]!, sizes, ...drawn };
  }
  const unlike = unlikeGround(map, known);
  tell(options, 'floor', 1);
  if (!unlike) throw refusal(sheets.length > 0 ? 'ground-not-seen' : 'scan-ground-not-seen', {});
  onStage('outlines');
  const { outlines, cutOff, loose } = traceFloor({ map, shots, codes: known.codes }, sheets, unlike, share =>
    tell(options, 'outlines', share),
  );
  return { pieces: namedPieces(outlines), cutOff, loose };
}

function onFloor({ view }: TonedShot, map: FloorMap, click: Point, number: number): Point {
  const p = view.toFloor(click.x, click.y);
  if (!(cellAt(map, p) >= 0)) throw refusal('click-outside', { click: number });
  return p;
}

/** What was found in a picture. */
interface Looked extends SeenPicture {
  readonly tone: number;
  /** Whether nothing in it is sharp; asked only where that is in question. */
  readonly blurred: () => boolean;
}

function sheetsIn(picture: Picture, number: number, printed: PrintedStretch): Looked {
  const { width, height } = picture;
  if (Math.min(width, height) < leastDots)
    throw refusal('picture-too-small', { picture: number, width, height });
  const grey = greyOf(picture);
  const { targets } = findTargets(grey);
  const blurred = (): boolean => isBlurred(grey);
  if (targets.length === 0)
    throw refusal(blurred() ? 'picture-blurred' : 'no-target-found', { picture: number });
  const tone = toneOf(grey, targets, printed);
  return {
    width,
    height,
    tone,
    blurred,
    sheets: seenSheets(
      targets.map(t => inTone(grey, t, tone)),
      printed,
    ),
  };
}

function solvedTogether(looked: readonly Looked[]): Solution {
  const solution = solved(looked);
  const poorest = looked.findIndex(l => l.sheets.length < leastSheets);
  const all = new Set(
    looked.flatMap(l => l.sheets.map(({ sheet }) => `${sheet.paper} ${sheet.number} ${sheet.copy}`)),
  );
  if (!solution || all.size < leastSheets) {
    const index = Math.max(0, poorest);
    const { blurred, sheets } = looked[index]!;
    const picture = index + 1;
    // More sheets would not help where those that lie there cannot be read.
    throw blurred()
      ? refusal('picture-blurred', { picture })
      : refusal('too-few-targets', { picture, sheets: sheets.length });
  }
  const apart = looked.findIndex((_, i) => !solution.order.includes(i));
  if (apart >= 0) throw refusal('pictures-share-no-sheets', { picture: apart + 1 });
  return turnedAsSeen(solution);
}

/** At which side of the picture a patch runs out of it. */
function cutOffFinding({ ring }: Patch, [shot]: readonly Shot[]): Finding {
  const { picture, view } = shot!;
  const seen = ring.map(p => view.toPicture(p.x, p.y));
  const gaps = {
    left: Math.min(...seen.map(p => p.x)),
    right: picture.width - Math.max(...seen.map(p => p.x)),
    top: Math.min(...seen.map(p => p.y)),
    bottom: picture.height - Math.max(...seen.map(p => p.y)),
  } as const;
  const sides = ['top', 'right', 'bottom', 'left'] as const;
  const at = sides.reduce((a, b) => (gaps[b] < gaps[a] ? b : a));
  return finding('warning', 'piece-cut-off', {}, { at });
}
