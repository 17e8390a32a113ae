import type { BackParts, CardContent, CardDepth } from "../../src/model/card-content.ts";
import { keyOf, type WordKeyIn, type Words } from "../../src/words/words.ts";
import type { TableProps } from "../table.tsx";

type Rows = TableProps["rows"];

/** Rows of a card's shot table, a column a depth. */
export function shotRows(
  { moved }: CardContent,
  { depths, shot }: Pick<BackParts, "depths" | "shot">,
  words: Words,
  names: "long" | "short",
): Pick<TableProps, "head" | "rows"> {
  const row = (name: WordKeyIn<"card.short">, field: string, pick: (depth: CardDepth) => string) => ({
    name: words(`card.${names}.${name}`),
    field,
    cells: depths.map(pick),
  });
  const locked = depths.some(({ lock }) => lock !== undefined);
  const setting = [
    row(`set-at.${keyOf(moved)}`, "float setting", ({ setAt }) => setAt),
    ...(locked ? [row("lock", "locking shot", ({ lock }) => lock ?? "")] : []),
  ];
  const tip = row("tip", "tip showing", (depth) => depth.tip);
  const line: Readonly<Record<BackParts["shot"], () => Rows>> = {
    "on the front": () => [tip],
    counted: () => [...setting, row("on-line", "shot on the line", (depth) => depth.line), tip],
    placed: () => [...setting, tip, ...placeRows(depths, words, words(`card.${names}.on-line`))],
  };
  return { head: [words("card.depth"), ...depths.map(({ depth }) => depth)], rows: line[shot]() };
}

/** Places of the shot across the table: once where all depths have the same, else a row for each that differs. */
function placeRows(depths: readonly CardDepth[], words: Words, name: string): Rows {
  const row = (field: string, text: string) => ({ name, field, cells: depths.map(() => text) });
  const differing = [...new Set(depths.map(({ places }) => places))];
  if (differing.length === 1) return [row("shot on the line", differing[0]!)];
  return differing.map((places) => {
    const alike = depths.filter((depth) => depth.places === places).map(({ depth }) => depth);
    return row(
      `shot on the line, ${alike.join(", ")}`,
      words("card.in-depths", { depths: alike.join(", "), places }),
    );
  });
}
