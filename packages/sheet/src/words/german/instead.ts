import { nearestName } from '@paperhinge/geometry/sayings';
import { kinFirst } from '../kin-first.js';
import { shownName } from '../names.js';
import type { Say } from '../say.js';

const mostListed = 12;

/** A remedy that points to the nearest of the names there are, or lists them. */
export function instead(name: string, names: readonly string[], what: string, say: Say): string {
  const near = nearestName(name, names);
  if (near !== undefined) return `Meinten Sie ${say.written(near)}?`;
  if (names.length === 0)
    return `Es gibt noch keine ${what}: Ergänzen Sie erst den Schnitt, oder lassen Sie das weg.`;
  const shown = kinFirst(name, names).slice(0, mostListed).map(shownName);
  return `Zur Auswahl stehen die ${what} ${[...shown, ...(names.length > mostListed ? ['…'] : [])].join(', ')}.`;
}

/** A remedy that points to the word most likely meant, or lists all there are. */
export const oneOf = (near: string | undefined, words: readonly string[], say: Say): string =>
  near === undefined ? `Schreiben Sie eines von: ${words.join(', ')}.` : `Meinten Sie ${say.written(near)}?`;
