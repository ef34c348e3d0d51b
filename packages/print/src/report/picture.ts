import { cuttingLine, type Path, type Pattern, type Piece } from '@paperhinge/geometry';
import { boundsOfPath, joined } from '@paperhinge/geometry/paths';
import { dartsOf, edgeParts, foldEdgeOf, outlinePath } from '@paperhinge/geometry/pattern';
import { toPathData } from '@paperhinge/geometry/svg';
import { escaped } from '../drawing/escape.js';

/** A picture of one piece, in mm: the cutting line, the stitching line and what lies on the piece; no words. */
interface Picture {
  readonly piece: Piece;
  readonly cutting: Path;
  readonly ghost?: Path;
  readonly box: readonly [number, number, number, number];
}

/** px: a row of pieces, without the gaps between them, and the tallest that one may be shown. */
const rowWidth = 720;
const tallest = 340;

/**
 * The pieces of patterns side by side, a row for each pattern, all to one scale; of those that were altered, the
 * outline before in dots. A piece made anew lies in coordinates of its own and has no before.
 */
export function picturesHtml(
  rows: readonly { readonly pattern: Pattern; readonly before?: Pattern }[],
): readonly string[] {
  const pictures = rows.map(({ pattern, before }) =>
    pattern.pieces.map(piece =>
      pictureOf(piece, pattern, piece.madeFor ? undefined : before?.pieces.find(p => p.name === piece.name)),
    ),
  );
  const widths = pictures.map(row => row.reduce((sum, p) => sum + p.box[2], 0));
  const heights = pictures.flat().map(p => p.box[3]);
  const k = Math.min(rowWidth / Math.max(...widths, 1), tallest / Math.max(...heights, 1), 0.6);
  return pictures.map(
    row => `<div class="pieces">${row.map(p => figure(p, Math.max(k, smallest))).join('')}</div>`,
  );
}
/** px to a mm: with very many pieces the row wraps rather than shrink further. */
const smallest = 0.12;

function pictureOf(piece: Piece, pattern: Pattern, then: Piece | undefined): Picture {
  const cutting = cuttingLine(piece, pattern).path;
  const ghost = then ? outlinePath(then.outline) : undefined;
  const boxes = [cutting, ...(ghost ? [ghost] : [])].map(boundsOfPath);
  const x = Math.min(...boxes.map(b => b.min.x)) - 4,
    y = Math.min(...boxes.map(b => b.min.y)) - 4;
  const right = Math.max(...boxes.map(b => b.max.x)) + 4,
    bottom = Math.max(...boxes.map(b => b.max.y)) + 4;
  return { piece, cutting, box: [x, y, right - x, bottom - y], ...(ghost ? { ghost } : {}) };
}

function figure({ piece, cutting, ghost, box }: Picture, k: number): string {
  const [x, y, w, h] = box;
  const title = escaped(piece.title || piece.name);
  const path = (kind: string, p: Path, close = false) =>
    `<path class="${kind}" d="${toPathData(p)}${close ? ' Z' : ''}"/>`;
  const fold = foldEdgeOf(piece);
  const sewn = edgeParts(piece).filter(e => e.allowance > 0);
  return [
    `<figure><svg role="img" aria-label="${title}" width="${px(w * k)}" height="${px(h * k)}" viewBox="${[x, y, w, h].map(px).join(' ')}">`,
    path('cut', cutting, true),
    ...sewn.map(e => path('stitch', e.path)),
    ...dartsOf(piece).map(d => path('stitch', joined(...d.legs))),
    ...piece.lines.map(l => path(l.kind === 'grain' ? 'grain' : 'line', l.path)),
    fold ? path('fold', fold.path) : '',
    ghost ? path('ghost', ghost, true) : '',
    `</svg><figcaption>${title}</figcaption></figure>`,
  ].join('');
}

const px = (value: number): string => String(Math.round(value * 100) / 100);
