import {
  edgeNamed,
  type Pattern,
  type Piece,
  type PieceRole,
  pieceNamed,
  pieceRoleOf,
  roleOf,
  type Saying,
  type Seam,
} from '@paperhinge/geometry';
import { neighboursAtEnds } from '@paperhinge/geometry/measure';
import { holdsEdge, sameEdge } from '../edge-refs.js';
import { isKnit, leastStretch } from '../fit/cloth.js';
import { saying } from './sentences.js';

/** The seams that set in a sleeve, those that close it and its armhole into rings, and whether it goes in before they do. */
export interface SleeveSeam {
  readonly seam: Seam;
  readonly closing: readonly Seam[];
  readonly flat: boolean;
  readonly because: Saying;
}

/**
 * The seams of a pattern that set in a sleeve. In knits and shirts a sleeve goes in flat, before the side and
 * underarm seam, which then are one pass, and so does a raglan in any cloth; else in woven cloth it is set in the
 * round, after them (trade-notes §10).
 */
export function sleeveSeams(pattern: Pattern): readonly SleeveSeam[] {
  const setting = pattern.seams.filter(seam => setsSleeve(pattern, seam));
  return setting.flatMap(seam => {
    const closing = pattern.seams.filter(s => !setting.includes(s) && closes(pattern, s, seam, setting));
    return closing.length === 0 ? [] : [{ seam, closing, ...way(pattern, seam) }];
  });
}

/** One side is of sleeves alone, the other of none. */
function setsSleeve(pattern: Pattern, { a, b }: Seam): boolean {
  const isSleeve = (side: Seam['a']) =>
    side.every(r => pieceRoleOf(pieceNamed(pattern, r.piece)) === 'sleeve');
  const isBody = (side: Seam['a']) => side.every(r => isClothing(pieceNamed(pattern, r.piece)));
  return (isSleeve(a) && isBody(b)) || (isSleeve(b) && isBody(a));
}

const isClothing = (piece: Piece): boolean => clothing.has(pieceRoleOf(piece));
const clothing: ReadonlySet<PieceRole | undefined> = new Set<PieceRole | undefined>([
  undefined,
  'bodice',
  'yoke',
]);

function way(pattern: Pattern, { a, b }: Seam): Pick<SleeveSeam, 'flat' | 'because'> {
  const runs = [...a, ...b];
  const pieces = [...new Set(runs.map(r => r.piece))].map(name => pieceNamed(pattern, name));
  const isCap = runs.some(r => roleOf(edgeNamed(pieceNamed(pattern, r.piece), r.edge)) === 'cap');
  if (!isCap) return { flat: true, because: saying('because-raglan-flat', {}) };
  if (isKnit(leastStretch(pattern, pieces))) return { flat: true, because: saying('because-knit-flat', {}) };
  if (isShirt(pattern)) return { flat: true, because: saying('because-shirt-flat', {}) };
  return { flat: false, because: saying('because-set-in-round', {}) };
}

/** A shirt buttons down its front and has a collar or cuffs. */
function isShirt(pattern: Pattern): boolean {
  const buttoned =
    (pattern.fastenings ?? []).some(f => f.kind === 'buttons' || f.kind === 'snaps') ||
    pattern.pieces.some(p => p.marks.some(m => m.kind === 'button' || m.kind === 'buttonhole'));
  return buttoned && pattern.pieces.some(p => ['collar', 'cuff'].includes(pieceRoleOf(p) ?? ''));
}

/**
 * Whether a seam joins the end of a sleeve seam's side to its own beginning, or (in a raglan) the sleeve's seam at the
 * front to that at the back.
 */
function closes(pattern: Pattern, seam: Seam, setting: Seam, all: readonly Seam[]): boolean {
  const others = all.filter(s => s !== setting);
  return neighboursAtEnds(pattern, seam).some(({ first, second }) => {
    const held = [setting.a, setting.b].some(
      side => isEndOf(side, first, second) || isEndOf(side, second, first),
    );
    if (held) return true;
    const [near, far] = [first, second].map(end => holdsEdge([...setting.a, ...setting.b], end));
    if (near === far) return false;
    const [own, other] = near ? [first, second] : [second, first];
    // The seam of the other sleeve holds both, where only a yoke is drawn whole.
    return others.some(({ a, b }) => holdsEdge([...a, ...b], other) && !holdsEdge([...a, ...b], own));
  });
}

type PlacedEnd = ReturnType<typeof neighboursAtEnds>[number]['first'];

/** Whether one end is the side's beginning and the other its end. */
function isEndOf(side: Seam['a'], start: PlacedEnd, end: PlacedEnd): boolean {
  const first = side[0]!,
    last = side.at(-1)!;
  const same = (p: PlacedEnd, q: { piece: string; edge: string; end: string }) =>
    sameEdge(p, q) && p.end === q.end;
  return (
    same(start, { ...first, end: first.reversed ? 'end' : 'start' }) &&
    same(end, { ...last, end: last.reversed ? 'start' : 'end' })
  );
}
