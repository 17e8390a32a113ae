import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { rigVariants } from "../../../src/core/float/moved-float.ts";
import { NoRoomError } from "../../../src/drawing/no-room.ts";
import { drawRig, type RigDrawingOptions } from "../../../src/drawing/rig/rig-drawing.ts";
import { allShot } from "../../../src/model/solved.ts";
import { breaksOnShot, drawingFaults, flatItems } from "../../support/drawing-checks.ts";
import { drawingKit } from "../../support/drawing-kit.ts";
import { sampleRigs, sampleShot } from "../../support/sample-rig.ts";
import { labelsOf } from "../../support/tellers/read-drawing.ts";

/** The drawing's place on an upright ISO/IEC 7810 ID-1 card, and on a page. 9 pt is 3.175 mm. */
const places = [
  { name: "card", box: { widthMm: 48, heightMm: 78 }, labels: "distances", textMm: 3.175 },
  { name: "page", box: { widthMm: 100, heightMm: 140 }, labels: "full", textMm: 4 },
] as const satisfies readonly (Omit<RigDrawingOptions, "variant"> & { name: string; box: object })[];

const cases = sampleRigs.flatMap((solved) =>
  solved.depths.flatMap((depth) =>
    places.flatMap((place) =>
      rigVariants.map((variant) => ({
        name: `${solved.rig.id} in ${depth.depthMm} mm, ${variant}, on a ${place.name}`,
        drawing: () => drawRig(solved, depth, place.box, drawingKit, { ...place, variant }),
      })),
    ),
  ),
);

describe("rig drawings", () => {
  test.each(cases)("$name: no label overlaps or leaves the frame", ({ drawing }) => {
    const drawn = drawing();
    expect(drawingFaults(drawn)).toEqual([]);
    expect(breaksOnShot(drawn)).toEqual([]);
  });

  test("the words below the bed say that a hook touches it where it is set so, and nowhere else", () => {
    for (const solved of sampleRigs)
      for (const depth of solved.depths) {
        const page = places[1];
        const { items } = drawRig(solved, depth, page.box, drawingKit, page);
        const text = flatItems(items)
          .flatMap((item) => (item.kind === "text" ? [item.text] : []))
          .join(" ");
        const isTouching = solved.rig.water === "still" && depth.overdepthMm === 0;
        expect(text.includes("the hook touches it"), solved.rig.id).toBe(isTouching);
      }
  });

  test.each(places)(
    "on a $name all stays clear with up to twelve shot at the float and ten down the line, whatever they are",
    (place) => {
      const size = fc.constantFrom("SSG", "AAA", "BB", "No 4", "No 6", "No 8", "No 10");
      const rig = fc.record({
        base: fc.nat({ max: sampleRigs.length - 1 }),
        lock: fc.array(size, { maxLength: 12 }),
        line: fc.array(fc.tuple(size, fc.integer({ min: 3, max: 600 })), { minLength: 0, maxLength: 10 }),
        bareMm: fc.integer({ min: 60, max: 3000 }),
        overdepthMm: fc.constantFrom(-400, -50, 0, 40, 200),
      });
      fc.assert(
        fc.property(rig, ({ base: which, lock, line, bareMm, overdepthMm }) => {
          const base = sampleRigs[which]!;
          let fromHookMm = 20;
          const shots = line.map(([name, gapMm]) => {
            fromHookMm += gapMm;
            return sampleShot(name, "spread", fromHookMm);
          });
          const floatToHookMm = Math.max(fromHookMm, base.rig.hookLengthMm) + bareMm;
          const names = base.rig.float.heldByShot ? lock : [];
          const lockShot = names.map((name) => sampleShot(name, "lock", floatToHookMm));
          const first = base.depths[0]!;
          const depth = {
            ...first,
            inWater: undefined,
            overdepthMm,
            floatToHookMm,
            depthMm: floatToHookMm + first.draughtMm - overdepthMm,
            lineShot: shots,
            lockShot,
            lock: {
              below: lockShot.filter((_, at) => at % 2 === 0),
              above: lockShot.filter((_, at) => at % 2 === 1),
            },
          };
          const drawn = drawRig(base, depth, place.box, drawingKit, place);
          expect(drawingFaults(drawn)).toEqual([]);
        }),
        { numRuns: 80, seed: 11 },
      );
    },
  );

  test("every shot of the rig is drawn, at a size that rises with its diameter", () => {
    const solved = sampleRigs[0]!;
    const depth = solved.depths[1]!;
    const drawn = drawRig(solved, depth, { widthMm: 100, heightMm: 140 }, drawingKit, {
      labels: "full",
      textMm: 4,
    });
    const radii = flatItems(drawn.items)
      .flatMap((item) => (item.kind === "circle" && item.fill === "ink" ? [item.radiusMm] : []))
      .sort((a, b) => a - b);
    const diameters = allShot(depth)
      .map((shot) => shot.diameterMm)
      .sort((a, b) => a - b);
    expect(radii).toHaveLength(diameters.length);
    const ratios = radii.map((radius, i) => (2 * radius) / diameters[i]!);
    expect(Math.max(...ratios)).toBeCloseTo(Math.min(...ratios), 9);
  });

  test("where shot may share a label with their like alone, none is told with shot of another size in another place", () => {
    const [base] = sampleRigs;
    const line = ["No 10", "No 8", "No 6", "No 8", "No 10", "No 6", "No 4"].map((size, i) =>
      sampleShot(size, "spread", 310 + 80 * i),
    );
    const mixed = { ...base!, depths: base!.depths.map((depth) => ({ ...depth, lineShot: line })) };
    const told = (heightMm: number, shared: "alike" | "any") => {
      const drawn = [...sampleRigs, mixed].flatMap((solved) =>
        solved.depths.flatMap((depth) => {
          try {
            const options = { labels: "distances", textMm: 3.175, shared } as const;
            return [drawRig(solved, depth, { widthMm: 48, heightMm }, drawingKit, options)];
          } catch (error) {
            if (error instanceof NoRoomError) return [];
            throw error;
          }
        }),
      );
      const labels = drawn.flatMap(labelsOf).map((label) => label.replace(/\s/g, " "));
      return { drawn: drawn.length, unlike: labels.filter((label) => / to .* cm .* \+ /.test(label)).length };
    };
    let drawn = 0;
    for (let heightMm = 30; heightMm <= 78; heightMm += 4) {
      const alike = told(heightMm, "alike");
      expect(alike.unlike).toBe(0);
      drawn += alike.drawn;
    }
    expect(drawn).toBeGreaterThan(50);
    expect(Math.max(...[38, 42, 46].map((heightMm) => told(heightMm, "any").unlike))).toBeGreaterThan(0);
  });

  test.each(cases)("$name: says where distances start, and that it is not to scale", ({ drawing }) => {
    const texts = flatItems(drawing().items).flatMap((item) => (item.kind === "text" ? [item] : []));
    const datum = texts.findIndex(({ text, face }) => text === "0" && face === "bold");
    expect(texts[datum + 1]?.text).toMatch(/^hook bend/);
    const whole = texts.map(({ text }) => text).join(" ");
    expect(whole.match(/not to scale/g)).toHaveLength(1);
  });

  test("a range tells its two ends and that it is even, and no gap that, rounded, would not lead from one to the other", () => {
    const base = sampleRigs[0]!;
    const line = Array.from({ length: 13 }, (_, at) => sampleShot("No 8", "spread", 420 + 54.2 * at));
    const depth = { ...base.depths[0]!, inWater: undefined, lineShot: line };
    for (const place of places) {
      const labels = labelsOf(drawRig(base, depth, place.box, drawingKit, place));
      expect(labels.map((label) => label.replace(/\s/g, " "))).toContain("42 to 107 cm 13 × No 8, evenly");
    }
  });

  // One convention for both, or a figure beside a bracket is read as that of its middle: common practice, no source.
  test.each([
    { hung: "pinched on together", places: [400, 402, 404, 406, 408] },
    { hung: "spread evenly", places: [400, 500, 600, 700, 800] },
  ])("the distance of shot $hung points at the lowest of them", ({ places: at }) => {
    const base = sampleRigs[0]!;
    const line = at.map((mm) => sampleShot("No 6", "bulk", mm));
    const depth = { ...base.depths[0]!, inWater: undefined, lineShot: line };
    const [, page] = places;
    const items = flatItems(drawRig(base, depth, page.box, drawingKit, page).items);
    const shots = items.flatMap((item) =>
      item.kind === "circle" && item.fill === "ink" && item.cyMm > 60 ? [item.cyMm] : [],
    );
    const ends = items.flatMap((item) =>
      item.kind === "path" && item.stroke?.ink === "soft"
        ? item.steps.flatMap((step) => (step[0] === "Z" ? [] : [step[2]]))
        : [],
    );
    const lowest = Math.max(...shots);
    expect(ends.filter((yMm) => Math.abs(yMm - lowest) < 1e-6).length).toBeGreaterThan(0);
  });

  test("the description tells the rig from the hook up", () => {
    const solved = sampleRigs[0]!;
    const drawn = drawRig(solved, solved.depths[1]!, { widthMm: 48, heightMm: 78 }, drawingKit, {
      labels: "distances",
      textMm: 3.175,
    });
    expect(drawn.description.replaceAll("\u00a0", " ")).toBe(
      "Waggler strung out: for water 3 m deep. From the hook up: number 10 at 31 cm; 7 number 8 at 56 to 206 cm; " +
        "the float at 282 cm, locked by BB + number 4 above, BB + number 4 below. 15 mm of tip shows, " +
        "with every shot hanging. The hook just touches the bed.",
    );
  });
});
