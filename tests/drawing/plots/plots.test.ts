import { describe, expect, test } from "vitest";
import { hangInCurrent } from "../../../src/core/flow/hang.ts";
import { landings } from "../../../src/core/sink/sink-of-rig.ts";
import { NoRoomError } from "../../../src/drawing/no-room.ts";
import { ticks } from "../../../src/drawing/plots/axis.ts";
import { drawHangPlot } from "../../../src/drawing/plots/hang-plot.ts";
import { drawSinkPlot } from "../../../src/drawing/plots/sink-plot.ts";
import { bulked, rigWith, sinks, strungOut, valueIn } from "../../core/sink/rigs.ts";
import { drawingFaults, flatItems } from "../../support/drawing-checks.ts";
import { drawingKit } from "../../support/drawing-kit.ts";
import { fallingDots, fallingFaults } from "../../support/falling-dots.ts";
import { stick } from "../../support/sample-rig.ts";

const curves = (title: string, shot: typeof strungOut) => ({
  id: "any",
  title,
  label: title.toLowerCase(),
  sinks: landings.map((landing) => sinks(rigWith(shot), landing)),
});
const strung = curves("Strung out", strungOut);
const bulk = curves("Bulk", bulked);
const rig = {
  id: "any",
  title: "Strung out",
  depthMm: 2000,
  draughtMm: 100,
  float: stick,
  shotFromHookMm: strungOut.map((s) => s.fromHookMm),
};
const flowRig = { ...rigWith(strungOut, { draughtMm: 100, floatToHookMm: 1900 }), floatDragAreaCm2: 6 };
const hangs = (paceMs: number, shares = [0, 0.2, 1]) =>
  shares.map((share) => valueIn(hangInCurrent(flowRig, paceMs, share)));
const text = { textMm: 3.5 };

const drawings = [
  drawSinkPlot(strung, bulk, 2000, { widthMm: 100, heightMm: 80 }, drawingKit, text),
  drawSinkPlot(strung, undefined, 2000, { widthMm: 60, heightMm: 120 }, drawingKit, text),
  drawSinkPlot(bulk, strung, 2000, { widthMm: 48, heightMm: 120 }, drawingKit, { textMm: 3.175 }),
  drawHangPlot(rig, hangs(0.2), { widthMm: 100, heightMm: 110 }, drawingKit, text),
  drawHangPlot(rig, hangs(0.8), { widthMm: 110, heightMm: 80 }, drawingKit, text),
  drawHangPlot(rig, hangs(0.3, [0]), { widthMm: 48, heightMm: 78 }, drawingKit, { textMm: 3.175 }),
];

describe("plots", () => {
  test.each(drawings)("$title: text is clear of text and marks, all in the frame", (drawing) => {
    expect(drawingFaults(drawing)).toEqual([]);
  });

  test("each way to land has a panel, in it the rig's bait beside the other's, second by second where the sums have it", () => {
    for (const [drawing, pair] of [
      [drawings[0]!, [strung, bulk]],
      [drawings[2]!, [bulk, strung]],
    ] as const) {
      const columns = fallingDots(drawing);
      expect(columns).toHaveLength(4);
      const depths = flatItems(drawing.items).flatMap((item) =>
        item.kind === "text" && item.anchor === "end"
          ? [{ text: item.text, yMm: item.yMm - 0.35 * item.sizeMm }]
          : [],
      );
      // Panels have one scale of depth for both, or one each.
      const [zeros, beds] = ["0 m", "2 m"].map((one) => depths.filter(({ text }) => text === one));
      const sinksShown = landings.flatMap((_, i) => pair.map(({ sinks: all }) => all[i]!));
      for (const [i, column] of columns.entries()) {
        const at = Math.min(Math.floor(i / 2), zeros!.length - 1);
        const [zeroMm, bedMm] = [zeros![at]!.yMm, beds![at]!.yMm];
        const scale = (bedMm - zeroMm) / 2000;
        expect(fallingFaults(column, sinksShown[i]!, { zeroMm, scale })).toEqual([]);
      }
    }
  });

  test("nothing joins the dots, which would be read as a line in the water", () => {
    const paths = flatItems(drawings[0]!.items).flatMap((item) => (item.kind === "path" ? [item] : []));
    const box = ({ steps }: (typeof paths)[number]) => {
      const ys = steps.flatMap((step) => (step[0] === "Z" ? [] : [step[2]]));
      return Math.max(...ys) - Math.min(...ys);
    };
    expect(paths.filter((path) => path.stroke && !path.fill && box(path) > 3)).toEqual([]);
  });

  test("each bait is named above its column, the head of a panel says who is down sooner, and no key is needed", () => {
    const items = flatItems(drawings[0]!.items);
    const texts = items.flatMap((item) => (item.kind === "text" ? [item] : []));
    const said = texts.map(({ text }) => text).join(" ");
    for (const [i, { xMm, dots }] of fallingDots(drawings[0]!).entries()) {
      const { label } = [strung, bulk][i % 2]!;
      const above = texts.filter(
        ({ text, xMm: x, yMm }) => text === label && yMm < dots[0]!.yMm && x <= xMm && x > xMm - 5,
      );
      expect(above).toHaveLength(1);
    }
    for (const [i, way] of ["laid out straight", "in a heap"].entries()) {
      const [own, other] = [strung, bulk].map((one) => Math.round(one.sinks[i]!.tenthsS[9]!));
      const [gainS, name] = [Math.abs(own! - other!), own! < other! ? strung.label : bulk.label];
      expect(said).toContain(
        `${way} ${gainS === 0 ? `both there after ${own} s` : `${gainS} s sooner: ${name}`}`,
      );
    }
  });

  test("what goes down and across is said, and how far off the bed a bait stops that is set so", () => {
    const told = (overdepthMm: number) =>
      flatItems(
        drawSinkPlot(
          { ...strung, overdepthMm },
          undefined,
          2000,
          { widthMm: 80, heightMm: 90 },
          drawingKit,
          text,
        ).items,
      )
        .flatMap((item) => (item.kind === "text" ? [item.text] : []))
        .join(" ");
    expect(told(0)).toContain("count from the cast: a ring each second");
    expect(told(0)).not.toContain("off the bed");
    expect(told(-120)).toContain("it is set 12 cm off the bed");
  });

  test("the depths beside the plot end with the bed's own", () => {
    const { items } = drawSinkPlot(strung, undefined, 1850, { widthMm: 80, heightMm: 90 }, drawingKit, text);
    const told = flatItems(items).flatMap((item) =>
      item.kind === "text" && item.anchor === "end" ? [item.text] : [],
    );
    expect(told).toEqual(["0 m", "0.5 m", "1 m", "1.5 m", "1.85 m"]);
  });

  test("panels that do not fit side by side stand below each other, however low the box", () => {
    const low = drawSinkPlot(bulk, strung, 2000, { widthMm: 60, heightMm: 60 }, drawingKit, text);
    expect(low.heightMm).toBeGreaterThan(60);
    expect(drawingFaults(low)).toEqual([]);
    const waters = flatItems(low.items).filter((item) => item.kind === "path" && item.fill === "water");
    expect(waters).toHaveLength(2);
  });

  test("a reader who cannot see the plot is told the times", () => {
    expect(drawings[0]!.description).toMatch(
      /^Strung out: laid out straight, .*; in a heap, half-way down after 3 s, all but down after 8 s\. Bulk: /,
    );
  });

  test("in the current every hold-back has dashes of its own, and words that agree with its lead", () => {
    const { description, items } = drawings[3]!;
    expect(description).toMatch(
      /runs right, 10 m in 50 s\. Float run free: bait \d+ cm behind the float, 1\.\d+ m deep/,
    );
    expect(description).toMatch(
      /stopped: bait 1\d\d cm ahead of the float, [\d.]+ m deep, \d+ cm off the bed/,
    );
    const dashes = items.flatMap((item) =>
      item.kind === "path" && item.steps.length > 12 ? [JSON.stringify(item.stroke?.dashMm)] : [],
    );
    expect(new Set(dashes).size).toBe(3);
  });

  test("in the current depths and distances are to the scale that axis and metre bar say", () => {
    for (const [drawing, some] of [
      [drawings[3]!, hangs(0.2)],
      [drawings[5]!, hangs(0.3, [0])],
    ] as const) {
      const texts = drawing.items.flatMap((item) => (item.kind === "text" ? [item] : []));
      const metres = texts
        .filter(({ text, anchor }) => anchor === "end" && / m$/.test(text))
        .map(({ text, yMm }) => ({ mm: 1000 * Number.parseFloat(text), yMm: yMm - 0.35 * texts[0]!.sizeMm }));
      const bar = metres.at(-1)!;
      const depthsMm = metres.slice(0, metres.findIndex(({ mm }) => mm === 2000) + 1);
      const [surface, bed] = [depthsMm[0]!, depthsMm.at(-1)!];
      const scale = (bed.yMm - surface.yMm) / (bed.mm - surface.mm);
      for (const { mm, yMm } of depthsMm) expect(yMm - surface.yMm).toBeCloseTo(scale * mm, 6);

      const lines = drawing.items.flatMap((item) =>
        item.kind === "path" && item.steps.length > 12 && !item.fill && item.stroke?.widthMm === 0.6
          ? [item]
          : [],
      );
      expect(lines).toHaveLength(some.length);
      for (const [i, { steps }] of lines.entries()) {
        const [hook, eye] = [steps[0]!.slice(1) as number[], steps.at(-1)!.slice(1) as number[]];
        const { leadMm, offBedMm } = some[i]!;
        expect(hook[0]! - eye[0]!).toBeCloseTo(scale * leadMm, 6);
        // A bait that is told to lie on the bed may hang a centimetre off it.
        expect(Math.abs(bed.yMm - hook[1]! - scale * offBedMm)).toBeLessThan(10 * scale);
      }
      const spans = drawing.items.flatMap((item) =>
        item.kind === "path" &&
        item.steps.length === 2 &&
        Math.abs((item.steps[0]![2] as number) - bar.yMm) < 1e-6
          ? [Math.abs((item.steps[1]![1] as number) - (item.steps[0]![1] as number))]
          : [],
      );
      expect(spans.some((mm) => Math.abs(mm - scale * bar.mm) < 1e-6)).toBe(true);
    }
  });

  test("in the current no line is named at another's bait", () => {
    const { items } = drawings[3]!;
    const baits = items.flatMap((item) =>
      item.kind === "path" && item.steps.length > 12 && item.stroke?.widthMm === 0.6
        ? [item.steps[0]!.slice(1) as number[]]
        : [],
    );
    for (const [i, name] of ["run free", "slowed by 20 %", "stopped"].entries()) {
      const named = items.flatMap((item) =>
        item.kind === "text" && item.face === "bold" && item.text === name ? [item] : [],
      );
      // Where neighbours leave no room the key alone says it.
      if (!named[0]) continue;
      const { xMm, yMm, sizeMm } = named[0];
      const endMm = xMm + drawingKit.measure(name, sizeMm, "bold");
      const off = baits.map(([x, y]) =>
        Math.hypot(x! - Math.min(endMm, Math.max(xMm, x!)), y! - (yMm - 0.35 * sizeMm)),
      );
      expect(off.indexOf(Math.min(...off))).toBe(i);
      expect(off[i]).toBeLessThan(3 * sizeMm);
    }
  });

  test("in the current no float has more than two lines below it", () => {
    const starts = drawings[3]!.items.flatMap((item) =>
      item.kind === "path" && item.steps.length > 12 && item.stroke?.widthMm === 0.6
        ? [(item.steps.at(-1)!.slice(1) as number[]).map((mm) => mm.toFixed(3))]
        : [],
    );
    const floats = [...new Set(starts.map((start) => JSON.stringify(start)))];
    expect(floats.map((float) => starts.filter((start) => JSON.stringify(start) === float).length)).toEqual([
      2, 1,
    ]);
  });

  test.each([
    ["sink", () => drawSinkPlot(strung, bulk, 2000, { widthMm: 30, heightMm: 40 }, drawingKit, text)],
    ["hang", () => drawHangPlot(rig, hangs(0.8), { widthMm: 30, heightMm: 40 }, drawingKit, text)],
  ])("a box too small for a %s plot is refused", (_, draw) => {
    expect(draw).toThrow(NoRoomError);
  });

  test("steps of an axis are 1, 2 or 5 and leave room", () => {
    expect(ticks(14, 80, 12)).toEqual([0, 5, 10]);
    expect(ticks(2, 1, 0.2)).toEqual([0, 0.5, 1, 1.5, 2]);
    expect(ticks(7, 80, 9)).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
  });
});
