import { beforeAll, describe, expect, test } from "vitest";
import type { Item, TextItem } from "../../../src/drawing/model.ts";
import { nodeFonts } from "../../../src/layout/node-fonts.ts";
import { mmPerPoint } from "../../../src/markup/boxes.ts";
import { allShot } from "../../../src/model/solved.ts";
import { cardContent, threeDepths } from "../../../src/print/cards/card-content.ts";
import { cardFormats } from "../../../src/print/cards/card-formats.ts";
import { cardSides } from "../../../src/print/cards/card-sides.ts";
import { type FinishedCard, layOutCard } from "../../../src/print/cards/lay-out-card.ts";
import { DoesNotFitError } from "../../../src/print/does-not-fit.ts";
import { paintPdf } from "../../../src/print/pdf/pdf.ts";
import type { WordKey } from "../../../src/words/word-key.ts";
import { drawingKit } from "../../support/drawing-kit.ts";
import { sampleAvon, sampleRigs, sampleShot, sampleWaggler } from "../../support/sample-rig.ts";
import { nodesOf, plain, type ReadPdf, readPdf } from "../read-pdf.ts";
import { printed, sampleGuide, sampleInput } from "../sample-print.ts";

/** Source: ISO/IEC 7810:2019, ID-1: 85.60 mm × 53.98 mm; 1 pt = 25.4/72 mm. */
const id1Pt = [(85.6 * 72) / 25.4, (53.98 * 72) / 25.4];
const hundredthMmPt = (0.01 * 72) / 25.4;

const bytes = new Map<string, Uint8Array>();
const cards = new Map<string, ReadPdf>();
const cardsOf = new Map<string, FinishedCard>();

beforeAll(async () => {
  const fonts = nodeFonts();
  for (const solved of sampleRigs) {
    const { id, title } = solved.rig;
    const faces = await layOutCard(solved, cardFormats["ID-1"], sampleGuide, drawingKit, fonts);
    cardsOf.set(id, faces);
    const facts = { title, author: sampleGuide.publisher, language: "en", date: "2026-05-01" };
    const pdf = await paintPdf(cardSides(faces.alone), facts, fonts);
    bytes.set(id, pdf);
    cards.set(id, await readPdf(pdf));
  }
}, 60_000);

describe.each(sampleRigs.map((solved) => [solved.rig.id, solved] as const))("card of %s", (id, solved) => {
  const card = () => cards.get(id)!;
  const content = cardContent(solved, sampleGuide, drawingKit);

  test("both sides are ID-1 to a hundredth of a millimetre", () => {
    expect(card().pages).toHaveLength(2);
    for (const { box } of card().pages) {
      expect(Math.abs(box[2]! - box[0]! - id1Pt[0]!)).toBeLessThan(hundredthMmPt);
      expect(Math.abs(box[3]! - box[1]! - id1Pt[1]!)).toBeLessThan(hundredthMmPt);
    }
  });

  test("the front is shown upright, the back lying", () => {
    expect(card().pages.map((page) => page.turn)).toEqual([90, 0]);
  });

  test("the front has the name and the distances and nothing else but the drawing's labels", () => {
    const front = card().pages[0]!;
    expect(front.text.startsWith(content.title)).toBe(true);
    expect(nodesOf(front.tree, "H1").map((h) => h.text)).toEqual([content.title]);
    expect(nodesOf(front.tree, "Figure")).toHaveLength(1);
    expect(nodesOf(front.tree, "P")).toHaveLength(0);
    for (const { role, fromHookMm } of allShot(solved.depths[0]!)) {
      if (role === "telltale") expect(front.text).toContain(drawingKit.figures.shortGap(fromHookMm));
    }
  });

  test("the drawing has alternative text told from its figures", () => {
    const [figure] = nodesOf(card().pages[0]!.tree, "Figure");
    const drawn = solved.depths[Math.floor((solved.depths.length - 1) / 2)]!;
    expect(figure!.alt).toContain(drawingKit.figures.depth(drawn.depthMm));
  });

  test("the shot table reads as the rig's figures, in order", () => {
    const rows = nodesOf(card().pages[1]!.tree, "TR").map((row) => row.children.map((cell) => cell.text));
    const { words } = drawingKit;
    const told = content.depths.filter(({ depth }) => rows[0]!.includes(plain(depth)));
    const row = (name: WordKey, pick: (depth: (typeof told)[number]) => string) =>
      once([words(name), ...told.map(pick)].map(plain));
    const lock = told[0]!.lock === undefined ? [] : [row("card.long.lock", (d) => d.lock!)];
    const setting = [
      row("card.depth", (d) => d.depth),
      row("card.long.set-at.float", (d) => d.setAt),
      ...lock,
    ];
    const tip = row("card.long.tip", (d) => d.tip);
    if (told.length === 1) {
      expect(rows).toEqual([...setting, row("card.long.on-line", (d) => d.line), tip]);
    } else {
      expect(rows.slice(0, setting.length + 1)).toEqual([...setting, tip]);
      const lines = rows.slice(setting.length + 1).map(([, cell]) => cell!);
      for (const { depth, places } of told) {
        const own = lines.filter((line) => line.includes(plain(places.replaceAll("\uFEFF", ""))));
        expect(own.some((line) => lines.length === 1 || line.includes(plain(depth)))).toBe(true);
      }
    }
  });

  test("the back says line, hook length, hook, scale, metal, caution and publisher", () => {
    const paragraphs = nodesOf(card().pages[1]!.tree, "P").map((p) => p.text);
    expect(paragraphs).toEqual(
      [
        `${content.mainLine}. ${content.hookLength}. ${content.hook}. ${content.shot}`,
        content.caution,
        ...(cardsOf.get(id)!.taken.includes("publisher") ? [content.publisher] : []),
        drawingKit.words("card.write-depth"),
      ].map(plain),
    );
    expect(content.shot).toMatch(/tin|lead/);
  });

  test("figures are at least 9 pt and no word is under 8 pt", async () => {
    const faces = await layOutCard(solved, cardFormats["ID-1"], sampleGuide, drawingKit, nodeFonts());
    const lines = [...linesOf(faces.front.items), ...linesOf(faces.back.items)];
    for (const { text, sizeMm } of lines) {
      expect(sizeMm / mmPerPoint, text).toBeGreaterThanOrEqual((/\d/.test(text) ? 9 : 8) - 1e-9);
    }
    for (const { sizes } of card().pages) expect(Math.min(...sizes)).toBeGreaterThan(7.99);
  });

  test("is under 40 kB, all vector", () => {
    expect(bytes.get(id)!.length).toBeLessThan(40_000);
    for (const { operators } of card().pages) {
      expect(operators.filter((name) => /image|XObject|shading/i.test(name))).toEqual([]);
    }
  });
});

/** A row whose cells all say the same says it once. */
function once([name, ...cells]: readonly string[]): string[] {
  return [name!, ...(new Set(cells).size === 1 ? [cells[0]!] : cells)];
}

function linesOf(items: readonly Item[]): TextItem[] {
  return items.flatMap((item) =>
    item.kind === "text" ? [item] : item.kind === "group" ? linesOf(item.items) : [],
  );
}

describe("depths on a small card", () => {
  const depth = (depthMm: number) => ({ depthMm });

  test("up to three are all taken, rising", () => {
    expect(threeDepths([2000, 1000].map(depth))).toEqual([1000, 2000].map(depth));
  });

  test("of more, the shallowest, the one nearest the middle and the deepest", () => {
    expect(threeDepths([1000, 1200, 1900, 2500, 3000].map(depth))).toEqual([1000, 1900, 3000].map(depth));
  });
});

describe("what does not fit", () => {
  const deep = sampleAvon.depths[0]!;

  test("names rig, side, field and how much, for every card, before any file", async () => {
    const long = {
      ...sampleWaggler,
      rig: { ...sampleWaggler.rig, title: "Straightwagglerstrungoutforstillwaterwithoutanyspaces" },
    };
    const error = await printed(sampleInput({}, [long])).then(
      () => undefined,
      (thrown: unknown) => thrown,
    );
    expect(error).toBeInstanceOf(DoesNotFitError);
    const { problems, message } = error as DoesNotFitError;
    expect(problems.map((p) => [p.of, p.format, p.side, p.field, p.direction])).toContainEqual([
      long.rig.id,
      "ID-1",
      "front",
      "title",
      "across",
    ]);
    for (const { overMm } of problems) expect(overMm).toBeGreaterThan(1);
    expect(message).toMatch(/waggler-strung-out, ID-1 card, front: title is \d+\.\d mm too wide/);
  });

  test("words that are too many are found on the back", async () => {
    const scaleTitle = "Scale of the weights that the club keeps in its hut ".repeat(12);
    const rig = { ...sampleAvon, rig: { ...sampleAvon.rig, scaleTitle } };
    const { back } = await layOutCard(rig, cardFormats["ID-1"], sampleGuide, drawingKit, nodeFonts());
    expect(back.overflows.map((o) => o.direction)).toContain("down");
  });

  test("a drawing with more shot than its side has room for is found on the front", async () => {
    const sizes = ["SSG", "AAA", "BB", "No 4", "No 6", "No 8", "No 10"];
    const lineShot = Array.from({ length: 60 }, (_, i) => sampleShot(sizes[i % 7]!, "spread", 310 + 33 * i));
    const rig = { ...sampleAvon, depths: [{ ...deep, lineShot }] };
    const { front } = await layOutCard(rig, cardFormats["ID-1"], sampleGuide, drawingKit, nodeFonts());
    expect(front.overflows).toMatchObject([{ field: "drawing", direction: "down" }]);
    expect(front.overflows[0]!.overMm).toBeGreaterThan(1);
  });
});
