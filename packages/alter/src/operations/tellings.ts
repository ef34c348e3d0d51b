import { sayingsOf, type Thing } from '@paperhinge/geometry';

/** What is told of the alterations and what they draw anew. */
export interface OperationTellings {
  'dart-legs-unlike': { readonly dart: Thing; readonly firstMm: number; readonly secondMm: number };
}

export const { refusal, finding } = sayingsOf<OperationTellings>();
