import {
  bodyPieces,
  type EdgeRun,
  type Finding,
  levelAcross,
  levelGirths,
  levelNames,
  type Pattern,
  tolerances,
} from '@paperhinge/geometry';
import { isKnit, leastStretch } from './cloth.js';
import { bodyGirth, type Wearer } from './wearer.js';

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
export const usableStretch = 0.5;

/**
 * What of a garment does not fit the wearer at its levels: a fault where the finished girth is under
 * body × (1 − half the cloth's stretch), in woven cloth under the body; a warning where woven cloth has less than the
 * usual ease. Levels without the wearer's measurement are passed over, and one that is not drawn all round is a
 * warning, as its girth says nothing of the fit.
 */
export const easeFindings = (pattern: Pattern, wearer: Wearer): readonly Finding[] =>
  Object.entries(levelGirths(pattern)).flatMap(([level, garmentMm]) => {
    const bodyMm = bodyGirth(wearer, level);
    if (bodyMm === undefined) return [];
    const open = notAllRound(pattern, level);
    return open.length > 0 ? open : fitAt(pattern, level, bodyMm, garmentMm);
  });

/** A level that ends at a seam beyond which no piece has it, an armhole's apart. */
function notAllRound(pattern: Pattern, level: string): readonly Finding[] {
  const body = bodyPieces(pattern);
  const having = body.filter(p => levelNames(p).includes(level));
  const lacks = (name: string): boolean =>
    body.some(p => p.name === name) && !having.some(p => p.name === name);
  const missing = having.flatMap(piece => {
    const ends = levelAcross(piece, level).ends.flat();
    const isEnd = (run: EdgeRun): boolean => run.piece === piece.name && ends.includes(run.edge);
    return pattern.seams
      .filter(({ a, b }) => ![...a, ...b].some(isOfArmhole))
      .flatMap(({ a, b }) => [...(a.some(isEnd) ? b : []), ...(b.some(isEnd) ? a : [])]);
  });
  const names = [...new Set(missing.map(run => run.piece))].filter(lacks);
  if (names.length === 0) return [];
  const drawn = having.map(p => p.name).join(', ');
  return [
    {
      severity: 'warning',
      code: 'level-not-all-round',
      where: { piece: having[0]!.name },
      message: `The level "${level}" is drawn on ${drawn} but not on ${names.join(', ')}: its girth is not that of the whole garment.`,
      remedy: `Draw the level "${level}" on ${names.join(', ')} too.`,
    },
  ];
}

/** Beyond an armhole no level goes on: the arm comes through it. */
const isOfArmhole = ({ piece, edge }: EdgeRun): boolean =>
  /^(armhole|cap|sleeve)/i.test(edge) || /sleeve/i.test(piece);

function fitAt(pattern: Pattern, level: string, bodyMm: number, garmentMm: number): readonly Finding[] {
  const pieces = bodyPieces(pattern).filter(p => levelNames(p).includes(level));
  const stretchPercent = leastStretch(pattern, pieces);
  const easeMm = garmentMm - bodyMm;
  const woven = !isKnit(stretchPercent);
  const leastMm = woven ? bodyMm : bodyMm * (1 - (usableStretch * stretchPercent) / 100);
  const usual = woven ? wovenEaseMinima.find(m => m.levels.includes(level))?.minimumMm : undefined;
  const say = (mm: number) => mm.toFixed(1);
  const where = { piece: pieces[0]!.name };
  const figures = { bodyMm, garmentMm, easeMm, stretchPercent };
  // Sums of arc lengths carry rounding: a girth that equals its limit passes.
  if (garmentMm < leastMm - tolerances.coincidenceTolerance) {
    const missingMm = leastMm - garmentMm;
    return [
      {
        severity: 'fault',
        code: 'girth-too-small',
        where,
        message:
          `At the ${level} the garment measures ${say(garmentMm)} mm round, the body ${say(bodyMm)} mm: ` +
          (woven
            ? `woven cloth does not stretch over the missing ${say(missingMm)} mm.`
            : `${say(missingMm)} mm too small even at half the cloth's stretch of ${say(stretchPercent)} %.`),
        figures: { ...figures, missingMm },
        remedy: `Add at least ${say(missingMm)} mm at the ${level} (spread, or let out the side seams)${woven ? '' : ', or use cloth that stretches more'}.`,
      },
    ];
  }
  if (usual === undefined || easeMm >= usual - tolerances.coincidenceTolerance) return [];
  return [
    {
      severity: 'warning',
      code: 'ease-below-usual',
      where,
      message: `At the ${level} a woven garment has ${say(easeMm)} mm of ease; ${say(usual)} mm is the usual least.`,
      figures: { ...figures, usualMm: usual },
      remedy: `Add ${say(usual - easeMm)} mm at the ${level}, or try it in muslin first.`,
    },
  ];
}
