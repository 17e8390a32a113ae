import { describe, expect, it } from "vitest";
import { drawPictures } from "../../../src/drawing/pictures.ts";
import type { SwimText } from "../../../src/model/swim.ts";
import { layOutSwims, swimFiles, swimProblems } from "../../../src/print/swims/swim-files.ts";
import { keyOf } from "../../../src/words/words.ts";
import { shippedSpots } from "../../support/chosen-spots.ts";
import { shippedGuide } from "../../support/shipped-guide.ts";
import { readPdf } from "../read-pdf.ts";
import { shippedPress } from "../shipped-press.ts";

const { source, swims, kit } = shippedGuide;
const press = shippedPress();

async function pagesOf(text: SwimText) {
  for await (const file of swimFiles(laidOf([text]), press)) {
    const { pages } = await readPdf(file.content as Uint8Array);
    return pages.map(({ tree }) => tree!.words.replace(/\s+/g, " "));
  }
  throw new Error("no sheet");
}

const laidOf = (texts: readonly SwimText[]) => layOutSwims(texts, drawPictures(source), press);

describe("the sheet of a swim", () => {
  it.each(swims.map((text) => [text.swim.id, text] as const))(
    "%s tells hazards first, and names them at the foot of every page",
    async (_, text) => {
      const words = await pagesOf(text);
      const [first] = words;
      expect(first!.indexOf("Hazards here")).toBeLessThan(first!.indexOf("How to get here"));
      for (const { kind, where } of text.swim.hazards) {
        expect(first).toContain(where);
        for (const page of words) expect(page).toContain(kit.words(`swim.hazard.${keyOf(kind)}`));
      }
      expect(words.every((page) => page.includes("Mind here: "))).toBe(true);
    },
  );

  it("has the best rig for each spot made up for just that depth, with its shot", async () => {
    const text = swims.find(({ swim }) => swim.id === "makebelieve-pool-willow")!;
    const words = (await pagesOf(text)).join(" ");
    for (const spot of shippedSpots.filter(({ swim }) => swim === text.swim)) {
      const { entry, made } = spot.choice.offered[0]!;
      const [depth] = made.depths;
      expect(words).toContain(`Made for this place (${spot.spot.title}): ${entry.title}`);
      expect(depth!.depthMm).toBe(spot.conditions.depthMm);
      expect(Math.abs(depth!.depthMm - spot.depth.depthMm)).toBeLessThanOrEqual(5);
      expect(words).toContain(kit.figures.shortGap(depth!.floatToHookMm));
    }
    expect(words).not.toContain("Ruled out");
  });

  it("is there for every swim, and fits", () => {
    expect(swims).toHaveLength(3);
    expect(swimProblems(laidOf(swims))).toEqual([]);
  });
});
