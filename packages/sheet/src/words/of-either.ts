import type { PatternTellings } from '@paperhinge/geometry/sayings';
import type { OfField, SheetTellings } from '../tellings.js';
import type { Tellings, Told } from './catalogue.js';
import type { Say } from './say.js';

const shared = [
  'length-not-understood',
  'length-out-of-range',
  'percent-not-understood',
  'position-not-understood',
  'position-off-edge',
] as const;
type Shared = (typeof shared)[number];
type Entry = (facts: OfField, say: Say, where: object) => Told;

/** Codes that a pattern has as well as a sheet: told of the sheet's field where there is one, else as of any pattern. */
export function ofEither(
  sheet: Pick<Tellings<SheetTellings>, Shared>,
  pattern: Pick<Tellings<PatternTellings>, Shared>,
): Pick<Tellings<SheetTellings>, Shared> {
  const entry = (code: Shared): Entry => {
    const [ofSheet, ofPattern] = [sheet[code] as object as Entry, pattern[code] as object as Entry];
    return (facts, say, where) => (facts.field === undefined ? ofPattern : ofSheet)(facts, say, where);
  };
  const entries = Object.fromEntries(shared.map(code => [code, entry(code)]));
  return entries as object as Pick<Tellings<SheetTellings>, Shared>;
}
