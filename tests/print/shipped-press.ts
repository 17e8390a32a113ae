import { nodeFonts } from "../../src/layout/node-fonts.ts";
import { asTheyStand } from "../../src/model/in-order.ts";
import { inMemory, makeAnew } from "../../src/model/kept.ts";
import type { Guide } from "../../src/model/library.ts";
import type { Press } from "../../src/print/press.ts";
import { shippedGuide } from "../support/shipped-guide.ts";

const { library, kit } = shippedGuide;
const fonts = nodeFonts();

/** A press for the shipped guide, on its own paper or on another. */
export function shippedPress(paper: Guide["paper"] = library.guide.paper): Press {
  return {
    guide: { ...library.guide, paper },
    fonts,
    kit: { ...kit, measure: fonts.measure },
    keep: makeAnew,
    inOrder: asTheyStand,
    parts: makeAnew,
    pictures: makeAnew,
    marks: inMemory(Number.POSITIVE_INFINITY),
    textsFrom: "",
    from: "",
    facts: (title) => ({ title, author: "Makebelieve", language: "en", date: "2026-05-01" }),
  };
}
