import type { Severity } from '@paperhinge/geometry';

/** Done. */
export const done = 0;
/** Done, but something will not sew or fit: there is a fault among the findings. */
export const willNotSew = 1;
/** The input or the arguments cannot be used. */
export const unusable = 2;
/** Our own failure. */
export const ourFailure = 3;

export const codeFor = (findings: readonly { readonly severity: Severity }[]): number =>
  findings.some(finding => finding.severity === 'fault') ? willNotSew : done;
