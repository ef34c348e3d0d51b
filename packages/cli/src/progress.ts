import type { Io } from './io.js';

/** ms after which work counts as long enough to be told of even where nobody seems to watch. */
const longWork = 10_000;

/** Says on stderr what is being done: to a person at once, on one line; to a log only if the work is long. */
export function progress(io: Io) {
  const start = performance.now();
  return {
    say(text: string): void {
      if (io.watched) io.stderr(`\r\u001b[K${text} …`);
      else if (performance.now() - start > longWork) io.stderr(`${text} …\n`);
    },
    end(): void {
      if (io.watched) io.stderr('\r\u001b[K');
    },
  };
}
