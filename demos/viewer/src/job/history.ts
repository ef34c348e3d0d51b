import { createSignal } from 'solid-js';

/** A value with all its earlier and undone ones. */
export interface History {
  readonly past: readonly string[];
  readonly now: string;
  readonly future: readonly string[];
}

export const begun = (now: string): History => ({ past: [], now, future: [] });

/** The value with undo and redo; a change that follows another within a drag replaces it (`settled` false). */
export function createHistory(first: History) {
  const [history, set] = createSignal(first);
  let open = false;
  return {
    history,
    set: (h: History) => {
      open = false;
      set(h);
    },
    now: () => history().now,
    write: (text: string, settled = true) => {
      const { past, now } = history();
      if (text !== now) set({ past: open ? past : [...past, now], now: text, future: [] });
      open = !settled;
    },
    /** What was being changed has been changed: what follows is another thing to undo. */
    settle: () => {
      open = false;
    },
    undo: () => {
      open = false;
      const { past, now, future } = history();
      if (past.length > 0) set({ past: past.slice(0, -1), now: past.at(-1)!, future: [now, ...future] });
    },
    redo: () => {
      open = false;
      const { past, now, future } = history();
      if (future.length > 0) set({ past: [...past, now], now: future[0]!, future: future.slice(1) });
    },
  };
}
