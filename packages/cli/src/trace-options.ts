import { type Point, parseLength } from '@paperhinge/geometry';
import {
  checkedSquare,
  type PenSeen,
  type PrintedStretch,
  penColours,
  type SizeDrawn,
  type SizeLayer,
} from '@paperhinge/geometry/trace';
import { commandRefusal, type Language } from '@paperhinge/sheet/words';

/** The options of `paperhinge trace`, as commander gives them. */
export interface TraceArguments {
  readonly output: string;
  readonly measured?: string;
  readonly dpi?: string;
  readonly known?: string;
  readonly between?: string;
  readonly at?: readonly string[];
  /** Of lines drawn on paper: the pen that is followed. */
  readonly pen?: string;
  readonly line: string;
  /** Of a drawing: how far ends of strokes may lie apart, which layer, and the unit of a DXF file. */
  readonly gap?: string;
  readonly layer?: string;
  readonly sizes?: string;
  readonly size?: string;
  readonly unit?: string;
  /** Of pages: how many stand in a row, and how far each lies over the next. */
  readonly columns?: string;
  readonly overlap?: string;
  readonly picture?: string;
  readonly json?: boolean;
  readonly language?: Language;
}

/** What a tracing is asked to go by. */
export interface TraceWishes {
  readonly line: 'stitching' | 'cutting';
  /** Of photographs: what the sheets' squares measured. */
  readonly printed?: PrintedStretch;
  /** Of a scan: its scale. */
  readonly dotsToMm?: number;
  readonly at?: readonly (readonly Point[])[];
  readonly pen?: PenSeen;
  /** Of a nest drawn on paper. */
  readonly sizes?: readonly SizeDrawn[];
}

/** The arguments understood. @throws PatternError */
export function traceWishes(given: TraceArguments, pictures: number): TraceWishes {
  const { line, measured, dpi, known, between, at } = given;
  if (line !== 'stitching' && line !== 'cutting') throw commandRefusal('traced-line-unknown', {});
  if ((known === undefined) !== (between === undefined)) throw commandRefusal('length-without-places', {});
  const scales = [measured, dpi, known].filter(scale => scale !== undefined);
  if (scales.length > 1) throw commandRefusal('several-scales', {});
  const dotsToMm =
    dpi !== undefined ? dotsByDpi(dpi) : known !== undefined ? dotsByLength(known, between!) : undefined;
  if (dotsToMm !== undefined && pictures > 1) throw commandRefusal('several-scans', {});
  return {
    line,
    ...(measured === undefined ? {} : { printed: printedStretch(measured) }),
    ...(dotsToMm === undefined ? {} : { dotsToMm }),
    ...(at === undefined ? {} : { at: at.map(placesIn) }),
    ...(given.pen === undefined ? {} : { pen: penIn(given.pen, at !== undefined) }),
  };
}

/** The sizes of a nest on a picture, each by its pen: "S=red, M=blue dashed". @throws PatternError */
export function sizesOfPicture({ sizes, at, pen }: TraceArguments): readonly SizeDrawn[] | undefined {
  if (sizes === undefined) return undefined;
  const list = sizesIn(sizes).map(({ size, layer }) => ({ size, pen: penOf(layer) }));
  const pens = new Set(list.map(one => JSON.stringify(one.pen)));
  const names = new Set(list.map(({ size }) => size));
  const isClear =
    at !== undefined &&
    pen === undefined &&
    list.length > 1 &&
    pens.size === list.length &&
    names.size === list.length;
  if (!isClear || list.some(one => one.pen === undefined || one.size === ''))
    throw commandRefusal('sizes-of-picture-not-understood', { colours: penColours });
  return list as readonly SizeDrawn[];
}

/** "S=red, M=green", or "red, green" where sizes are called as their layers or pens are. */
export const sizesIn = (text: string): readonly SizeLayer[] =>
  text.split(',').map(one => {
    const [size = '', layer = size] = one.split('=').map(part => part.trim());
    return { size, layer };
  });

/** The one layer of a drawing that is asked for, by its own name or by the size that is drawn in it. @throws PatternError */
export function layerWanted({ layer, size, sizes }: TraceArguments): string | undefined {
  if (layer !== undefined && (sizes !== undefined || size !== undefined))
    throw commandRefusal('layer-beside-sizes', {});
  if (size === undefined || sizes === undefined) return size ?? layer;
  const told = sizesIn(sizes);
  const wanted = told.find(one => one.size === size);
  if (!wanted) throw commandRefusal('size-not-told', { name: size, names: told.map(one => one.size) });
  return wanted.layer;
}

/** What is traced, by what its file holds. */
export type TracedKind = 'picture' | 'sheet' | 'svg' | 'dxf' | 'pdf';

const drawings = ['svg', 'dxf', 'pdf'] as const;
/** Options that are for some kinds of files alone. */
const forKinds: Partial<Record<keyof TraceArguments, readonly TracedKind[]>> = {
  gap: drawings,
  layer: drawings,
  size: drawings,
  sizes: ['picture', ...drawings],
  unit: ['dxf'],
  columns: ['pdf'],
  overlap: ['pdf'],
};

/** An option that says nothing of a file would be passed over in silence. @throws PatternError `option-not-for-this` */
export function refuseForeignOptions(kind: TracedKind, options: TraceArguments): void {
  for (const [option, kinds] of Object.entries(forKinds))
    if (options[option as keyof TraceArguments] !== undefined && !kinds.includes(kind))
      throw commandRefusal('option-not-for-this', { option, kinds });
}

/** The pen of `--pen`, for lines between corners. */
function penIn(text: string, hasCorners: boolean): PenSeen {
  const pen = penOf(text);
  if (!hasCorners || !pen) throw commandRefusal('pen-not-understood', { colours: penColours });
  return pen;
}

/** "red", "dashed", "blue dashed": a colour, and whether the line is dashed; undefined where that is not understood. */
function penOf(text: string): PenSeen | undefined {
  const words = text
    .toLowerCase()
    .split(/[\s,]+/)
    .filter(word => word !== '');
  const colour = penColours.find(name => words.includes(name));
  const [dashed, drawn] = ['dashed', 'solid'].map(word => words.includes(word));
  const known = words.every(word => word === colour || word === 'dashed' || word === 'solid');
  if (!known || words.length === 0 || (dashed && drawn)) return undefined;
  return { ...(colour ? { colour } : {}), ...(dashed || drawn ? { dashed: dashed === true } : {}) };
}

/** Dots to the inch that scanners have. */
const leastDpi = 50,
  mostDpi = 2400;

/** "49.8" or "49.8,49.9": what the checked squares measured, across and down. */
function printedStretch(text: string): PrintedStretch {
  const sides = text.split(',').map(side => parseLength(side.trim(), 'mm'));
  const [across, down = across] = sides;
  const isNear = (side: number | undefined) =>
    side !== undefined && Math.abs(side / checkedSquare - 1) < 0.05;
  if (sides.length > 2 || !isNear(across) || !isNear(down)) throw commandRefusal('square-out-of-range', {});
  return { across: across! / checkedSquare, down: down! / checkedSquare };
}

function dotsByDpi(text: string): number {
  const dpi = Number(text.replace(/\s*dpi$/i, ''));
  if (dpi >= leastDpi && dpi <= mostDpi) return dpi / 25.4;
  throw commandRefusal('dpi-out-of-range', { least: leastDpi, most: mostDpi });
}

/** Dots to a mm that any picture has: beyond them two places are one, or the length is in another unit. */
const leastScale = 1,
  mostScale = 100;

function dotsByLength(known: string, between: string): number {
  const mm = parseLength(known, 'mm');
  const [a, b, ...more] = placesIn(between);
  const dotsToMm = mm > 0 && a && b && more.length === 0 ? Math.hypot(a.x - b.x, a.y - b.y) / mm : 0;
  if (dotsToMm >= leastScale && dotsToMm <= mostScale) return dotsToMm;
  throw commandRefusal('known-length-out-of-range', {});
}

/** "412,880 2950,905 ...": places in dots of the picture, across and down from its upper left corner. */
function placesIn(text: string): readonly Point[] {
  return text
    .trim()
    .split(/\s+/)
    .map(pair => {
      const [x, y, ...more] = pair.split(',').map(Number);
      if (
        x === undefined ||
        y === undefined ||
        more.length > 0 ||
        !Number.isFinite(x) ||
        !Number.isFinite(y) ||
        pair === ''
      )
        throw commandRefusal('places-not-understood', {});
      return { x, y };
    });
}
