import type { AnyVerbForm } from '@paperhinge/alter';
import type { Kind } from './fields/kind.js';
import type { Parameters } from './fields/of-verb.js';
import type { Step, StepPlaces } from './sheet.js';

/** The verbs that a sheet may use, by name, each with the kind of its fields. */
export type VerbKinds = ReadonlyMap<string, { readonly verb: AnyVerbForm; readonly kind: Kind<Parameters> }>;

export interface StepRead {
  readonly step: Step;
  readonly places: StepPlaces;
}
