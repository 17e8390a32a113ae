import { expect, it } from "vitest";
import type { Item } from "../../../src/drawing/model.ts";
import { drawSign } from "../../../src/drawing/signs/draw-sign.ts";
import { signPictures } from "../../../src/model/signs.ts";
import { shippedLibrary } from "../../support/shipped-library.ts";

const drawings = signPictures.map((picture) => drawSign(picture, "A sign"));
const kinds = (items: readonly Item[]) => items.map(({ kind }) => kind);

it("every sign of the shipped guide says when it is seen and has a picture of its own", () => {
  const { troubles } = shippedLibrary;
  expect(troubles.filter(({ when }) => when === undefined)).toEqual([]);
  const shown = troubles.map(({ shows }) => shows);
  expect(new Set(shown).size).toBe(troubles.length);
  expect(shown).not.toContain(undefined);
});

it("no two pictures are the same, and none has words, which stand beside it", () => {
  expect(new Set(drawings.map(({ items }) => JSON.stringify(items))).size).toBe(signPictures.length);
  for (const { items } of drawings) {
    expect(items.length).toBeGreaterThan(0);
    expect(kinds(items)).not.toContain("text");
  }
});

it.each(signPictures)("what is seen of “%s” lies within its picture", (picture) => {
  const { items, widthMm, heightMm } = drawSign(picture, "A sign");
  for (const item of items) {
    const places =
      item.kind === "path"
        ? item.steps.flatMap((step) => {
            const figures = step.slice(1) as number[];
            return figures.flatMap((x, i) => (i % 2 === 0 ? [[x, figures[i + 1]!] as const] : []));
          })
        : item.kind === "circle"
          ? [[item.cxMm, item.cyMm] as const]
          : [];
    for (const [x, y] of places) {
      expect(x).toBeGreaterThanOrEqual(0);
      expect(x).toBeLessThanOrEqual(widthMm);
      expect(y).toBeGreaterThanOrEqual(-0.5);
      expect(y).toBeLessThanOrEqual(heightMm + 0.5);
    }
  }
});
