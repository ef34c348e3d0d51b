/** Worked out when it is first asked for, and kept. */
export function onFirstUse<T>(work: () => T): () => T {
  let kept: { readonly value: T } | undefined;
  return () => {
    kept ??= { value: work() };
    return kept.value;
  };
}
