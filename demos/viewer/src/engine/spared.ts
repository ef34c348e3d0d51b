// What crosses from the engine to the page: what crossed before, and is the same object still, is told by its place.

/** A list as it crosses: its elements, or their places in the list that crossed before. No element is a number. */
export type Spared<T> = readonly (T | number)[];

/** A value whose lists cross so. */
export type Crossing<T> = {
  readonly [Key in keyof T]: T[Key] extends readonly (infer Element)[] ? Spared<Element> : T[Key];
};

/** What is sent of a value, given the one of its kind that was sent last. */
export const crossing = <T extends object>(now: T, before: T | undefined): Crossing<T> =>
  eachList(now, (list, key) => spared(list, listOf(before, key))) as Crossing<T>;

/** The value that was sent; elements, and whole lists, that were there before are the same objects still. */
export const restored = <T extends object>(sent: Crossing<T>, before: T | undefined): T =>
  eachList(sent, (list, key) => unspared(list, listOf(before, key))) as T;

/** Rows made anew that say the same as before as the rows they were, each of those once. */
export function sameRows<T extends object>(now: readonly T[], before: readonly T[] = []): readonly T[] {
  const left = before.map(row => ({ row, says: JSON.stringify(row) }));
  return now.map(row => {
    const says = JSON.stringify(row);
    const place = left.findIndex(had => had.says === says);
    return place < 0 ? row : left.splice(place, 1)[0]!.row;
  });
}

function eachList<T extends object>(value: T, work: (list: readonly unknown[], key: string) => unknown) {
  const entries = Object.entries(value).map(([key, own]) => [key, Array.isArray(own) ? work(own, key) : own]);
  return Object.fromEntries(entries) as object;
}

const listOf = (value: object | undefined, key: string): readonly unknown[] =>
  value === undefined ? [] : ((value as Record<string, unknown>)[key] as readonly unknown[]);

function spared(now: readonly unknown[], before: readonly unknown[]): readonly unknown[] {
  const places = new Map(before.map((one, place) => [one, place]));
  return now.map(one => places.get(one) ?? one);
}

function unspared(sent: readonly unknown[], before: readonly unknown[]): readonly unknown[] {
  const isSame = sent.length === before.length && sent.every((one, place) => one === place);
  return isSame ? before : sent.map(one => (typeof one === 'number' ? before[one] : one));
}
