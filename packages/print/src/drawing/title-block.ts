import type { Piece, Point } from '@paperhinge/geometry';
import { foldEdgeOf } from '@paperhinge/geometry/pattern';
import { add, scale } from '@paperhinge/geometry/plane';
import type { BlockGrid } from './block-place.js';
import { placeForBlock } from './block-place.js';
import { readable } from './frame.js';
import { capShare, type Ink, type TypeMeasure, type Weight } from './ink.js';
import { fitted, plainLine, setLine, wrapped } from './lettering.js';
import { enlargementOf, type PieceSetting } from './piece-setting.js';

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

/** mm: 7 pt, below which nothing is read at arm's length. */
const smallest = 2.5;
/** mm: a line that is shorter holds no words. */
const narrowest = 50;

/** mm of a piece's short side that a title of full size needs to look at home in. */
const roomForLarge = 130;

type Content = 'full' | 'short';
type Attempt = readonly [content: Content, scale: number, reading: 'along' | 'across'];

/**
 * What is tried, the best first: the whole block along the grain, then across it, then with less said, ever smaller.
 * The smallest is still read without a glass; a piece without room even for that has its title beside it.
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
];

/**
 * The piece's title and how it is cut, set where there is most room inside the stitching line, reading along the
 * grain; smaller, across or with less said where it would not fit; `undefined` where not even the title alone does.
 */
export function titleBlock(setting: PieceSetting, grid: BlockGrid): readonly Ink[] | undefined {
  const { frame, measure } = setting;
  const short = (Math.min(grid.columns, grid.rows) * grid.cell) / enlargementOf(setting);
  for (const [content, size, reading] of attempts) {
    if (size > 1 && short < size * roomForLarge) continue;
    const block = blockOf(linesFor(setting, content, size), measure);
    const [width, height] = reading === 'along' ? [block.width, block.height] : [block.height, block.width];
    const middle = placeForBlock(grid, width, height);
    if (!middle) continue;
    const direction = readable(frame, reading === 'along' ? grid.along : grid.across);
    return setBlock(block, middle, direction, measure);
  }
  return undefined;
}

/** Capitals of 7 pt: no title is smaller beside its piece. */
const tagScale = 0.42;

/** The title of a piece too small to hold it, beside the piece: its start is given. */
export function titleTag(setting: PieceSetting, start: Point): readonly Ink[] {
  const { frame, measure } = setting;
  const block = blockOf(linesFor(setting, 'short', tagScale), measure);
  return setBlock(block, add(start, scale(frame.right, block.width / 2)), frame.right, measure);
}

function linesFor(setting: PieceSetting, content: Content, size: number): readonly BlockLine[] {
  const { piece, pattern, measure } = setting;
  const title = plainLine(piece.title) || plainLine(piece.name);
  const scale = size * enlargementOf(setting);
  const big = titleSize * scale,
    small = Math.max(detailSize * scale, smallest * enlargementOf(setting));
  const room = Math.max(110 * scale, narrowest * enlargementOf(setting));
  const heading = wrapped(measure, title, { size: big, weight: 'bold', room, most: 3 }).map(
    (text): BlockLine => ({ text, size: big, weight: 'bold' }),
  );
  const detail = (text: string, weight: Weight = 'regular'): BlockLine => ({
    text: fitted(measure, text, small, weight, room * 1.1),
    size: small,
    weight,
  });
  const { cut, cloth, said } = cuttingWords(setting);
  if (content === 'short') {
    const lines = cloth ? [`${cut[0]} · ${cloth}`] : cut;
    return [...heading, ...[...lines, ...said].map(text => detail(text))];
  }
  const note = notesOf(piece).flatMap(n => wrapped(measure, n, { size: small, room, most: 3 }));
  const name = [pattern.name, pattern.size && setting.reader.words.piece.size(pattern.size)];
  return [
    ...heading,
    ...cut.map(text => detail(text, 'bold')),
    ...[cloth, ...said].filter(Boolean).map(text => detail(text)),
    ...note.map(text => detail(text)),
    ...(name.some(Boolean) ? [detail(name.filter(Boolean).join(' · '))] : []),
  ];
}

/** How a piece is cut, a line for each cloth, and what else the cutter must know. */
function cuttingWords({ piece, reader }: PieceSetting): {
  readonly cut: readonly string[];
  /** Of the one cloth, if it is one. */
  readonly cloth: string;
  readonly said: readonly string[];
} {
  const words = reader.words.piece;
  const all = [piece.cutting, ...(piece.alsoCut ?? [])];
  const fold = foldEdgeOf(piece) !== undefined;
  const said = all.some(c => c.rightSideUp) ? [words.rightSideUp] : [];
  if (all.length > 1) return { cut: all.map(c => words.cutOf(c, fold)), cloth: '', said };
  return { cut: [words.cut(piece.cutting, fold)], cloth: words.cloth(piece.cutting.fabric), said };
}

const notesOf = ({ cutting, alsoCut = [] }: Piece): readonly string[] =>
  [cutting, ...alsoCut].flatMap(({ note }) => (note ? [note] : []));

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
