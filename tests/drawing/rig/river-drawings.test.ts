import { describe, expect, it } from "vitest";
import { disk } from "../../../src/cli/disk.ts";
import { readLibrary } from "../../../src/content/read-library.ts";
import { readSources } from "../../../src/content/world.ts";
import { drawRig } from "../../../src/drawing/rig/rig-drawing.ts";
import { withWater } from "../../../src/solve/in-water.ts";
import { solveRig } from "../../../src/solve/solve-rig.ts";
import { drawingKit } from "../../support/drawing-kit.ts";
import { drawingText } from "../../support/drawing-text.ts";

const { rigs } = readLibrary(await readSources(disk, ["content"])).value!;
const flowing = rigs.flatMap(({ rig }) => (rig.water === "flowing" ? [rig] : []));
const { words, figures } = drawingKit;

describe.each(flowing.map((rig) => [rig.id, rig] as const))("the drawing of %s", (_, rig) => {
  const depthsMm = [rig.depthsMm[0]!];
  const dry = solveRig({ ...rig, depthsMm });
  const solved = dry.ok ? withWater(dry.value) : dry;
  if (!solved.ok) throw new Error(JSON.stringify(solved.findings));
  const [depth] = solved.value.depths;
  const share = rig.heldBackShare ?? 0;
  const hang = depth!.inWater!.flow.find(
    (one) => one.paceMs === rig.pacesMs[0] && one.heldBackShare === share,
  )!;
  const drawing = drawRig(solved.value, depth!, { widthMm: 80, heightMm: 120 }, drawingKit, {
    labels: "full",
    textMm: 3.2,
  });

  it("has its bait as high over the bed as the data have it, on the picture and in words", () => {
    const gap = figures.shortGap(hang.offBedMm);
    expect(hang.offBedMm).toBeGreaterThan(0);
    expect(drawing.description).toContain(words("drawing.rig.off-bed", { gap }));
    expect(drawingText(drawing).replaceAll("\u00a0", " ")).toContain(words("figures.off-the-bed", { gap }));
  });

  it("says at which pace, how it is held, and how far its bait leads or trails", () => {
    expect(drawing.description).toContain(figures.pace(rig.pacesMs[0]!));
    const held =
      share === 0 ? words("drawing.hang.free") : words("drawing.hang.held", { share: figures.share(share) });
    expect(drawing.description).toContain(held);
    const side = hang.leadMm > 0 ? "ahead of it" : "behind it";
    expect(drawing.description).toContain(`${figures.shortGap(Math.abs(hang.leadMm))} ${side}`);
  });
});
