import { pathLength } from '../../path/length.js';
import { withEnds, withoutPoints } from '../../path/mended.js';
import { joined, type Path, pathEnd, pathStart, reversedPath } from '../../path/path.js';
import { distance, lerp, type Point } from '../../vector.js';
import type { DrawnLine } from './drawing.js';

/** A way that came home, and what it was drawn of. */
export interface Loop {
  readonly path: Path;
  readonly lines: readonly DrawnLine[];
}

/** Strokes joined end to end, shut or left open. */
export interface Joined {
  readonly loops: readonly Loop[];
  readonly open: readonly Loop[];
}

interface End {
  readonly line: number;
  readonly atEnd: boolean;
  readonly at: Point;
}

/**
 * Loose strokes chained within a gap in mm: ends that lie nearest to one another are joined first, of one layer before
 * those of two, each end once; a joint lies in the middle of its gap. Strokes of different groups stay apart.
 */
export function joinedLoops(lines: readonly DrawnLine[], gap: number): Joined {
  const drawn = lines.flatMap((line): readonly DrawnLine[] => {
    const path = withoutPoints(line.path);
    return path ? [{ ...line, path }] : [];
  });
  const isShut = ({ closed, path }: DrawnLine): boolean =>
    closed ||
    (path.segments.length > 1 &&
      distance(pathStart(path), pathEnd(path)) <= Math.min(gap, pathLength(path) / 4));
  const shut = drawn.filter(isShut).map((line): Loop => ({ path: shutPath(line.path), lines: [line] }));
  const loose = drawn.filter(line => !isShut(line));
  const { loops, open } = chains(loose, partnersOf(loose, gap));
  return { loops: [...shut, ...loops], open };
}

function shutPath(path: Path): Path {
  const middle = lerp(pathStart(path), pathEnd(path), 1 / 2);
  return distance(pathStart(path), pathEnd(path)) <= shutGap
    ? withEnds(path, middle, middle)
    : { segments: [...path.segments, [pathEnd(path), pathStart(path)]] };
}
/** mm: an editor's "close" draws a line where more than this is missing. */
const shutGap = 2;

const keyOf = ({ line, atEnd }: Pick<End, 'line' | 'atEnd'>): number => 2 * line + (atEnd ? 1 : 0);

function partnersOf(lines: readonly DrawnLine[], gap: number): ReadonlyMap<number, End> {
  const ends = lines.flatMap(({ path }, line): readonly End[] => [
    { line, atEnd: false, at: pathStart(path) },
    { line, atEnd: true, at: pathEnd(path) },
  ]);
  const partner = new Map<number, End>();
  for (const { a, b } of nearPairs(ends, gap).sort((x, y) => x.cost - y.cost)) {
    if (partner.has(keyOf(a)) || partner.has(keyOf(b))) continue;
    partner.set(keyOf(a), b);
    partner.set(keyOf(b), a);
  }
  return partner;

  function nearPairs(all: readonly End[], within: number) {
    const byCell = new Map<string, End[]>();
    const cell = (v: number): number => Math.floor(v / Math.max(within, 1));
    const pairs: { readonly a: End; readonly b: End; readonly cost: number }[] = [];
    for (const b of all) {
      const [cx, cy] = [cell(b.at.x), cell(b.at.y)];
      for (let x = cx - 1; x <= cx + 1; x++)
        for (let y = cy - 1; y <= cy + 1; y++)
          for (const a of byCell.get(`${x} ${y}`) ?? []) {
            const [one, two] = [lines[a.line]!, lines[b.line]!];
            const far = distance(a.at, b.at);
            if (far > within || one.group !== two.group || a.line === b.line) continue;
            pairs.push({ a, b, cost: far + (one.layer === two.layer ? 0 : within) });
          }
      const own = byCell.get(`${cx} ${cy}`);
      if (own) own.push(b);
      else byCell.set(`${cx} ${cy}`, [b]);
    }
    return pairs;
  }
}

function chains(lines: readonly DrawnLine[], partner: ReadonlyMap<number, End>): Joined {
  const done = new Set<number>();
  const loops: Loop[] = [],
    open: Loop[] = [];
  const follow = (from: number, entersAtEnd: boolean): { readonly loop: Loop; readonly home: boolean } => {
    const paths: Path[] = [],
      own: DrawnLine[] = [];
    let at = from,
      enters = entersAtEnd;
    for (;;) {
      done.add(at);
      const line = lines[at]!;
      own.push(line);
      const middle = (atEnd: boolean): Point => {
        const here = atEnd ? pathEnd(line.path) : pathStart(line.path);
        const other = partner.get(keyOf({ line: at, atEnd }));
        return other ? lerp(here, other.at, 1 / 2) : here;
      };
      const path = withEnds(line.path, middle(false), middle(true));
      paths.push(enters ? reversedPath(path) : path);
      const next = partner.get(keyOf({ line: at, atEnd: !enters }));
      if (!next) return { loop: { path: joined(...paths), lines: own }, home: false };
      if (done.has(next.line))
        return { loop: { path: joined(...paths), lines: own }, home: next.line === from };
      at = next.line;
      enters = next.atEnd;
    }
  };
  // Chains with a loose end are followed from it; what is left goes round.
  for (const [i] of lines.entries())
    for (const atEnd of [false, true])
      if (!done.has(i) && !partner.has(keyOf({ line: i, atEnd }))) open.push(follow(i, atEnd).loop);
  for (const [i] of lines.entries()) {
    if (done.has(i)) continue;
    const { loop, home } = follow(i, false);
    (home ? loops : open).push(loop);
  }
  return { loops, open };
}
