import { describe, expect, it } from "vitest";
import { drawFilm } from "../../../src/drawing/film/films.ts";
import { drawRig } from "../../../src/drawing/rig/rig-drawing.ts";
import { drawingKit } from "../../support/drawing-kit.ts";
import { drawingText } from "../../support/drawing-text.ts";
import { shippedGuide } from "../../support/shipped-guide.ts";
import { textsOf } from "../../support/tellers/read-drawing.ts";

const flowing = shippedGuide.rigs.filter(({ rig }) => rig.water === "flowing");
const { words, figures } = drawingKit;

describe.each(flowing.map((solved) => [solved.rig.id, solved] as const))("the drawing of %s", (_, solved) => {
  const { rig, depths } = solved;
  const [depth] = depths;
  // Held back by a tenth where a rig says nothing else: common practice, no source.
  const share = rig.heldBackShare ?? 0.1;
  const hang = depth!.inWater!.flow.find(
    (one) => one.paceMs === rig.pacesMs[0] && one.heldBackShare === share,
  )!;
  const drawing = drawRig(solved, depth!, { widthMm: 80, heightMm: 120 }, drawingKit, {
    labels: "full",
    textMm: 3.2,
  });

  it("has its bait as high over the bed as the data have it, on the picture and in words", () => {
    const gap = figures.shortGap(hang.offBedMm);
    expect(hang.offBedMm).toBeGreaterThan(0);
    expect(drawing.description).toContain(words("drawing.rig.off-bed", { gap }));
    expect(drawingText(drawing).replaceAll("\u00a0", " ")).toContain(words("figures.off-the-bed", { gap }));
  });

  // The pace of a stream falls towards its bed: ISO 748 has the mean pace at six tenths of the depth, the quickest at the top.
  it("says why its bait is where it is: held back by slow water, or taken ahead by water quicker than the float", () => {
    const said = drawingText(drawing).replaceAll("\u00a0", " ");
    const film = drawFilm("current", solved, depth!, { widthMm: 87, textMm: 3.5 }, drawingKit).moments;
    for (const [text, leadMm] of [
      [said, hang.leadMm],
      [film[0]!.caption, -1],
      [film.find(({ caption }) => caption.includes("stopped"))!.caption, 1],
    ] as const)
      expect(text).toMatch(
        leadMm > 0
          ? /quicker than the float, takes the bait ahead/
          : /slow water near the bed holds the bait back/,
      );
  });

  it("says at which pace, how it is held, and how far its bait leads or trails", () => {
    expect(drawing.description).toContain(figures.pace(rig.pacesMs[0]!));
    const side = hang.leadMm > 0 ? "ahead of" : "behind";
    const gap = figures.shortGap(Math.abs(hang.leadMm));
    expect(drawing.description.replaceAll("\u00a0", " ")).toContain(
      `the float slowed by ${100 * share} %, the bait ${gap.replaceAll("\u00a0", " ")} ${side} it`,
    );
    const seen = textsOf(drawing.items)
      .map(({ text }) => text.replaceAll("\u00a0", " "))
      .join(" ");
    expect(seen).toContain(`held back: float slowed by ${100 * share} %`);
    expect(seen).toContain(`off the bed, ${gap} ${side} the float`);
    expect(seen).toContain("figures are along the line, which slants");
  });
});

// Line and float together are longer than the water is deep, as the line slants.
describe("the rig made up for a spot of a stream", () => {
  const spots = (shippedGuide.source.spots ?? []).filter(({ rig }) => rig?.water === "flowing");

  it.each(spots.map((one) => [one.spot.title, one] as const))("slants at %s", (_, { made }) => {
    const solved = made!();
    const box = { widthMm: 80, heightMm: 104 };
    const drawing = drawRig(solved, solved.depths[0]!, box, drawingKit, { labels: "full", textMm: 3.2 });
    const seen = textsOf(drawing.items)
      .map(({ text }) => text.replaceAll("\u00a0", " "))
      .join(" ");
    expect(seen).toContain("figures are along the line, which slants");
    expect(seen).toMatch(/off the bed, .* (?:ahead of|behind) the float/);
  });

  it("is among those that are drawn", () => expect(spots.length).toBeGreaterThan(0));
});
