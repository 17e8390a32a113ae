import { describe, expect, test } from "vitest";
import type { Item } from "../../../src/drawing/model.ts";
import { nodeFonts } from "../../../src/layout/node-fonts.ts";
import { allShot, type SolvedRig } from "../../../src/model/solved.ts";
import { drawnOf } from "../../../src/print/cards/card-content.ts";
import { cardFormatsOn } from "../../../src/print/cards/card-formats.ts";
import { layOutCard } from "../../../src/print/cards/lay-out-card.ts";
import { solveRig } from "../../../src/solve/solve-rig.ts";
import { drawingKit } from "../../support/drawing-kit.ts";
import { sampleRigs, sampleWaggler } from "../../support/sample-rig.ts";
import { plain } from "../read-pdf.ts";
import { sampleGuide } from "../sample-print.ts";

const fonts = nodeFonts();

const wordsOf = (items: readonly Item[]): string[] =>
  items.flatMap((item) =>
    item.kind === "text" ? [item.text] : item.kind === "group" ? wordsOf(item.items) : [],
  );

async function backOf(solved: SolvedRig, format: (typeof cardFormatsOn.A4)[number]) {
  const card = await layOutCard(solved, format, sampleGuide, drawingKit, fonts);
  expect([...card.front.overflows, ...card.back.overflows]).toEqual([]);
  return { ...card, text: plain(wordsOf(card.back.items).join(" ")) };
}

/** The same rig with all its shot cast in lead, where the rule was read or nobody has. */
function inLead({ rig }: SolvedRig, checked = rig.leadRule.checked): SolvedRig {
  const tub = rig.tub.map((shot) => ({ ...shot, metal: "lead" as const }));
  const solved = solveRig({
    ...rig,
    tub,
    leadRule: { allowedUpToG: 0.06, place: "Sallowmere", source: "made up", ...(checked && { checked }) },
  });
  if (!solved.ok) throw new Error("the rig does not solve in lead");
  return solved.value;
}

describe.each(cardFormatsOn.A4.map((format) => [format.name, format] as const))("%s", (_, format) => {
  test.each(sampleRigs.map((solved) => [solved.rig.id, solved] as const))(
    "%s gives the places of every depth that it tells",
    async (_id, solved) => {
      const { text, taken } = await backOf(solved, format);
      const told = taken.includes("every-depth") ? solved.depths : [drawnOf(solved.depths)];
      for (const depth of told) {
        for (const place of drawingKit.figures.shotPlaces(depth.lineShot).split("; ")) {
          expect(text).toContain(plain(place));
        }
      }
    },
  );

  test("a rig whose lead the rule forbids says so, with the weight that the rule allows and that of each shot", async () => {
    const solved = inLead(sampleWaggler);
    const { text } = await backOf(solved, format);
    const forbidden = solved.depths.flatMap(allShot).filter(({ massG }) => massG > 0.06);
    expect(forbidden.length).toBeGreaterThan(1);
    expect(text).toContain("In Sallowmere lead shot may weigh up to 0.06 g. Use another metal for");
    for (const { size, massG } of forbidden) {
      expect(text).toContain(`${size} (${drawingKit.figures.statedMass(massG)})`);
    }
  });

  test("as long as nobody has read the rule, the limit is told as one of caution", async () => {
    const { text } = await backOf(inLead(sampleWaggler, ""), format);
    expect(text).toContain(
      "The lead rule of Sallowmere is not looked up yet. Until it is, use lead shot only up to 0.06 g",
    );
    expect(text).not.toContain("may weigh");
  });
});
