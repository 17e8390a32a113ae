import { first, last } from "../../core/lists.ts";
import type { S } from "../../core/units.ts";

/** Who is down first of some, and how much sooner than the last, by the whole seconds that are told of each; nobody where those are alike. */
export function sooner<T extends { readonly endS: S }>(
  those: readonly T[],
): { readonly one: T; readonly gainS: S } | undefined {
  const byEnd = those.toSorted((a, b) => a.endS - b.endS);
  const one = first(byEnd);
  const gainS = Math.round(last(byEnd).endS) - Math.round(one.endS);
  return gainS === 0 ? undefined : { one, gainS };
}
