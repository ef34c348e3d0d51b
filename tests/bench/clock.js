/**
 * Operations a second of processor time: the best of three windows, after a warm-up. `work` does `count` of them.
 * Where one round of it outlasts a window by far, one such round is the figure: more would only cost minutes.
 */
export function rate(count, work, window = 250) {
  let best = 0;
  const round = least => {
    const start = process.cpuUsage();
    let rounds = 0,
      spent = 0;
    do {
      work();
      rounds++;
      const { user, system } = process.cpuUsage(start);
      spent = (user + system) / 1000;
    } while (spent < least);
    best = Math.max(best, (rounds * count * 1000) / spent);
    return spent;
  };
  const warmUp = round(window / 2);
  if (warmUp < 4 * window) for (let i = 0; i < 3; i++) round(window);
  return best;
}

export const per = n =>
  n >= 1e6 ? `${(n / 1e6).toFixed(2)} M/s` : n >= 1e3 ? `${(n / 1e3).toFixed(1)} k/s` : `${n.toFixed(0)} /s`;
export const small = x => (x === 0 ? '0' : x >= 0.01 ? x.toFixed(3) : x.toExponential(1));
export const median = list => [...list].sort((a, b) => a - b)[list.length >> 1];

/** Rows of cells as an aligned table under a title. */
export function table(title, head, rows) {
  const all = [head, ...rows].map(row => row.map(String));
  const widths = head.map((_, i) => Math.max(...all.map(row => row[i].length)));
  const text = row =>
    row.map((cell, i) => (i === 0 ? cell.padEnd(widths[i]) : cell.padStart(widths[i]))).join('  ');
  return [
    `\n${title}`,
    text(all[0]),
    widths.map(w => '-'.repeat(w)).join('  '),
    ...all.slice(1).map(text),
  ].join('\n');
}
