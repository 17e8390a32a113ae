import type { Table } from "mdast";
import { toString as textOf } from "mdast-util-to-string";
import { expect, it } from "vitest";
import { withId } from "../../src/core/lists.ts";
import { diaryOf } from "../../src/words/swim-diary.ts";
import { shippedGuide } from "../support/shipped-guide.ts";

const { library, kit } = shippedGuide;
const told = (id: string) =>
  diaryOf(
    withId(library.swims, id),
    library.notes.filter(({ swim }) => swim === id),
    kit,
  );
const tableIn = (nodes: ReturnType<typeof told>) =>
  nodes.find((node): node is Table => node.type === "table")!;
const cells = ({ children }: Table) => children.map((row) => row.children.map((cell) => textOf(cell)));

it("says which rig did what, counted by hand over three days, the one with the most first", () => {
  const table = cells(tableIn(told("makebelieve-pool-willow")));
  expect(table).toEqual([
    ["Rig", "Days", "Caught in all"],
    // 14 roach and 3 perch in May, 11 rudd in July; 6 roach and a tench in May, 19 roach and 2 perch in October: 28 each.
    ["First session rig", "2", "14 roach, 3 perch, 11 rudd"],
    ["Straight waggler, strung out", "2", "25 roach, 1 tench, 2 perch"],
    ["Lift rig", "1", "2 tench, 1 crucian carp"],
  ]);
});

it("tells each day with the level against the first soundings, the pace, the depths, and what worked where", () => {
  const days = told("makebelieve-river-glide").flatMap((node) => (node.type === "list" ? node.children : []));
  expect(days.map((day) => textOf(day).replaceAll("\u00a0", " "))).toEqual([
    "15 August 2026. The water stood 12 cm (5 in) lower than when it was sounded. Pace 10 m in 48 s. Depths: Inside line 0.88 m, Crease 1.08 m. Stick float, shirt button (Crease): 9 dace, 5 roach. Held back at the end of each run.",
    "24 October 2026. The water stood 15 cm (6 in) higher than when it was sounded. Pace 10 m in 31 s. Depths: Inside line 1.15 m, Crease 1.34 m. Avon, bulk and droppers (Crease): 2 chub. Run through a little over depth, as the pace was up.",
  ]);
});

it("shows depths where some were found, a pace where one was taken, and nothing of a swim without notes", () => {
  const pictures = (id: string) =>
    told(id).flatMap((node) =>
      node.type === "picture" && "of" in node.reference ? [node.reference.of] : [],
    );
  expect(pictures("makebelieve-pool-willow")).toEqual(["depth"]);
  expect(pictures("makebelieve-river-glide")).toEqual(["depth", "pace"]);
  expect(told("makebelieve-canal-wide")).toEqual([]);
});

it("tells each depth that was found on its day, where the picture says the outermost alone", () => {
  const days = told("makebelieve-pool-willow").flatMap((node) => (node.type === "list" ? node.children : []));
  const said = days.map((day) => textOf(day).replaceAll("\u00a0", " "));
  expect(said[0]).toContain("Depths: On the shelf 1 m, Foot of the ledge 1.88 m, Open water 2 m.");
  expect(said[1]).toContain("1.76 m, Open water 1.86 m.");
});
