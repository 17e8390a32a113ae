import { parse } from "csv-parse/sync";
import { expect, test } from "vitest";
import { orderFiles } from "../../src/build/data-stock.ts";
import type { SolvedShelf } from "../../src/model/shelf.ts";
import { needOf, type Thing } from "../../src/model/stock.ts";
import { solveShelf } from "../../src/solve/stock/solve-shelf.ts";
import { buyTable } from "../../src/words/stock-text.ts";
import { drawingKit } from "../support/drawing-kit.ts";
import { sampleWaggler } from "../support/sample-rig.ts";

const { rig } = sampleWaggler;

function solved(stock: readonly (readonly [Thing, number, number?])[]): SolvedShelf {
  const found = solveShelf(
    {
      id: "hut",
      title: "Hut",
      path: "shelves/hut.yaml",
      placeOf: () => ({ file: "shelves/hut.yaml" }),
      stock: stock.map(([thing, count, perPacket]) => ({
        ...needOf(thing, count),
        ...(perPacket !== undefined && { perPacket }),
      })),
      pack: { hookLengths: 2, hookLineM: 0.6, mainLineM: 6 },
      packs: [{ rigId: rig.id, wanted: 4, ready: 0 }],
    },
    [sampleWaggler],
  );
  if (!found.ok) throw new Error("no sums");
  return found.value;
}

// By hand: 4 packs need 4 floats, 8 hooks, 4.8 and so 5 m of line for hook lengths, 24 m of main line.
test("list and table say of a thing the same: what is there, however much, and what to buy in what it is sold by", () => {
  const shelf = solved([
    [{ kind: "float", id: rig.float.id, title: rig.float.title }, 14],
    [{ kind: "hook", size: rig.hook.size }, 7, 10],
    [{ kind: "hook length", strengthG: rig.hookLine.strengthG }, 3, 50],
    [{ kind: "line", strengthG: rig.mainLine.strengthG }, 20],
  ]);
  const { rows } = buyTable(shelf.reorder, undefined, drawingKit);
  const [{ content } = { content: "" }] = orderFiles([shelf], [], drawingKit);
  const lines: Record<string, string>[] = parse(String(content), { columns: true });
  const both = lines.map(({ kind, there, buy, unit, perPacket, packets }, at) => [
    kind,
    [there, buy, unit, perPacket, packets].join(" "),
    rows[at]!.slice(2).join(", "),
  ]);
  expect(both.filter(([kind]) => kind !== "shot")).toEqual([
    ["float", "14 0 piece  ", "14, singly, –"],
    ["hook", "7 10 piece 10 1", "7, packets of 10, 1 packet"],
    ["hook length", "3 50 m 50 1", "3 m, spools of 50 m, 1 spool"],
    ["line", "20 4 m  ", "20 m, off the spool, 4 m"],
  ]);
  const shot = both.filter(([kind]) => kind === "shot");
  expect(shot.length).toBeGreaterThan(0);
  for (const [, table, list] of shot) {
    const [, buy] = /^0 (\d+) piece {2}$/.exec(table!)!;
    expect(list).toBe(`0, –, ${buy} ${buy === "1" ? "piece" : "pieces"}`);
  }
});
