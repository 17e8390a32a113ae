import wrapAnsi from "wrap-ansi";
import { entry } from "../core/lists.ts";
import type { TextTable } from "../words/tables.ts";

/** Width that a sheet keeps to, tables apart [characters]. */
const sheetWidth = 100;
const indent = "  ";

/** A part of the sheet under its heading; parts with nothing to say are left out. */
export function section(title: string, ...parts: readonly string[]): string {
  const filled = parts.filter((part) => part !== "");
  return filled.length === 0 ? "" : [title, ...filled].join("\n");
}

/** Lines with their labels in one column; a text longer than a line goes on below itself. */
export function labelled(entries: readonly (readonly [label: string, text: string])[]): string {
  const longest = Math.max(0, ...entries.map(([label]) => label.length));
  const width = longest === 0 ? 0 : longest + 2;
  return entries
    .flatMap(([label, text]) =>
      wrapAnsi(text, sheetWidth - indent.length - width)
        .split("\n")
        .map((line, at) => `${indent}${(at === 0 ? label : "").padEnd(width)}${line}`.trimEnd()),
    )
    .join("\n");
}

/** A sentence or more below a table. */
export function paragraph(text: string): string {
  return labelled([["", text]]);
}

/** A table in columns as wide as their longest entry. */
export function columns({ head, rows }: TextTable): string {
  const widths = head.map((title, at) => Math.max(title.length, ...rows.map((row) => entry(row, at).length)));
  const row = (cells: readonly string[]) =>
    `${indent}${cells.map((cell, at) => cell.padEnd(entry(widths, at))).join("  ")}`.trimEnd();
  return [row(head), row(widths.map((width) => "─".repeat(width))), ...rows.map(row)].join("\n");
}
