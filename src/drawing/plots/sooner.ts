import { first, last } from "../../core/lists.ts";
import type { S } from "../../core/units.ts";
import type { DrawingKit } from "../kit.ts";
import { together } from "../labels/label-text.ts";

/** Who is down first of some, and how much sooner than the last, by the whole seconds that are told of each; nobody where those are alike. */
export function sooner<T extends { readonly endS: S }>(
  those: readonly T[],
): { readonly one: T; readonly gainS: S } | undefined {
  const byEnd = those.toSorted((a, b) => a.endS - b.endS);
  const one = first(byEnd);
  const gainS = Math.round(last(byEnd).endS) - Math.round(one.endS);
  return gainS === 0 ? undefined : { one, gainS };
}

/** Who is down sooner and by how much, or when all are, in a few words. */
export function tellSooner(
  those: readonly { readonly name: string; readonly endS: S }[],
  { words, figures }: Pick<DrawingKit, "words" | "figures">,
): string {
  const soon = sooner(those);
  const time = together(figures.time(soon ? soon.gainS : first(those).endS));
  return soon
    ? words("drawing.sink.sooner", { time, name: together(soon.one.name) })
    : words("drawing.sink.alike", { time });
}
