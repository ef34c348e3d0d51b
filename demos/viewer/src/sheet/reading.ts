import { inSheet } from '@paperhinge/alter/verb';
import { type Accessor, createMemo, createSignal } from 'solid-js';
import type { Declared } from '../engine/view.js';
import type { Garment } from '../job/garment.js';
import type { WrittenStep } from '../job/written.js';
import { eachSaid, partsOf, type SentencePart, sentenceOf, valueAt } from './sentence.js';

/** A step of the sheet, by its place in the order. */
export interface StepProps {
  readonly garment: Garment;
  readonly step: WrittenStep;
  readonly index: number;
}

const isBlank = ({ fields }: WrittenStep, name: string): boolean => fields[inSheet(name)] === undefined;

/** The alternatives that a field, by its name in the sheet, is one of. */
const alternativesOf = (verb: Declared | undefined, name: string): readonly string[] | undefined =>
  verb?.oneOf?.find(names => names.map(inSheet).includes(name));

/** Something that must be given is still open. */
export const lacksAny = (verb: Declared | undefined, step: WrittenStep): boolean =>
  Object.entries(verb?.fields ?? {}).some(
    ([name, field]) => field.giving === 'needed' && isBlank(step, name),
  ) || (verb?.oneOf ?? []).some(names => names.every(n => isBlank(step, n)));

/** The same parts stay the same: a blank that is dragged or typed in must not be made anew under the hand. */
function keptParts(had: readonly SentencePart[], now: readonly SentencePart[]): readonly SentencePart[] {
  const left = [...had];
  return now.map(part => {
    const same = left.findIndex(h => JSON.stringify(h) === JSON.stringify(part));
    return same < 0 ? part : left.splice(same, 1)[0]!;
  });
}

/** A step as it is read: its verb, the parts of its sentence that are said now, and whether all of it is. */
export function createReading(props: StepProps, isOpen: Accessor<boolean>) {
  const { garment } = props;
  const verb = () => garment.engine.verbs().find(v => v.verb === props.step.verb);
  const [isAll, setAll] = createSignal(false);
  /** Said: what is given; of alternatives that are all open each; what else may be said, once it is asked for. */
  const isSaid = (name: string): boolean => {
    if (valueAt(props.step.fields, name) !== undefined) return true;
    if (!isOpen()) return false;
    const among = alternativesOf(verb(), name);
    return among ? among.every(n => isBlank(props.step, n)) : isAll();
  };
  const partsWhere = (isGiven: (name: string) => boolean): readonly SentencePart[] => {
    const known = verb();
    if (!known) return [];
    const parts = partsOf(sentenceOf(known, garment.verbWords()), isGiven);
    return parts.flatMap(part => eachSaid(part, known, props.step.fields));
  };
  return {
    verb,
    parts: createMemo<readonly SentencePart[]>(had => keptParts(had, partsWhere(isSaid)), []),
    isAll,
    setAll,
    /** There is no more that could be said. */
    saysAll: () =>
      partsWhere(isSaid).length === partsWhere(name => isSaid(name) || !alternativesOf(verb(), name)).length,
    isUnfinished: () => lacksAny(verb(), props.step),
  };
}
export type Reading = ReturnType<typeof createReading>;
