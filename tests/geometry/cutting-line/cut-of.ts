import { cuttingLine, type Edge, type Piece } from '@paperhinge/geometry';
import { edgesOf } from './independent.js';

/** The edges of a piece as they are drawn on its cutting line. */
export function cutOf(piece: Piece): readonly Edge[] {
  const ring = [...cuttingLine(piece).stretches];
  while (ring[0]!.of === ring.at(-1)!.of) ring.unshift(ring.pop()!);
  const parts: Edge[] = [];
  for (const { of, path } of ring) {
    const last = parts.at(-1);
    if (last?.name === of)
      parts[parts.length - 1] = { ...last, path: { segments: [...last.path.segments, ...path.segments] } };
    else parts.push({ ...edgesOf(piece).find(e => e.name === of)!, path });
  }
  return parts;
}
