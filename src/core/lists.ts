/**
 * Lists whose entries are known to be there. What is asked for and is not there is a mistake in the program, so it throws
 * where it happens and does not travel on as a missing value.
 */

/** @throws RangeError for an empty list */
export function first<T>(list: readonly T[]): T {
  return entry(list, 0);
}

/** @throws RangeError for an empty list */
export function last<T>(list: readonly T[]): T {
  return entry(list, list.length - 1);
}

/** @throws RangeError where the list has no such place */
export function entry<T>(list: ArrayLike<T>, place: number): T {
  const found = list[place];
  if (found === undefined) throw new RangeError(`no entry ${place} in a list of ${list.length}`);
  return found;
}

/** Each entry with the one after it. */
export function neighbours<T>(list: readonly T[]): [T, T][] {
  return list.slice(1).map((after, i): [T, T] => [entry(list, i), after]);
}

/** The entries of two lists of one length side by side. @throws RangeError where one is shorter */
export function paired<A, B>(one: readonly A[], other: readonly B[]): [A, B][] {
  if (one.length !== other.length) throw new RangeError(`${one.length} entries beside ${other.length}`);
  return one.map((value, i): [A, B] => [value, entry(other, i)]);
}

/** The one with an id. @throws RangeError where there is none */
export function withId<T extends { readonly id: unknown }>(list: readonly T[], id: T["id"]): T {
  const found = list.find((one) => one.id === id);
  if (found === undefined) throw new RangeError(`nothing has the id ${id}`);
  return found;
}

/** Entries by their ids. */
export function byId<T extends { readonly id: string }>(list: readonly T[]): ReadonlyMap<string, T> {
  return new Map(list.map((one) => [one.id, one]));
}

/** The value of a key. @throws RangeError where there is none */
export function known<K, V>(map: ReadonlyMap<K, V>, key: K): V {
  const found = map.get(key);
  if (found === undefined) throw new RangeError(`nothing stands under ${key}`);
  return found;
}

/** Numbers added up in their order; 0 where there are none. */
export function sum(numbers: Iterable<number>): number {
  let total = 0;
  for (const one of numbers) total += one;
  return total;
}

/** Numbers by their size, each once. */
export function rising(numbers: Iterable<number>): number[] {
  return [...new Set(numbers)].sort((a, b) => a - b);
}
