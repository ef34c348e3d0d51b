import { cuttingLine } from '../cutting-line/cutting-line.js';
import type { Finding } from '../errors.js';
import type { Pattern } from '../pattern/types.js';
import { joinedLineFinding, joinedLinesAcrossDarts } from './joined-lines.js';
import { openingFindings } from './opening-check.js';
import { truingFindings } from './truing-check.js';
import { walkSeams } from './walk-seam.js';

/**
 * Everything about a pattern that will not sew or will show: seams walked with their notches and joined lines, darts'
 * mouths, kinks, steps and fold corners of every edge, openings, and what the cutting line has to say. In pattern
 * order, seams first.
 * @throws PatternError `unknown-piece`, `unknown-edge`, `empty-seam`
 */
export const checkPattern = (pattern: Pattern): readonly Finding[] => [
  ...walkSeams(pattern).flatMap(walk => walk.findings),
  ...pattern.pieces.flatMap(piece => [
    ...joinedLinesAcrossDarts(pattern, piece).flatMap(joinedLineFinding),
    ...truingFindings(pattern, piece),
    ...openingFindings(piece),
    ...cuttingLine(piece, pattern).findings.map(f => ({ ...f, where: { piece: piece.name, ...f.where } })),
  ]),
];
