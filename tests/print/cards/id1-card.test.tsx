import { beforeAll, describe, expect, test } from "vitest";
import type { Item, TextItem } from "../../../src/drawing/model.ts";
import { nodeFonts } from "../../../src/layout/node-fonts.ts";
import { mmPerPoint } from "../../../src/markup/boxes.ts";
import type { CardPart } from "../../../src/model/card-content.ts";
import { allShot } from "../../../src/model/solved.ts";
import { cardContent, threeDepths } from "../../../src/print/cards/card-content.ts";
import { type CardFormat, cardFormats, cardFormatsOn } from "../../../src/print/cards/card-formats.ts";
import { cardSides } from "../../../src/print/cards/card-sides.ts";
import { type FinishedCard, layOutCard } from "../../../src/print/cards/lay-out-card.ts";
import { DoesNotFitError } from "../../../src/print/does-not-fit.ts";
import { paintPdf } from "../../../src/print/pdf/pdf.ts";
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
    const pdf = paintPdf(cardSides(faces.alone), facts, fonts);
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

  test("the front has the name, the setting, the float, the tackle and the distances of its drawing", () => {
    const front = card().pages[0]!;
    expect(front.text).toContain(content.title);
    expect(nodesOf(front.tree, "H1").map((h) => h.text)).toEqual([content.title]);
    expect(nodesOf(front.tree, "P").map((p) => p.text)).toEqual(
      [
        content.drawn.setAt,
        content.settingFor,
        content.float,
        ...(cardsOf.get(id)!.look.front.tackleOn === "front" ? [`${content.tackle} ${content.metal}`] : []),
      ].map(plain),
    );
    for (const { role, fromHookMm } of allShot(solved.depths[0]!)) {
      if (role === "telltale") expect(front.text).toContain(drawingKit.figures.shortGap(fromHookMm));
    }
  });

  test("the drawing has alternative text told from its figures", () => {
    const [figure] = nodesOf(card().pages[0]!.tree, "Figure");
    const drawn = solved.depths[Math.floor((solved.depths.length - 1) / 2)]!;
    expect(figure!.alt).toContain(drawingKit.figures.depth(drawn.depthMm));
  });

  test("the shot table reads as the rig's figures, in order, for every depth", () => {
    const rows = nodesOf(card().pages[1]!.tree, "TR").map((row) => row.children.map((cell) => cell.text));
    const [head, ...body] = rows;
    const depths = content.depths.map(({ depth }) => plain(depth));
    const bare = (text: string) => plain(text.replaceAll("\uFEFF", ""));
    if (body[0]?.[0] === "Float to hook") {
      expect(head!.slice(1)).toEqual(depths);
      expect(body[0]).toEqual(["Float to hook", ...content.depths.map(({ setAt }) => plain(setAt))]);
      for (const { depth, places } of content.depths) {
        const own = body.find(([of]) => of === "Shot" || of === plain(depth));
        expect(own![1]).toBe(bare(places));
      }
      return;
    }
    expect(body).toEqual(
      content.depths.map(({ depth, setAt, lock, places }) => [
        plain(depth),
        plain(setAt),
        bare([lock, places].filter(Boolean).join(" ")),
      ]),
    );
  });

  test("says from where the shot are placed, their metal, the tip and the caution", () => {
    const told = card()
      .pages.flatMap(({ tree }) => nodesOf(tree, "P").map((p) => p.text))
      .join(" ");
    expect(told).toContain("Places: from the bend of the hook.");
    expect(told).toMatch(/Shot: (all )?(tin|lead|.*: (tin|lead))/);
    expect(told).toContain(plain(content.caution));
    for (const { tip } of content.depths)
      expect(told).toMatch(new RegExp(`[Tt]ip (showing: )?${plain(tip)}`));
  });

  test("no word or figure is under 8 pt, labels of the drawing are 9 pt and the setting is 14 pt to 16 pt", async () => {
    const faces = await layOutCard(solved, cardFormats["ID-1"], sampleGuide, drawingKit, nodeFonts());
    const lines = [...linesOf(faces.front.items), ...linesOf(faces.back.items)];
    for (const { text, sizeMm } of lines) {
      expect(sizeMm / mmPerPoint, text).toBeGreaterThanOrEqual(8 - 1e-9);
    }
    const pointsOf = (told: string) =>
      lines.filter(({ text }) => text === told).map(({ sizeMm }) => sizeMm / mmPerPoint);
    const setting = pointsOf(content.drawn.setAt);
    expect(Math.max(...setting)).toBeGreaterThanOrEqual(14);
    expect(Math.max(...setting)).toBeLessThanOrEqual(16);
    const labels = pointsOf(`0`);
    expect(labels.some((pt) => Math.abs(pt - 9) < 1e-9)).toBe(true);
    for (const { sizes } of card().pages) expect(Math.min(...sizes)).toBeGreaterThan(7.99);
  });

  test("says once how the depth is found", () => {
    const said = plain(content.setDepth);
    const isOn = card().pages.map((page) => plain(page.text).replaceAll(/\s+/g, " ").includes(said));
    expect(isOn.filter(Boolean)).toHaveLength(1);
  });

  test("is under 40 kB, all vector", () => {
    expect(bytes.get(id)!.length).toBeLessThan(40_000);
    for (const { operators } of card().pages) {
      expect(operators.filter((name) => /image|XObject|shading/i.test(name))).toEqual([]);
    }
  });
});

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

  test("words that are too many are found", async () => {
    const title = "Float of the kind that the club keeps in its hut ".repeat(12);
    const rig = { ...sampleAvon, rig: { ...sampleAvon.rig, float: { ...sampleAvon.rig.float, title } } };
    const { front } = await layOutCard(rig, cardFormats["ID-1"], sampleGuide, drawingKit, nodeFonts());
    expect(front.overflows.map((o) => o.direction)).toContain("down");
  });

  test("a rig with 33 shot has its pocket card, and all that must stand on the larger ones", () => {
    const lineShot = Array.from({ length: 33 }, (_, i) => sampleShot("No 8", "spread", 380 + 30 * i));
    const rig = { ...sampleAvon, depths: [{ ...deep, lineShot }] };
    const layOut = (format: CardFormat, least: readonly CardPart[]) =>
      layOutCard(rig, format, sampleGuide, drawingKit, nodeFonts(), {
        notes: { changeFirst: ["Wait."] },
        least,
      });
    let least: readonly CardPart[] = [];
    for (const format of cardFormatsOn.A4) {
      const card = layOut(format, least);
      expect([...card.front.overflows, ...card.back.overflows], format.name).toEqual([]);
      // The drawing of so many takes the room of the true tip; the card says so by `lacks`.
      expect(card.lacks, format.name).toEqual(format.name === "ID-1" ? ["true-tip"] : []);
      least = card.taken;
    }
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

test("a card says on its front how the depth is found where its back has no room for that", () => {
  const { setDepth } = cardContent(sampleWaggler, sampleGuide, drawingKit);
  const [lead] = plain(setDepth).split(":");
  const fonts = nodeFonts();
  const saidOn = [1, 3, 5, 7, 9].map((many) => {
    const notes = { changeFirst: ["Move the telltale nearer to the hook. ".repeat(many).trim()] };
    const faces = layOutCard(sampleWaggler, cardFormats["ID-1"], sampleGuide, drawingKit, fonts, { notes });
    const has = (side: "front" | "back") =>
      linesOf(faces[side].items)
        .map(({ text }) => plain(text).trim())
        .join(" ")
        .includes(`${lead}:`);
    return has("front") ? "front" : has("back") ? "back" : "none";
  });
  expect(saidOn[0]).toBe("back");
  expect(saidOn).toContain("front");
});
