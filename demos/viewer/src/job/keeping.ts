import { createSignal } from 'solid-js';
import { type Kept, keep } from './shelf.js';

/** ms after the last change that a garment is kept. */
const pause = 400;

/** Keeps what is changed, a moment after it was; at once when the page is left. */
export function createKeeping(onBeside: (id: string) => void) {
  const [saved, setSaved] = createSignal<'kept' | 'not kept'>('kept');
  let timer: ReturnType<typeof setTimeout> | undefined;
  let waiting: Kept | undefined;
  let known: { id: string; changed: number } | undefined;
  // One after the other, so that what is known is always of the last.
  let line: Promise<void> = Promise.resolve();
  const put = () => {
    clearTimeout(timer);
    const garment = waiting;
    waiting = undefined;
    if (!garment) return;
    line = line.then(async () => {
      const kept = await keep(garment, known?.id === garment.id ? known.changed : undefined);
      setSaved(kept ? 'kept' : 'not kept');
      if (!kept) return;
      known = { id: kept.id, changed: kept.changed };
      if (kept.id !== garment.id) onBeside(kept.id);
    });
  };
  addEventListener('pagehide', put);
  document.addEventListener('visibilitychange', () => document.hidden && put());
  return {
    saved,
    /** Whatever waits to be kept, kept now. */
    now: (): Promise<void> => {
      put();
      return line;
    },
    /** Read from the shelf: from here on it is ours to change. */
    knows: ({ id, changed }: Kept) => {
      known = { id, changed };
    },
    later: (garment: Kept) => {
      // Another garment: the one before it is kept now.
      if (waiting && waiting.id !== garment.id) put();
      waiting = garment;
      clearTimeout(timer);
      timer = setTimeout(put, pause);
    },
  };
}
