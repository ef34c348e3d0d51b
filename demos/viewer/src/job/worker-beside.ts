/** The engine as a file beside the page. */
export const engineWorker = (): Worker =>
  new Worker(new URL('../engine/engine.worker.ts', import.meta.url), { type: 'module' });
