import type { Affine } from '../affine.js';
import { numberList } from './transform.js';

export interface ViewBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The `viewBox` attribute; `nothing` where a side is zero (it hides its content), `undefined` where it is in error. */
export function parseViewBox(text: string | undefined): ViewBox | 'nothing' | undefined {
  const n = text === undefined ? undefined : numberList(text);
  if (n?.length !== 4 || n[2]! < 0 || n[3]! < 0) return undefined;
  if (n[2] === 0 || n[3] === 0) return 'nothing';
  return { x: n[0]!, y: n[1]!, width: n[2]!, height: n[3]! };
}

/**
 * The map from viewBox coordinates into a viewport of the given size at the origin (SVG 2 section 8.2, the
 * equivalent transform). Alignment by `preserveAspectRatio`, default `xMidYMid meet`.
 */
export function viewBoxMap(
  box: ViewBox,
  width: number,
  height: number,
  preserve: string | undefined,
): Affine {
  const [, align = 'xMidYMid', how = 'meet'] =
    /^\s*(?:defer\s+)?(none|x(?:Min|Mid|Max)Y(?:Min|Mid|Max))(?:\s+(meet|slice))?\s*$/.exec(preserve ?? '') ??
    [];
  let sx = width / box.width,
    sy = height / box.height;
  if (align !== 'none') sx = sy = how === 'slice' ? Math.max(sx, sy) : Math.min(sx, sy);
  const share = (word: string): number => (word === 'Mid' ? 0.5 : word === 'Max' ? 1 : 0);
  const spareX = align === 'none' ? 0 : (width - box.width * sx) * share(align.slice(1, 4));
  const spareY = align === 'none' ? 0 : (height - box.height * sy) * share(align.slice(5, 8));
  return { a: sx, b: 0, c: 0, d: sy, e: spareX - box.x * sx, f: spareY - box.y * sy };
}
