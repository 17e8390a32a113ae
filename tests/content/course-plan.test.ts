import { toString as textOf } from "mdast-util-to-string";
import { describe, expect, it, test } from "vitest";
import { allNeeds, evenings, isAtWater } from "../../src/core/course/course.ts";
import { shippedGuide } from "../support/shipped-guide.ts";

const { library, live } = shippedGuide;
const { lessons, plans } = library;

describe("the coaches' plans of the shipped course", () => {
  it("are there for every lesson, in its order", () => {
    expect(plans.map(({ id }) => id)).toEqual(lessons.map(({ id }) => id));
  });

  it("end every drill with what shows that it went in, and answer what they ask", () => {
    for (const { id, body } of plans) {
      const sections = textOf(body);
      const points = [...bulletsOf(body, "Drills")];
      expect(points.length, id).toBeGreaterThan(0);
      for (const point of points) {
        expect(point, id).toMatch(/Done\s(?:when|at|under|within|in)/);
      }
      expect(bulletsOf(body, "Questions").length, id).toBeGreaterThanOrEqual(3);
      expect(bulletsOf(body, "Faults and cures"), id).toHaveLength(3);
      expect(sections, id).not.toContain("undefined");
    }
  });
});

function bulletsOf(body: (typeof plans)[number]["body"], section: string): string[] {
  const from = body.children.findIndex((node) => node.type === "heading" && textOf(node) === section);
  const list = body.children.slice(from + 1).find((node) => node.type === "list");
  return list?.type === "list" ? list.children.map((item) => textOf(item)) : [];
}

test("the page for coaches has every lesson once, each evening of two hours with twenty minutes to spare", () => {
  const page = live.get(library.pages.find(({ id }) => id === "coaches")!.body)!;
  const tables = page.children.flatMap((node) => (node.type === "table" ? [node] : [])).slice(0, 2);
  const rows = tables.flatMap(({ children }) =>
    children.slice(1).map((row) => row.children.map((cell) => textOf(cell))),
  );
  const held = rows.flatMap(([, names]) => names!.split(/ \(\d+ min\)(?:, |$)/).filter(Boolean));
  expect([...held].sort()).toEqual(lessons.map(({ title }) => title).sort());
  expect(rows.map(([number]) => Number(number))).toEqual(rows.map((_, at) => at + 1));
  for (const [, names, , time] of rows) {
    const minutes = [...names!.matchAll(/\((\d+) min\)/g)].map(([, count]) => Number(count));
    expect(`${minutes.reduce((sum, one) => sum + one, 0)} min`).toBe(time);
    if (minutes.length > 1) expect(Number.parseInt(time!, 10)).toBeLessThanOrEqual(100);
  }
});

test("what there is to know of safety is taught before the first lesson at the water", () => {
  const order = evenings(plans, 100).flatMap((evening) => evening.lessons.map(({ id }) => id));
  const safe = plans.filter(({ teachesSafety }) => teachesSafety).map(({ id }) => order.indexOf(id));
  const wet = plans.filter(({ place }) => isAtWater(place)).map(({ id }) => order.indexOf(id));
  expect(wet.length).toBeGreaterThan(5);
  expect(Math.min(...safe)).toBeLessThan(Math.min(...wet));
  const first = plans.find(({ id }) => id === "your-first-session")!;
  for (const need of ["look-after", "find-the-depth", "land-unhook-return"]) {
    expect([...allNeeds(first, plans)]).toContain(need);
  }
});
