import type { LayoutStyle } from "../../src/markup/boxes.ts";
import type { CardChoice, CardContent, CardDepth } from "../../src/model/card-content.ts";
import { keyOf, type Words } from "../../src/words/words.ts";
import type { TableProps } from "../table.tsx";

type Rows = TableProps["rows"];

/** Rows of a card's shot table, a column a depth. */
export function shotRows(
  { moved }: CardContent,
  { depths }: CardChoice,
  words: Words,
  settingStyle: LayoutStyle,
): Pick<TableProps, "head" | "rows"> {
  const row = (field: string, name: string, pick: (depth: CardDepth) => string) => ({
    name,
    field,
    cells: depths.map(pick),
  });
  const across = (field: string, key: "lock" | "on-line", pick: (depth: CardDepth) => string) =>
    acrossRows(depths, words, field, key, pick);
  const locked = depths.some(({ lock }) => lock !== undefined);
  return {
    head: [words("card.depth"), ...depths.map(({ depth }) => depth)],
    rows: [
      {
        ...row("float setting", words(`told.measured-from.${keyOf(moved)}`), ({ setAt }) => setAt),
        cellStyle: settingStyle,
      },
      row("tip showing", words("card.row.tip"), ({ tip }) => tip),
      ...(locked ? across("locking shot", "lock", ({ lock }) => lock ?? "") : []),
      ...across("shot on the line", "on-line", ({ places }) => places),
    ],
  };
}

/** What is too long for a column, across the table: a row for every depth, or one for each that differs. */
function acrossRows(
  depths: readonly CardDepth[],
  words: Words,
  field: string,
  key: "lock" | "on-line",
  pick: (depth: CardDepth) => string,
): Rows {
  const name = words(`card.row.${key}`);
  if (depths.length === 1) return depths.map((depth) => ({ name, field, cells: [pick(depth)] }));
  const differing = [...new Set(depths.map(pick))];
  return differing.map((text) => {
    const alike = depths.filter((depth) => pick(depth) === text).map(({ depth }) => depth);
    const of = alike.length === depths.length ? words("card.every-depth") : alike.join(", ");
    return {
      name: words("card.row.of-depths", { name, depths: of }),
      field: `${field}, ${of}`,
      cells: [text],
    };
  });
}
