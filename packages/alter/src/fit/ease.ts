import {
  type EdgeRef,
  edgeNamed,
  edgeNames,
  type Finding,
  levelGirths,
  type Pattern,
  type Piece,
  pieceNamed,
  pieceRoleOf,
  roleOf,
  type Severity,
} from '@paperhinge/geometry';
import { requireWhole } from '@paperhinge/geometry/internal';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { bodyPieces, facingEdges, levelAcross, levelNames } from '@paperhinge/geometry/measure';
import { isCentreLine } from '@paperhinge/geometry/pattern';
import { sameEdge } from '../edge-refs.js';
import { isKnit, leastStretch } from './cloth.js';
import { bodyGirthAt, levelRoleOf } from './level-role.js';
import { finding } from './tellings.js';
import type { Wearer } from './wearer.js';

/** The least a level of a woven garment is usually given over the body, in mm. */
export interface EaseMinimum {
  readonly levels: readonly string[];
  readonly minimumMm: number;
  readonly source: string;
}

/** Minima for woven cloth; knits have none, only their stretch. */
export const wovenEaseMinima: readonly EaseMinimum[] = [
  { levels: ['bust', 'chest'], minimumMm: 38.1, source: '1½ in, S. Robinson, costume text ch. 16 [read]' },
  { levels: ['waist'], minimumMm: 12.7, source: '½ in, S. Robinson, costume text ch. 16 [read]' },
  { levels: ['hip'], minimumMm: 50.8, source: '2 in, S. Robinson, costume text ch. 16 [read]' },
  { levels: ['thigh'], minimumMm: 25.4, source: '1 in, S. Robinson, costume text ch. 16 [read]' },
  { levels: ['abdomen', 'seat'], minimumMm: 25.4, source: '1 in, common practice, no source' },
  { levels: ['upper arm', 'upper-arm'], minimumMm: 25.4, source: '1 in, extension leaflets [memory]' },
];

/** Cloth is not stretched beyond this share of what it gives, at any level (common practice, no source). */
const usableStretch = 0.5;

/**
 * What of a garment does not fit the wearer at its levels: a fault where the finished girth is under
 * body × (1 − half the cloth's stretch), in woven cloth under the body; a warning where woven cloth has less than the
 * usual ease. Of levels without the wearer's measurement nothing is said; but one that is not drawn all round is a
 * warning, as its girth says nothing of the fit, or a note where it is not compared. A measurement without its level
 * is a note.
 */
export function easeFindings(pattern: Pattern, wearer: Wearer): readonly Finding[] {
  requireWhole(pattern);
  const girths = levelGirths(pattern);
  const found = Object.entries(girths).flatMap(([level, garmentMm]) => {
    const bodyMm = bodyGirthAt(pattern, wearer, level);
    const open = notAllRound(pattern, level, bodyMm === undefined ? 'note' : 'warning');
    if (open.length > 0) return open;
    if (bodyMm === undefined) return [];
    return [...fitAt(pattern, level, bodyMm, garmentMm), ...lapNotKnown(pattern, level)];
  });
  return [...found, ...withoutLevel(pattern, Object.keys(girths), wearer)];
}

/** Girths of the wearer that no level of the pattern is there to be compared with. */
function withoutLevel(pattern: Pattern, levels: readonly string[], wearer: Wearer): readonly Finding[] {
  const measures = comparedAtLevels.filter(
    measure =>
      wearer[measure] !== undefined &&
      !levels.some(level => bodyGirthAt(pattern, { [measure]: 1 }, level) === 1),
  );
  return measures.length === 0 ? [] : [finding('note', 'measures-without-level', {}, { measures, levels })];
}

/** Girths that a garment is measured at; others (head, neck, hand) are checked at its openings. */
const comparedAtLevels: readonly string[] = [
  'bust girth',
  'chest girth',
  'waist girth',
  'hip girth',
  'upper-arm girth',
  'thigh girth',
];

/** A level that ends at an edge on which no piece lies that has it, an armhole's apart. */
function notAllRound(pattern: Pattern, level: string, severity: Severity): readonly Finding[] {
  const body = bodyPieces(pattern);
  const having = body.filter(p => levelNames(p).includes(level));
  const has = (name: string): boolean => having.some(p => p.name === name);
  const facing = facingEdges(pattern).filter(({ a, b }) => ![a, b].some(ref => isOfArmhole(pattern, ref)));
  const missing = having.flatMap(piece =>
    levelAcross(piece, level).ends.flatMap(edges => {
      const isEnd = (ref: EdgeRef): boolean => ref.piece === piece.name && edges.includes(ref.edge);
      const met = facing.flatMap(({ a, b }) => [...(isEnd(a) ? [b] : []), ...(isEnd(b) ? [a] : [])]);
      // What else lies on that edge, a tab or a hip piece, need not have it.
      return met.some(ref => has(ref.piece)) ? [] : met.map(ref => ref.piece);
    }),
  );
  const names = [...new Set(missing)].filter(name => body.some(p => p.name === name));
  if (names.length === 0) return [];
  const things = (pieces: readonly string[]) => pieces.map(piece => ({ piece }));
  return [
    finding(
      severity,
      'level-not-all-round',
      { piece: having[0]!.name },
      { level, having: things(having.map(p => p.name)), lacking: things(names) },
    ),
  ];
}

/** Fronts that open and lap over one another by nobody knows how much: it counts twice. What meets at a zip laps nowhere. */
function lapNotKnown(pattern: Pattern, level: string): readonly Finding[] {
  const fastened = (ref: EdgeRef) => (pattern.fastenings ?? []).filter(f => sameEdge(f.along, ref));
  const laps = (piece: Piece, edge: string): boolean => {
    const ref = { piece: piece.name, edge };
    const closing = fastened(ref);
    return (
      roleOf(edgeNamed(piece, edge)) === 'opening' &&
      !closing.some(f => f.kind === 'zip' || f.overlap !== undefined || f.underlap !== undefined) &&
      !facingEdges(pattern).some(({ a, b }) => [a, b].some(one => sameEdge(one, ref)) && bothOuter(a, b))
    );
  };
  const outer = new Set(bodyPieces(pattern).map(piece => piece.name));
  const bothOuter = (a: EdgeRef, b: EdgeRef): boolean => outer.has(a.piece) && outer.has(b.piece);
  const found = bodyPieces(pattern)
    .filter(piece => piece.cutting.count > 1 && levelNames(piece).includes(level))
    .filter(piece => !piece.lines.some(isCentreLine) && !piece.lines.some(line => line.kind === 'fold'))
    .flatMap(piece =>
      levelAcross(piece, level)
        .ends.flat()
        .filter(edge => edgeNames(piece).includes(edge) && laps(piece, edge))
        .map(edge => ({ piece: piece.name, edge })),
    );
  const [first] = found;
  return first ? [finding('note', 'lap-not-known', first, { level, edge: first })] : [];
}

/** Beyond an armhole no level goes on: the arm comes through it. */
function isOfArmhole(pattern: Pattern, { piece: name, edge }: EdgeRef): boolean {
  const piece = pieceNamed(pattern, name);
  const role = roleOf(edgeNamed(piece, edge));
  return role === 'armhole' || role === 'cap' || pieceRoleOf(piece) === 'sleeve';
}

function fitAt(pattern: Pattern, level: string, bodyMm: number, garmentMm: number): readonly Finding[] {
  const pieces = bodyPieces(pattern).filter(p => levelNames(p).includes(level));
  const stretchPercent = leastStretch(pattern, pieces);
  const easeMm = garmentMm - bodyMm;
  const woven = !isKnit(stretchPercent);
  const leastMm = woven ? bodyMm : bodyMm * (1 - (usableStretch * stretchPercent) / 100);
  const minimumAt = (name: string | undefined) =>
    wovenEaseMinima.find(m => name !== undefined && m.levels.includes(name));
  const minimum = minimumAt(level) ?? minimumAt(levelRoleOf(pattern, level));
  const usual = woven ? minimum?.minimumMm : undefined;
  const where = { piece: pieces[0]!.name };
  const facts = { level, bodyMm, garmentMm, easeMm, stretchPercent };
  // Sums of arc lengths carry rounding: a girth that equals its limit passes.
  if (garmentMm < leastMm - tolerances.coincidenceTolerance)
    return [finding('fault', 'girth-too-small', where, { ...facts, missingMm: leastMm - garmentMm, woven })];
  if (usual === undefined || easeMm >= usual - tolerances.coincidenceTolerance) return [];
  return [finding('warning', 'ease-below-usual', where, { ...facts, usualMm: usual })];
}
