import type { EdgeRun, Pattern } from '@paperhinge/geometry';

/** What the two seams of a godet are called. */
export const godetSeams = (name: string): readonly [string, string] => [`${name} first`, `${name} second`];

/** A pattern as it was before a godet was set into a seam of it: that seam is sewn to the hem again. */
export function withoutGodet(
  pattern: Pattern,
  { name, seam }: { readonly name: string; readonly seam: string },
): Pattern {
  const whole = (runs: readonly EdgeRun[]): readonly EdgeRun[] => runs.map(({ part: _, ...run }) => run);
  return {
    ...pattern,
    pieces: pattern.pieces.filter(piece => piece.name !== name),
    seams: pattern.seams
      .filter(one => !godetSeams(name).includes(one.name))
      .map(one => (one.name === seam ? { ...one, a: whole(one.a), b: whole(one.b) } : one)),
  };
}
