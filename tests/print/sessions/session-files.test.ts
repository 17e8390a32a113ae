import { beforeAll, describe, expect, test } from "vitest";
import { drawPictures } from "../../../src/drawing/pictures.ts";
import type { SolvedSession } from "../../../src/model/solved-session.ts";
import { layOutPlans } from "../../../src/print/plans/plan-files.ts";
import { layOutSessions, sessionFiles, sessionProblems } from "../../../src/print/sessions/session-files.ts";
import { shippedGuide } from "../../support/shipped-guide.ts";
import { archiveBreaks } from "../archive-rules.ts";
import { uaBreaks } from "../pdf-ua-rules.ts";
import { rawPdf } from "../raw-pdf.ts";
import { type ReadPage, readPdf } from "../read-pdf.ts";
import { shippedPress } from "../shipped-press.ts";

const { library, source, live, sessions } = shippedGuide;
const press = shippedPress();
const drawings = drawPictures(source);
const markings = new Map(library.floats.map(({ float, marking }) => [float.id, marking]));
const plans = layOutPlans(
  { plans: library.plans, drawings, liveBody: ({ body }) => live.get(body) ?? body },
  press,
);
const laidOf = (some: readonly SolvedSession[]) =>
  layOutSessions({ sessions: some, drawings, plans, markings }, press);

async function packsOf(some: readonly SolvedSession[]): Promise<Map<string, Uint8Array>> {
  const files = new Map<string, Uint8Array>();
  for await (const { path, content } of sessionFiles(laidOf(some), press))
    files.set(path, content as Uint8Array);
  return files;
}

const plain = (words: string) => words.replace(/\s+/g, " ");
const wordsOn = ({ tree }: ReadPage) => plain(tree?.words ?? "");

let packs: Map<string, Uint8Array>;
beforeAll(async () => {
  packs = await packsOf(sessions);
}, 120_000);

async function pagesOf(id: string): Promise<readonly ReadPage[]> {
  return (await readPdf(packs.get(`sessions/${id}.pdf`)!)).pages;
}

/** The sides of a pack by what they begin with. */
const titles = [
  "Run sheet",
  "Ready before anybody comes",
  "Emergency sheet",
  "When the weather ends it",
  "Risk sheet",
  "Kit list",
  "Bait and feed",
  "Register",
  "Catch sheet",
];

describe("a session's pack", () => {
  test("is there for each demo session, and all of it fits", () => {
    expect([...packs.keys()].sort()).toEqual(
      ["canal-evening", "river-morning", "willow-saturday"].map((id) => `sessions/${id}.pdf`),
    );
    expect(laidOf(sessions).flatMap(sessionProblems)).toEqual([]);
  });

  test("has each sheet on paper of its own, so that it can be handed out, and the weather on the back of the emergencies", async () => {
    for (const { session } of sessions) {
      const pages = await pagesOf(session.id);
      const at = titles.map((title) => pages.findIndex((page) => wordsOn(page).startsWith(title)));
      expect(at).toEqual([...at].sort((a, b) => a - b));
      const backs = [
        titles.indexOf("Ready before anybody comes"),
        titles.indexOf("When the weather ends it"),
      ];
      for (const back of backs) expect(at[back]).toBe(at[back - 1]! + 1);
      for (const [i, page] of at.entries()) if (!backs.includes(i)) expect(page % 2, titles[i]).toBe(0);
      expect(pages.length % 2).toBe(0);
    }
  });

  test("has the way in of its own water for help, and the club's number; never the way to another water", async () => {
    for (const { session, spots } of sessions) {
      const page = (await pagesOf(session.id)).find((one) => wordsOn(one).startsWith("Emergency sheet"))!;
      for (const { swim } of spots) {
        expect(wordsOn(page)).toContain(plain(swim.access.road));
        expect(wordsOn(page)).toContain(swim.access.gridReference!);
      }
      expect(wordsOn(page)).toContain(library.guide.clubNumber!);
      expect(wordsOn(page)).not.toContain(library.guide.accessPoint!);
    }
  });

  test("names each hazard of its swims on the run sheet, the risk sheet and the sheets of cards", async () => {
    const { session, spots } = sessions.find(({ session: { id } }) => id === "canal-evening")!;
    const pages = await pagesOf(session.id);
    const risk = pages
      .filter((page) => wordsOn(page).includes("What can hurt"))
      .map(wordsOn)
      .join(" ");
    const cards = pages.filter((page) => wordsOn(page).includes("Cut along the marks")).map(wordsOn);
    expect(cards.length).toBeGreaterThan(0);
    for (const { where, measure } of spots.flatMap(({ swim }) => swim.hazards)) {
      for (const words of [wordsOn(pages[0]!), risk, ...cards]) {
        expect(words).toContain(plain(where));
        expect(words).toContain(plain(measure));
      }
    }
  });

  test("has a card of each rig for each learner of a spot, and of each rig for lessons, for the depth there", async () => {
    for (const { session, spots, lessonRigs } of sessions) {
      const all = (await pagesOf(session.id)).map(wordsOn).join(" ");
      for (const spot of spots) {
        const { rigs, learners, depthMm } = spot;
        const taught = lessonRigs.filter((rig) => rig.spot === spot);
        const made = new Map(rigs.map(({ solved }) => [solved.rig.id, { solved, copies: learners }]));
        for (const { solved, count } of taught)
          made.set(solved.rig.id, { solved, copies: count + (made.get(solved.rig.id)?.copies ?? 0) });
        for (const { solved, copies } of made.values()) {
          const told = press.kit.figures.shortDepth(depthMm).replaceAll("\u00a0", " ");
          const cards = all.split(`${solved.rig.title} Depth ${told}`).length - 1;
          expect(cards, `${session.id}, ${solved.rig.title}`).toBe(copies);
        }
      }
    }
  });

  test("fills sheets with the cards of all spots of a swim, and names these on each", async () => {
    // Cards of 85.6 × 54 mm on A4 with a note at its foot: two beside each other, four down.
    const onASheet = 8;
    for (const { session, spots, lessonRigs } of sessions) {
      const cards = spots.map(({ rigs, learners }) => rigs.length * learners);
      const taught = lessonRigs.map(({ count }) => count);
      const most = [...cards, ...taught].reduce((sum, count) => sum + count, 0);
      const swims = new Set(spots.map(({ swim }) => swim.id)).size;
      const sheets = (await pagesOf(session.id)).filter((page) =>
        wordsOn(page).includes("Cut along the marks"),
      );
      expect(sheets.length, session.id).toBeLessThanOrEqual(Math.ceil(most / onASheet) + swims - 1);
      const all = sheets.map(wordsOn).join(" ");
      for (const { spot } of spots) expect(all).toContain(plain(spot.title));
    }
  });

  test("has the lines to sign a risk sheet on its front, however long it is", async () => {
    for (const { session } of sessions) {
      const pages = await pagesOf(session.id);
      const front = pages.findIndex((page) => wordsOn(page).startsWith("Risk sheet"));
      for (const line of ["Walked and completed by", "Read by the other grown-ups"])
        expect(wordsOn(pages[front]!)).toContain(line);
    }
  });

  test("leaves names, consent, ratios and safeguarding to the club, and has lines to write them on", async () => {
    const pages = await pagesOf("willow-saturday");
    const register = wordsOn(pages.find((page) => wordsOn(page).startsWith("Register"))!);
    expect(register).toContain(
      "is for your club and the law of your place to say. This pack does not say it.",
    );
    const ours = register.slice(register.indexOf("As our club has it"));
    for (const line of [
      "Consent to photos",
      "Safeguarding officer",
      "Grown-ups for so many children",
      "checked",
    ])
      expect(ours).toContain(line);
    const rows = pages
      .find((page) => wordsOn(page).startsWith("Register"))!
      .tree!.children.flatMap(function tables(node): number[] {
        return node.role === "Table" ? [node.children.length] : node.children.flatMap(tables);
      });
    // A head, three learners and two spare; a head, two grown-ups and one spare; a head and the club's five.
    expect(rows).toEqual([6, 4, 6]);
  });

  test("says what to make up the evening before as the cards have it, and which sheet is in whose hand", async () => {
    const pages = (await pagesOf("canal-evening")).map(wordsOn);
    const ready = pages
      .find((page) => page.startsWith("Ready before anybody comes"))!
      .replaceAll("\u00a0", " ");
    const { spots, lessonRigs } = sessions.find(({ session: { id } }) => id === "canal-evening")!;
    for (const { solved } of [...spots.flatMap(({ rigs }) => rigs), ...lessonRigs]) {
      const set = press.kit.figures.shortGap(solved.depths[0]!.floatToHookMm).replaceAll("\u00a0", " ");
      expect(ready).toMatch(new RegExp(`${solved.rig.title} [24] [^0-9]*1\\.2 m \\([^)]*\\) ${set}`));
      expect(pages.some((page) => page.replaceAll("\u00a0", " ").includes(`Float to hook ${set}`))).toBe(
        true,
      );
    }
    // Half an hour before half past five.
    expect(ready).toContain("On the bank from 17:00");
    expect(pages[0]).toContain("Meet: Tanner's Lane, where it crosses the canal.");
    expect(pages[0]).toContain("its plan");
  });

  test("keeps the run sheet to one side, so that what is to be made ready stands on its back", async () => {
    for (const { session } of sessions) {
      const sides = (await pagesOf(session.id)).slice(0, 3).map(wordsOn);
      for (const [at, title] of ["Run sheet", "Ready before anybody comes", "Emergency sheet"].entries())
        expect(sides[at]).toMatch(new RegExp(`^${title}`));
    }
  });

  test("tells in bold where it is too long, by how much, and which lessons to leave out", async () => {
    const [solved] = sessions.filter(({ session: { id } }) => id === "willow-saturday");
    const long = {
      ...solved!,
      sheet: { ...solved!.sheet, overMin: 20, leaveOut: ["adjust-through-the-day"] },
    };
    const [pack] = (await packsOf([long])).values();
    const [first] = (await readPdf(pack!)).pages;
    expect(wordsOn(first!)).toContain(
      "This is 20 min longer than the hours that there are. Leave out: Adjust through the day.",
    );
  });

  test("keeps to the rules of tagged and of archived files", async () => {
    for (const [path, content] of packs) {
      expect(uaBreaks(await rawPdf(content)), path).toEqual([]);
      expect(await archiveBreaks(content), path).toEqual([]);
    }
  });
});
