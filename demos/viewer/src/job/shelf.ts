import { createStore, del, entries, get, set, type UseStore } from 'idb-keyval';
import type { History } from './history.js';

/** A garment as it is kept on this device: its pattern, and its sheet with all that can be undone. */
export interface Kept {
  readonly id: string;
  readonly title: string;
  readonly patternName: string;
  readonly pattern: string;
  readonly history: History;
  readonly needle: number | undefined;
  /** The sheet as it was laid on the table. */
  readonly original: string;
  /** ms since 1970; tells a window that another one has changed the same garment. */
  readonly changed: number;
}

/** A private window may have no storage, and a full one takes nothing: the page then works without keeping. */
const attempt = async <T>(work: (store: UseStore) => Promise<T>): Promise<T | undefined> => {
  try {
    return await work(createStore('paperhinge-table', 'garments'));
  } catch {
    return undefined;
  }
};
const lastOpen = 'open';

/** All that are kept, the last changed first. */
export const onShelf = async (): Promise<readonly Kept[]> =>
  ((await attempt(store => entries<string, Kept | string>(store))) ?? [])
    .flatMap(([, kept]) => (typeof kept === 'object' ? [kept] : []))
    .sort((p, q) => q.changed - p.changed);

/** The one that lay on the table last. */
export const lastOnTable = (): Promise<Kept | undefined> =>
  attempt(async store => {
    const id = await get<string>(lastOpen, store);
    return id === undefined ? undefined : get<Kept>(id, store);
  });

/**
 * Keeps a garment under its id, or beside it where another window has changed it meanwhile.
 * @param known when this window last kept or read it
 * @returns as it is kept now; undefined: it could not be
 */
export const keep = (garment: Kept, known: number | undefined): Promise<Kept | undefined> =>
  attempt(async store => {
    const there = await get<Kept>(garment.id, store);
    const isOurs = there === undefined || there.changed === known;
    const kept = isOurs ? garment : { ...garment, id: newId() };
    await set(kept.id, kept, store);
    await set(lastOpen, kept.id, store);
    return kept;
  });

/** Says which one lies on the table. */
export const opened = (id: string): Promise<void> =>
  attempt(store => set(lastOpen, id, store)).then(() => undefined);

export const forget = (id: string): Promise<void> => attempt(store => del(id, store)).then(() => undefined);

export const newId = (): string =>
  `${Date.now().toString(36)}-${Math.floor(Math.random() * 1e9).toString(36)}`;
