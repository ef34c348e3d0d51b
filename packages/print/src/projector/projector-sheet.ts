import type { Pattern } from '@paperhinge/geometry';
import { compose, translation } from '@paperhinge/geometry/plane';
import { drawPattern } from '../drawing/draw-pattern.js';
import type { PieceDrawing } from '../drawing/draw-piece.js';
import { movedDrawing } from '../drawing/ink.js';
import { plainLine } from '../drawing/lettering.js';
import { layoutFor } from '../pages/layout.js';
import { type PagesJson, pagesJson } from '../pages/pages-json.js';
import type { Paper } from '../pages/papers.js';
import { pdfDocument } from '../pdf/document.js';
import { type FontFiles, type Typefaces, typefacesOf } from '../pdf/typefaces.js';
import { titleOf } from '../report/written.js';
import { calibrationBlock, calibrationSquare, grid, scaleIn } from './calibration.js';
import { type Ground, projectorLook } from './look.js';

/** What a maker may choose of a projector sheet. */
export interface ProjectorOptions {
  readonly ground: Ground;
  /** Without, a carried font that has the Latin letters. */
  readonly fonts?: FontFiles | Typefaces;
}

/** The sheet as a file, and its size in mm. */
export interface ProjectorSheet {
  readonly pdf: Uint8Array;
  /** As for paper: one page, which shows the whole sheet. */
  readonly pages: PagesJson;
}

/** mm round the pieces. */
const margin = 30;
/** Words are read from where the maker stands, in dots of a mm. */
const enlarged = 2.2;
/** mm: no pattern is longer (`largestCoordinate`), so that the sheet is always one page. */
const longest = 1e5;

/**
 * A pattern as one page at true scale for a projector over the cutting table, or for a cutter that shows what it cuts:
 * thick lines on a dark or light ground, over a grid as cutting mats have it, with a square to set the projector by.
 * The page is as large as the pieces need; beyond 14,400 units a side its unit grows. Same input, same bytes.
 * @throws PatternError `nothing-to-print`, `font-not-usable`; what a piece's cutting line refuses
 */
export async function projectorSheet(pattern: Pattern, options: ProjectorOptions): Promise<ProjectorSheet> {
  const typefaces = await typefacesOf(options.fonts, () => [JSON.stringify(pattern)]);
  const drawings = drawPattern(pattern, { enlarged, width: typefaces.width });
  const scale = scaleIn(pattern.unit);
  const block = calibrationBlock(scale);
  const paper: Paper = { name: 'projector', width: widthFor(drawings, block), height: longest, roll: true };
  const layout = layoutFor(drawings, paper, { margins: 0, overlap: 0, blocks: [block] });
  const [width, height] = layout.format.size;
  const size = [width + 2 * margin, height + 2 * margin] as const;
  const inward = translation({ x: margin, y: margin });
  const pieces = layout.pieces.map(p => ({ ...p, matrix: compose(p.matrix, inward) }));
  const { corner } = layout.blocks[0]!;
  const origin = { x: corner.x + margin, y: corner.y + margin };
  const title = plainLine(titleOf({ pattern }));
  const window = [0, 0, ...size] as const;
  const format = { ...layout.format, size, field: { width: size[0], height: size[1], overlap: 0 } };
  const pdf = await pdfDocument(
    {
      title: `${title} (projector, ${options.ground} ground)`,
      subject: 'Sewing pattern at true scale on one page, to be projected or cut',
      language: 'en',
      format,
      sheet: {
        inks: [
          ...grid(scale, origin, size, typefaces),
          ...calibrationSquare(scale, origin, title, size, typefaces),
          ...pieces.flatMap((p, i) => movedDrawing(drawings[i]!.drawing, p.matrix).inks),
        ],
      },
      pages: [{ window, own: { inks: [] } }],
      look: projectorLook(options.ground),
    },
    typefaces,
  );
  const page = {
    number: 1,
    kind: 'tile',
    row: 0,
    column: 0,
    window,
    own: window,
    contentAt: [0, 0],
    label: 'A1',
    neighbours: {},
  } as const;
  return { pdf, pages: { ...pagesJson(format, [page], pieces), testSquareMm: scale.square } };
}

/** About as wide as high, whole centimetres; never narrower than the widest piece or the square with its words. */
function widthFor(drawings: readonly PieceDrawing[], block: readonly [number, number]): number {
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
