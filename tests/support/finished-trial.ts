import { readFileSync } from 'node:fs';
import { type Pattern, readPattern } from '@paperhinge/geometry';

/** A garment drawn for the trials, its edges finished besides: `back.side` as `bound`. */
export function finishedTrial(trial: string, finishes: Readonly<Record<string, string>>): Pattern {
  const file = new URL(`../found/fixtures/${trial}/pattern.svg`, import.meta.url);
  const pieces = readFileSync(file, 'utf8').split('<g data-piece="');
  const drawn = Object.entries(finishes).reduce((all, [place, finish]) => {
    const [piece, edge] = place.split('.');
    return all.map(text =>
      text.startsWith(`${piece}"`)
        ? text.replace(`data-edge="${edge}"`, `data-edge="${edge}" data-finish="${finish}"`)
        : text,
    );
  }, pieces);
  return readPattern(drawn.join('<g data-piece="')).pattern;
}
