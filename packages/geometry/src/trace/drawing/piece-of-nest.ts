import { pathLength, pointAlong, splitPath } from '../../path/length.js';
import { nearestOnPath } from '../../path/nearest.js';
import { type Path, pathEnd, pathStart, polyline } from '../../path/path.js';
import { simplifyPath } from '../../path/simplify.js';
import { definePiece } from '../../pattern/build.js';
import { edgeNames, edgePath } from '../../pattern/outline.js';
import { isFoldWord } from '../../pattern/roles/fold-words.js';
import type { Dart, Edge, Notch, OutlinePart, Piece, PieceLine } from '../../pattern/types.js';
import { containsPoint } from '../../region/contains.js';
import { fitTolerance, visibleLength } from '../../tolerance.js';
import { distance, lerp, type Point } from '../../vector.js';
import { chained } from '../chain.js';
import { edgesOfClosedPath } from '../closed-outline.js';
import { dartLegs } from '../dart-legs.js';
import { snapNotch } from '../snap-notch.js';
import type { DrawnLine, DrawnWord } from './drawing.js';
import type { Loop } from './loops.js';
import type { Nest } from './nesting.js';
import { middleOf, type Sign, signsWithin } from './signs.js';
import { type Strand, withSpikesAsDarts } from './spikes.js';

/** A piece of a drawing, and how many signs were taken in it. */
export interface PieceTaken {
  readonly piece: Piece;
  readonly taken: {
    readonly darts: number;
    readonly notches: number;
    readonly grains: number;
    readonly folds: number;
  };
  /** mm of each edge where the stitching line was told from the cutting line; empty where one line is drawn. */
  readonly allowances: readonly number[];
  readonly bothLines: boolean;
  readonly grainGuessed: boolean;
}

/** What lies in a piece. */
export interface Within {
  readonly open: readonly Loop[];
  readonly words: readonly DrawnWord[];
  /** mm: ends this near to a line lie on it. */
  readonly reach: number;
}

/** A piece from its lines: on its stitching line where that is drawn. */
export function pieceOfNest(name: string, nest: Nest, { open, words, reach }: Within): PieceTaken {
  const outline = nest.inner ?? nest.outer;
  const told = open.filter(({ lines }) => lines[0]!.is !== 'corner');
  const inside = told
    .filter(
      ({ path }) => containsPoint(nest.outer.path, middleOf(path)) || nearEdge(nest.outer.path, path, reach),
    )
    .flatMap(loop => asDrawn(loop, outline.path, reach));
  const signs = inside.flatMap(loop => standardSign(loop) ?? []);
  const guessed = signsWithin(
    outline.path,
    inside.filter(loop => standardSign(loop) === undefined).map(({ path }) => path),
    reach,
  );
  const all = [...signs, ...guessed];
  const parts = outlineParts(
    simplified(outline),
    all.filter(sign => sign.is === 'dart'),
    reach,
  );
  const allowances = nest.inner ? allowancesOf(parts, nest.outer.path) : new Map<string, number>();
  const folds = foldsOf(parts, outline, words, { allowances, lines: inside.flatMap(loop => loop.lines) });
  const drawn = parts.map((part): OutlinePart => {
    if (part.type !== 'edge') return part;
    const fold = folds.has(part.name);
    return { ...part, kind: fold ? 'fold' : 'seam', allowance: fold ? 0 : (allowances.get(part.name) ?? 0) };
  });
  const plain = definePiece({
    name,
    outline: drawn,
    lines: linesOf(all, nest.others),
    ...titled(words, nest.outer.path),
  });
  const piece = { ...plain, notches: notchesOf(plain, all) };
  const grain = all.find(sign => sign.is === 'grain');
  return {
    piece,
    taken: {
      darts: parts.filter(part => part.type === 'dart').length,
      notches: piece.notches.length,
      grains: grain ? 1 : 0,
      folds: folds.size,
    },
    allowances: [...allowances.values()].filter(mm => mm > 0),
    bothLines: nest.inner !== undefined,
    grainGuessed: grain !== undefined && !grain.arrow,
  };
}

/** Strokes that were joined are one only from edge to edge, as a dart's are; an arrow's shaft and head are three. */
const asDrawn = (loop: Loop, outline: Path, reach: number): readonly Loop[] =>
  loop.lines.length === 1 ||
  [pathStart(loop.path), pathEnd(loop.path)].every(p => nearestOnPath(outline, p).distance <= reach)
    ? [loop]
    : loop.lines.map(line => ({ path: line.path, lines: [line] }));

const nearEdge = (outline: Path, path: Path, reach: number): boolean =>
  [pathStart(path), pathEnd(path)].some(p => nearestOnPath(outline, p).distance <= reach);

/** What a standard's layer says, before anything is guessed. */
function standardSign({ path, lines }: Loop): Sign | undefined {
  const { is } = lines[0]!;
  if (is === 'grain') return { is, path, arrow: true };
  if (is === 'notch') return { is, path };
  return is === 'inside' || is === 'fold' || is === 'sew' || is === 'cut' ? { is: 'line', path } : undefined;
}

/** Chords of a curve become the curve again; curves, and outlines of few lines, stay as they were drawn. */
const simplified = ({ path }: Loop): Path =>
  path.segments.length > 12 && path.segments.every(segment => segment.length === 2)
    ? simplifyPath(path, fitTolerance * 4)
    : path;

/** The outline with its darts cut in where they open. */
function outlineParts(outline: Path, darts: readonly Sign[], reach: number): readonly (Edge | Dart)[] {
  let strands: readonly Strand[] = withSpikesAsDarts(edgesOfClosedPath(outline));
  const spikes = strands.filter(strand => strand.dart).length;
  darts.forEach(({ path }, i) => {
    strands = withMouth(strands, { name: `dart-${spikes + i + 1}`, path }, reach);
  });
  const ring = chained(strands);
  const names = [...new Set(ring.flatMap(strand => (strand.dart ? [] : [strand.name])))];
  return ring.map((strand): Edge | Dart => {
    if (strand.dart) return { type: 'dart', name: strand.name, ...dartLegs(strand.path) };
    const name = `edge-${names.indexOf(strand.name) + 1}`;
    return { type: 'edge', name, path: strand.path, kind: 'seam', allowance: 0, corners: {} };
  });
}

/** Strands with what lies across a dart's mouth taken out and the dart put in. */
function withMouth(strands: readonly Strand[], dart: Strand, reach: number) {
  const [start, end] = [pathStart(dart.path), pathEnd(dart.path)];
  const near = strands.map(({ path }) => [nearestOnPath(path, start), nearestOnPath(path, end)] as const);
  const at = near.findIndex(([a, b], i) => !strands[i]!.dart && a.distance <= reach && b.distance <= reach);
  if (at < 0) return strands;
  const { name, path } = strands[at]!;
  const along = near[at]!.map(n => n.along) as [number, number];
  const [from, to] = along[0] < along[1] ? along : [along[1], along[0]];
  const length = pathLength(path);
  const before = from > reach ? [{ name, path: splitPath(path, from)[0] }] : [];
  const after = length - to > reach ? [{ name, path: splitPath(path, to)[1] }] : [];
  const ends = [nearestOnPath(path, start).point, nearestOnPath(path, end).point] as const;
  const inner = dart.path.segments;
  const legs = polyline(ends[0], ...cornersOf(inner), ends[1]);
  return [
    ...strands.slice(0, at),
    ...before,
    { name: dart.name, path: legs, dart: true as const },
    ...after,
    ...strands.slice(at + 1),
  ];
}

const cornersOf = (segments: Path['segments']): readonly Point[] =>
  segments.slice(1).map(segment => segment[0]);

/** mm by edge: how far the cutting line lies outside its middle half. */
function allowancesOf(parts: readonly OutlinePart[], outer: Path): Map<string, number> {
  const byName = new Map<string, number[]>();
  for (const part of parts) {
    if (part.type !== 'edge') continue;
    const length = pathLength(part.path);
    const far = [0.3, 0.4, 0.5, 0.6, 0.7].map(
      share => nearestOnPath(outer, pointAlong(part.path, length * share)).distance,
    );
    byName.set(part.name, [...(byName.get(part.name) ?? []), ...far]);
  }
  return new Map(
    [...byName].map(([name, far]) => {
      const median = [...far].sort((a, b) => a - b)[Math.floor(far.length / 2)]!;
      return [name, median < visibleLength ? 0 : asMeant(median)];
    }),
  );
}

/** Allowances are meant in halves of a millimetre or sixteenths of an inch; what is near neither stays as it was measured. */
function asMeant(mm: number): number {
  const steps = [0.5, 25.4 / 16].map(step => Math.round(mm / step) * step);
  const [nearest] = steps.sort((a, b) => Math.abs(a - mm) - Math.abs(b - mm));
  return Math.abs(nearest! - mm) < visibleLength / 2 ? nearest! : mm;
}

interface Seen {
  readonly allowances: ReadonlyMap<string, number>;
  readonly lines: readonly DrawnLine[];
}

/** Straight edges without allowance that are drawn dashed or have the word for it beside them. */
function foldsOf(
  parts: readonly OutlinePart[],
  { lines }: Loop,
  words: readonly DrawnWord[],
  { allowances, lines: within }: Seen,
): ReadonlySet<string> {
  const dashed = lines.some(line => !line.dashed) ? lines.filter(line => line.dashed) : [];
  const marked = [...dashed, ...[...lines, ...within].filter(line => line.is === 'fold')];
  const folds = new Set<string>();
  const straight = parts.filter(
    (part): part is Edge =>
      part.type === 'edge' && part.path.segments.length === 1 && (allowances.get(part.name) ?? 0) === 0,
  );
  for (const part of straight) {
    const middle = middleOf(part.path);
    if (marked.some(line => nearestOnPath(line.path, middle).distance <= 1)) folds.add(part.name);
  }
  for (const word of words.filter(({ text }) => isFoldWord(text))) {
    const near = straight
      .map(part => ({ part, far: nearestOnPath(part.path, word.at).distance }))
      .sort((a, b) => a.far - b.far)[0];
    if (near && near.far <= wordReach) folds.add(near.part.name);
  }
  return folds;
}
/** mm: a word stands beside its edge. */
const wordReach = 40;

function linesOf(signs: readonly Sign[], others: readonly Loop[]): readonly PieceLine[] {
  const plain = signs.filter(sign => sign.is === 'line');
  return [
    ...signs
      .filter(sign => sign.is === 'grain')
      .map(({ path }): PieceLine => ({ kind: 'grain', name: 'grain', path: straightened(path) })),
    ...plain.map(({ path }, i): PieceLine => ({ kind: 'style', name: `line-${i + 1}`, path })),
    ...others.map(
      ({ path }, i): PieceLine => ({
        kind: isDiamond(path) ? 'dart' : 'placement',
        name: `inside-${i + 1}`,
        path,
      }),
    ),
  ];
}
const straightened = (path: Path): Path => polyline(pathStart(path), pathEnd(path));

/** Four straight sides, two and two of one length, longer than wide: a dart with two points. */
function isDiamond({ segments }: Path): boolean {
  if (segments.length !== 4 || segments.some(segment => segment.length !== 2)) return false;
  const corners = segments.map(segment => segment[0]);
  const across = [distance(corners[0]!, corners[2]!), distance(corners[1]!, corners[3]!)].sort(
    (a, b) => a - b,
  );
  return (
    across[0]! < 0.4 * across[1]! &&
    distance(lerp(corners[0]!, corners[2]!, 0.5), lerp(corners[1]!, corners[3]!, 0.5)) < 0.1 * across[1]!
  );
}

function notchesOf(piece: Piece, signs: readonly Sign[]): readonly Notch[] {
  const edges = edgeNames(piece).map(name => ({ name, path: edgePath(piece, name) }));
  return signs
    .filter(sign => sign.is === 'notch')
    .map(({ path }): Notch => ({ ...snapNotch(edges, [path]), style: 'single' }));
}

/** What the standard's words call the piece; else the first writing within it that is no instruction of the fold. */
function titled(words: readonly DrawnWord[], outer: Path): { readonly title?: string } {
  const named = words
    .map(({ text }) => /^piece name:\s*(\S.*)$/i.exec(text)?.[1])
    .find(name => name !== undefined);
  if (named !== undefined) return { title: named.trim().slice(0, longestTitle) };
  const own = words.filter(
    ({ text, at }) => !isFoldWord(text) && /\p{L}{3}/u.test(text) && containsPoint(outer, at),
  );
  return own[0] ? { title: own[0].text.trim().slice(0, longestTitle) } : {};
}
const longestTitle = 60;
