import type { PatternError } from '../errors.js';
import { withEnds } from '../path/mended.js';
import { joined, type Path, pathEnd, pathStart, reversedPath } from '../path/path.js';
import { refusal } from '../pattern/tellings.js';
import { signedArea } from '../region/area.js';
import { coincidenceTolerance, joiningGap } from '../tolerance.js';
import { distance, lerp, type Point } from '../vector.js';

/** A named stroke of an outline, drawn in either direction. */
export interface Strand {
  readonly name: string;
  readonly path: Path;
}

interface End {
  readonly strand: number;
  readonly atEnd: boolean;
  readonly point: Point;
}

/**
 * Strands in any order and direction as one closed outline: clockwise, each starting where the last ended, from the
 * first strand given. Ends within `joiningGap` are joined at the middle between them, the nearest first.
 *
 * @throws PatternError `open-outline`: names the strand and the gap; `outline-in-parts`: more than one ring;
 *   `outline-without-area`
 */
export function chained<S extends Strand>(strands: readonly S[]): readonly S[] {
  const partner = partnersOf(strands);
  const ring: S[] = [];
  const visited = new Set<number>();
  let strand = 0,
    entersAtEnd = false;
  while (!visited.has(strand)) {
    visited.add(strand);
    const s = strands[strand]!;
    const middle = (atEnd: boolean): Point => {
      const end = { atEnd, strand, point: atEnd ? pathEnd(s.path) : pathStart(s.path) };
      const other = partner.get(keyOf(end))!;
      return lerp(end.point, other.point, 1 / 2);
    };
    const path = withEnds(s.path, middle(false), middle(true));
    ring.push({ ...s, path: entersAtEnd ? reversedPath(path) : path });
    const next: End = partner.get(keyOf({ strand, atEnd: !entersAtEnd }))!;
    strand = next.strand;
    entersAtEnd = next.atEnd;
  }
  const left = strands.find((_, i) => !visited.has(i));
  if (left) throw inParts(left.name);
  return clockwise(exactlyJoined(ring));
}

const keyOf = ({ strand, atEnd }: { strand: number; atEnd: boolean }): number => 2 * strand + (atEnd ? 1 : 0);

/** Each end with the one it joins: pairs within the gap, nearest first, each end once. */
function partnersOf(strands: readonly Strand[]): ReadonlyMap<number, End> {
  const ends: readonly End[] = strands.flatMap(({ path }, strand) => [
    { strand, atEnd: false, point: pathStart(path) },
    { strand, atEnd: true, point: pathEnd(path) },
  ]);
  const pairs = nearPairs(ends).sort((a, b) => a.gap - b.gap);
  const partner = new Map<number, End>();
  for (const { a, b } of pairs) {
    if (partner.has(keyOf(a)) || partner.has(keyOf(b))) continue;
    partner.set(keyOf(a), b);
    partner.set(keyOf(b), a);
  }
  const lonely = ends.filter(end => !partner.has(keyOf(end)));
  if (lonely.length > 0) throw openOutline(strands, lonely);
  return partner;
}

/** Ends of different strands (or of one that is alone) no farther apart than the gap, found through a grid of its size. */
function nearPairs(ends: readonly End[]): { a: End; b: End; gap: number }[] {
  const cells = new Map<string, End[]>();
  const cell = (v: number): number => Math.floor(v / joiningGap);
  const pairs: { a: End; b: End; gap: number }[] = [];
  for (const b of ends) {
    const x = cell(b.point.x),
      y = cell(b.point.y);
    for (let i = x - 1; i <= x + 1; i++)
      for (let j = y - 1; j <= y + 1; j++)
        for (const a of cells.get(`${i},${j}`) ?? []) {
          const gap = distance(a.point, b.point);
          if (gap <= joiningGap + coincidenceTolerance && (a.strand !== b.strand || ends.length === 2))
            pairs.push({ a, b, gap });
        }
    const key = `${x},${y}`;
    cells.set(key, [...(cells.get(key) ?? []), b]);
  }
  return pairs;
}

function openOutline(strands: readonly Strand[], lonely: readonly End[]): PatternError {
  const end = lonely[0]!;
  let nearest: End | undefined,
    gap = Number.POSITIVE_INFINITY;
  for (const other of lonely) {
    if (other === end || (other.strand === end.strand && strands.length > 1)) continue;
    const d = distance(end.point, other.point);
    if (d < gap) [nearest, gap] = [other, d];
  }
  const name = strands[end.strand]!.name;
  const facts = nearest
    ? { gapMm: gap, between: [name, strands[nearest.strand]!.name] }
    : { between: [name] };
  return refusal('open-outline', facts, { edge: name });
}

const inParts = (name: string): PatternError => refusal('outline-in-parts', { name }, { edge: name });

/** Joints are one and the same point; arithmetic of two middles may differ in the last digit. */
function exactlyJoined<S extends Strand>(ring: readonly S[]): readonly S[] {
  const starts = ring.map(s => pathStart(s.path));
  return ring.map((s, i) => ({ ...s, path: withEnds(s.path, starts[i]!, starts[(i + 1) % ring.length]!) }));
}

function clockwise<S extends Strand>(ring: readonly S[]): readonly S[] {
  const area = signedArea(joined(...ring.map(s => s.path)));
  if (Math.abs(area) <= coincidenceTolerance) throw refusal('outline-without-area', {});
  if (area > 0) return ring;
  const [first, ...rest] = ring.map(s => ({ ...s, path: reversedPath(s.path) }));
  return [first!, ...rest.reverse()];
}
