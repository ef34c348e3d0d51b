import { createStore, get, set } from 'idb-keyval';
import type { History } from './history.js';

/** A garment as it is kept on this device: its pattern, and its sheet with all that can be undone. */
export interface Kept {
  readonly patternName: string;
  readonly pattern: string;
  readonly history: History;
  readonly needle: number | undefined;
}

const key = 'garment';
/** A private window may have no storage: the page then works without keeping. */
const store = () => createStore('paperhinge-table', 'shelf');

export async function kept(): Promise<Kept | undefined> {
  try {
    return await get<Kept>(key, store());
  } catch {
    return undefined;
  }
}

/** @returns whether it could be kept */
export async function keep(garment: Kept): Promise<boolean> {
  try {
    await set(key, garment, store());
    return true;
  } catch {
    return false;
  }
}
