import { expect, test } from "vitest";
import type { Shelf } from "../../../src/model/shelf.ts";
import { costOf, needOf, type StockLine, type Thing } from "../../../src/model/stock.ts";
import { rigNeeds } from "../../../src/solve/stock/rig-needs.ts";
import { solveShelf } from "../../../src/solve/stock/solve-shelf.ts";
import { sampleWaggler } from "../../support/sample-rig.ts";

const { rig, depths } = sampleWaggler;

const stocked = (thing: Thing, count: number, perPacket: number, priceCents?: number): StockLine => ({
  ...needOf(thing, count),
  perPacket,
  ...(priceCents !== undefined && { priceCents }),
});

const float: Thing = { kind: "float", id: rig.float.id, title: rig.float.title };
const hook: Thing = { kind: "hook", size: rig.hook.size };
const hookLine: Thing = { kind: "hook length", strengthG: rig.hookLine.strengthG };
const mainLine: Thing = { kind: "line", strengthG: rig.mainLine.strengthG };
const shotSizes = [...new Set(depths.flatMap((depth) => [...depth.lineShot, ...depth.lockShot]))].map(
  ({ size, metal }): Thing => ({ kind: "shot", size, metal }),
);

const shelf = (stock: readonly StockLine[], packs: Shelf["packs"]): Shelf => ({
  id: "shop",
  title: "Shop",
  path: "shelves/shop.yaml",
  placeOf: () => ({ file: "shelves/shop.yaml" }),
  stock,
  pack: { hookLengths: 2, hookLineM: 0.6, mainLineM: 6 },
  packs,
});

function solved(of: Shelf) {
  const found = solveShelf(of, [sampleWaggler]);
  if (!found.ok) throw new Error("no sums");
  return found.value;
}

const plenty = shotSizes.map((thing) => stocked(thing, 1000, 50));

// By hand: five wanted, one ready, so four to make. 7 hooks are three packs of 2; 4 packs need 8 hooks, one packet of
// ten at 1.30; 4 · 1.2 m are 4.8 m of hook line, in whole metres 5, of which 3 are there: one spool of 50 m at 3.20.
test("a shelf says how many packs it gives, what it is short of, and what to order for how much", () => {
  const stock = [
    stocked(float, 9, 1),
    stocked(hook, 7, 10, 130),
    stocked(hookLine, 3, 50, 320),
    stocked(mainLine, 100, 100),
    ...plenty,
  ];
  const { packs, reorder } = solved(shelf(stock, [{ rigId: rig.id, wanted: 5, ready: 1 }]));
  expect(packs).toMatchObject([
    { toMake: 4, ready: 1, inTurn: 2, alone: 2, shortOf: [{ kind: "hook length" }] },
  ]);
  const ordered = reorder.filter(({ packets }) => packets > 0);
  expect(ordered.map(({ kind, count, inStock, packets }) => [kind, count, inStock, packets])).toEqual([
    ["hook", 8, 7, 1],
    ["hook length", 5, 3, 1],
  ]);
  expect(costOf(reorder)).toEqual({ cents: 450, withoutPrice: 0 });
});

test("a shelf that has all orders nothing, and tells of no cost", () => {
  const stock = [float, hook, hookLine, mainLine].map((thing) => stocked(thing, 500, 1));
  const { packs, reorder } = solved(shelf([...stock, ...plenty], [{ rigId: rig.id, wanted: 3, ready: 0 }]));
  expect(packs).toMatchObject([{ toMake: 3, inTurn: 3 }]);
  expect(reorder.every(({ packets }) => packets === 0)).toBe(true);
  expect(costOf(reorder)).toBeUndefined();
});

test("what is bought without a price is counted, not guessed", () => {
  const { reorder } = solved(
    shelf([stocked(hook, 0, 10, 130), ...plenty], [{ rigId: rig.id, wanted: 1, ready: 0 }]),
  );
  expect(costOf(reorder)).toEqual({ cents: 130, withoutPrice: 3 });
});

test("rigs of which no packs are wanted are told where the shelf gives one", () => {
  const stock = [float, hook, hookLine, mainLine].map((thing) => stocked(thing, 12, 1));
  const { others } = solved(shelf([...stock, ...plenty], []));
  expect(others).toMatchObject([{ toMake: 0, alone: 2 }]);
  expect(solved(shelf([], [])).others).toEqual([]);
});

test("a rig needs one float, and its shot, hook lengths and line", () => {
  const needs = rigNeeds(sampleWaggler, { hookLengths: 2, hookLineM: 0.6, mainLineM: 6 });
  const countOf = (kind: Thing["kind"]) => needs.filter((one) => one.kind === kind).map(({ count }) => count);
  expect(countOf("float")).toEqual([1]);
  expect(countOf("hook")).toEqual([2]);
});
