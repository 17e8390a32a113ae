import { describe, expect, it } from "vitest";
import { drawPictures } from "../../../src/drawing/pictures.ts";
import type { LessonPlan } from "../../../src/model/library.ts";
import { layOutPlans, planFiles, planProblems } from "../../../src/print/plans/plan-files.ts";
import { shippedGuide } from "../../support/shipped-guide.ts";
import { readPdf } from "../read-pdf.ts";
import { shippedPress } from "../shipped-press.ts";

const { library, source, live } = shippedGuide;
const press = shippedPress();
const drawings = drawPictures(source);
const laidOf = (plans: readonly LessonPlan[]) =>
  layOutPlans({ plans, drawings, liveBody: ({ body }) => live.get(body) ?? body }, press);
const planOf = (id: string) => library.plans.find((plan) => plan.id === id)!;

async function sheetOf(plan: LessonPlan) {
  for await (const file of planFiles(laidOf([plan]), press)) return readPdf(file.content as Uint8Array);
  throw new Error("no sheet");
}

/** Two pages of A5, 148 mm by 210 mm each (ISO 216:2007), in points of 1/72 in. */
const sheetPt = [0, 0, (2 * 148 * 72) / 25.4, (210 * 72) / 25.4].map((value) => Math.round(value));

describe("a coach's plan on paper", () => {
  it("stands on one side of a sheet where it has two pages, read from left to right", async () => {
    const { pages } = await sheetOf(planOf("find-the-depth"));
    expect(pages).toHaveLength(1);
    expect(pages[0]!.box.map((value) => Math.round(value))).toEqual(sheetPt);
    const words = pages[0]!.tree!.words.replace(/\s+/g, " ");
    const order = [
      "Everybody finds the depth",
      "Time: 25 min",
      "For every two:",
      "By halves",
      "Quick and lost",
      "Safety",
    ];
    const places = order.map((part) => words.indexOf(part));
    expect(places.every((place) => place >= 0)).toBe(true);
    expect([...places].sort((a, b) => a - b)).toEqual(places);
  });

  it("folds where it has more, its first page outside on the right", async () => {
    const { pages, viewerPreferences } = await sheetOf(planOf("your-first-session"));
    expect(pages).toHaveLength(2);
    expect(viewerPreferences).toMatchObject({ Duplex: "DuplexFlipShortEdge" });
    const title = pages[0]!.pieces.find(({ text }) => text.includes("Your first session"))!;
    expect(title.x).toBeGreaterThan(sheetPt[2]! / 2);
  });

  it("is told of with its file where it has more than four pages, and no sheet is made", async () => {
    const plan = planOf("first-knots");
    const body = { ...plan.body, children: Array.from({ length: 12 }, () => plan.body.children).flat() };
    const laid = laidOf([{ ...plan, body }]);
    expect(planProblems(laid)).toMatchObject([
      { of: "first-knots", field: "plan", direction: "down", place: { file: plan.path } },
    ]);
    const files = [];
    for await (const file of planFiles(laid, press)) files.push(file);
    expect(files).toEqual([]);
  });

  it("is there for every lesson of the course, and fits", () => {
    expect(planProblems(laidOf(library.plans))).toEqual([]);
  });
});
