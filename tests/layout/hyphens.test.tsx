import { describe, expect, it } from "vitest";
import type { Item, TextItem } from "../../src/drawing/model.ts";
import { softHyphen } from "../../src/layout/fonts.ts";
import { hyphenating, hyphensOf } from "../../src/layout/hyphens.ts";
import { layOut } from "../../src/layout/lay-out.ts";
import { nodeFonts } from "../../src/layout/node-fonts.ts";
import { Box } from "../../src/markup/boxes.ts";

const plain = nodeFonts();
const german = hyphenating(plain, "de-AT");

const lines = (items: readonly Item[]): TextItem[] =>
  items.flatMap((item) => (item.kind === "text" ? [item] : item.kind === "group" ? lines(item.items) : []));

const set = (text: string, widthMm: number, fonts = german) =>
  layOut(
    <Box>
      <Box tag="P" style={{ sizePt: 9 }}>
        {text}
      </Box>
    </Box>,
    { widthMm },
    fonts,
  );

describe("words at the end of a line", () => {
  /** Source: Duden, Die deutsche Rechtschreibung: Vor|fach, Haupt|schnur, Wid|der, Schwimm|wes|te. */
  it.each([
    ["Hauptschnur", ["Haupt", "schnur"]],
    ["Schwimmweste", ["Schwimm", "wes", "te"]],
    ["Vorfach", ["Vor", "fach"]],
    ["Haken", ["Haken"]],
  ])("part as the language does: %s", (word, parts) => {
    expect(hyphensOf("de")!(word)).toEqual(parts);
  });

  it("stay whole in English, and in a language that nothing is known of", () => {
    expect([hyphensOf("en-GB"), hyphensOf("qaa"), hyphensOf("../de")]).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
  });

  it("are parted where the rest of the line has room for a part of them and its hyphen, and lose nothing", () => {
    const text = "Die Hauptschnur und die Schwimmweste sind nass.";
    for (const widthMm of [18, 22, 26, 30, 40]) {
      const page = set(text, widthMm);
      const told = lines(page.items).map((line) => line.text);
      expect(told.join("").replaceAll(softHyphen, "").trim()).toBe(text);
      expect(page.overflows).toEqual([]);
      for (const line of lines(page.items))
        expect(line.xMm + german.measure(line.text.trimEnd(), line.sizeMm, line.face)).toBeLessThan(
          widthMm + 0.01,
        );
    }
    expect(lines(set(text, 18).items).some((line) => line.text.endsWith(softHyphen))).toBe(true);
  });

  it("leave three letters on either side", () => {
    for (let widthMm = 8; widthMm < 30; widthMm += 0.5)
      for (const { text } of lines(set("Schwimmweste Anfänger", widthMm).items))
        if (text.endsWith(softHyphen)) expect(text.length).toBeGreaterThan(3);
  });

  it("that are too wide for a line of their own fit with a hyphen, which is seen", () => {
    const wide = "Posenangelweltmeisterschaft";
    expect(set(wide, 25, plain).overflows.length).toBeGreaterThan(0);
    expect(set(wide, 25).overflows).toEqual([]);
    expect(plain.measure(`a${softHyphen}`, 3, "regular")).toBeGreaterThan(
      plain.measure("a", 3, "regular") + 0.5,
    );
  });
});
