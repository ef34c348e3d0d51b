/** How much of a name may stand in an error: enough to find it by, too little to leak a file. */
const quotedCharacters = 40;

/** A name in quotation marks, fit for one line: printable characters only, cut at 40. */
export function quoted(name: string): string {
  const printable = [...name.slice(0, 2 * quotedCharacters + 2)].map(c =>
    /[\p{C}\p{Zl}\p{Zp}]/u.test(c) ? '�' : c,
  );
  const shown = printable.slice(0, quotedCharacters).join('');
  return `"${shown}${printable.length > quotedCharacters ? '…' : ''}"`;
}

/** Names for a sentence, each cut like a quoted one; at most `limit` of them, then "…". */
export function listed(names: readonly string[], limit = 12): string {
  const shown = names.slice(0, limit).map(name => quoted(name).slice(1, -1));
  return `${shown.join(', ')}${names.length > limit ? ', …' : ''}`;
}

/**
 * The candidate that a misspelt name most likely meant, if any is near: optimal string alignment distance
 * (a letter added, left out, changed, or two swapped) of at most a third of its length, case and separators apart; else
 * one that it is the first words of. Another number is no slip: A5 is not A4, nor size 12 size 14.
 */
export function nearestName(name: string, candidates: readonly string[]): string | undefined {
  const wanted = plain(name);
  if (wanted.length > longestCompared) return undefined;
  let best: string | undefined;
  let least = Math.max(1, Math.floor(wanted.length / 3)) + 1;
  for (const candidate of candidates) {
    const other = plain(candidate);
    if (hasOtherNumber(wanted, other)) continue;
    if (Math.abs(other.length - wanted.length) >= least) continue;
    const steps = alignmentDistance(wanted, other);
    if (steps < least) [best, least] = [candidate, steps];
  }
  // Or it is the beginning of one: "bust" of "bust girth".
  return best ?? (wanted.length < 3 ? undefined : candidates.find(c => plain(c).startsWith(`${wanted} `)));
}
const longestCompared = 100;
/** Of names with a number: B4 is no A4. */
const shortestNear = 3;

function hasOtherNumber(a: string, b: string): boolean {
  const [one, other] = [a, b].map(name => name.match(/\d+/g)?.join(' '));
  return one !== undefined && other !== undefined && (one !== other || a.length < shortestNear);
}
const plain = (name: string): string => name.toLowerCase().replace(/[\s_-]+/g, ' ');

function alignmentDistance(a: string, b: string): number {
  let before: number[] = [],
    row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = a[i - 1] === b[j - 1] ? 0 : 1;
      let steps = Math.min(row[j]! + 1, next[j - 1]! + 1, row[j - 1]! + change);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        steps = Math.min(steps, before[j - 2]! + 1);
      next.push(steps);
    }
    [before, row] = [row, next];
  }
  return row[b.length]!;
}

/** A remedy that points to the nearest of the names there are, or lists them. */
export function suggestion(name: string, candidates: readonly string[], what: string): string {
  const near = nearestName(name, candidates);
  if (near !== undefined) return `Did you mean ${quoted(near)}?`;
  return candidates.length > 0
    ? `Use one of its ${what}: ${listed(candidates)}.`
    : `There are no ${what} to choose from.`;
}
