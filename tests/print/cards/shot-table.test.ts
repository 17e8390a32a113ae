import { expect, it } from "vitest";
import { first } from "../../../src/core/lists.ts";
import { mmPerPoint } from "../../../src/markup/boxes.ts";
import { cardContent } from "../../../src/print/cards/card-content.ts";
import { cardFormats } from "../../../src/print/cards/card-formats.ts";
import { shotTable } from "../../../src/print/cards/shot-table.ts";
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
    const { rows } = shotTable(card, depths, look, widthMm, drawingKit);
    const settings = rows.find(({ field }) => field === "float setting")?.cells ?? [];
    const widths = settings.map(({ lines, style }) =>
      drawingKit.measure(first(lines), (style?.sizePt ?? 0) * mmPerPoint, "bold"),
    );
    if (widths.length > 0) whites.push(columnMm - Math.max(...widths));
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
