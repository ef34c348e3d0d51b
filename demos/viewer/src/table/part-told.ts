import type { Part } from '../engine/view.js';
import type { Garment } from '../job/garment.js';

/** The figures of a part; of a level line that goes round the garment, how far it goes, once that is proved. */
export function partTold({ engine }: Garment, { kind, sort, name, told }: Part): string {
  if (kind !== 'line' || sort !== 'level') return told;
  const level = engine.proof()?.levels.find(({ line }) => line === name);
  return level === undefined ? told : engine.proved(level.told);
}
