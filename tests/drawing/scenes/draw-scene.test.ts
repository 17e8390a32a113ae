import { describe, expect, it } from "vitest";
import { drawScene } from "../../../src/drawing/scenes/draw-scene.ts";
import { scenes } from "../../../src/model/pictures.ts";
import { drawingFaults, flatItems } from "../../support/drawing-checks.ts";
import { drawingKit } from "../../support/drawing-kit.ts";
import { sampleWaggler } from "../../support/sample-rig.ts";

describe.each(scenes)("the scene %s", (scene) => {
  it.each([55, 62, 80, 100, 130, 170])("is clear at a width of %i mm", (widthMm) => {
    const drawings = drawScene(scene, sampleWaggler, { widthMm }, drawingKit);
    expect(drawings.length).toBeGreaterThan(0);
    for (const drawing of drawings) {
      const where = `${drawing.title}, ${widthMm} mm`;
      expect(drawingFaults(drawing), where).toEqual([]);
    }
  });

  it.each([55, 90])("has no words below 7.5 pt on paper at a width of %i mm", (widthMm) => {
    const sizes = drawScene(scene, sampleWaggler, { widthMm }, drawingKit).flatMap(({ items }) =>
      flatItems(items).flatMap((item) => (item.kind === "text" ? [item.sizeMm] : [])),
    );
    for (const sizeMm of sizes) expect(sizeMm).toBeGreaterThanOrEqual(7.5 * (25.4 / 72));
  });

  it("tells each step in words of its own", () => {
    const told = drawScene(scene, sampleWaggler, { widthMm: 80 }, drawingKit).map(
      ({ title, description }) => [title, description] as const,
    );
    for (const words of told.flat()) expect(words).not.toMatch(/[{}]|drawing\./);
    expect(new Set(told.map(([title]) => title)).size).toBe(told.length);
    expect(new Set(told.map(([, description]) => description)).size).toBe(told.length);
  });
});
