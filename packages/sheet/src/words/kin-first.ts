/** Letters at the start of a word by which another is known for its kin: "bind", "binding"; "neck", "neckline". */
const stem = 4;

/** Names that share the beginning of a word with the one that was given, before all others: a list is seldom read whole. */
export function kinFirst(name: string, names: readonly string[]): readonly string[] {
  const stems = stemsOf(name);
  const isKin = (other: string): boolean => stemsOf(other).some(s => stems.includes(s));
  return [...names.filter(isKin), ...names.filter(other => !isKin(other))];
}

const stemsOf = (name: string): readonly string[] =>
  name
    .toLowerCase()
    .split(/[\s_-]+/)
    .filter(word => word.length >= stem)
    .map(word => word.slice(0, stem));
