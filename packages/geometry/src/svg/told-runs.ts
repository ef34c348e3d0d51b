import type { EdgeRun, Pattern } from '../pattern/types.js';
import type { Finding, Thing, Where } from '../telling.js';

import type { LengthUnit } from '../units.js';
import type { Json, JsonEntry } from './json.js';
import type { MetadataContext } from './metadata-values.js';
import { readRun, readSeams } from './read-seams.js';
import type { Owner, Report } from './report.js';
import { finding, refusal } from './tellings.js';

/** A run of a seam or a fastening as it is written outside the drawing, with the place where it stands. */
export interface ToldRun {
  readonly text: string;
  readonly where?: Where;
}

/** The two sides of a seam that is told outside the drawing. */
export interface ToldSides {
  readonly name: string;
  readonly a: readonly ToldRun[];
  readonly b: readonly ToldRun[];
}

/** Runs of a seam's two sides, as they are sewn. */
export interface SeamSides {
  readonly name: string;
  readonly a: readonly EdgeRun[];
  readonly b: readonly EdgeRun[];
}

/**
 * Seams that are told outside the drawing (in a sheet), resolved on a pattern as those of its drawing are: by `from`,
 * else continuing the run before, else from the edge's start with a finding. Seams of the pattern help to continue.
 *
 * @param unit what bare lengths are counted in
 * @throws PatternError `metadata-not-understood`, `empty-seam`, `unknown-piece`, `unknown-edge`, `not-a-neighbour`,
 *   `ambiguous-end`, `position-off-edge`, each where its run stands
 */
export function toldSeams(
  pattern: Pattern,
  told: readonly ToldSides[],
  unit: LengthUnit,
): { readonly seams: readonly SeamSides[]; readonly findings: readonly Finding[] } {
  const places: Where[] = [];
  const side = (runs: readonly ToldRun[]): Json => ({
    kind: 'array',
    at: 0,
    items: runs.map(asJson(places)),
  });
  const list = told.map(({ name, a, b }): [string, JsonEntry] => {
    const entries = new Map([
      ['a', { keyAt: 0, value: side(a) }],
      ['b', { keyAt: 0, value: side(b) }],
    ]);
    return [name, { keyAt: 0, value: { kind: 'object', at: 0, entries } }];
  });
  const { context, findings } = contextOf(pattern, unit, places);
  const known = pattern.seams.filter(seam => !told.some(({ name }) => name === seam.name));
  const seams = readSeams(list, context, known).map(({ name, a, b }) => ({ name, a, b }));
  return { seams, findings };
}

/** A run that stands by itself, as a fastening's does. @throws PatternError as {@link toldSeams} */
export function toldRun(pattern: Pattern, run: ToldRun, of: Thing, unit: LengthUnit): EdgeRun {
  const places: Where[] = [];
  const json = asJson(places)(run);
  return readRun(json, of, contextOf(pattern, unit, places).context);
}

/** A run as a value whose place is its number among the places. */
const asJson =
  (places: Where[]) =>
  ({ text, where = {} }: ToldRun): Json => ({ kind: 'string', at: places.push(where) - 1, value: text });

function contextOf(pattern: Pattern, unit: LengthUnit, places: readonly Where[]) {
  const findings: Finding[] = [];
  const where = (at: number, { piece, edge }: Owner = {}): Where => ({
    ...places[at],
    ...(piece === undefined ? {} : { piece }),
    ...(edge === undefined ? {} : { edge }),
  });
  const report: Report = {
    add: (severity, code, at, facts, owner) =>
      void findings.push(finding(severity, code, where(at, owner), facts)),
    take: one => void findings.push(one),
    refuse: (code, at, facts, owner) => refusal(code, facts, where(at, owner)),
    where,
    within: (_, index) => index,
    findings: () => findings,
  };
  const context: MetadataContext = { report, unit, pieces: pattern.pieces, offset: at => at };
  return { context, findings };
}
