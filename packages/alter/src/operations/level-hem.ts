import { type Pattern, type Piece, pieceNamed } from '@paperhinge/geometry';
import { edgeParts, withPiece } from '@paperhinge/geometry/pattern';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration } from '../alteration.js';
import { nothingBecame, together } from '../became/became.js';
import { andPartners } from '../matching/and-partners.js';
import { downToHem } from '../moved-edges/down-to-hem.js';
import { moveHem } from '../moved-edges/move-hem.js';
import { refusal } from '../moved-edges/tellings.js';
import { saying } from '../redrawn-edges/tellings.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';

/** Hem pieces at a height above the floor. */
export interface LevelHem {
  readonly pieces: readonly string[];
  /** The level whose height is known: the name of a line of each piece; `waist`: also its waist edge. */
  readonly from: string;
  /** mm of that level above the floor: the wearer's waist height, shoes and all. */
  readonly stands: number;
  /** mm of the hem above the floor. */
  readonly height: number;
  /** The same to the pieces that the changed edges are sewn to. */
  readonly matching?: boolean;
}

/**
 * Hems pieces at a height above the floor: on each the tape is laid from the level whose height is known down the
 * side, else the centre, else the grain line, and the hem is moved along the grain to where it reads the difference.
 * The hem moves as a whole, so its shape stays; what lies between keeps its lines. A piece that is sewn to one named
 * before it changes as that one does, so that their seams still match; with `matching` also where it is not named. The sides are cut or run on straight. The
 * fall over hips and stomach is not reckoned with: after hanging, the hem is measured off the floor once more. Heights:
 * ISO 8559-1 `waist height`, `hip height`, `knee height` [memory]. Source: common practice, no source.
 *
 * @throws PatternError `unknown-piece`, `no-level-there`, `hem-above-level`, `no-hem`, `several-hems`,
 *   `shorten-beyond-piece`, `grain-across`; those of `perform`
 */
export const levelHem = (pattern: Pattern, parameters: LevelHem): Alteration =>
  perform(levelHemVerb, pattern, parameters);

export const levelHemForm = formOf<LevelHem>()({
  verb: 'level hem',
  does: 'Makes pieces as long as brings their hem to a height above the floor, measured down from a level whose height is known, such as the wearer’s waist.',
  fields: {
    pieces: field.pieces(),
    from: field.drawnLine('pieces', ['waist']),
    stands: field.size(),
    height: field.length(),
    matching: field.optional(field.yesOrNo()),
  },
  sentence:
    'Hem the {pieces} {height} above the floor, their {from} standing {stands} above it[, what is sewn to them too: {matching}]',
  startsAt: { piece: ['pieces'], edge: ['pieces'], line: ['pieces', 'from'] },
  example: {
    pattern: 'darted-dress',
    step: { pieces: ['skirt front', 'skirt back'], from: 'waist', stands: '104 cm', height: '32 cm' },
  },
});
export const levelHemVerb = /* @__PURE__ */ verbFrom(levelHemForm, (pattern, { matching, ...wish }) => {
  const hasHem = (piece: Piece): boolean =>
    matching === true && edgeParts(piece).some(({ kind }) => kind === 'hem');
  return andPartners(pattern, [...new Set(wish.pieces)], hasHem, names => levelled(pattern, names, wish))
    .done;
});

function levelled(
  pattern: Pattern,
  names: readonly string[],
  { from, stands, height }: Omit<LevelHem, 'pieces' | 'matching'>,
): Alteration {
  const wantedMm = stands - height;
  const longer = new Map<string, number>();
  const done = names.map(name => {
    const piece = pieceNamed(pattern, name);
    const where = { piece: name };
    return locating(where, () => {
      const sewnTo = [...longer.keys()].find(other => areSewn(pattern, name, other));
      const wasMm = sewnTo === undefined ? downToHem(piece, from) : 0;
      if (wantedMm <= 0)
        throw refusal('hem-above-level', { piece: where, from, standsMm: stands, heightMm: height });
      const longerMm = sewnTo === undefined ? wantedMm - wasMm : longer.get(sewnTo)!;
      longer.set(name, longerMm);
      return { ...moveHem(piece, -longerMm), longerMm };
    });
  });
  return {
    pattern: done.reduce((altered, { piece }) => withPiece(altered, piece), pattern),
    became: together(nothingBecame, ...done.map(({ became }) => became)),
    did: saying('levelled-hem', {
      pieces: names.map(piece => ({ piece })),
      from,
      heightMm: height,
      lengthMm: wantedMm,
      longerMm: done.map(({ longerMm }) => longerMm),
    }),
    findings: done.flatMap(({ findings }) => findings),
  };
}

/** Whether a seam has one piece on either side. */
const areSewn = (pattern: Pattern, one: string, other: string): boolean =>
  pattern.seams.some(({ a, b }) => {
    const has = (runs: typeof a, name: string) => runs.some(({ piece }) => piece === name);
    return (has(a, one) && has(b, other)) || (has(a, other) && has(b, one));
  });
