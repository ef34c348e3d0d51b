/** The one whose cost is least, of equal ones the first; nothing of an empty list. */
export const least = <T>(all: readonly T[], cost: (one: T) => number): T | undefined =>
  all.reduce<T | undefined>(
    (best, one) => (best === undefined || cost(one) < cost(best) ? one : best),
    undefined,
  );
