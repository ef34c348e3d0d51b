import type { Finding } from '@paperhinge/geometry';
import { oncePer } from '@paperhinge/geometry/internal';

/** Findings that stand after a step and did not stand before it, or stand with other figures. */
export const caused = (before: readonly Finding[], after: readonly Finding[]): readonly Finding[] => {
  const known = new Set(before.map(told));
  return after.filter(finding => !known.has(told(finding)));
};

/** The same finding with the same figures says the same sentence. */
export const told = /* @__PURE__ */ oncePer(({ code, where, figures, about }: Finding): string =>
  JSON.stringify([code, where.piece, where.edge, figures, about]),
);
