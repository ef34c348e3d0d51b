import { measurePattern, type Path, type Pattern, pathLength } from '@paperhinge/geometry';
import { boundsOfPath, joined } from '@paperhinge/geometry/paths';
import { outlinePath } from '@paperhinge/geometry/pattern';
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

/** What a drawing or a sheet was read by, and how truly its pages were joined. */
interface Read {
  readonly by: string;
  readonly residualMm?: number;
  readonly worstMm?: number;
}

/** The same figures of a drawing or a sheet of measured points, in all its sizes; nothing tells how true a drawing is. */
export function figuresOfPatterns(
  patterns: readonly Pattern[],
  { by, residualMm = null, worstMm = null }: { readonly [K in keyof Read]: Read[K] | null },
) {
  const bySize = patterns.map(pattern => [pattern.size ?? '', figuresOfPieces(pattern)] as const);
  return {
    residualMm,
    worstMm,
    scale: { by },
    pieces: bySize[0]![1],
    ...(patterns.length > 1 ? { sizes: Object.fromEntries(bySize) } : {}),
  };
}

function figuresOfPieces(pattern: Pattern) {
  const measured = measurePattern(pattern).pieces;
  return pattern.pieces.map(({ name, outline }) => {
    const { lengthMm, sizeMm } = figuresOfOutline(outlinePath(outline));
    return { piece: name, lengthMm, sizeMm, ...measured[name] };
  });
}

function figuresOfOutline(outline: Path) {
  const { min, max } = boundsOfPath(outline);
  return {
    areaMm2: Math.abs(signedArea(outline)),
    lengthMm: pathLength(outline),
    sizeMm: [max.x - min.x, max.y - min.y],
  };
}

function figuresOfPiece({ name, edges }: TracedPiece) {
  return {
    piece: name,
    ...figuresOfOutline(joined(...edges)),
    edges: Object.fromEntries(edges.map((edge, i) => [`edge-${i + 1}`, { lengthMm: pathLength(edge) }])),
  };
}
