import { expect, it } from "vitest";
import { first } from "../../../src/core/lists.ts";
import { mmPerPoint } from "../../../src/markup/boxes.ts";
import { cardContent } from "../../../src/print/cards/card-content.ts";
import { cardFormats } from "../../../src/print/cards/card-formats.ts";
import { shotTable } from "../../../src/print/cards/shot-table.ts";
import { cellGapMm } from "../../../templates/table.tsx";
import { drawingKit } from "../../support/drawing-kit.ts";
import { sampleWaggler } from "../../support/sample-rig.ts";
import { sampleGuide } from "../sample-print.ts";

const card = cardContent(sampleWaggler, sampleGuide, drawingKit);
const look = first(cardFormats.A5.backs);

it("settings side by side are parted by white, however narrow their columns, so that they are not read as one", () => {
  const depths = card.depths.map(({ lock: _, ...depth }) => ({ ...depth, places: "none" }));
  const whites: number[] = [];
  for (let columnMm = 14; columnMm < 30; columnMm += 0.25) {
    const widthMm = 2 * look.marginMm + look.nameWidthMm + depths.length * columnMm;
    const { rows, widths: nameMm } = shotTable(card, depths, look, widthMm, drawingKit);
    const settings = rows.find(({ field }) => field === "float setting")?.cells ?? [];
    const widths = settings.map(({ lines, style }) =>
      drawingKit.measure(first(lines), (style?.sizePt ?? 0) * mmPerPoint, "bold"),
    );
    const roomMm = (widthMm - 2 * look.marginMm - first(nameMm)) / depths.length;
    if (widths.length > 0) whites.push(roomMm - Math.max(...widths));
  }
  expect(whites.length).toBeGreaterThan(20);
  expect(Math.min(...whites)).toBeGreaterThan(2);
});

/** The fields that a table of a column a depth has, where the tip is the same at all depths or is not. */
function fieldsOf(tipShowing: string | undefined): readonly string[] {
  const depths = card.depths.map(({ lock: _, ...depth }) => depth);
  const table = shotTable({ ...card, tipShowing }, depths, look, 300, drawingKit);
  return table.rows.map(({ field }) => field ?? "");
}

it("a table of shot tells the tip at each depth where the card does not tell one for all", () => {
  expect(fieldsOf(undefined)).toContain("tip showing");
  expect(fieldsOf("15 mm")).not.toContain("tip showing");
});

/** The text of a cell in lines no wider than this, as it breaks at its spaces. */
function brokenAt(text: string, widthMm: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const longer = lines.length === 0 ? word : `${lines.at(-1)} ${word}`;
    const fits =
      lines.length > 0 && drawingKit.measure(longer, look.figurePt * mmPerPoint, "regular") <= widthMm;
    if (fits) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

it("a shot stays on one line with its places wherever that takes no more lines, and no table grows for it", () => {
  const places =
    "No\u00a010 at\u00a032\u00a0cm; 2\u00a0×\u00a0No\u00a08 at\u00a046, 61\u00a0cm; 4\u00a0×\u00a0BB\u00a0+ 3\u00a0×\u00a0No\u00a06 at\u00a075\u00a0cm".replaceAll(
      " at",
      "\u00a0at",
    );
  const depths = card.depths.map(({ lock: _, ...depth }) => ({ ...depth, places }));
  let whole = 0;
  for (let cellMm = 40; cellMm < 130; cellMm += 1) {
    const widthMm = 2 * look.marginMm + look.nameWidthMm + cellGapMm + cellMm;
    const { rows, widths } = shotTable(card, depths, look, widthMm, drawingKit);
    const roomMm = widthMm - 2 * look.marginMm - first(widths) - cellGapMm;
    const row = rows.find(({ field }) => field === "shot on the line");
    if (!row) continue;
    const told = first(first(row.cells).lines);
    const lines = brokenAt(told, roomMm);
    expect(lines.length).toBeLessThanOrEqual(brokenAt(places, roomMm - 0.3).length);
    expect(told.replaceAll("\u00a0", " ")).toBe(places.replaceAll("\u00a0", " "));
    whole += lines.slice(0, -1).every((line) => line.endsWith(";")) ? 1 : 0;
  }
  expect(whole).toBeGreaterThan(45);
});

it("where another lock is wanted at another depth, each stands beside its depth, however much room there is", () => {
  const locks = card.depths.map((_, i) => `lock-${i + 1}`);
  const depths = card.depths.map((depth, i) => ({ ...depth, lock: locks[i], places: "none" }));
  const { rows } = shotTable(card, depths, look, 300, drawingKit);
  const told = rows.map(({ name, cells }) => [name, cells.flatMap(({ lines }) => lines).join("; ")]);
  expect(locks.length).toBeGreaterThan(1);
  for (const [i, { depth }] of depths.entries())
    expect(told.filter(([, text]) => text!.includes(locks[i]!)).map(([name]) => name)).toEqual([depth]);
});

it("a lock that is the same at all depths is told once", () => {
  const depths = card.depths.map((depth) => ({ ...depth, lock: "the-lock", places: "none" }));
  const { rows } = shotTable(card, depths, look, 300, drawingKit);
  expect(rows.filter(({ cells }) => cells.some(({ lines }) => lines.includes("the-lock")))).toHaveLength(1);
});
