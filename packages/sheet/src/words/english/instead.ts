import { nearestName } from '@paperhinge/geometry/sayings';
import { kinFirst } from '../kin-first.js';
import { shownName } from '../names.js';
import type { Say } from '../say.js';

/** How many names a remedy lists. */
const mostListed = 12;

/** A remedy that points to the nearest of the names there are, or lists them. */
export function instead(name: string, names: readonly string[], what: string, say: Say): string {
  const near = nearestName(name, names);
  if (near !== undefined) return `Did you mean ${say.written(near)}?`;
  if (names.length === 0) return `There are no ${what} yet: draw one in the pattern first, or leave it out.`;
  const shown = kinFirst(name, names).slice(0, mostListed).map(shownName);
  return `Choose from its ${what}: ${[...shown, ...(names.length > mostListed ? ['…'] : [])].join(', ')}.`;
}

/** A remedy that points to the word most likely meant, or lists all there are. */
export const oneOf = (near: string | undefined, words: readonly string[], say: Say): string =>
  near === undefined ? `Write one of: ${words.join(', ')}.` : `Did you mean ${say.written(near)}?`;
