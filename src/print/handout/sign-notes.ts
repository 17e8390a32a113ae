import { type SignedBasis, signedBases } from "../../core/basis.ts";
import type { Item } from "../../drawing/model.ts";
import type { Words } from "../../words/words.ts";

/** What the signs beside the figures of a column mean, on one line; nothing where it has none. */
export function signNotes(column: readonly Item[], words: Words): string {
  const spoken = spokenIn(column);
  return (Object.keys(signedBases) as SignedBasis[])
    .filter((of) => spoken.has(words(`basis-sign.${of}.spoken`)))
    .map((of) => `${words(`basis-sign.${of}.sign`)} ${words(`basis-sign.${of}.note`)}`)
    .join("   ");
}

function spokenIn(items: readonly Item[]): ReadonlySet<string> {
  return new Set(
    items.flatMap((item) => {
      if (item.kind === "group") return [...spokenIn(item.items)];
      return item.kind === "text" && item.spoken !== undefined ? [item.spoken] : [];
    }),
  );
}
