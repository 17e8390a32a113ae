import { expect, it } from "vitest";
import { solveContent } from "../../../src/build/build.ts";
import { disk } from "../../../src/cli/disk.ts";
import { drawScene } from "../../../src/drawing/scenes/draw-scene.ts";
import { scenes } from "../../../src/model/pictures.ts";
import { drawingFaults } from "../../support/drawing-checks.ts";

it("draws every scene of every rig in its frame with its words clear, on a card, a phone and a sheet", async () => {
  const { value, messages } = await solveContent(disk, ["content"]);
  expect(messages.filter(({ severity }) => severity === "error")).toEqual([]);
  const { rigs, kit } = value!;
  expect(rigs.length).toBeGreaterThan(10);
  for (const solved of rigs) {
    for (const widthMm of [55, 80, 160]) {
      for (const drawing of scenes.flatMap((scene) => drawScene(scene, solved, { widthMm }, kit))) {
        const where = `${solved.rig.id}, ${widthMm} mm: ${drawing.title}`;
        expect(drawingFaults(drawing), where).toEqual([]);
      }
    }
  }
});
