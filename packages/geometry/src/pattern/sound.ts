import { requirePoint } from '../curve/sound.js';
import { locating } from '../errors.js';
import { requirePath } from '../path/sound.js';
import { largestAllowance } from '../tolerance.js';
import { pathsOfPart } from './outline.js';
import { refusal } from './tellings.js';
import type { OutlinePart } from './types.js';

/** @throws PatternError `piece-without-outline`; what is wrong with a number or a path, with the part */
export function requireParts(parts: readonly OutlinePart[]): void {
  if (parts.length === 0) throw refusal('piece-without-outline', {});
  for (const part of parts) locating({ edge: part.name }, () => requirePart(part));
}

function requirePart(part: OutlinePart): void {
  if (part.type === 'edge') {
    requirePath(part.path);
    requireAllowance(part.allowance);
    return;
  }
  pathsOfPart(part).forEach(requirePath);
  if (part.type === 'dart') requirePoint(part.apex);
}

/** mm outside or inside a line. @throws PatternError `allowance-out-of-range` */
export function requireAllowance(allowance: number): void {
  if (!(allowance >= 0 && allowance <= largestAllowance))
    throw refusal('allowance-out-of-range', { mostMm: largestAllowance });
}
