import { expect, it } from "vitest";
import { first } from "../../../src/core/lists.ts";
import { cardContent } from "../../../src/print/cards/card-content.ts";
import { cardFormats } from "../../../src/print/cards/card-formats.ts";
import { shotTable } from "../../../src/print/cards/shot-table.ts";
import { drawingKit } from "../../support/drawing-kit.ts";
import { sampleWaggler } from "../../support/sample-rig.ts";
import { sampleGuide } from "../sample-print.ts";

const card = cardContent(sampleWaggler, sampleGuide, drawingKit);
const look = first(cardFormats.A5.backs);

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
