import { translation } from '../../affine.js';
import { boxAround } from '../../curve/bounds.js';
import { boundsOfPath } from '../../path/bounds.js';
import { pathLength } from '../../path/length.js';
import { pathEnd, pathStart, transformedPath } from '../../path/path.js';
import { definePattern } from '../../pattern/build.js';
import type { Pattern, Piece } from '../../pattern/types.js';
import type { Finding } from '../../telling.js';
import { coincidenceTolerance } from '../../tolerance.js';
import { distance } from '../../vector.js';
import { closedAtFolds } from './closed-at-folds.js';
import type { DrawnLine, ForeignDrawing } from './drawing.js';
import { answersTo, handsOf } from './hands.js';
import { joinedLoops, type Loop } from './loops.js';
import { type Nest, nestsOf } from './nesting.js';
import { type PieceTaken, pieceOfNest } from './piece-of-nest.js';
import { finding, refusal } from './tellings.js';

/** How a drawing is to be taken. */
export interface DrawingWishes {
  /** mm within which ends of strokes are joined. */
  readonly gap: number;
  /** Only this layer, and what is drawn in none of the layers that there are outlines in. */
  readonly layer?: string;
}

/** What was taken of a drawing. */
export interface DrawingTrace {
  readonly pattern: Pattern;
  readonly findings: readonly Finding[];
  /** The lines that pieces were taken from run along the cutting line in none, all or no one knows how many. */
  readonly bothLines: boolean;
}

/**
 * Pieces of a drawing of any origin: loose strokes are chained within a gap; of two lines beside one another the inner
 * is the stitching line, and the way between them the allowance; wedges at an outline are darts, ticks notches, the
 * upright line with an arrow's head the grain, a dashed straight edge or one with the word beside it a fold.
 * Outlines of many short chords become curves again, within 0.02 mm.
 *
 * @throws PatternError `no-outline-in-drawing`, `layer-not-there`, `outlines-nested` where sizes lie in one another
 */
export function piecesOfDrawing(name: string, drawing: ForeignDrawing, wishes: DrawingWishes): DrawingTrace {
  const lines = chosen(drawing.lines, wishes);
  const told = lines.filter(line => line.is === 'cut' || line.is === 'sew');
  // Where a standard tells outlines, nothing else is one.
  const outlines = told.length > 0 ? told : lines.filter(line => line.is === undefined);
  const reach = Math.max(wishes.gap, leastReach);
  const chained = joinedLoops(outlines, wishes.gap);
  const folds = lines.filter(line => line.is === 'fold');
  const { loops: halves, open } = closedAtFolds(chained, folds, reach);
  const nests = nestsOf([...chained.loops, ...halves]);
  if (nests.length === 0) throw refusal('no-outline-in-drawing', { lines: lines.length });
  if (nests.some(nest => nest.beside > 2))
    throw refusal('outlines-nested', { layers: layersOf([...chained.loops, ...halves], lines) });
  const rest = lines
    .filter(line => !outlines.includes(line))
    .map((line): Loop => ({ path: line.path, lines: [line] }));
  const strokes = [...open, ...rest];
  const taken = inReadingOrder(nests).map((nest, i) =>
    takenFrom(nest, `piece-${i + 1}`, { drawing, strokes, wishes }),
  );
  return {
    pattern: definePattern({ name, pieces: moved(taken.map(({ piece }) => piece)) }),
    bothLines: taken.some(one => one.bothLines),
    findings: [...notShut(open, nests), ...summed(taken)],
  };
}

/** One layer or hand, with what is drawn in none that has outlines of its own: grain and notches that all sizes share. */
function chosen(lines: readonly DrawnLine[], { layer, gap }: DrawingWishes): readonly DrawnLine[] {
  if (layer === undefined) return lines;
  const handOf = handsOf(lines);
  const own = lines.filter(line => answersTo(line, handOf(line), layer));
  const names = [...new Set(lines.map(handOf))];
  if (own.length === 0) throw refusal('layer-not-there', { name: layer, names });
  const taken = new Set(own.map(handOf));
  const foreign = new Set(
    names
      .filter(name => !taken.has(name))
      .flatMap(name => {
        const of = lines.filter(line => handOf(line) === name);
        const { loops, open } = joinedLoops(of, gap);
        if (nestsOf(loops).length === 0) return [];
        // Of a size in the same layer its outlines alone: grain and notches are drawn in one of the hands for all.
        const inOwnLayer = own.some(line => line.layer === of[0]!.layer);
        const strokes = inOwnLayer ? open.flatMap(strand => strand.lines) : [];
        return of.filter(line => !strokes.some(stroke => isSameStroke(stroke, line)));
      }),
  );
  return lines.filter(line => !foreign.has(line));
}

/** Chained strokes are the drawn ones with their ends mended. */
const isSameStroke = ({ path: a }: DrawnLine, { path: b }: DrawnLine): boolean =>
  distance(pathStart(a), pathStart(b)) <= coincidenceTolerance &&
  distance(pathEnd(a), pathEnd(b)) <= coincidenceTolerance &&
  Math.abs(pathLength(a) - pathLength(b)) <= coincidenceTolerance;

/** The layers that outlines lie in, or their hands where they lie in one layer. */
function layersOf(outlines: readonly Loop[], lines: readonly DrawnLine[]): readonly string[] {
  const drawn = outlines.flatMap(loop => loop.lines);
  const layers = [...new Set(drawn.map(line => line.layer))];
  return layers.length > 1 ? layers : [...new Set(drawn.map(handsOf(lines)))];
}

interface Around {
  readonly drawing: ForeignDrawing;
  readonly strokes: readonly Loop[];
  readonly wishes: DrawingWishes;
}

function takenFrom(nest: Nest, name: string, { drawing, strokes, wishes }: Around): PieceTaken {
  const { group } = nest.outer.lines[0]!;
  const own = <T extends { readonly group?: string }>(things: readonly T[]): readonly T[] =>
    group === undefined ? things : things.filter(thing => thing.group === group);
  return pieceOfNest(name, nest, {
    open: group === undefined ? strokes : strokes.filter(({ lines }) => lines[0]!.group === group),
    words: own(drawing.words),
    reach: Math.max(wishes.gap, leastReach),
  });
}
/** mm: what is drawn up to a line ends this near to it. */
const leastReach = 1;

/** mm: pieces whose tops differ by less stand in one row. */
const row = 100;
function inReadingOrder(nests: readonly Nest[]): readonly Nest[] {
  const corner = ({ outer }: Nest) => boundsOfPath(outer.path).min;
  return [...nests].sort((a, b) => {
    const [p, q] = [corner(a), corner(b)];
    return Math.round(p.y / row) - Math.round(q.y / row) || p.x - q.x;
  });
}

/** mm of empty sheet left of and above the pieces. */
const margin = 20;
function moved(pieces: readonly Piece[]): readonly Piece[] {
  const boxes = pieces.flatMap(piece =>
    piece.outline.parts.map(part =>
      boundsOfPath(part.type === 'edge' ? part.path : part.type === 'dart' ? part.legs[0] : part.mouth),
    ),
  );
  const { min } = boxes.reduce(boxAround);
  const home = translation({ x: margin - min.x, y: margin - min.y });
  const path = (line: Parameters<typeof transformedPath>[0]) => transformedPath(line, home);
  return pieces.map(piece => ({
    ...piece,
    outline: {
      parts: piece.outline.parts.map(part =>
        part.type === 'edge'
          ? { ...part, path: path(part.path) }
          : part.type === 'dart'
            ? {
                ...part,
                legs: [path(part.legs[0]), path(part.legs[1])] as const,
                apex: { x: part.apex.x + home.e, y: part.apex.y + home.f },
              }
            : { ...part, mouth: path(part.mouth) },
      ),
    },
    lines: piece.lines.map(line => ({ ...line, path: path(line.path) })),
  }));
}

/** Long ways outside all pieces: those that nearly come home are shown where they do not meet, what else is bent is counted. */
function notShut(open: readonly Loop[], nests: readonly Nest[]): readonly Finding[] {
  const pieces = nests.map(({ outer }) => boundsOfPath(outer.path));
  const ways = open.flatMap(({ path }) => {
    const lengthMm = pathLength(path),
      gapMm = distance(pathStart(path), pathEnd(path));
    const { min, max } = boundsOfPath(path);
    const inside = pieces.some(
      box =>
        min.x >= box.min.x - 1 && min.y >= box.min.y - 1 && max.x <= box.max.x + 1 && max.y <= box.max.y + 1,
    );
    return lengthMm > longWay && !inside ? [{ lengthMm, gapMm }] : [];
  });
  const nearly = ways.filter(({ lengthMm, gapMm }) => gapMm < lengthMm / 10);
  // A straight line may be a frame's or a table's.
  const bent = ways.filter(({ lengthMm, gapMm }) => gapMm >= lengthMm / 10 && gapMm < straight * lengthMm);
  const lengthMm = bent.reduce((sum, way) => sum + way.lengthMm, 0);
  return [
    ...nearly.map(facts => finding('warning', 'line-not-shut', {}, facts)),
    ...(bent.length > 0 ? [finding('warning', 'long-lines-left', {}, { lines: bent.length, lengthMm })] : []),
  ];
}
/** Of a way's length: with its ends as far apart it is straight. */
const straight = 0.98;
/** mm round: a way of this length may be a piece. */
const longWay = 200;

function summed(taken: readonly PieceTaken[]): readonly Finding[] {
  const sum = (of: keyof PieceTaken['taken']): number => taken.reduce((all, one) => all + one.taken[of], 0);
  const facts = { darts: sum('darts'), notches: sum('notches'), grains: sum('grains'), folds: sum('folds') };
  const single = taken.filter(one => !one.bothLines).length;
  const widths = taken.flatMap(one => one.allowances);
  const guessed = taken.filter(one => one.grainGuessed).length;
  return [
    ...(Object.values(facts).some(count => count > 0) ? [finding('note', 'signs-taken', {}, facts)] : []),
    ...(widths.length > 0
      ? [
          finding(
            'note',
            'lines-told-apart',
            {},
            {
              pieces: taken.length - single,
              leastMm: Math.min(...widths),
              mostMm: Math.max(...widths),
            },
          ),
        ]
      : []),
    ...(guessed > 0 ? [finding('note', 'grain-guessed', {}, { pieces: guessed })] : []),
    ...(single > 0 ? [finding('note', 'one-line-drawn', {}, { pieces: single })] : []),
  ];
}
