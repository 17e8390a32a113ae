import { expect, it } from "vitest";
import type { DrawingKit } from "../../src/drawing/kit.ts";
import { type Drawings, drawnOnce } from "../../src/drawing/pictures.ts";
import type { PictureReference } from "../../src/model/pictures.ts";

it("a picture is drawn once for a room, however often it is asked for, and anew for another room or another picture", () => {
  const asked: string[] = [];
  const draw: Drawings = Object.assign(
    (...[reference, { widthMm }]: Parameters<Drawings>) => {
      asked.push(`${JSON.stringify(reference)} ${widthMm}`);
      return [];
    },
    { from: (reference: PictureReference) => reference },
  );
  const kit = {} as DrawingKit;
  const room = { widthMm: 60, textMm: 3 };
  const bream = { picture: "fish", fish: "bream" } as unknown as PictureReference;
  const tench = { picture: "fish", fish: "tench" } as unknown as PictureReference;
  const once = drawnOnce(draw);
  const first = once(bream, room, kit);
  expect(once({ ...bream }, { ...room }, kit)).toBe(first);
  once(bream, { ...room, widthMm: 80 }, kit);
  once(tench, room, kit);
  expect(asked).toEqual([
    `${JSON.stringify(bream)} 60`,
    `${JSON.stringify(bream)} 80`,
    `${JSON.stringify(tench)} 60`,
  ]);
  expect(once.from(bream)).toBe(bream);
});
