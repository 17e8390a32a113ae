import { parse } from "csv-parse/sync";
import { expect, test } from "vitest";
import { worded } from "../../src/checks/messages.ts";
import { once } from "../../src/model/kept.ts";
import { builtOf } from "../support/edited-guides.ts";
import { sampleSession } from "../support/sample-session.ts";
import { contentWith, solveWith } from "../support/smallest-content.ts";

const built = (changes: Readonly<Record<string, string>>) => builtOf(contentWith(changes));

/** The guide with a session that nobody is shown, and with one that has a page. */
const hidden = once(() => built(sampleSession()));
const withPage = once(() => built(sampleSession("hours: 3 h", "hours: 3 h\npage: true")));

const onSite = (files: ReadonlyMap<string, string>) =>
  [...files.keys()].filter((path) => /^site\/.*(?:sessions\/|day)/.test(path));

test("a session is printed, and no reader of the site sees where children meet unless its file says so", async () => {
  const files = await hidden();
  expect(files.has("sessions/day.pdf")).toBe(true);
  expect(onSite(files)).toEqual([]);
  const shown = await withPage();
  expect(onSite(shown)).toEqual(
    expect.arrayContaining(["site/sessions/index.html", "site/sessions/day.html", "site/sessions/day.pdf"]),
  );
  const tables = [...shown.get("site/sessions/day.html")!.matchAll(/aria-label="(Table \d+)"/g)].map(
    ([, name]) => name,
  );
  expect(tables.length).toBeGreaterThan(1);
  expect(new Set(tables).size).toBe(tables.length);
  // A search engine that is led there by a link passes it by, and the map of the site does not name it.
  for (const path of ["site/sessions/index.html", "site/sessions/day.html"])
    expect(shown.get(path)).toContain('<meta name="robots" content="noindex">');
  expect(shown.get("site/index.html")).not.toContain("noindex");
  const [kept = ""] = /guideFiles=\{.*?\}/.exec(shown.get("site/sw.js") ?? "") ?? [];
  expect(kept).not.toContain("sessions/");
  expect(shown.get("site/search-index.js") ?? "").not.toContain("sessions/");
}, 120_000);

test("the map of a site names no session", async () => {
  const guide = contentWith({})["guide.yaml"]!;
  const shown = sampleSession("hours: 3 h", "hours: 3 h\npage: true");
  const files = await built({
    ...shown,
    "guide.yaml": `${guide}site-address: https://club.invalid/guide/\n`,
  });
  const map = files.get("site/sitemap.xml")!;
  expect(map).toContain("swims/pond.html");
  expect(map).not.toContain("sessions/");
}, 120_000);

test("what a shop is asked for stands in a table for its programs", async () => {
  const files = await hidden();
  const rows: Record<string, string>[] = parse(files.get("data/order-session-day.csv")!, { columns: true });
  // Two learners with a quarter more: 2.5 floats, so 3; hooks 2 · 3 · 1.25 = 7.5, so 8, in packets of ten.
  expect(rows.find(({ kind }) => kind === "float")).toMatchObject({
    needed: "3",
    buy: "3",
    packets: "",
    unit: "piece",
  });
  expect(rows.find(({ kind }) => kind === "hook")).toMatchObject({
    needed: "8",
    buy: "10",
    packets: "1",
    perPacket: "10",
  });
  expect(rows.find(({ kind }) => kind === "hook bait")).toMatchObject({ needed: "100", unit: "ml" });
}, 120_000);

test("who fishes with a whip and a rod in turn needs both, and nobody else", async () => {
  const plain = contentWith({})["rigs/plain.md"]!;
  const whip = plain
    .replace("title: Plain rig", "title: Whip rig")
    .replace("water: still", "water: still\nwhip: 4 m");
  const both = sampleSession("rigs: [plain]", "rigs: [plain, whip]");
  const told = async (rods: string) => {
    const session = { "sessions/day.yaml": both["sessions/day.yaml"]!.replace("rods: 2", rods) };
    const { messages } = await solveWith({ ...both, ...session, "rigs/whip.md": whip });
    return messages
      .filter(({ code }) => code === "session-too-few-rods")
      .map((one) => [worded(one).reason, worded(one).hint]);
  };
  expect(await told("rods: 3")).toEqual([
    [
      "2 learners who fish with whip and rod in turn need 4, and there are 3",
      "bring 1 more and say so in `rods`, or take fewer learners",
    ],
  ]);
  expect(await told("rods: 4")).toEqual([]);
});

test("no name can be written where ages stand, and no page has what is filled in by hand", async () => {
  for (const [ages, isRight] of [
    ["9 to 13", true],
    ["12", true],
    ["18+", true],
    ["Rowan, 12", false],
    ["12 Rowan", false],
    ["01632 960 417", false],
  ] as const) {
    const { messages } = await solveWith(sampleSession("{ count: 2 }", `{ count: 2, ages: "${ages}" }`));
    expect([ages, messages.some((one) => worded(one).reason.includes("these are no ages"))]).toEqual([
      ages,
      !isRight,
    ]);
  }
  const shown = await withPage();
  const page = shown.get("site/sessions/day.html")!;
  for (const heading of ["Name of the learner", "Fetched by", "Hook bait"])
    expect(page).not.toContain(heading);
}, 120_000);

test("of a session that cannot be held nothing is made", async () => {
  const { value, messages } = await solveWith(sampleSession("rods: 2", "rods: 1"));
  expect(value).toBeUndefined();
  expect(messages.filter(({ severity }) => severity === "error")).toHaveLength(1);
});
