import { type Finding, type Pattern, pieceRoleOf } from '@paperhinge/geometry';
import { isKnit } from './cloth.js';
import { finding } from './tellings.js';

/** Per cent of its stretch that a knit springs back by before a band of it looks slack (common practice, no source). */
const recoveryOfBands = 90;

/** Bands, drafted or drawn, that are cut from a knit which is told not to spring back well. */
export const bandRecovery = (pattern: Pattern): readonly Finding[] =>
  pattern.pieces
    .filter(piece => pieceRoleOf(piece) === 'band')
    .flatMap(({ name, cutting }) => {
      const { recovery, stretch } = pattern.fabrics.find(f => f.name === cutting.fabric) ?? {};
      if (recovery === undefined || recovery >= recoveryOfBands || !isKnit(stretch?.across ?? 0)) return [];
      const facts = { band: { piece: name }, recoveryPercent: recovery, wantedPercent: recoveryOfBands };
      return [finding('warning', 'band-recovers-little', { piece: name }, facts)];
    });
