import { entry, first, last } from "../core/lists.ts";
import { ballDiameterMm, type Metal, type ShotSize } from "../core/tackle/shot.ts";
import { circle, point, polyline, text, thin } from "./items.ts";
import type { Box, DrawingKit } from "./kit.ts";
import { leading } from "./labels/label-text.ts";
import type { Drawing, Item } from "./model.ts";
import { NoRoomError } from "./no-room.ts";
import { parts } from "./parts/parts.ts";
import { spoken } from "./spoken.ts";

interface GaugeOptions {
  readonly textMm: number;
}

const padMm = 1.2;

/**
 * Shot at true size: for each size and metal a ring whose outer edge is the shot's diameter, from its mass and the
 * metal's density, with a bar that shows whether the sheet was printed at its true size. As high as it needs to be.
 *
 * @param box its width; its height is the most that the gauge may take
 * @throws NoRoomError where the box is too small
 */
export function drawShotGauge(
  sizes: readonly ShotSize[],
  metals: readonly Metal[],
  box: Box,
  kit: DrawingKit,
  { textMm }: GaugeOptions = { textMm: 3.5 },
): Drawing {
  const { words, figures, measure } = kit;
  const lineMm = textMm * leading;
  const diameter = (size: ShotSize, metal: Metal) => ballDiameterMm(size.massG, metal);
  const names = sizes.map(({ name }) => name);
  const masses = sizes.map(({ massG }) => figures.statedMass(massG));
  const widest = (said: readonly string[], face: "bold" | "regular") =>
    Math.max(...said.map((one) => measure(one, textMm, face)));
  const nameMm = widest(names, "bold") + 3;
  const massMm = widest(masses, "regular") + 4;
  const columnMm = (box.widthMm - nameMm - massMm) / metals.length;
  const largest = Math.max(...sizes.flatMap((size) => metals.map((metal) => diameter(size, metal))));
  const figureMm = widest(
    sizes.flatMap((size) => metals.map((metal) => figures.diameter(toTenth(diameter(size, metal))))),
    "regular",
  );

  const items: Item[] = metals.map((metal, i) =>
    text(point(nameMm + massMm + i * columnMm, lineMm * 0.8), words(`metal.${metal}`), textMm, {
      face: "bold",
    }),
  );
  let top = lineMm + padMm;
  for (const [row, size] of sizes.entries()) {
    const heightMm = Math.max(lineMm, ...metals.map((metal) => diameter(size, metal))) + padMm;
    const middle = top + heightMm / 2;
    const baseline = middle + 0.35 * textMm;
    items.push(
      text(point(0, baseline), entry(names, row), textMm, { face: "bold" }),
      text(point(nameMm, baseline), entry(masses, row), textMm),
    );
    for (const [i, metal] of metals.entries()) {
      const mm = diameter(size, metal);
      const left = nameMm + massMm + i * columnMm;
      const ring = (mm - thin.widthMm) / 2;
      items.push(
        circle(point(left + largest / 2, middle), ring, { stroke: thin }),
        text(point(left + largest + 1.2, baseline), figures.diameter(toTenth(mm)), textMm, { ink: "soft" }),
      );
    }
    top += heightMm;
    items.push(polyline([point(0, top), point(box.widthMm, top)], { ink: "faint", widthMm: thin.widthMm }));
  }
  top += 4;
  const bar = figures.ruler.check;
  const barWords = words("drawing.gauge.bar", { length: figures.small(bar.lengthMm) });
  items.push(...parts.checkBar.draw({ at: point(0, top), bar, words: barWords, textMm }));
  const heightMm = top + 3 + lineMm;
  if (columnMm < largest + 1.2 + figureMm + 2 || box.widthMm < bar.lengthMm || heightMm > box.heightMm)
    throw new NoRoomError("a shot gauge", box);
  return {
    widthMm: box.widthMm,
    heightMm,
    title: words("drawing.gauge.title"),
    description: told(sizes, metals, kit),
    items,
  };
}

function told(sizes: readonly ShotSize[], metals: readonly Metal[], kit: DrawingKit): string {
  const said = kit.words("drawing.gauge.told", {
    count: sizes.length,
    largest: first(sizes).name,
    smallest: last(sizes).name,
    metals: metals.map((metal) => kit.words(`metal.${metal}`)).join(", "),
  });
  return spoken(said, kit);
}

/** A ring cannot be compared by eye finer than a tenth of a millimetre. */
function toTenth(mm: number): number {
  return Math.round(mm * 10) / 10;
}
