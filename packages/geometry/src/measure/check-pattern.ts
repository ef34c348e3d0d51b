import { cuttingLine } from '../cutting-line/cutting-line.js';
import type { Pattern } from '../pattern/types.js';
import type { Finding, Severity } from '../telling.js';
import { seamTolerance } from '../tolerance.js';
import { isBendOfGarment } from './bends-above.js';
import { contourDartFindings } from './contour-dart-check.js';
import { joinedLineFinding } from './joined-line-check.js';
import { joinedLinesAcrossFolds } from './joined-lines.js';
import { notchesWanted } from './notches-wanted.js';
import { openingFindings } from './opening-check.js';
import { rawEdgeFindings } from './raw-edge-check.js';
import { smallDifferences } from './small-differences.js';
import { truingFindings } from './truing-check.js';
import { looseEndFindings, unsewnFindings } from './unsewn-check.js';
import { walkSeams } from './walk-seam.js';

/**
 * Everything about a pattern that will not sew or will show: seams walked with their notches and joined lines, pieces
 * that no seam takes in, edges left raw, what hangs loose, darts' and pleats' mouths, kinks, steps and fold corners of every edge, openings, and what
 * the cutting line has to say. By harm: what will not sew, what will show, what to know; each in pattern order, seams
 * first.
 * @throws PatternError `unknown-piece`, `unknown-edge`, `empty-seam`
 */
export const checkPattern = (pattern: Pattern): readonly Finding[] =>
  [
    ...walkSeams(pattern)
      .flatMap(walk => walk.findings)
      .filter(found => !isOfFacing(pattern, found)),
    ...unsewnFindings(pattern),
    ...pattern.pieces.flatMap(piece => [
      ...joinedLinesAcrossFolds(pattern, piece).flatMap(line => joinedLineFinding(line, pattern.tolerance)),
      ...truingFindings(pattern, piece),
      ...openingFindings(piece),
      ...contourDartFindings(piece),
      ...cuttingLine(piece, pattern).findings.map(f => ({ ...f, where: { piece: piece.name, ...f.where } })),
    ]),
    ...rawEdgeFindings(pattern),
    ...looseEndFindings(pattern),
    ...smallDifferences(pattern),
    ...notchesWanted(pattern),
  ].sort((one, other) => harm[other.severity] - harm[one.severity]);

const harm: Readonly<Record<Severity, number>> = { fault: 2, warning: 1, note: 0 };

/** A line that runs on across the joint of two facings as it does across the seam that they lie under. */
const isOfFacing = (pattern: Pattern, { code, where, figures }: Finding): boolean => {
  const piece = pattern.pieces.find(one => one.name === where.piece);
  const turn = ((figures?.cornerDeg ?? 0) * Math.PI) / 180;
  const steps = Math.abs(figures?.stepMm ?? 0) > (pattern.tolerance ?? seamTolerance);
  return (
    code === 'joined-line-broken' && !steps && piece !== undefined && isBendOfGarment(pattern, piece, turn)
  );
};
