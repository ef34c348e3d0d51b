import {
  bodyPieces,
  type Finding,
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
 * usual ease. Levels without the wearer's measurement are passed over.
 */
export const easeFindings = (pattern: Pattern, wearer: Wearer): readonly Finding[] =>
  Object.entries(levelGirths(pattern)).flatMap(([level, garmentMm]) => {
    const bodyMm = bodyGirth(wearer, level);
    return bodyMm === undefined ? [] : fitAt(pattern, level, bodyMm, garmentMm);
  });

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
