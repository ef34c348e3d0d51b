import type { Pattern, Piece, Point } from '@paperhinge/geometry';
import { add, scale } from '@paperhinge/geometry/plane';
import type { BlockGrid } from './block-place.js';
import { placeForBlock } from './block-place.js';
import { cutWords, fabricWords } from './cutting-words.js';
import { type Frame, readable } from './frame.js';
import { capShare, type Ink, type TypeMeasure, type Weight } from './ink.js';
import { fitted, plainLine, setLine, wrapped } from './lettering.js';

interface BlockLine {
  readonly text: string;
  readonly size: number;
  readonly weight: Weight;
}
interface Block {
  readonly lines: readonly BlockLine[];
  readonly width: number;
  readonly height: number;
}

/** mm, em sizes at full scale: the title is read from where the maker stands, the rest at reading distance. */
const titleSize = 9;
const detailSize = 4.2;
const leading = 1.22;

/** mm of a piece's short side that a title of full size needs to look at home in. */
const roomForLarge = 130;

type Content = 'full' | 'short' | 'title';
type Attempt = readonly [content: Content, scale: number, reading: 'along' | 'across'];

/**
 * What is tried, the best first: the whole block along the grain, then across it, then with less said, ever smaller.
 * The smallest is still read without a glass (capitals of 1.2 mm).
 */
const attempts: readonly Attempt[] = [
  ['full', 1.6, 'along'],
  ['full', 1.3, 'along'],
  ['full', 1, 'along'],
  ['full', 0.85, 'along'],
  ['full', 0.7, 'along'],
  ['full', 0.85, 'across'],
  ['full', 0.58, 'along'],
  ['full', 0.58, 'across'],
  ['short', 0.8, 'along'],
  ['short', 0.8, 'across'],
  ['short', 0.6, 'along'],
  ['short', 0.6, 'across'],
  ['short', 0.48, 'along'],
  ['short', 0.48, 'across'],
  ['title', 0.5, 'along'],
  ['title', 0.5, 'across'],
  ['title', 0.35, 'along'],
  ['title', 0.35, 'across'],
  ['title', 0.22, 'along'],
  ['title', 0.22, 'across'],
];

/**
 * The piece's title and how it is cut, set where there is most room inside the stitching line, reading along the
 * grain; smaller, across or with less said where it would not fit; `undefined` where not even the title alone does.
 */
export function titleBlock(
  piece: Piece,
  pattern: Pattern,
  frame: Frame,
  grid: BlockGrid,
  measure: TypeMeasure,
): readonly Ink[] | undefined {
  const short = (Math.min(grid.columns, grid.rows) * grid.cell) / (measure.enlarged ?? 1);
  for (const [content, size, reading] of attempts) {
    if (size > 1 && short < size * roomForLarge) continue;
    const block = blockOf(linesFor(piece, pattern, content, size, measure), measure);
    const [width, height] = reading === 'along' ? [block.width, block.height] : [block.height, block.width];
    const middle = placeForBlock(grid, width, height);
    if (!middle) continue;
    const direction = readable(frame, reading === 'along' ? grid.along : grid.across);
    return setBlock(block, middle, direction, measure);
  }
  return undefined;
}

/** The title of a piece too small to hold it, beside the piece: its start is given. */
export function titleTag(piece: Piece, start: Point, frame: Frame, measure: TypeMeasure): readonly Ink[] {
  const block = blockOf(linesFor(piece, undefined, 'short', 0.42, measure), measure);
  return setBlock(block, add(start, scale(frame.right, block.width / 2)), frame.right, measure);
}

function linesFor(
  piece: Piece,
  pattern: Pattern | undefined,
  content: Content,
  size: number,
  measure: TypeMeasure,
): readonly BlockLine[] {
  const title = plainLine(piece.title) || plainLine(piece.name);
  const scale = size * (measure.enlarged ?? 1);
  const big = titleSize * scale,
    small = detailSize * scale;
  const room = 110 * scale;
  const heading = wrapped(measure, title, big, 'bold', room, content === 'title' ? 2 : 3).map(
    (text): BlockLine => ({ text, size: big, weight: 'bold' }),
  );
  const detail = (text: string): BlockLine => ({
    text: fitted(measure, text, small, 'regular', room * 1.1),
    size: small,
    weight: 'regular',
  });
  if (content === 'title') return heading;
  const cut = cutWords(piece),
    fabric = fabricWords(piece);
  if (content === 'short') return [...heading, detail([cut, fabric].filter(Boolean).join(' · '))];
  const note = piece.cutting.note ? wrapped(measure, piece.cutting.note, small, 'regular', room, 3) : [];
  return [
    ...heading,
    { ...detail(cut), weight: 'bold' },
    ...(fabric ? [detail(fabric)] : []),
    ...note.map(detail),
    ...(pattern?.name ? [detail(pattern.name)] : []),
  ];
}

function blockOf(lines: readonly BlockLine[], measure: TypeMeasure): Block {
  const width = Math.max(...lines.map(l => measure.width(l.text, l.size, l.weight)));
  return { lines, width, height: lines.reduce((sum, l) => sum + l.size * leading, 0) };
}

function setBlock(block: Block, middle: Point, direction: Point, measure: TypeMeasure): readonly Ink[] {
  const down = { x: -direction.y, y: direction.x };
  const corner = add(add(middle, scale(direction, -block.width / 2)), scale(down, -block.height / 2));
  let y = 0;
  return block.lines.map((l, i) => {
    const baseline = y + l.size * ((leading - capShare) / 2 + capShare);
    y += l.size * leading;
    const role = i === 0 || l.size > block.lines.at(-1)!.size ? 'title' : 'detail';
    return setLine(
      measure,
      l.text,
      { role, size: l.size, weight: l.weight },
      add(corner, scale(down, baseline)),
      direction,
    );
  });
}
