import type { Mark, Piece, PieceLine } from '@paperhinge/geometry';
import { transformedPath } from '@paperhinge/geometry/paths';
import { type Affine, apply } from '@paperhinge/geometry/plane';
import type { ThingBecame } from '../became/became.js';

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
  const lines = second.lines.flatMap((one): readonly PieceLine[] => {
    const was = { piece: second.name, line: one.name };
    if (one.kind === 'grain' && first.lines.some(l => l.kind === 'grain')) {
      things.push({ was, now: { piece: first.name, line: first.lines.find(l => l.kind === 'grain')!.name } });
      return [];
    }
    const name = taken.has(one.name) ? `${one.name} ${second.name}` : one.name;
    things.push({ was, now: { piece: first.name, line: name } });
    return [{ ...one, name, path: transformedPath(one.path, motion) }];
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
  return { lines: [...first.lines, ...lines], marks: [...first.marks, ...marks], things };
}
