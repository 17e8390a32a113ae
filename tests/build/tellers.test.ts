import { beforeAll, describe, expect, test } from "vitest";
import { rigData } from "../../src/build/data.ts";
import { allTexts } from "../../src/checks/texts.ts";
import { sheetText } from "../../src/cli/sheet-text.ts";
import { entry } from "../../src/core/lists.ts";
import type { SolvedRig } from "../../src/model/solved.ts";
import { cardFormatsOn } from "../../src/print/cards/card-formats.ts";
import type { SiteInput } from "../../src/site/input.ts";
import { shotTable } from "../../src/words/tables.ts";
import { realSite, realSiteFiles } from "../site/real-site.ts";
import { cardStatements } from "../support/tellers/card-statements.ts";
import { drawingStatements, rooms } from "../support/tellers/drawing-statements.ts";
import { printedHandouts } from "../support/tellers/printed-handouts.ts";
import { readLesson } from "../support/tellers/read-lesson.ts";
import { readPage } from "../support/tellers/read-page.ts";
import { readSheet, readShotTable } from "../support/tellers/read-tables.ts";
import { agrees, type Statement } from "../support/tellers/statement.ts";

let site: SiteInput;
let rigs: readonly SolvedRig[];
let held = 0;

/** What an output says of a rig that its data do not. */
function wrong(solved: SolvedRig, statements: readonly Statement[]): string[] {
  const rig = rigData(solved);
  held += statements.length;
  return statements.filter((one) => !agrees(rig, one)).map((one) => `${rig.id}: ${JSON.stringify(one)}`);
}

beforeAll(async () => {
  site = await realSite();
  rigs = [...site.solved.values()];
}, 120_000);

describe("of every rig, what its data say is told", () => {
  test("by the labels, captions and marks of its drawings, and in words to those who do not see them", () => {
    const told = rigs.flatMap((solved) =>
      solved.depths.flatMap((depth, at) =>
        // The first depth in every room, the others in one of them; all of them in a slow test.
        (at === 0 ? rooms : [entry(rooms, at % rooms.length)]).flatMap((room) =>
          wrong(solved, drawingStatements(solved, depth, room, site.kit)),
        ),
      ),
    );
    expect(told).toEqual([]);
    expect(held).toBeGreaterThan(800);
  });

  test("by its page", async () => {
    const files = await realSiteFiles();
    const before = held;
    const told = rigs.flatMap((solved) =>
      wrong(solved, readPage(String(files.get(`site/rigs/${solved.rig.id}.html`)))),
    );
    expect(told).toEqual([]);
    expect(held - before).toBeGreaterThan(700);
  }, 60_000);

  test("by its sheet, and by the table of its shot in lessons and handouts", () => {
    const before = held;
    const told = rigs.flatMap((solved) =>
      wrong(solved, [
        ...readSheet(sheetText(solved, { ...site.kit, scales: site.library.scales })),
        ...readShotTable(shotTable(solved, site.kit), "table"),
      ]),
    );
    expect(told).toEqual([]);
    expect(held - before).toBeGreaterThan(400);
  });

  test("by the live figures and tables of lessons, pages and notes", () => {
    const before = held;
    const told = allTexts(site.library).flatMap((written) =>
      readLesson(written.body, site.liveBody(written), written.path).flatMap(([id, statement]) =>
        wrong(site.solved.get(id)!, [statement]),
      ),
    );
    expect(told).toEqual([]);
    expect(held - before).toBeGreaterThan(25);
  });

  test("by the handout of the first session; all of them are read in a slow test", async () => {
    const before = held;
    const told: string[] = [];
    for await (const { path, told: statements } of printedHandouts(
      site,
      ({ id }) => id === "your-first-session",
    )) {
      expect(statements.length, path).toBeGreaterThan(10);
      told.push(...statements.flatMap(([id, one]) => wrong(site.solved.get(id)!, [one])));
    }
    expect(told).toEqual([]);
    expect(held - before).toBeGreaterThan(50);
  }, 60_000);

  test("by its printed card, of one format or the other; all of them are read in a slow test", async () => {
    const before = held;
    const told: string[] = [];
    for (const [at, solved] of rigs.entries()) {
      const format = cardFormatsOn.A4[at % cardFormatsOn.A4.length]!;
      told.push(...wrong(solved, await cardStatements(solved, format, site)));
    }
    expect(told).toEqual([]);
    expect(held - before).toBeGreaterThan(250);
  }, 120_000);
});
