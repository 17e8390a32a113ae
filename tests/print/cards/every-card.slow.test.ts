import { beforeAll, describe, expect, test } from "vitest";
import type { Item, TextItem } from "../../../src/drawing/model.ts";
import { nodeFonts } from "../../../src/layout/node-fonts.ts";
import { mmPerPoint } from "../../../src/markup/boxes.ts";
import { adviceParts, mustParts, onEveryCard } from "../../../src/model/card-content.ts";
import { levels } from "../../../src/model/library.ts";
import type { SolvedRig } from "../../../src/model/solved.ts";
import { cardContent, threeDepths } from "../../../src/print/cards/card-content.ts";
import { cardFormatsOn } from "../../../src/print/cards/card-formats.ts";
import { type FinishedCard, layOutCard } from "../../../src/print/cards/lay-out-card.ts";
import type { SiteInput } from "../../../src/site/input.ts";
import { makeFigures } from "../../../src/words/figures.ts";
import { realSite } from "../../site/real-site.ts";
import { plain } from "../read-pdf.ts";

const fonts = nodeFonts();
let site: SiteInput;

beforeAll(async () => {
  site = await realSite();
});

const linesOf = (items: readonly Item[]): TextItem[] =>
  items.flatMap((item) => (item.kind === "text" ? [item] : item.kind === "group" ? linesOf(item.items) : []));

const bare = (text: string) => plain(text.replaceAll("\uFEFF", "")).replaceAll(/\s+/g, " ").trim();

function textOf({ front, back }: FinishedCard): string {
  return bare([...linesOf(front.items), ...linesOf(back.items)].map(({ text }) => text.trim()).join(" "));
}

const withoutFigures = (items: readonly Item[]): Item[] =>
  items.flatMap((item): Item[] => {
    if (item.kind !== "group") return [item];
    return item.role === "Figure" || item.artifact ? [] : [{ ...item, items: withoutFigures(item.items) }];
  });

/** What a coach has written of a rig, and the words and figures in which its cards are told. */
function told(solved: SolvedRig, units: "metric" | "imperial" | "metric first") {
  const { library, kit } = site;
  const { changeFirst, level } = library.rigs.find(({ id }) => id === solved.rig.id)!;
  const { marking } = library.floats.find(({ float }) => float.id === solved.rig.float.id)!;
  const figures = makeFigures(units, kit.words, "en").compact;
  const notes = { marking, changeFirst, level: levels.indexOf(level) + 1 };
  return { notes, kit: { ...kit, figures, measure: fonts.measure } };
}

const figuresOf = (items: readonly Item[]): string[] =>
  items.flatMap((item) =>
    item.kind === "group" ? [...(item.alt === undefined ? [] : [item.alt]), ...figuresOf(item.items)] : [],
  );

/** A rig whose long lists of shot, other ones in each depth, leave a pocket card no room to say how the depth is found. */
const ownPlacesEachDepth: ReadonlySet<string> = new Set(["stick-tapered"]);

const papers = ["A4", "Letter"] as const;
const systems = ["metric", "imperial", "metric first"] as const;
const all = systems.flatMap((units) => papers.map((paper) => [units, paper] as const));

describe.each(all)("told in %s units, for %s", (units, paper) => {
  test("every rig has on every card what must stand there, and on each larger card all that is on the smaller one", async () => {
    for (const solved of site.solved.values()) {
      const { kit, notes } = told(solved, units);
      const content = cardContent(solved, site.library.guide, kit, notes);
      let least: FinishedCard["taken"] = [];
      for (const format of cardFormatsOn[paper]) {
        const name = `${solved.rig.id}, ${format.name}`;
        const card = await layOutCard(solved, format, site.library.guide, kit, fonts, { notes, least });
        expect([...card.front.overflows, ...card.back.overflows], name).toEqual([]);
        expect(card.lacks, name).toEqual([]);
        // So no label of the drawing has two sizes of shot in two places.
        expect(card.look.front.shared, name).not.toBe("any");
        const text = textOf(card);
        for (const field of onEveryCard) {
          if (content[field] !== undefined) expect(text, `${name}: ${field}`).toContain(bare(content[field]));
        }
        const depths = card.taken.includes("every-depth") ? content.depths : threeDepths(content.depths);
        for (const { depth, setAt, tip, places, lock } of depths) {
          for (const one of [depth, setAt, tip, places, ...(lock ? [lock] : [])])
            expect(text, name).toContain(bare(one));
        }
        // Hook, bait and line stand where the rig is looked at; so does how its depth is found, on one side or the other.
        expect(card.look.front.tackleOn, name).toBe("front");
        const isTold = text.split(bare(content.setDepth)).length - 1;
        expect(isTold, name).toBe(format.name === "ID-1" && ownPlacesEachDepth.has(solved.rig.id) ? 0 : 1);
        // A rig's change and what its float says are written for every rig of the guide.
        expect(content.floatSays.length, name).toBeGreaterThanOrEqual(2);
        for (const said of [...content.floatSays, content.changeFirst!, ...content.findings])
          expect(text, name).toContain(bare(said));
        if (content.otherDepth) expect(text, name).toContain(bare(content.otherDepth));
        for (const key of ["name-line", "write-depth"] as const)
          expect(text, name).toContain(bare(kit.words(`card.${key}`)));
        expect(text, name).toContain(`0 ${kit.words("drawing.rig.from-here")}`);
        const drawnTip = kit.words("drawing.rig.spoken-tip", { tip: plain(content.drawn.tip) });
        expect(figuresOf(card.front.items).map(plain), name).toContain(drawnTip);
        expect(card.taken, name).toEqual(expect.arrayContaining([...least]));
        // A scale has its unit apart from its figures.
        const lines = [card.front, card.back].flatMap(({ items }) =>
          linesOf(withoutFigures(items)).map(({ text: line }) => line.trim()),
        );
        for (const [i, line] of lines.entries())
          if (/[\d¼½¾]$/.test(line))
            expect(lines[i + 1] ?? "", name).not.toMatch(/^(?:mm|cm|m|in|ft|lb|kg|g|ml|s|min|%)\b/);
        const sizesPt = [...linesOf(card.front.items), ...linesOf(card.back.items)].map(
          ({ sizeMm }) => sizeMm / mmPerPoint,
        );
        expect(Math.min(...sizesPt), name).toBeGreaterThanOrEqual(8 - 1e-9);
        least = card.taken;
      }
      if (content.depths.length > 3) expect(least, solved.rig.id).toContain("every-depth");
      const advice = adviceParts.filter((part) => part !== "every-depth" && part !== "depth-between");
      expect(least, solved.rig.id).toEqual(expect.arrayContaining(advice));
      if (content.depthBetween) expect(least, solved.rig.id).toContain("depth-between");
      expect(mustParts.filter((part) => !least.includes(part)).sort(), solved.rig.id).toEqual(
        [
          ...(content.findings.length > 0 ? [] : ["findings"]),
          ...(content.otherDepth ? [] : ["other-depth"]),
        ].sort(),
      );
    }
  });
});
