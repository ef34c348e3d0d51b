import EngineWorker from '../engine/engine.worker.ts?worker&inline';

/** The engine within the page itself, for the one file that has nothing beside it. */
export const engineWorker = (): Worker => new EngineWorker();
