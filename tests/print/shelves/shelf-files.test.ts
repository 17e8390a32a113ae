import { beforeAll, describe, expect, test } from "vitest";
import { drawPictures } from "../../../src/drawing/pictures.ts";
import { labelSheets } from "../../../src/print/shelves/label-sheets.ts";
import { layOutLabel } from "../../../src/print/shelves/pack-labels.ts";
import { layOutShelves, shelfFiles, shelfProblems } from "../../../src/print/shelves/shelf-files.ts";
import { shippedGuide } from "../../support/shipped-guide.ts";
import { textsOf } from "../../support/tellers/read-drawing.ts";
import { archiveBreaks } from "../archive-rules.ts";
import { uaBreaks } from "../pdf-ua-rules.ts";
import { rawPdf } from "../raw-pdf.ts";
import { readPdf } from "../read-pdf.ts";
import { shippedPress } from "../shipped-press.ts";

const { source, shelves } = shippedGuide;
const laidOn = (paper: "A4" | "Letter") => layOutShelves(shelves, drawPictures(source), shippedPress(paper));

async function filesOn(paper: "A4" | "Letter"): Promise<Map<string, Uint8Array>> {
  const files = new Map<string, Uint8Array>();
  for await (const { path, content } of shelfFiles(laidOn(paper), shippedPress(paper)))
    files.set(path, content as Uint8Array);
  return files;
}

let files: Map<string, Uint8Array>;
beforeAll(async () => {
  files = new Map([...(await filesOn("A4")), ...(await filesOn("Letter"))]);
});

const ptPerMm = 72 / 25.4;

/**
 * Columns and rows, size of a label, from the paper's edge to the first one, and from one to the next [mm]. Source: what
 * makers of such sheets print on their packets, from memory; 4 × 2 in with 0.15625 in at the left and 0.5 in at the top.
 */
const asSold = {
  eight: { grid: [2, 4], size: [99.1, 67.7], from: [4.65, 13.1], step: [101.6, 67.7], paper: [210, 297] },
  "twenty-one": {
    grid: [3, 7],
    size: [63.5, 38.1],
    from: [7.25, 15.15],
    step: [66, 38.1],
    paper: [210, 297],
  },
  ten: {
    grid: [2, 5],
    size: [101.6, 50.8],
    from: [3.969, 12.7],
    step: [106.3625, 50.8],
    paper: [215.9, 279.4],
  },
} as const;

describe("labels of made-up packs", () => {
  test.each(Object.entries(asSold))("the sheet of %s is as it is sold", (id, { grid, size, from, step }) => {
    const sheet = labelSheets.find((one) => one.id === id)!;
    expect([sheet.columns, sheet.rows]).toEqual(grid);
    expect([sheet.widthMm, sheet.heightMm]).toEqual(size.map((mm) => expect.closeTo(mm, 2)));
    expect([sheet.leftMm, sheet.topMm]).toEqual(from.map((mm) => expect.closeTo(mm, 1)));
    expect([sheet.acrossMm, sheet.downMm]).toEqual(step.map((mm) => expect.closeTo(mm, 2)));
  });

  test.each(Object.entries(asSold))(
    "on the sheet of %s each label is printed in its own, in true size",
    async (id, sold) => {
      const { grid, size, from, step, paper } = sold;
      const { pages } = await readPdf(files.get(`shelves/withy-lane/first-session-${id}.pdf`)!);
      expect(pages).toHaveLength(1);
      const { box, pieces } = pages[0]!;
      const [, , right = 0, top = 0] = box;
      expect([right / ptPerMm, top / ptPerMm]).toEqual(paper.map((mm) => expect.closeTo(mm, 1)));
      const titles = pieces.filter(({ text }) => text === "First session rig");
      expect(titles).toHaveLength(grid[0] * grid[1]);
      const first = titles[0]!;
      for (const [at, { x, y }] of titles.entries()) {
        const [column, row] = [at % grid[0], Math.floor(at / grid[0])];
        expect((x - first.x) / ptPerMm).toBeCloseTo(column * step[0], 1);
        expect((first.y - y) / ptPerMm).toBeCloseTo(row * step[1], 1);
      }
      for (const { text, x, y, width } of pieces.filter((one) => one.text.trim() !== "")) {
        const leftMm = x / ptPerMm - from[0];
        const column = Math.floor(leftMm / step[0]);
        const downMm = (top - y) / ptPerMm - from[1];
        const row = Math.floor(downMm / step[1]);
        expect(column, text).toBeLessThan(grid[0]);
        expect(row, text).toBeLessThan(grid[1]);
        // A printer may miss by 2 mm; nothing stands nearer to a label's edge.
        expect(leftMm - column * step[0], text).toBeGreaterThan(2);
        expect(leftMm - column * step[0] + width / ptPerMm, text).toBeLessThan(size[0] - 2);
        expect(downMm - row * step[1], text).toBeGreaterThan(2);
        expect(downMm - row * step[1], text).toBeLessThan(size[1] - 2);
      }
    },
  );

  test("tell what is in the pack, each shot of the depth that takes most of it, and keep it from children", async () => {
    const { pages } = await readPdf(files.get("shelves/withy-lane/stick-shirt-button-twenty-one.pdf")!);
    const words = pages[0]!.tree!.words.replace(/\s+/g, " ").replaceAll("\u00a0", " ");
    const most = Math.max(
      ...shippedGuide.rigs
        .find(({ rig }) => rig.id === "stick-shirt-button")!
        .depths.map(
          ({ lineShot, lockShot }) => [...lineShot, ...lockShot].filter(({ size }) => size === "No 8").length,
        ),
    );
    expect(words).toContain(`${most} × No 8`);
    expect(words).toContain("2 × hook 20");
    expect(words).toContain("Keep away from small children.");
    expect(Math.min(...pages[0]!.sizes)).toBeGreaterThanOrEqual(6);
  });
});

test("a label with room for it says where the shop is found, in no smaller type than 7 pt", () => {
  const pack = shelves[0]!.packs.find(({ solved }) => solved.rig.id === "first-session")!;
  const press = shippedPress("A4");
  const visit = { address: "3 Mill Row, Withyford", hours: ["Tue to Sat 8:00 to 17:00"] };
  const found = (sheetId: string, guide: typeof press.guide) => {
    const sheet = labelSheets.find(({ id }) => id === sheetId)!;
    const { items, overflows } = layOutLabel(pack, sheet, { ...press, guide });
    const texts = textsOf(items);
    const leastMm = Math.min(...texts.map(({ sizeMm }) => sizeMm));
    return { said: texts.map(({ text }) => text).join(" "), leastMm, overflows };
  };
  const roomy = found("eight", { ...press.guide, visit });
  expect(roomy.said).toContain("3 Mill Row, Withyford Tue to Sat 8:00 to 17:00");
  // A point is a 72nd of an inch.
  expect(roomy.leastMm).toBeGreaterThan((6.99 * 25.4) / 72);
  const long = { ...visit, hours: Array.from({ length: 9 }, (_, day) => `Day ${day}: 8:00 to 17:00`) };
  const small = found("twenty-one", { ...press.guide, visit: long });
  expect(small.overflows).toEqual([]);
  expect(small.said).not.toContain("Mill Row");
});

test("what is printed for a shop keeps to the rules of tagged and of archived files", async () => {
  expect(files.size).toBe(1 + 4 * 3);
  for (const [path, content] of files) {
    expect(uaBreaks(await rawPdf(content)), path).toEqual([]);
    expect(await archiveBreaks(content), path).toEqual([]);
  }
});

test("a label with more on it than it has room for is told at its shelf, and is not made", async () => {
  const [solved] = shelves;
  const long = solved!.packs.map((pack) => ({
    ...pack,
    needs: Array.from({ length: 60 }, () => pack.needs).flat(),
  }));
  const laid = layOutShelves([{ ...solved!, packs: long }], drawPictures(source), shippedPress("A4"));
  const told = shelfProblems(laid);
  expect(told.length).toBeGreaterThan(0);
  expect(told[0]).toMatchObject({ side: "label", place: { file: solved!.shelf.path } });
});
