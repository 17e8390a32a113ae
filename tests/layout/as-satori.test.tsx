import { describe, expect, test } from "vitest";
import { layOut } from "../../src/layout/lay-out.ts";
import { nodeFonts } from "../../src/layout/node-fonts.ts";
import { Box, type BoxProps, Inline, type LayoutStyle } from "../../src/markup/boxes.ts";
import { layOutBySatori } from "../support/satori/lay-out-by-satori.ts";
import { expectSamePage } from "./same-page.ts";

const fonts = nodeFonts();

const words =
  "Tie the hook length to the line – loop to loop; pull it tight (wet it first) and cut ends to 2 mm: 1/2 of 3-4 cm, no more.";

/** A box whose edges are marks, so that they are compared too. */
const Seen = (props: BoxProps) => <Box paint={{ fill: "water" }} {...props} />;

const rowOf = (align: NonNullable<LayoutStyle["align"]>) => (
  <Seen style={{ direction: "row", align, gap: 1, minHeight: 20 }}>
    <Seen style={{ sizePt: 15, lineHeight: 1.05 }}>132 cm</Seen>
    <Seen style={{ grow: 1, paddingTop: 1, paddingLeft: 2 }}>
      Set <Inline face="bold">the float</Inline> here, and there, {words}
    </Seen>
    <Seen style={{ grow: 2, marginTop: 2 }}>
      <Seen style={{ minHeight: 4 }}>low</Seen>
      <Seen style={{ grow: 1 }} />
    </Seen>
    <Seen style={{ width: 6, height: 5, marginLeft: 1 }} />
  </Seen>
);

const columnOf = (align: NonNullable<LayoutStyle["align"]>, justify: NonNullable<LayoutStyle["justify"]>) => (
  <Seen style={{ align, justify, gap: 0.5, padding: 2, paddingLeft: 4, lineHeight: 1.2 }}>
    <Seen style={{ textAlign: "center", sizePt: 8 }}>{words}</Seen>
    <Seen style={{ marginTop: 1, marginLeft: 3 }}>short</Seen>
    <Seen style={{ textAlign: "right", face: "italic", width: 30 }}>{words}</Seen>
  </Seen>
);

const trees = {
  "a row, stretched": rowOf("stretch"),
  "a row on one baseline": rowOf("baseline"),
  "a row, its boxes in the middle": rowOf("center"),
  "a row, its boxes at the end": rowOf("end"),
  "a column, stretched": columnOf("stretch", "start"),
  "a column, its boxes at the start": columnOf("start", "between"),
  "a column, its boxes in the middle": columnOf("center", "center"),
  "a column, its boxes at the end": columnOf("end", "end"),
};

describe.each(Object.entries(trees))("%s", (_, tree) => {
  test.each([{ widthMm: 70, heightMm: 90 }, { widthMm: 70 }, { widthMm: 31, heightMm: 40 }])(
    "is laid out on %j as satori lays it out",
    async (size) => {
      const ours = layOut(<Box>{tree}</Box>, size, fonts);
      expectSamePage(ours, await layOutBySatori(<Box>{tree}</Box>, size, fonts));
    },
  );
});

test("a style that it does not know is refused by name and field", () => {
  const tree = (
    <Box field="shot table" style={{ wrap: true } as LayoutStyle}>
      <Box>word</Box>
    </Box>
  );
  expect(() => layOut(tree, { widthMm: 50 }, fonts)).toThrow(
    'no style "wrap" is known, in field "shot table"',
  );
});
