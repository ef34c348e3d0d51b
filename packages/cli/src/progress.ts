import type { Io } from './io.js';

/** ms after which work counts as long enough to be told of even where nobody seems to watch. */
const longWork = 10_000;

/** Says on stderr what is being done: to a person at once, on one line; to a log only if the work is long. */
export function progress(io: Io) {
  const start = performance.now();
  let last = '';
  return {
    /** @param share of it that is done, from 0 to 1: shown to a person only */
    say(text: string, share?: number): void {
      const percent = share === undefined ? '' : ` ${Math.round(100 * share)} %`;
      if (io.watched) {
        if (`${text}${percent}` !== last) io.stderr(`\r\u001b[K${text} …${percent}`);
        last = `${text}${percent}`;
        return;
      }
      if (text !== last && performance.now() - start > longWork) io.stderr(`${text} …\n`);
      last = text;
    },
    end(): void {
      if (io.watched) io.stderr('\r\u001b[K');
    },
  };
}
