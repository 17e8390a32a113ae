import { expect, test } from "vitest";
import { packFilm } from "../../../src/drawing/film/pack-film.ts";
import { poseBetween, readPoses } from "../../../src/drawing/film/poses.ts";
import { circle, point, polyline, text, thin } from "../../../src/drawing/items.ts";
import type { Item } from "../../../src/drawing/model.ts";

const shot = (xMm: number, yMm: number): Item => ({
  kind: "group",
  xMm,
  yMm,
  items: [circle(point(0, 0), 1, { fill: "ink" })],
});
const line = (...places: [number, number][]) =>
  polyline(
    places.map(([x, y]) => point(x, y)),
    thin,
  );
const word = text(point(3, 4), "down", 3);

test("a part that moves is sent once, with its poses at every moment", () => {
  const moments = [
    { caption: "", moving: [line([0, 0], [1, 2.04]), shot(5, 6), shot(7, 8)] },
    { caption: "", moving: [line([0, 1], [1, -3]), shot(5.25, 6), word] },
  ];
  const { parts, poses } = packFilm(moments);
  expect(parts.map(({ kind }) => kind)).toEqual(["path", "group", "text"]);
  expect(poses).toEqual(["0M0 0L1 2;1@5 6;1@7 8", "0M0 1L1 -3;1@5.3 6;2"]);
});

test("what is read is what was packed", () => {
  expect(readPoses("0M0 0L1 -2.5;12@5 6.1;2")).toEqual([
    { part: 0, kind: "path", letters: ["M", " ", "L", " ", ""], shape: "M, ,L, ,", numbers: [0, 0, 1, -2.5] },
    { part: 12, kind: "group", letters: ["", " ", ""], shape: ", ,", numbers: [5, 6.1] },
    { part: 2, kind: "mark", letters: [], shape: "", numbers: [] },
  ]);
  expect(readPoses("")).toEqual([]);
});

test("between two moments a part is between its poses, and another part stays where it was", () => {
  const [from, to, other] = readPoses("0M0 0L10 20;0M1 0L20 -20;1@5 6");
  expect(poseBetween(from!, to, 0.5)).toBe("M0.5 0L15 0");
  expect(poseBetween(from!, to, 0)).toBe("M0 0L10 20");
  expect(poseBetween(from!, other, 0.5)).toBe("M0 0L10 20");
  expect(poseBetween(other!, undefined, 0.5)).toBe("5 6");
  const [longer] = readPoses("0M1 0L20 -20L3 3");
  expect(poseBetween(from!, longer, 0.5)).toBe("M0 0L10 20");
});
