import { describe, expect, test } from "vitest";
import type { GroupItem, Item, TextItem } from "../../src/drawing/model.ts";
import { layOut } from "../../src/layout/lay-out.ts";
import { nodeFonts } from "../../src/layout/node-fonts.ts";
import { Box, Inline } from "../../src/markup/boxes.ts";

const fonts = nodeFonts();
const wide = { widthMm: 60, heightMm: 40 };

function lines(items: readonly Item[]): TextItem[] {
  return items.flatMap((item) =>
    item.kind === "text" ? [item] : item.kind === "group" ? lines(item.items) : [],
  );
}

const sentence =
  "Tie the hook length to the line, loop to loop; pull it tight (wet it first) and cut the ends to 2 mm.";

describe("text", () => {
  test("comes back whole, in order, with its spaces", () => {
    const page = layOut(
      <Box>
        <Box tag="P">{sentence}</Box>
      </Box>,
      wide,
      fonts,
    );
    expect(
      lines(page.items)
        .map((line) => line.text)
        .join("")
        .trim(),
    ).toBe(sentence);
    expect(page.overflows).toEqual([]);
  });

  test("leaves no word alone in the last line where it may not stand so, and takes no more lines for it", () => {
    const said = "Close all shot with pliers and not with teeth.";
    let joined = 0;
    for (let widthMm = 20; widthMm < 60; widthMm += 0.5) {
      const [left, company] = (["left", "joined"] as const).map((loneWord) => {
        const page = layOut(<Box style={{ loneWord }}>{said}</Box>, { widthMm, heightMm: 40 }, fonts);
        return lines(page.items).map(({ text }) => text.trim());
      });
      expect(company!.join(" ")).toBe(said);
      expect(company).toHaveLength(left!.length);
      if (left!.length < 2 || left!.at(-1)!.includes(" ") || !/ .* /.test(left!.at(-2)!)) continue;
      joined += 1;
      expect(company!.at(-1)).toMatch(/ /);
    }
    expect(joined).toBeGreaterThan(3);
  });

  test("keeps spaces around words in another face", () => {
    const page = layOut(
      <Box>
        <Box tag="P">
          Set the float <Inline face="bold">132 cm</Inline> from the hook, <Inline face="italic">no</Inline>.
        </Box>
      </Box>,
      wide,
      fonts,
    );
    expect(lines(page.items).map((l) => [l.face, l.text])).toEqual([
      ["regular", "Set the float "],
      ["bold", "132 cm "],
      ["regular", "from the hook, "],
      ["italic", "no"],
      ["regular", "."],
    ]);
  });

  test("is set in one piece a line, each word where the line breaking put it", () => {
    const page = layOut(
      <Box>
        <Box tag="P" style={{ sizePt: 8 }}>
          {sentence}
        </Box>
      </Box>,
      wide,
      fonts,
    );
    const rows = new Set(lines(page.items).map((line) => line.yMm));
    expect(rows.size).toBeGreaterThan(1);
    expect(lines(page.items)).toHaveLength(rows.size);
    for (const line of lines(page.items)) {
      expect(line.xMm + fonts.measure(line.text.trimEnd(), line.sizeMm, line.face)).toBeLessThan(60.01);
    }
  });

  test("does not break at a no-break space", () => {
    const page = layOut(
      <Box style={{ width: 20 }}>
        <Box tag="P">{"Set it at 132\u00A0cm now"}</Box>
      </Box>,
      { widthMm: 20, heightMm: 40 },
      fonts,
    );
    const joined = lines(page.items).filter((line) => line.text.includes("132\u00A0cm"));
    expect(joined).toHaveLength(1);
  });

  test("hyphens, soft hyphens and ohm signs become the one sign the fonts map back", () => {
    const page = layOut(
      <Box>
        <Box tag="P">{"hook\u2010length pel\u00ADlet \u2126"}</Box>
      </Box>,
      wide,
      fonts,
    );
    expect(
      lines(page.items)
        .map((l) => l.text)
        .join(""),
    ).toBe("hook-length pellet \u03A9");
  });

  test("a sign that the fonts lack is an error that names it", () => {
    const tree = (
      <Box>
        <Box tag="P">float 🎣</Box>
      </Box>
    );
    expect(() => layOut(tree, wide, fonts)).toThrow(/no sign for "🎣"/);
  });
});

describe("boxes", () => {
  test("a picture is drawn into the box that was laid out for it", () => {
    let drawn: number[] = [];
    const page = layOut(
      <Box style={{ padding: 5 }}>
        <Box tag="H1" style={{ sizePt: 10, lineHeight: 1.2 }}>
          Title
        </Box>
        <Box
          tag="Figure"
          alt="A line"
          style={{ grow: 1 }}
          draw={(w, h) => {
            drawn = [w, h];
            return [];
          }}
        />
      </Box>,
      wide,
      fonts,
    );
    const figure = page.items.find(
      (item): item is GroupItem => item.kind === "group" && item.role === "Figure",
    );
    const lineMm = (10 * 1.2 * 25.4) / 72;
    expect(drawn[0]).toBeCloseTo(50, 2);
    expect(drawn[1]).toBeCloseTo(30 - lineMm, 1);
    expect(figure?.alt).toBe("A line");
  });

  test("without a height the page is as long as its content", () => {
    const page = layOut(
      <Box style={{ padding: 2 }} draw={() => []}>
        <Box style={{ height: 7 }} />
      </Box>,
      { widthMm: 30 },
      fonts,
    );
    expect(page.heightMm).toBeCloseTo(11, 3);
  });

  test("text and boxes in one box are a fault of the template", () => {
    const tree = (
      <Box field="note">
        words <Box>more</Box>
      </Box>
    );
    expect(() => layOut(tree, wide, fonts)).toThrow(/field "note"/);
  });
});

describe("overflow", () => {
  const overflowOf = (tree: Parameters<typeof layOut>[0]) => layOut(tree, wide, fonts).overflows;

  test("a long word sticks out across, by how much", () => {
    const word = "Straightwagglerstrungoutwithoutaspace";
    const [found] = overflowOf(
      <Box>
        <Box tag="P" field="title" style={{ sizePt: 12 }}>
          {word}
        </Box>
      </Box>,
    );
    expect(found).toMatchObject({ field: "title", direction: "across" });
    expect(found!.overMm).toBeCloseTo(fonts.measure(word, (12 * 25.4) / 72, "regular") - 60, 1);
  });

  test("too many rows stick out down", () => {
    const rows = Array.from({ length: 20 }, (_, i) => (
      <Box key={String(i)} style={{ height: 3 }} field="rows">
        row
      </Box>
    ));
    expect(overflowOf(<Box>{rows}</Box>)).toContainEqual({
      field: "rows",
      direction: "down",
      overMm: expect.closeTo(20, 2),
    });
  });

  test("a box too low for its text is found", () => {
    const found = overflowOf(
      <Box>
        <Box tag="P" field="note" style={{ height: 6, sizePt: 10 }}>
          {sentence}
        </Box>
      </Box>,
    );
    expect(found).toMatchObject([{ field: "note", direction: "down" }]);
  });

  test("what fits is not reported", () => {
    expect(
      overflowOf(
        <Box style={{ padding: 1 }}>
          <Box tag="P" style={{ sizePt: 8, lineHeight: 1.05 }}>
            gjpqy ÅÉ {sentence}
          </Box>
        </Box>,
      ),
    ).toEqual([]);
  });
});

test("a page that could not be laid out leaves the next page as it would have been", () => {
  const laid = () =>
    layOut(
      <Box>
        <Box tag="P">{sentence}</Box>
      </Box>,
      wide,
      fonts,
    );
  const before = laid();
  for (const bad of ["\u{1f41f}", `${"x".repeat(50_000)}\u{1f41f}`]) {
    expect(() =>
      layOut(
        <Box>
          <Box tag="P">{`${sentence} ${bad}`}</Box>
        </Box>,
        wide,
        fonts,
      ),
    ).toThrow("the fonts have no sign for");
    expect(laid()).toEqual(before);
  }
});
