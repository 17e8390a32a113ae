import type { Root } from "mdast";
import { describe, expect, it } from "vitest";
import { partsFrom, showing } from "../../src/site/parts-from.ts";
import type { TextFrom } from "../../src/site/text-from.ts";
import type { View } from "../../templates/pages/view.ts";
import { shippedLibrary } from "../support/shipped-library.ts";

// What a page is kept by is our own, so there is no source to hold it against.

const text = (value: string): Root => ({ type: "root", children: [{ type: "text", value }] });
const library = shippedLibrary;
const figures =
  (said: string): TextFrom =>
  ({ body }) =>
  () => [said, JSON.stringify(body)];

const body = (view: View) => String(view.library.baits.length);
const shownOf = (parts: Parameters<typeof showing>[0], of = library, from = figures("1.6 g")) =>
  showing(parts, partsFrom(of, from), { path: "site/baits.html", title: "", description: "", body });
const fromOf = (...given: Parameters<typeof shownOf>) => shownOf(...given).from?.();

describe("a page that shows parts of the library", () => {
  it("is given these alone", () => {
    const view = { library } as View;
    expect(shownOf(["baits"]).body(view)).toBe(String(library.baits.length));
    expect(() => shownOf(["knots"]).body(view)).toThrow(/shows baits/);
  });

  it("is made anew where one of them changes, its texts and their figures among them, and nowhere else", () => {
    const [bait, ...others] = library.baits;
    const before = fromOf(["baits"]);
    const reworded = { ...library, baits: [{ ...bait!, notes: text("Other words.") }, ...others] };
    const renamed = { ...library, baits: [{ ...bait!, bait: { ...bait!.bait, title: "other" } }, ...others] };
    expect(fromOf(["baits"], reworded)).not.toEqual(before);
    expect(fromOf(["baits"], renamed)).not.toEqual(before);
    expect(fromOf(["baits"], library, figures("1.7 g"))).not.toEqual(before);
    expect(fromOf(["baits"], { ...library, lessons: [], floats: [] })).toEqual(before);
  });
});
