import { expect, it } from "vitest";
import { rigData } from "../../src/build/data.ts";
import { drawFilm } from "../../src/drawing/film/films.ts";
import { floatPose } from "../../src/drawing/float/float-poses.ts";
import { drawRig } from "../../src/drawing/rig/rig-drawing.ts";
import { makeFigures } from "../../src/words/figures.ts";
import { floatSays } from "../../src/words/float-says.ts";
import { rigTexts } from "../../src/words/rig-texts.ts";
import { depthGuideTable } from "../../src/words/tables.ts";
import { drawingKit } from "../support/drawing-kit.ts";
import { shippedGuide } from "../support/shipped-guide.ts";
import { textsOf } from "../support/tellers/read-drawing.ts";

const { rigs } = shippedGuide;
const margin = rigs.find(({ rig }) => rig.id === "margin")!;
const depth = margin.depths[1]!;
const plain = (text: string) => text.replaceAll("\u00a0", " ");
const kit = { ...drawingKit, figures: makeFigures("metric", drawingKit.words, "en") };

/** So much tip as a reader gets to see: to the nearest 5 mm. Common practice, no source. */
const read = (mm: number | null | undefined) => (typeof mm === "number" ? 5 * Math.round(mm / 5) : mm);

it("every output says of the margin rig that its tip cannot tell a shot on the bed from the bait alone", () => {
  const guide = depthGuideTable(depth, kit).rows.map((row) => row.map(plain));
  // 0.06 g of corn and hook or one No 8 more off a tip 5 mm thick: 3 mm each.
  const onBed = guide.find((row) => row[2] === "No 8")!;
  const bait = guide.find((row) => row[0] === "3 cm over depth")!;
  expect([bait[3], onBed[3]]).toEqual(["20 mm", "20 mm, same"]);
  expect(rigTexts(kit).untold(depth).map(plain)).toEqual([
    "20 mm of tip shows with the bait alone on the bed, and also with No 8 on the bed: the tip cannot tell which.",
  ]);
  expect(floatSays(depth, kit).map(plain)).toContain("Right: tip 20 mm, bait on the bed, or No 8 as well.");
  const box = { widthMm: 87, heightMm: 115 };
  const drawn = (["set", "over depth"] as const).map((variant) =>
    drawRig(margin, depth, box, kit, { labels: "full", textMm: 3.5, variant }),
  );
  expect(
    drawn.map(({ items }) =>
      plain(
        textsOf(items)
          .map(({ text }) => text)
          .join(" "),
      ),
    ),
  ).toEqual([
    expect.stringContaining("same tip with No 8 on the bed: it cannot tell"),
    expect.stringContaining("same tip with the bait alone on the bed: it cannot tell"),
  ]);
  expect(drawn.map(({ description }) => plain(description))).toEqual([
    expect.stringContaining("Also with number 8 on the bed."),
    expect.stringContaining("Also with the bait alone on the bed."),
  ]);
  const film = drawFilm("depth", margin, depth, { widthMm: 87, textMm: 3.5 }, kit);
  const moment = film.moments.find(({ caption }) => caption.startsWith("Hook 33 cm over depth"))!;
  expect(plain(moment.caption)).toContain("Also with the bait alone on the bed: it cannot tell.");
  expect(
    plain(
      textsOf(moment.moving)
        .map(({ text }) => text)
        .join(" "),
    ),
  ).toContain("it cannot tell");
});

it.each(rigs.filter(({ rig }) => rig.water === "still"))(
  "$rig.id: the data say so where, and only where, two of their tips are read alike",
  (solved) => {
    for (const { depthGuide } of rigData(solved).depths) {
      const mostOf = (state: string, shot: number) =>
        Math.max(
          -1,
          ...depthGuide
            .filter((one) => one.state === state && one.shotOnBed.length === shot)
            .map((one) => one.tipShowingMm ?? -1),
        );
      for (const step of depthGuide) {
        if (step.state === "hangs" || step.tipShowingMm === null) {
          expect(step.tipCannotTell).toBe(false);
          continue;
        }
        const shot = step.shotOnBed.length;
        const counts = depthGuide.flatMap((one) =>
          one.state === "rests on the bed" && one.tipShowingMm !== null && one.shotOnBed.length < shot
            ? [one.shotOnBed.length]
            : [],
        );
        const less = counts.length > 0 ? mostOf("rests on the bed", Math.max(...counts)) : mostOf("hangs", 0);
        const most = mostOf("rests on the bed", shot);
        const isAlike = less >= 0 && read(less) === read(most) && read(less) === read(step.tipShowingMm);
        expect(step.tipCannotTell, `${step.overdepthCm} cm`).toBe(isAlike);
      }
    }
  },
);

it.each(["metric", "imperial", "us"] as const)(
  "tells any two tips apart in %s that it tells apart at all",
  (units) => {
    const { tip } = makeFigures(units, drawingKit.words, "en");
    const told = Array.from({ length: 61 }, (_, i) => tip(5 * i));
    expect(new Set(told).size).toBe(told.length);
  },
);

it.each(rigs)(
  "$rig.id: a lift bite is shown by the picture of a state where the film shows it, and nowhere else",
  (solved) => {
    const [first] = solved.depths;
    const film = drawFilm("bites", solved, first!, { widthMm: 87, textMm: 3.5 }, kit);
    const names = film.moments.flatMap(({ moving }) => textsOf(moving).map(({ text }) => text));
    const isFilmed = names.some((name) => name.startsWith("Rises"));
    const pose = floatPose("lift-bite", solved, first!, kit);
    if (isFilmed) expect(pose).toBeDefined();
    if (pose) expect(read(pose.tipMm) === read(first!.tipAsSetMm) && pose.leanDegrees === 0).toBe(false);
  },
);
