import { pathLength } from '@paperhinge/geometry';
import { boundsOfPath, joined } from '@paperhinge/geometry/paths';
import { signedArea } from '@paperhinge/geometry/regions';
import { checkedSquare, type PhotoTrace, type TracedPiece } from '@paperhinge/geometry/trace';
import type { TraceWishes } from './trace-options.js';

/** The figures of a tracing for another program: how true it is, by what it was measured, and what was found. */
export function figuresOfTrace(trace: PhotoTrace, { printed, dotsToMm }: TraceWishes) {
  const { residualMm = null, worstMm = null, dotMm, sheets, pieces, sizes } = trace;
  const side = (stretch: number | undefined) => checkedSquare * (stretch ?? 1);
  const byFrame = {
    by: 'photo frame',
    mmPerDot: dotMm,
    sheets: sheets.length,
    squareMm: [side(printed?.across), side(printed?.down)],
  };
  return {
    residualMm,
    worstMm,
    scale: dotsToMm === undefined ? byFrame : { by: 'scan', mmPerDot: dotMm },
    pieces: pieces.map(figuresOfPiece),
    ...(sizes
      ? { sizes: Object.fromEntries(sizes.map(one => [one.size, one.pieces.map(figuresOfPiece)])) }
      : {}),
  };
}

function figuresOfPiece({ name, edges }: TracedPiece) {
  const outline = joined(...edges);
  const { min, max } = boundsOfPath(outline);
  return {
    piece: name,
    areaMm2: Math.abs(signedArea(outline)),
    lengthMm: edges.reduce((sum, edge) => sum + pathLength(edge), 0),
    sizeMm: [max.x - min.x, max.y - min.y],
    edges: Object.fromEntries(edges.map((edge, i) => [`edge-${i + 1}`, { lengthMm: pathLength(edge) }])),
  };
}
