import { requireDistance, requirePoint } from '../curve/sound.js';
import { locating, PatternError } from '../errors.js';
import { requirePath } from '../path/sound.js';
import { pathsOfPart } from '../pattern/outline.js';
import type { OutlinePart, Piece } from '../pattern/types.js';

/** @throws PatternError `piece-without-outline`; what is wrong with a number or a path, with the piece and the part */
export function requirePiece({ name, outline, lines }: Piece): void {
  locating({ piece: name }, () => {
    requireParts(outline.parts);
    for (const { path } of lines) requirePath(path);
  });
}

/** @throws PatternError `piece-without-outline`; what is wrong with a number or a path, with the part */
export function requireParts(parts: readonly OutlinePart[]): void {
  if (parts.length === 0)
    throw new PatternError('piece-without-outline', {
      message: 'A piece has no edges.',
      remedy: 'Draw its outline: at least one edge.',
    });
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

/** mm outside or inside a line. @throws PatternError `allowance-out-of-range`, `not-a-number` */
export function requireAllowance(allowance: number): void {
  requireDistance(allowance, 'allowance');
  if (allowance >= 0) return;
  throw new PatternError('allowance-out-of-range', {
    message: `An allowance of ${allowance} mm lies within the piece.`,
    remedy: 'Give an allowance of 0 or more.',
  });
}
