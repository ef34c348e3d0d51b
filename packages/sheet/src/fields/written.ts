import { PatternError } from '@paperhinge/geometry';
import type { Tree } from '../document.js';

export const numberOrText = { type: ['number', 'string'] };

/** Words or a figure as written; undefined for anything else. */
export const written = (tree: Tree): string | number | undefined =>
  tree.kind === 'scalar' && (typeof tree.value === 'string' || typeof tree.value === 'number')
    ? tree.value
    : undefined;

/** What `read` gives; undefined with what it refused told. */
export function attempt<T>(read: () => T, told: (error: PatternError) => undefined): T | undefined {
  try {
    return read();
  } catch (error) {
    if (error instanceof PatternError) return told(error);
    throw error;
  }
}
