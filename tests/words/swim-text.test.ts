import { toString as textOf } from "mdast-util-to-string";
import { describe, expect, it } from "vitest";
import { withId } from "../../src/core/lists.ts";
import { hazardLines } from "../../src/words/swim-hazards.ts";
import { shippedSpots } from "../support/chosen-spots.ts";
import { shippedGuide } from "../support/shipped-guide.ts";

const { library, swims, kit } = shippedGuide;

describe("what is told of a swim", () => {
  it.each(swims.map((one) => [one.swim.id, one] as const))(
    "%s has hazards first, then access, bed, and each spot with its rigs and what rules out the others",
    (_, { swim, onPage, onSheet }) => {
      const text = textOf(onPage);
      for (const line of hazardLines(swim, library.guide, kit)) expect(text).toContain(line);
      for (const fact of [swim.access.road, swim.access.gridReference!]) expect(text).toContain(fact);
      const spots = shippedSpots.filter((spot) => spot.swim === swim);
      expect(spots).toHaveLength(swim.spots.length);
      for (const { choice } of spots) {
        const out = choice.ruledOut.map(({ entry }) => entry.title);
        expect(out.length).toBeLessThan(library.rigs.length);
        // Those that are not ruled out suit the spot, and are told with it.
        for (const { title } of library.rigs) expect(text).toContain(title);
      }
      const headings = onPage.children.flatMap((node) => (node.type === "heading" ? [textOf(node)] : []));
      expect(headings[0]).toBe("Hazards here");
      expect(textOf(onSheet).length).toBeLessThan(text.length);
    },
  );

  it("has the law's distance from wires where there are any", () => {
    const canal = withId(library.swims, "makebelieve-canal-wide");
    const lines = hazardLines(canal, library.guide, kit);
    const wires = lines.find((line) => line.startsWith("Overhead wires: "))!;
    expect(wires).toContain("Wires kill without being touched.");
    expect(wires).toContain(library.guide.rules.wires!);
    // Whoever looks after the water has the last word.
    expect(lines.at(-1)).toContain("local rules say comes before all of this");
  });

  it("says of no spot that its depth is sure where nobody plumbed nearby", () => {
    for (const { depth, spot } of shippedSpots) {
      const { onPage } = swims.find(({ swim }) => swim.spots.includes(spot))!;
      if (!depth.isNear) expect(textOf(onPage)).toContain("a guess");
    }
  });
});
