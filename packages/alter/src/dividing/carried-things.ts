import type { Mark, Path, Piece, PieceLine } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { pathEnd, pathStart, reversedPath, transformedPath } from '@paperhinge/geometry/paths';
import { type Affine, apply, distance } from '@paperhinge/geometry/plane';
import type { ThingBecame } from '../became/became.js';
import { bridged } from '../hinge/bridged.js';

/** Lines and marks of a joined piece, and what became of those of the piece that was laid on. */
export interface CarriedThings {
  readonly lines: readonly PieceLine[];
  readonly marks: readonly Mark[];
  readonly things: readonly ThingBecame[];
}

/** Lines and marks of both; of the second all but the grain, under names that are free. */
export function carriedThings(first: Piece, second: Piece, motion: Affine): CarriedThings {
  const taken = new Set(first.lines.map(l => l.name));
  const things: ThingBecame[] = [{ was: { piece: second.name }, now: { piece: first.name } }];
  const own = [...first.lines];
  const lines = second.lines.flatMap((one): readonly PieceLine[] => {
    const path = transformedPath(one.path, motion);
    const was = { piece: second.name, line: one.name };
    if (one.kind === 'grain' && first.lines.some(l => l.kind === 'grain')) {
      things.push({ was, now: { piece: first.name, line: first.lines.find(l => l.kind === 'grain')!.name } });
      return [];
    }
    const twin = own.findIndex(({ kind, name }) => kind === one.kind && name === one.name);
    const whole = twin < 0 ? undefined : runOn(own[twin]!.path, path);
    if (whole) own[twin] = { ...own[twin]!, path: whole };
    const name = taken.has(one.name) && !whole ? `${one.name} ${second.name}` : one.name;
    things.push({ was, now: { piece: first.name, line: name } });
    return whole ? [] : [{ ...one, name, path }];
  });
  const marked = new Set(first.marks.map(m => m.name));
  const marks = second.marks.map(mark => {
    const name = marked.has(mark.name) ? `${mark.name} ${second.name}` : mark.name;
    things.push({
      was: { piece: second.name, mark: mark.name },
      now: { piece: first.name, mark: name },
    });
    return { ...mark, name, at: apply(motion, mark.at) };
  });
  return { lines: [...own, ...lines], marks: [...first.marks, ...marks], things };
}

/** Two parts of one line, as a level that was cut with its piece, as one again where an end of one meets one of the other. */
function runOn(first: Path, second: Path): Path | undefined {
  const meet = (a: Path, b: Path): boolean => distance(pathEnd(a), pathStart(b)) <= tolerances.joiningGap;
  const turned = reversedPath(second);
  if (meet(first, second)) return bridged(first, second);
  if (meet(first, turned)) return bridged(first, turned);
  if (meet(second, first)) return bridged(second, first);
  return meet(turned, first) ? bridged(turned, first) : undefined;
}
