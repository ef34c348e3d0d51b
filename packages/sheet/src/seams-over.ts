import { type Fastening, type Finding, type Pattern, PatternError, type Seam } from '@paperhinge/geometry';
import { type ToldRun, toldRun, toldSeams } from '@paperhinge/geometry/svg';
import type { SheetFastening, SheetSeam } from './seam-fields.js';
import type { Sheet } from './sheet.js';

/** A pattern with more told of it, and what was found on the way. */
export interface LaidOver {
  readonly pattern: Pattern;
  readonly findings: readonly Finding[];
}

/**
 * The pattern with the seams and fastenings that a sheet tells: those of a name that is there already are told anew,
 * the others come after.
 *
 * @param late what is told only of the finished pattern, as it names what the steps make
 * @throws PatternError as `toldSeams`
 */
export function withSewing(pattern: Pattern, sheet: Sheet, { seams, fastenings }: Told): LaidOver {
  const told = toldSeams(
    pattern,
    seams.map(({ name, a, b }) => ({
      name,
      a: runsAt(sheet, `seams.${name}.a`, a),
      b: runsAt(sheet, `seams.${name}.b`, b),
    })),
    sheet.unit,
  );
  const sewn = told.seams.map((sides, i): Seam => ({ ...factsOf(seams[i]!), ...sides }));
  const closed = fastenings.map(({ along, ...rest }): Fastening => {
    const [run] = runsAt(sheet, `fastenings.${rest.name}.along`, [along]);
    return { ...rest, along: toldRun(pattern, run!, { fastening: rest.name }, sheet.unit) };
  });
  const all = anew(pattern.fastenings ?? [], closed);
  return {
    pattern: {
      ...pattern,
      seams: sewn.length > 0 ? anew(pattern.seams, sewn) : pattern.seams,
      ...(all.length > 0 ? { fastenings: all } : {}),
    },
    findings: told.findings,
  };
}

/** What a sheet tells of the sewing. */
export interface Told {
  readonly seams: readonly SheetSeam[];
  readonly fastenings: readonly SheetFastening[];
}

/** Parts what can be told of a pattern from what names pieces and edges that only the steps will make. */
export function sewingFor(sheet: Sheet, pattern: Pattern): { readonly now: Told; readonly later: Told } {
  const stands = (work: () => unknown): boolean => {
    try {
      work();
      return true;
    } catch (error) {
      if (error instanceof PatternError)
        return error.code !== 'unknown-piece' && error.code !== 'unknown-edge';
      throw error;
    }
  };
  const seamStands = (seam: SheetSeam) =>
    stands(() => withSewing(pattern, sheet, { seams: [seam], fastenings: [] }));
  const fasteningStands = (one: SheetFastening) =>
    stands(() => withSewing(pattern, sheet, { seams: [], fastenings: [one] }));
  const now = { seams: sheet.seams.filter(seamStands), fastenings: sheet.fastenings.filter(fasteningStands) };
  return {
    now,
    later: {
      seams: sheet.seams.filter(seam => !now.seams.includes(seam)),
      fastenings: sheet.fastenings.filter(one => !now.fastenings.includes(one)),
    },
  };
}

const factsOf = ({ ease = { mm: 0 }, takenUp, tolerance }: SheetSeam) => ({
  ease,
  ...(takenUp === undefined ? {} : { takenUp }),
  ...(tolerance === undefined ? {} : { tolerance }),
});

/** Things in their order, those of a name that is told again as they are told now. */
function anew<T extends { readonly name: string }>(own: readonly T[], told: readonly T[]): readonly T[] {
  const kept = own.map(one => told.find(t => t.name === one.name) ?? one);
  return [...kept, ...told.filter(t => !own.some(one => one.name === t.name))];
}

/** One run may stand for a list of one. */
const runsAt = ({ file, places }: Sheet, path: string, texts: readonly string[]): readonly ToldRun[] =>
  texts.map((text, i) => ({ text, where: { file, ...(places[`${path}.${i}`] ?? places[path]) } }));
