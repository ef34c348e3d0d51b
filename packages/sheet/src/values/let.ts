import type { LengthUnit, Where } from '@paperhinge/geometry';
import type { Entry, Tree } from '../document.js';
import { written } from '../fields/written.js';
import { refusal, type SheetTellings } from '../tellings.js';
import { type SumFault, type Value, type Values, valueOfSum } from './value.js';

type Fault = ReturnType<typeof refusal>;

/**
 * The figures that a sheet keeps under names: `let: { hem drop: 210, side ease: hem drop / 8 }`, in any order, each a
 * figure or a sum of others.
 *
 * @param known further figures that sums may speak of: the wearer's
 * @param faults told here: a name that is not kept, names that need one another, figures that do not go together
 */
export function valuesOf(
  tree: Tree | undefined,
  { known, unit, where, faults }: { known: Values; unit: LengthUnit; where: Where; faults: Fault[] },
): Values {
  const entries: ReadonlyMap<string, Entry> = tree?.kind === 'mapping' ? tree.entries : new Map();
  const values = new Map(known);
  const begun = new Set<string>();
  const done = new Set<string>();
  const workOut = (name: string): Value | undefined => {
    const entry = entries.get(name);
    if (!entry) return known.get(name);
    if (done.has(name)) return values.get(name);
    const at = { ...where, ...entry.place };
    if (begun.has(name)) {
      faults.push(refusal('value-needs-itself', { name }, at));
      return undefined;
    }
    begun.add(name);
    values.delete(name);
    const before = faults.length;
    const text = written(entry.value);
    const value = text === undefined ? undefined : valueOfSum(String(text), workOut, unit);
    done.add(name);
    if (value && !('fault' in value)) values.set(name, value);
    // What a sum needs has told its own fault already.
    else if (faults.length === before)
      faults.push(
        value
          ? sumRefusal({ field: name }, value, [...entries.keys(), ...known.keys()], at)
          : refusal('sum-not-understood', { field: name }, at),
      );
    return values.get(name);
  };
  for (const name of entries.keys()) workOut(name);
  return values;
}

/** What is told of a sum that is no value. */
export function sumRefusal(
  of: SheetTellings['sum-not-understood'],
  fault: SumFault,
  names: readonly string[],
  where: Where,
): Fault {
  if (fault.fault === 'unknown') return refusal('value-unknown', { ...of, name: fault.name, names }, where);
  const { one, sign, other } = fault;
  return refusal('figures-not-together', { ...of, one, sign, other }, where);
}
