import type { Path, Point } from '@paperhinge/geometry';
import { coincidenceTolerance } from '@paperhinge/geometry/internal-tolerances';
import { type Affine, apply, compose, distance } from '@paperhinge/geometry/plane';
import type { DrawnLine, DrawnPage, ForeignDrawing } from '@paperhinge/geometry/trace';
import { commandRefusal } from '@paperhinge/sheet/words';
import type { PDFDocumentProxy, PDFPageProxy } from 'pdfjs-dist';

const mmPerPoint = 25.4 / 72;
/** Pages of a pattern that anyone prints at home. */
const mostPages = 400;

type Reader = typeof import('pdfjs-dist');

/**
 * The reader of PDF, asked for nothing but paths and words. On loading it looks for what paints pages, and warns where
 * it is missing; it gets empty stand-ins, and its warning is kept back.
 */
async function pdfReader(): Promise<Reader> {
  const global = globalThis as Record<string, unknown>;
  for (const name of ['DOMMatrix', 'ImageData', 'Path2D']) global[name] ??= class {};
  const { warn } = console;
  console.warn = () => undefined;
  try {
    return await import('pdfjs-dist/legacy/build/pdf.mjs');
  } finally {
    console.warn = warn;
  }
}

/**
 * The strokes and words of every page of a PDF.
 * @param done told how many of its pages are read, from 0 to 1
 * @throws PatternError `pdf-locked`, `pdf-damaged`, `pdf-too-long`
 */
export async function readPdf(
  bytes: Uint8Array,
  done: (share: number) => void = () => {},
): Promise<readonly DrawnPage[]> {
  const reader = await pdfReader();
  const document = await opened(reader, bytes);
  try {
    if (document.numPages > mostPages) throw commandRefusal('pdf-too-long', { most: mostPages });
    const layers = await document.getOptionalContentConfig();
    const nameOf = (id: string): string | undefined => layers.getGroup(id)?.name ?? undefined;
    const pages: DrawnPage[] = [];
    for (let n = 1; n <= document.numPages; n++) {
      done((n - 1) / document.numPages);
      const page = await document.getPage(n);
      pages.push(await drawnPage(reader, page, nameOf));
      page.cleanup();
    }
    return pages;
  } finally {
    await document.destroy();
  }
}

async function opened(reader: Reader, bytes: Uint8Array): Promise<PDFDocumentProxy> {
  try {
    return await reader.getDocument({
      data: new Uint8Array(bytes),
      verbosity: 0,
      isEvalSupported: false,
      disableFontFace: true,
      useSystemFonts: false,
    }).promise;
  } catch (error) {
    throw commandRefusal((error as Error).name === 'PasswordException' ? 'pdf-locked' : 'pdf-damaged', {});
  }
}

/** What holds while a page is drawn. */
interface Pen {
  readonly map: Affine;
  readonly colour: string;
  /** Lengths of dashes and gaps in the page's own units; none where the line is drawn through. */
  readonly dash: readonly number[];
  /** What is drawn is cut off at it. */
  readonly clip?: Box;
}

async function drawnPage(
  reader: Reader,
  page: PDFPageProxy,
  nameOf: (id: string) => string | undefined,
): Promise<DrawnPage> {
  const { width, height, transform } = page.getViewport({ scale: 1 });
  const home = affine(transform.map(v => v * mmPerPoint));
  const { fnArray, argsArray } = await page.getOperatorList();
  const operators = fnArray.map((op, i): Operator => ({ op, args: argsArray[i] ?? [] }));
  const { lines, clipped } = strokesOf(reader, operators, { home, nameOf });
  const { items } = await page.getTextContent();
  const words = items.flatMap(item => {
    if (!('str' in item) || item.str.trim() === '') return [];
    const [, , , , x, y] = item.transform as readonly number[];
    return [{ text: item.str.trim(), at: apply(home, { x: x!, y: y! }) }];
  });
  const window = windowOf(clipped, [width * mmPerPoint, height * mmPerPoint]);
  return {
    drawing: { lines, words },
    width: width * mmPerPoint,
    height: height * mmPerPoint,
    ...(window ? { window } : {}),
  };
}

type Box = NonNullable<DrawnPage['window']>;

interface Operator {
  readonly op: number;
  // Each operator has arguments of its own; what is read of them is checked where it is read.
  // biome-ignore lint/suspicious/noExplicitAny: the reader's own type
  readonly args: any;
}

/** The strokes that a page's operators draw, and where those are cut off that are. */
function strokesOf(
  { OPS }: Reader,
  operators: readonly Operator[],
  { home, nameOf }: { readonly home: Affine; readonly nameOf: (id: string) => string | undefined },
) {
  const lines: ForeignDrawing['lines'][number][] = [];
  const layers: (string | undefined)[] = [];
  const kept: Pen[] = [];
  let pen: Pen = { map: home, colour: '#000000', dash: [] },
    clips = false;
  const clipped: Box[] = [];
  const moved = (matrix: ArrayLike<number> | null): Pen =>
    matrix ? { ...pen, map: compose(affine(matrix), pen.map) } : pen;
  const draw = (stroke: number, data: ArrayLike<number> | null): void => {
    const paths = pathsOf(data, pen.map);
    const box = clips ? boxOf(paths) : undefined;
    clips = false;
    if (box) pen = { ...pen, clip: pen.clip ? within(box, pen.clip) : box };
    if (!strokes(OPS).includes(stroke)) return;
    if (pen.clip) clipped.push(pen.clip);
    const layer = layers.findLast(name => name !== undefined) ?? pen.colour;
    const dash = dashOf(pen);
    for (const { path, closed } of paths)
      lines.push({ path, closed: closed || stroke === OPS.closeStroke, layer, ...dash });
  };
  for (const { op, args } of operators) {
    if (op === OPS.save || op === OPS.paintFormXObjectBegin) kept.push(pen);
    if (op === OPS.restore || op === OPS.paintFormXObjectEnd) pen = kept.pop() ?? pen;
    else if (op === OPS.transform) pen = moved(args);
    else if (op === OPS.paintFormXObjectBegin) pen = moved(args[0]);
    else if (op === OPS.setStrokeRGBColor) pen = { ...pen, colour: String(args[0]) };
    else if (op === OPS.setDash) pen = { ...pen, dash: [...args[0]] };
    else if (op === OPS.beginMarkedContentProps)
      layers.push(args[0] === 'OC' ? nameOf(String(args[1]?.id)) : undefined);
    else if (op === OPS.beginMarkedContent) layers.push(undefined);
    else if (op === OPS.endMarkedContent) layers.pop();
    else if (op === OPS.clip || op === OPS.eoClip) clips = true;
    else if (op === OPS.constructPath) draw(args[0], args[1]?.[0] ?? null);
  }
  return { lines, clipped };
}

/** Of a page's sides: a smaller part of it is the clip of one thing, no window for the pattern. */
const leastShare = 0.3;

/** The window that most of a page's strokes are seen through. */
function windowOf(clipped: readonly Box[], [wide, high]: readonly [number, number]): Box | undefined {
  const counts = new Map<string, { readonly box: Box; readonly count: number }>();
  for (const box of clipped) {
    const { min, max } = box;
    if (max.x - min.x < leastShare * wide || max.y - min.y < leastShare * high) continue;
    const key = [min.x, min.y, max.x, max.y].map(Math.round).join(' ');
    counts.set(key, { box, count: (counts.get(key)?.count ?? 0) + 1 });
  }
  return [...counts.values()].sort((a, b) => b.count - a.count)[0]?.box;
}

const within = (a: Box, b: Box): Box => ({
  min: { x: Math.max(a.min.x, b.min.x), y: Math.max(a.min.y, b.min.y) },
  max: { x: Math.min(a.max.x, b.max.x), y: Math.min(a.max.y, b.max.y) },
});

/** A pen's dashes as they lie on the page. */
function dashOf({ dash, map }: Pen): Pick<DrawnLine, 'dashed' | 'dash'> {
  if (!dash.some(length => length > 0)) return { dashed: false };
  const scale = Math.sqrt(Math.abs(map.a * map.d - map.b * map.c));
  return { dashed: true, dash: dash.map(length => length * scale) };
}

const strokes = (ops: Reader['OPS']): readonly number[] => [
  ops.stroke,
  ops.closeStroke,
  ops.fillStroke,
  ops.eoFillStroke,
  ops.closeFillStroke,
  ops.closeEOFillStroke,
];

function affine(values: ArrayLike<number>): Affine {
  const [a, b, c, d, e, f] = Array.from(values) as [number, number, number, number, number, number];
  return { a, b, c, d, e, f };
}

/** The reader's own codes for the parts of a path. */
const part = { move: 0, line: 1, curve: 2, quadratic: 3, close: 4 } as const;

interface Drawn {
  readonly path: Path;
  readonly closed: boolean;
}

function pathsOf(data: ArrayLike<number> | null | undefined, map: Affine): readonly Drawn[] {
  if (!data) return [];
  const out: { segments: Path['segments'][number][]; closed: boolean }[] = [];
  let at: Point = { x: 0, y: 0 },
    start = at;
  const point = (i: number): Point => apply(map, { x: data[i]!, y: data[i + 1]! });
  const add = (segment: Path['segments'][number]): void => {
    out.at(-1)?.segments.push(segment);
    at = segment.at(-1)!;
  };
  for (let i = 0; i < data.length; ) {
    const code = data[i++];
    if (code === part.move) {
      at = start = point(i);
      out.push({ segments: [], closed: false });
      i += 2;
    } else if (code === part.line) {
      add([at, point(i)]);
      i += 2;
    } else if (code === part.curve) {
      add([at, point(i), point(i + 2), point(i + 4)]);
      i += 6;
    } else if (code === part.quadratic) {
      const [q, to] = [point(i), point(i + 2)];
      add([at, between(at, q), between(to, q), to]);
      i += 4;
    } else {
      const last = out.at(-1);
      if (last) last.closed = true;
      if (last && distance(at, start) > coincidenceTolerance) add([at, start]);
    }
  }
  return out.flatMap(({ segments, closed }) => (segments.length > 0 ? [{ path: { segments }, closed }] : []));
}
/** Two thirds of the way to a quadratic's control point. */
const between = (from: Point, to: Point): Point => ({
  x: from.x + ((to.x - from.x) * 2) / 3,
  y: from.y + ((to.y - from.y) * 2) / 3,
});

function boxOf(paths: readonly Drawn[]): Box | undefined {
  const points = paths.flatMap(({ path }) => path.segments.flatMap(segment => [...segment]));
  if (points.length === 0) return undefined;
  const [xs, ys] = [points.map(p => p.x), points.map(p => p.y)];
  return { min: { x: Math.min(...xs), y: Math.min(...ys) }, max: { x: Math.max(...xs), y: Math.max(...ys) } };
}
