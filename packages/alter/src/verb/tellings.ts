import { anyRefusal, type RefusalOf } from '@paperhinge/geometry/sayings';

interface OfVerb {
  readonly verb: string;
}

/** What is told of the fields that a verb was given. */
export interface VerbTellings {
  'fields-expected': OfVerb & { readonly fields: readonly string[] };
  /** More than one: any of them would do. */
  'field-missing': OfVerb & { readonly fields: readonly string[] };
  'field-unknown': OfVerb & { readonly field: string; readonly fields: readonly string[] };
  'field-not-usable': OfVerb & {
    readonly field: string;
    readonly kind: string;
    /** Those that may stand there. */
    readonly words?: readonly string[];
  };
  'field-out-of-range': OfVerb & {
    readonly field: string;
    readonly kind: string;
    readonly value: number;
    readonly least: number;
    readonly most: number;
    readonly over: boolean;
  };
  'fields-exclude': OfVerb & { readonly fields: readonly string[] };
  'choice-unknown': OfVerb & {
    readonly field: string;
    readonly given: string;
    readonly words: readonly string[];
  };
}

export const refusal: RefusalOf<VerbTellings> = anyRefusal;
