import { expect, test } from "vitest";
import { drawPictures } from "../../src/drawing/pictures.ts";
import { drawRig } from "../../src/drawing/rig/rig-drawing.ts";
import { mmPerPoint } from "../../src/markup/boxes.ts";
import { filmsOf } from "../../src/model/films.ts";
import { type PictureReference, scenes } from "../../src/model/pictures.ts";
import { flatItems } from "../support/drawing-checks.ts";
import { shippedGuide } from "../support/shipped-guide.ts";

/** The smallest words that are read on paper at arm's length [pt]. Common practice, no source. */
const leastPt = 7.5;
/** Columns of a handout: one of two on a whole sheet, and the narrower one that steps and states stand abreast in. */
const columnMm = 80;
const abreastMm = 52.8;
const bodyMm = 11 * mmPerPoint;

const { library, rigs, kit, source } = shippedGuide;

const smallestPt = ({ items }: { readonly items: Parameters<typeof flatItems>[0] }) =>
  Math.min(...flatItems(items).flatMap((item) => (item.kind === "text" ? [item.sizeMm / mmPerPoint] : [])));

function expectReadable(reference: PictureReference, widthMm = columnMm) {
  const drawn = drawPictures(source)(reference, { widthMm, textMm: bodyMm, apart: true }, kit);
  for (const { drawing } of drawn)
    expect(smallestPt(drawing), drawing.title).toBeGreaterThanOrEqual(leastPt - 1e-9);
}

test.each(scenes)("the scene %s is read on paper", (scene) => {
  expectReadable({ picture: "scene", scene });
});

test.each(library.knots)("$id is read on paper", ({ id }) => {
  expectReadable({ picture: "knot", knot: id }, abreastMm);
});

test("floats, fish and baits are read on paper", () => {
  for (const { id } of library.floats) expectReadable({ picture: "float-drawing", float: id });
  expectReadable({ picture: "float-chart", floats: library.floats.slice(0, 6).map(({ id }) => id) });
  for (const { id } of library.species) expectReadable({ picture: "fish", fish: id });
  for (const { bait } of library.baits) expectReadable({ picture: "bait", bait: bait.id });
});

test.each(rigs)("$rig.id, its states, its pattern, its plot and its films are read on paper", (rig) => {
  const [depth] = rig.depths;
  const at = { rig: rig.rig.id, depthMm: depth!.depthMm };
  expectReadable({ picture: "rig-drawing", ...at, variant: "set" });
  expectReadable({ picture: "float-states", rig: at.rig, show: "all" }, abreastMm);
  expectReadable({ picture: "pattern-chart", rigs: [at.rig], depthMm: at.depthMm });
  if (rig.rig.water === "flowing") expectReadable({ picture: "hang-plot", ...at });
  for (const film of filmsOf(rig, depth!)) expectReadable({ picture: "film", film, ...at });
  const card = { labels: "distances", textMm: 9 * mmPerPoint } as const;
  expect(smallestPt(drawRig(rig, depth!, { widthMm: 48, heightMm: 78 }, kit, card))).toBeGreaterThanOrEqual(
    leastPt,
  );
});
