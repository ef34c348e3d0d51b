import { edgePath, type Pattern, type Point } from '@paperhinge/geometry';
import { requireWhole } from '@paperhinge/geometry/internal';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { foldEdgeOf } from '@paperhinge/geometry/pattern';
import { apply, compose, translation } from '@paperhinge/geometry/plane';
import { pieceShapes } from '../drawing/draw-pattern.js';
import { type PiecePlace, worded } from '../drawing/draw-piece.js';
import { movedDrawing } from '../drawing/ink.js';
import { plainLine } from '../drawing/lettering.js';
import { onSheet } from '../drawing/on-sheet.js';
import { mirrored, openedOut, type TurnedOver } from '../drawing/turned-over.js';
import { requireWords } from '../option-words.js';
import { layoutFor, type SheetPiece } from '../pages/layout.js';
import { type PagesJson, pagesJson } from '../pages/pages-json.js';
import type { Paper } from '../pages/papers.js';
import type { Page } from '../pages/plan.js';
import { type FontFiles, type Typefaces, typefacesOf } from '../pdf/typefaces.js';
import type { Turning } from '../place/turning.js';
import { titleOf } from '../report/written.js';
import { type PageLanguage, readerOf } from '../words/reader.js';
import { calibrationBlock, calibrationSquare, grid, type Scale, scaleIn } from './calibration.js';
import { type Ground, projectorPens } from './thick-pens.js';

/** What a maker may choose of a projector sheet. */
export interface ProjectorOptions {
  readonly ground: Ground;
  /** Half pieces opened out at their fold, or every piece turned over; as drawn if not asked for. */
  readonly show?: 'opened out' | 'mirrored';
  /** Of the words. Default English. */
  readonly language?: PageLanguage;
  /** Without, a carried font that has the Latin letters. */
  readonly fonts?: FontFiles | Typefaces;
}

/** The sheet as a file, and its size in mm. */
export interface ProjectorSheet {
  readonly pdf: Uint8Array;
  /** As for paper: one page, which shows the whole sheet. */
  readonly pages: PagesJson;
}

/**
 * Half round at most: the cloth lies on the table as it does, and the grain of every piece with it. Not at all where a
 * cloth has a nap: what lies half round would be darker.
 */
const turningOn = ({ pieces, fabrics }: Pattern): Turning => {
  const napped = fabrics.filter(f => f.nap).map(f => f.name);
  const cut = pieces.flatMap(({ cutting, alsoCut = [] }) => [cutting, ...alsoCut]);
  return cut.some(c => napped.includes(c.fabric)) ? 'none' : 'half';
};
/** mm round the pieces. */
const margin = 30;
/** Words are read from where the maker stands, in dots of a mm: the smallest are 12 mm high from tail to capital. */
const enlarged = 5.2;
/** mm: no pattern is longer (`largestCoordinate`), so that the sheet is always one page. */
const longest = 1e5;

/**
 * A pattern as one page at true scale for a projector over the cutting table, or for a cutter that shows what it cuts:
 * thick lines on a dark or light ground, over a grid as cutting mats have it, with a square to set the projector by.
 * The page is as large as the pieces need; beyond 14,400 units a side its unit grows. Same input, same bytes.
 * @throws PatternError `nothing-to-print`, `font-not-usable`, `word-not-understood`; what a piece's cutting line refuses
 */
export async function projectorSheet(given: Pattern, options: ProjectorOptions): Promise<ProjectorSheet> {
  requireWords(options, ['ground']);
  requireWhole(given);
  const { pattern, onto } = shownAs(given, options);
  const { ground, language } = options;
  const reader = readerOf(pattern.unit, language);
  const typefaces = await typefacesOf(options.fonts, () => [JSON.stringify(pattern)]);
  const shapes = pieceShapes(pattern, { enlarged, width: typefaces.width }, language ? { language } : {});
  const scale = scaleIn(pattern.unit);
  const block = calibrationBlock(scale);
  const paper: Paper = { name: 'projector', width: widthFor(shapes, block), height: longest, roll: true };
  const turning = turningOn(pattern);
  const layout = layoutFor(shapes, paper, { margins: 0, overlap: 0, blocks: [block], turning });
  const { corner } = layout.blocks[0]!;
  const origin = { x: corner.x + margin, y: corner.y + margin };
  const shift = clearOfGrid(pattern, layout.pieces, scale, corner);
  const [width, height] = layout.format.size;
  const size = [width + 2 * margin + shift.x, height + 2 * margin + shift.y] as const;
  const inward = translation({ x: margin + shift.x, y: margin + shift.y });
  const pieces = layout.pieces.map(p => ({ ...p, matrix: compose(p.matrix, inward) }));
  const title = plainLine(titleOf({ pattern }));
  const window = [0, 0, ...size] as const;
  const format = { ...layout.format, size, field: { width: size[0], height: size[1], overlap: 0 } };
  // Loaded once pages are made: whoever only asks for a paper or writes a report does not wait for it.
  const { pdfDocument } = await import('../pdf/document.js');
  const pdf = pdfDocument(
    {
      title: reader.words.projector.title(title),
      subject: reader.words.projector.subject,
      language: reader.words.language,
      layerNames: reader.words.layers,
      format,
      sheet: {
        inks: [
          ...grid(scale, origin, size, typefaces),
          ...calibrationSquare(scale, origin, { title, size, reader }, typefaces),
          ...pieces.flatMap(({ matrix }, i) => {
            const { drawing } = worded(shapes[i]!, {}, onSheet(matrix, [], []));
            return movedDrawing(drawing, matrix).inks;
          }),
        ],
      },
      pages: [{ window, own: { inks: [] } }],
      pens: projectorPens(ground),
    },
    typefaces,
  );
  const fromOwn = pieces.map((p, i) => (onto ? { ...p, matrix: compose(onto[i]!, p.matrix) } : p));
  return { pdf, pages: { ...pagesJson(format, [wholePage(window)], fromOwn), testSquareMm: scale.square } };
}

function shownAs(
  pattern: Pattern,
  { show }: ProjectorOptions,
): Partial<TurnedOver> & { readonly pattern: Pattern } {
  if (show === 'opened out') return openedOut(pattern);
  return show === 'mirrored' ? mirrored(pattern) : { pattern };
}

const wholePage = (window: Page['window']): Page => ({
  number: 1,
  kind: 'tile',
  row: 0,
  column: 0,
  window,
  own: window,
  contentAt: [0, 0],
  label: 'A1',
  neighbours: {},
});

/** mm by which the pieces are shifted right and down so that no fold edge lies on, or next to, a line of the grid. */
function clearOfGrid(pattern: Pattern, pieces: readonly SheetPiece[], { step }: Scale, corner: Point): Point {
  const folds = pattern.pieces.flatMap((piece, i) => {
    const fold = foldEdgeOf(piece);
    return fold
      ? [edgePath(piece, fold.name)].map(path =>
          [pathStart(path), pathEnd(path)].map(p => apply(pieces[i]!.matrix, p)),
        )
      : [];
  });
  const best = (axis: 'x' | 'y') => {
    const other = axis === 'x' ? 'y' : 'x';
    const along = folds
      .filter(([a, b]) => Math.abs(a![axis] - b![axis]) < Math.abs(a![other] - b![other]) / 100)
      .map(([a]) => a![axis] - corner[axis]);
    const tried = Array.from({ length: Math.floor(step / shiftStep) }, (_, i) => i * shiftStep);
    const clearance = (shift: number) => Math.min(...along.map(at => fromLine(at + shift, step)), enough);
    return tried.reduce((a, b) => (clearance(b) > clearance(a) ? b : a), 0);
  };
  return { x: best('x'), y: best('y') };
}

/** mm: shifts are tried by as much; a fold so far from every line is told from it at a glance. */
const shiftStep = 2;
const enough = 10;

/** How far a coordinate is from the nearest line of a grid through 0. */
const fromLine = (at: number, step: number): number => Math.abs(at - Math.round(at / step) * step);

/** About as wide as high, whole centimetres; never narrower than the widest piece or the square with its words. */
function widthFor(drawings: readonly PiecePlace[], block: readonly [number, number]): number {
  const boxes = drawings.map(({ silhouette, frame: { right, down } }) => {
    const points = silhouette.flat();
    const across = points.map(p => p.x * right.x + p.y * right.y),
      along = points.map(p => p.x * down.x + p.y * down.y);
    return [Math.max(...across) - Math.min(...across), Math.max(...along) - Math.min(...along)] as const;
  });
  const area = [...boxes, block].reduce((sum, [w, h]) => sum + w * h, 0);
  const widest = Math.max(...boxes.map(([w]) => w), block[0]);
  return Math.ceil(Math.max(Math.sqrt(area), widest + 10) / 10) * 10;
}
