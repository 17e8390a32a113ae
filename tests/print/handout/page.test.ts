import { expect, test } from "vitest";
import type { Item, TextItem } from "../../../src/drawing/model.ts";
import { handoutFormats } from "../../../src/print/handout/handout-formats.ts";
import { handoutPage } from "../../../src/print/handout/page.ts";

const textsOf = (items: readonly Item[]): TextItem[] =>
  items.flatMap((item) => (item.kind === "text" ? [item] : item.kind === "group" ? textsOf(item.items) : []));

test.each(Object.values(handoutFormats).flatMap((of) => Object.values(of)))(
  "$name has its footer in the middle of the paper, between text and edge",
  (format) => {
    const side = handoutPage([[]], format, { header: "head", footer: "1 of 2", notes: "" });
    const footer = textsOf(side.parts.flatMap(({ items }) => items)).find(({ text }) => text === "1 of 2")!;
    expect([footer.anchor, footer.xMm]).toEqual(["middle", format.widthMm / 2]);
    expect(footer.yMm - footer.sizeMm).toBeGreaterThan(format.heightMm - format.bottomMm);
    // What printers leave white at the foot of a page; common practice, no source.
    expect(format.heightMm - footer.yMm).toBeGreaterThan(4.2);
  },
);
