import { entry } from "../core/lists.ts";

/**
 * For each entry that is wanted the place of one that is there and equal, as many as can be found in one order: the longest
 * common subsequence.
 */
export function alike(there: readonly number[], wanted: readonly number[]): (number | undefined)[] {
  const begin = wanted.findIndex((one, place) => there[place] !== one);
  if (begin < 0) return wanted.map((_, place) => place);
  // The most that can be found from a place in either list on.
  const most = Array.from({ length: there.length + 1 }, () => new Uint16Array(wanted.length + 1));
  for (let i = there.length - 1; i >= begin; i--) {
    const [row, below] = [entry(most, i), entry(most, i + 1)];
    for (let j = wanted.length - 1; j >= begin; j--)
      row[j] =
        there[i] === wanted[j] ? entry(below, j + 1) + 1 : Math.max(entry(below, j), entry(row, j + 1));
  }
  const found = wanted.map((_, place): number | undefined => (place < begin ? place : undefined));
  let [i, j] = [begin, begin];
  while (i < there.length && j < wanted.length) {
    if (there[i] === wanted[j]) found[j++] = i++;
    else if (entry(entry(most, i + 1), j) >= entry(entry(most, i), j + 1)) i++;
    else j++;
  }
  return found;
}
