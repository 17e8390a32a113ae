import { expect, test } from "vitest";
import { tipRuler } from "../../../src/drawing/float/tip-figures.ts";
import { drawingKit } from "../../support/drawing-kit.ts";

// A scale is read between two of its figures. Common practice, no source.
test("a scale goes on to the tip or over it, in its room, with figures apart and as large as there is room for", () => {
  for (let mostMm = 20; mostMm <= 140; mostMm += 1)
    for (const highMm of [9.4, 14, 21.7, 33]) {
      const room = { mostMm, mostScale: 1.5, highMm, apartMm: 4.2 };
      const { scale, figures } = tipRuler(room, drawingKit);
      const places = figures.map(({ tipMm }) => tipMm * scale);
      const [step] = [places[1]!];
      const told = [mostMm, highMm].join();
      expect(figures.at(-1)!.tipMm, told).toBeGreaterThanOrEqual(mostMm - 1e-6);
      expect(places.at(-1)!, told).toBeLessThan(highMm + 1e-3);
      expect(step, told).toBeGreaterThanOrEqual(4.2);
      expect(scale, told).toBeLessThanOrEqual(1.5);
      // One step more would have no room, or the scale could not be larger.
      expect(places.at(-1)! + step > highMm, told).toBe(true);
      expect(figures.map(({ told: one }) => Number(one))).toEqual(figures.map(({ tipMm }) => tipMm));
    }
});

test("a tip of 30 mm on a scale just as high has its figure", () => {
  for (const highMm of [9.39, 13.7, 15.1, 17.3, 23.9, 29.9]) {
    const { figures } = tipRuler({ mostMm: 30, mostScale: 1.2, highMm, apartMm: 3 }, drawingKit);
    expect(figures.at(-1)!.told).toBe("30");
  }
});
