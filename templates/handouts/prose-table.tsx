import type { PhrasingContent, Table } from "mdast";
import { entry, first, paired, sum } from "../../src/core/lists.ts";
import { Box, joiner, mmPerPoint } from "../../src/markup/boxes.ts";
import { hairline, heavy } from "../rules.ts";
import { columnWidthMm, type HandoutFormat } from "./format.ts";
import { boundText, inline } from "./prose-inline.tsx";

/** A table of a text; its first column heads the rows. */
export function ProseTable({ table, format }: { table: Table; format: HandoutFormat }) {
  const head = first(table.children);
  const rows = table.children.slice(1);
  const widths = columnShares(table, signsAcross(format));
  const cell = (i: number) => ({
    grow: entry(widths, i),
    paddingTop: 0.7,
    paddingBottom: 0.7,
    paddingRight: 2,
  });
  return (
    <Box tag="Table" at={table.position?.start}>
      <Box tag="TR" style={{ direction: "row", align: "end" }} paint={{ ruleBelow: heavy }}>
        {head.children.map(({ children }, i) => (
          <Box key={String(i)} tag="TH" style={{ ...cell(i), face: "bold" }}>
            {inline(children)}
          </Box>
        ))}
      </Box>
      {rows.map((row, r) => (
        <Box key={String(r)} tag="TR" style={{ direction: "row" }} paint={{ ruleBelow: hairline }}>
          {row.children.map(({ children }, i) => (
            <Box
              key={String(i)}
              tag={i === 0 ? "TH" : "TD"}
              style={{ ...cell(i), ...(isToFillIn(row) && { minHeight: lineToWriteMm }) }}
            >
              {inline(children)}
            </Box>
          ))}
        </Box>
      ))}
    </Box>
  );
}

/** From one line to the next where somebody writes by hand [mm]; common practice, no source. */
export const lineToWriteMm = 8;

const isToFillIn = ({ children }: Table["children"][number]): boolean =>
  children.every((cell) => textOf(cell.children).trim() === "");

/** Signs of body type that fit across a column, at the least: half an em each and a little more (in our own texts). */
function signsAcross(format: HandoutFormat): number {
  return Math.floor(columnWidthMm(format) / (0.545 * format.bodyPt * mmPerPoint));
}

/** Shares of the width: each column has room for its longest word, and what is left goes by the longest cell. */
function columnShares({ children: rows }: Table, across: number): number[] {
  const texts = first(rows).children.map((_, i) =>
    rows.map((row) => textOf(row.children[i]?.children ?? [])),
  );
  const words = texts.map((column) => 2 + longest(column.flatMap((text) => text.split(/[ \n-]/))));
  const cells = texts.map((column) => Math.max(1, longest(column)));
  const free = Math.max(0, across - sum(words));
  return paired(words, cells).map(([word, cell]) => Math.round(10 * (word + (free * cell) / sum(cells))));
}

function longest(texts: readonly string[]): number {
  return Math.max(...texts.map((text) => text.length));
}

/** The signs that are seen, those that hold together with no space that a line may end at. */
function textOf(nodes: readonly PhrasingContent[]): string {
  return nodes
    .map((node) =>
      "children" in node
        ? textOf(node.children)
        : "value" in node
          ? boundText(node.value).replaceAll(` ${joiner}`, "\u00A0").replaceAll(joiner, "")
          : " ",
    )
    .join("");
}
