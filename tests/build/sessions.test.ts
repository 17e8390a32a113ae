import { parse } from "csv-parse/sync";
import { expect, test } from "vitest";
import { builtOf } from "../support/edited-guides.ts";
import { sampleSession } from "../support/sample-session.ts";
import { contentWith, solveWith } from "../support/smallest-content.ts";

const built = (changes: Readonly<Record<string, string>>) => builtOf(contentWith(changes));

const onSite = (files: ReadonlyMap<string, string>) =>
  [...files.keys()].filter((path) => /^site\/.*(?:sessions\/|day)/.test(path));

test("a session is printed, and no reader of the site sees where children meet unless its file says so", async () => {
  const files = await built(sampleSession());
  expect(files.has("sessions/day.pdf")).toBe(true);
  expect(onSite(files)).toEqual([]);
  const shown = await built(sampleSession("hours: 3 h", "hours: 3 h\npage: true"));
  expect(onSite(shown)).toEqual(
    expect.arrayContaining(["site/sessions/index.html", "site/sessions/day.html", "site/sessions/day.pdf"]),
  );
  const tables = [...shown.get("site/sessions/day.html")!.matchAll(/aria-label="(Table \d+)"/g)].map(
    ([, name]) => name,
  );
  expect(tables.length).toBeGreaterThan(1);
  expect(new Set(tables).size).toBe(tables.length);
  const [kept = ""] = /guideFiles=\{.*?\}/.exec(shown.get("site/sw.js") ?? "") ?? [];
  expect(kept).not.toContain("sessions/");
  expect(shown.get("site/search-index.js") ?? "").not.toContain("sessions/");
}, 120_000);

test("what a shop is asked for stands in a table for its programs", async () => {
  const files = await built(sampleSession());
  const rows: Record<string, string>[] = parse(files.get("data/order-session-day.csv")!, { columns: true });
  // Two learners with a quarter more: 2.5 floats, so 3; hooks 2 · 3 · 1.25 = 7.5, so 8, in packets of ten.
  expect(rows.find(({ kind }) => kind === "float")).toMatchObject({
    needed: "3",
    packets: "3",
    unit: "piece",
  });
  expect(rows.find(({ kind }) => kind === "hook")).toMatchObject({
    needed: "8",
    packets: "1",
    perPacket: "10",
  });
  expect(rows.find(({ kind }) => kind === "hook bait")).toMatchObject({ needed: "100", unit: "ml" });
}, 120_000);

test("of a session that cannot be held nothing is made", async () => {
  const { value, messages } = await solveWith(sampleSession("rods: 2", "rods: 1"));
  expect(value).toBeUndefined();
  expect(messages.filter(({ severity }) => severity === "error")).toHaveLength(1);
});
