import { expect, test } from "vitest";
import { timesOf } from "../../../src/solve/session/lesson-shares.ts";
import { inStock, usualPacket } from "../../../src/solve/stock/stock-lines.ts";

const use = {
  spareShare: 0.1,
  hookLengths: 3,
  hookLineMm: 500,
  mainLineMm: 50_000,
  hooksInPacket: 10,
  hookLineOnSpoolMm: 25_000,
  mainLineOnSpoolMm: 150_000,
};

test("hooks are sold by the packet, line by the spool in metres, floats and shot singly", () => {
  const packets = (["hook", "hook length", "line", "float", "shot"] as const).map((kind) =>
    usualPacket({ kind, name: "", count: 1 }, use),
  );
  expect(packets).toEqual([10, 25, 150, 1, 1]);
});

test("what nobody says how it is sold is sold singly, and there is none of it", () => {
  const { perPacket, stockOf } = inStock([
    { kind: "hook", name: "18", count: 7, perPacket: 10, thing: { kind: "hook", size: 18 } },
  ]);
  expect([perPacket, stockOf].map((of) => of({ kind: "hook", name: "18", count: 1 }))).toEqual([10, 7]);
  expect([perPacket, stockOf].map((of) => of({ kind: "hook", name: "16", count: 1 }))).toEqual([1, 0]);
});

test("of five learners each has their own, two share, and the odd one has one alone", () => {
  expect(timesOf(5)).toEqual({ each: 5, two: 3, group: 1 });
});
