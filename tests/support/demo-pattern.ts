import { readFileSync } from 'node:fs';
import { type Pattern, readPattern } from '@paperhinge/geometry';

/** A pattern of the demos by its name: `woven-shift`. */
export const demoPattern = (name: string): Pattern =>
  readPattern(readFileSync(new URL(`../../demos/patterns/${name}.svg`, import.meta.url)), { file: name })
    .pattern;
