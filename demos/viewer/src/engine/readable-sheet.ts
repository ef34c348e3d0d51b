import { PatternError } from '@paperhinge/geometry';
import { readSheet, type Sheet } from '@paperhinge/sheet';
import { faultsIn } from '@paperhinge/sheet/words';
import { isSeq, parseDocument } from 'yaml';

/** A step that stands for one that cannot be read yet; it is not done. */
const stopgap = '{ remove piece: { piece: none }, off: yes }';

/**
 * A sheet as it is while it is written: a step just begun, or one with a fault in it, does not keep the others from being
 * done. Each such step's fault is told by its index.
 * @throws SheetFaults, PatternError what is wrong elsewhere
 */
export function readableSheet(text: string): {
  readonly sheet: Sheet;
  readonly faults: ReadonlyMap<number, PatternError>;
} {
  try {
    return { sheet: readSheet(text, { file: 'sheet' }), faults: new Map() };
  } catch (error) {
    if (!(error instanceof PatternError)) throw error;
    const faults = new Map<number, PatternError>();
    for (const fault of faultsIn(error)) {
      if (fault.where.step === undefined) throw error;
      if (!faults.has(fault.where.step - 1)) faults.set(fault.where.step - 1, fault);
    }
    return { sheet: readSheet(without(text, [...faults.keys()]), { file: 'sheet' }), faults };
  }
}

/** The text with some of its steps left out, every line still where it was. */
function without(text: string, indices: readonly number[]): string {
  const steps = parseDocument(text, { version: '1.2', schema: 'core' }).get('steps', true);
  if (!isSeq(steps)) return text;
  return [...indices]
    .sort((p, q) => q - p)
    .reduce((left, index) => {
      const [from, to] = (steps.items[index] as { range?: readonly [number, number, number] })?.range ?? [];
      if (from === undefined || to === undefined) return left;
      const lines = left.slice(from, to).replace(/[^\n]/g, '');
      return `${left.slice(0, from)}${stopgap}${lines}${left.slice(to)}`;
    }, text);
}
