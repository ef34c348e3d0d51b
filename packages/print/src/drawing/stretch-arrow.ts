import { add, scale } from '@paperhinge/geometry/plane';
import { type BlockGrid, placeForBlock } from './block-place.js';
import { readable } from './frame.js';
import { greatestStretchOf } from './greatest-stretch.js';
import type { Ink } from './ink.js';
import { setCentred } from './lettering.js';
import { enlargementOf, type PieceSetting } from './piece-setting.js';
import { arrowhead, straight } from './shapes.js';

/** mm: lengths of the arrow that are tried. */
const lengths = [60, 40, 26];
const head = 4.5;
const wordSize = 2.8;

/**
 * The double arrow the way the cloth must stretch most, with its words, on a piece that says so or is cut of cloth
 * that stretches; where there is room.
 */
export function stretchArrow(setting: PieceSetting, grid: BlockGrid): readonly Ink[] {
  const { piece, pattern, frame, measure, reader } = setting;
  const way = greatestStretchOf(piece, pattern);
  if (way === undefined) return [];
  const along = way === 'along' ? frame.down : frame.right;
  const size = wordSize * enlargementOf(setting);
  const words = reader.words.piece.greatestStretch;
  for (const plain of lengths) {
    const length = Math.max(plain, measure.width(words, size, 'regular'));
    const high = size + head;
    const upright = along === frame.down;
    const middle = upright ? placeForBlock(grid, length, high) : placeForBlock(grid, high, length);
    if (!middle) continue;
    const [from, to] = [add(middle, scale(along, -length / 2)), add(middle, scale(along, length / 2))];
    const direction = readable(frame, along);
    const above = { x: direction.y, y: -direction.x };
    return [
      straight('grain', from, to),
      arrowhead('grain', to, along, head),
      arrowhead('grain', from, scale(along, -1), head),
      setCentred(measure, words, { role: 'detail', size }, add(middle, scale(above, size * 0.8)), direction),
    ];
  }
  return [];
}
