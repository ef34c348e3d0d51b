import type { Alteration } from '@paperhinge/alter';
import {
  type Finding,
  type LengthUnit,
  PatternError,
  type Saying,
  type ToldFinding,
} from '@paperhinge/geometry';
import { english, type Told, wordsOf } from '@paperhinge/sheet/words';

/** What a call that is refused tells a maker, in English. Fails where nothing is refused. */
export function refusalOf(
  work: () => unknown,
  unit: LengthUnit = 'mm',
): Told & Pick<PatternError, 'code' | 'where' | 'facts'> {
  try {
    work();
  } catch (error) {
    if (!(error instanceof PatternError)) throw error;
    const { code, where, facts } = error;
    return { code, where, facts, ...wordsOf(english, unit).error(error) };
  }
  throw new Error('Nothing was refused.');
}

/** A finding as a maker reads it, in English. */
export const toldFinding = (finding: Finding, unit: LengthUnit = 'mm'): ToldFinding =>
  wordsOf(english, unit).finding(finding);

/** What a step did, as a maker reads it, in English. */
export const toldDid = ({ did }: Pick<Alteration, 'did'>, unit: LengthUnit = 'mm'): string =>
  wordsOf(english, unit).sentence(did);

/** An error with the words a maker gets for it. */
export function told(error: PatternError, unit: LengthUnit = 'mm') {
  const { code, where, facts } = error;
  return { code, where, facts, ...wordsOf(english, unit).error(error) };
}

/** A sentence as a maker reads it, in English. */
export const sentence = (saying: Saying | string, unit: LengthUnit = 'mm'): string =>
  wordsOf(english, unit).sentence(saying);
