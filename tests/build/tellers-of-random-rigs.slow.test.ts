import { expect, test } from "vitest";
import { rigData } from "../../src/build/data.ts";
import { sheetText } from "../../src/cli/sheet-text.ts";
import { drawRig } from "../../src/drawing/rig/rig-drawing.ts";
import type { Rig } from "../../src/model/rig.ts";
import { withWater } from "../../src/solve/in-water.ts";
import { solveRig } from "../../src/solve/solve-rig.ts";
import { shotTable } from "../../src/words/tables.ts";
import { realSite } from "../site/real-site.ts";
import { randomRiverRigs } from "../support/river-rigs.ts";
import { randomStillRigs } from "../support/still-rigs.ts";
import { readDescription, readDrawing } from "../support/tellers/read-drawing.ts";
import { readSheet, readShotTable } from "../support/tellers/read-tables.ts";
import { agrees } from "../support/tellers/statement.ts";

/** In whole centimetres, as an author would write it: an output tells a depth no finer, and is read back by it. */
function toldInFull(rig: Rig): Rig {
  const whole = (mm: number) => Math.round(mm / 10) * 10;
  return { ...rig, depthsMm: rig.depthsMm.map(whole), overdepthMm: whole(rig.overdepthMm) };
}

test("drawing, its words, sheet and table tell of rigs that nobody wrote what their data say", async () => {
  const site = await realSite();
  const wrong: string[] = [];
  let held = 0;
  const flowing = site.library.rigs.map(({ rig }) => rig).filter(({ water }) => water === "flowing");
  const rivers = randomRiverRigs(flowing, { count: 8, seed: 11 });
  for (const rig of [...randomStillRigs(120, 11).map(toldInFull), ...rivers]) {
    const dry = solveRig(rig);
    const solved = dry.ok && rig.water === "flowing" ? withWater(dry.value) : dry;
    if (!solved.ok) continue;
    const { value } = solved;
    const data = rigData(value);
    const drawn = value.depths.map((depth) =>
      drawRig(value, depth, { widthMm: 150, heightMm: 400 }, site.kit, { labels: "full", textMm: 4.2 }),
    );
    const told = [
      ...drawn.flatMap((drawing) => [
        ...readDrawing(drawing, "drawing"),
        ...readDescription(drawing.description, "words for the drawing"),
      ]),
      ...readSheet(sheetText(value, { ...site.kit, scales: site.library.scales })),
      ...readShotTable(shotTable(value, site.kit), "table"),
    ];
    held += told.length;
    wrong.push(...told.filter((one) => !agrees(data, one)).map((one) => `${rig.id}: ${JSON.stringify(one)}`));
  }
  expect(wrong).toEqual([]);
  expect(held).toBeGreaterThan(1500);
});
