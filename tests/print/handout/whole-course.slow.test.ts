import { beforeAll, describe, expect, test } from "vitest";
import type { GroupItem, Item, TextItem } from "../../../src/drawing/model.ts";
import { nodeFonts } from "../../../src/layout/node-fonts.ts";
import { asTheyStand } from "../../../src/model/in-order.ts";
import { inMemory, makeAnew } from "../../../src/model/kept.ts";
import type { Guide } from "../../../src/model/library.ts";
import { layOutHandouts } from "../../../src/print/handout/handout-files.ts";
import type { TextPages } from "../../../src/print/handout/text-handout.ts";
import { makeFigures } from "../../../src/words/figures.ts";
import { realSite } from "../../site/real-site.ts";

const fonts = nodeFonts();

type Laid = ReturnType<typeof layOutHandouts>;

/** The texts of the shipped guide, as they are laid out for a paper and in a system of units. */
async function laidFor(paper: Guide["paper"], units: Guide["units"]): Promise<Laid> {
  const site = await realSite();
  const { lessons, pages, guide } = site.library;
  const figures = makeFigures(units, site.kit.words, guide.language);
  const press = {
    guide: { ...guide, paper, units },
    fonts,
    kit: { ...site.kit, figures, measure: fonts.measure },
    facts: (title: string) => ({ title, author: "", language: "en", date: "2026-05-01" }),
    keep: makeAnew,
    inOrder: asTheyStand,
    parts: makeAnew,
    pictures: makeAnew,
    marks: inMemory(Number.POSITIVE_INFINITY),
    textsFrom: "",
    from: "",
  };
  const { drawings, liveBody } = site;
  return layOutHandouts({ lessons, pages, drawings, liveBody, cards: new Map() }, press);
}

interface Line {
  readonly text: string;
  readonly yMm: number;
}

/** Lines of text in reading order, each with all that stands on it. */
function linesOf(items: readonly Item[], yMm = 0): Line[] {
  const lines: Line[] = [];
  for (const item of items) {
    const inside =
      item.kind === "group" && !item.artifact
        ? linesOf(item.items, yMm + item.yMm)
        : item.kind === "text"
          ? [lineOf(item, yMm)]
          : [];
    for (const line of inside) {
      const last = lines.at(-1);
      if (last && Math.abs(last.yMm - line.yMm) < 0.01)
        lines[lines.length - 1] = { ...last, text: last.text + line.text };
      else lines.push(line);
    }
  }
  return lines;
}

const lineOf = ({ text, yMm }: TextItem, down: number): Line => ({ text, yMm: yMm + down });

function groupsOf(items: readonly Item[]): GroupItem[] {
  return items.flatMap((item) =>
    item.kind === "group" && !item.artifact ? [item, ...groupsOf(item.items)] : [],
  );
}

/** What stands on one page of it; a group that goes on over pages has a name that all its parts have in common. */
const broken = (columns: TextPages["columns"], role: string) =>
  columns.flatMap((column) =>
    groupsOf(column).filter((group) => group.role === role && group.element !== undefined),
  );

const unit = /^(?:mm|cm|m|km|g|kg|ml|l|s|min|h|ft|in|lb|oz|pt|%|°C|×)(?![\p{L}\d])/u;

/** Whether a line ends with a figure, or a word or sign before one, whose other part begins the next line. */
function parted(line: string, next: string): boolean {
  const [end, start] = [line.trimEnd(), next.trimStart()];
  if (/[\d¼½¾]$/.test(end) && unit.test(start)) return true;
  return (/\bNo$/.test(end) && /^\d/.test(start)) || /×$/.test(end);
}

/** Paper, units, and how many sides the course may have: more on Letter, whose pages are lower, and in feet, which take more words. */
const cases = [
  ["A4", "metric first", 80],
  ["Letter", "imperial", 90],
] as const;

describe.each(cases)("the whole course on %s, told in %s units", (paper, units, mostSides) => {
  let laid: Laid;
  beforeAll(async () => {
    laid = await laidFor(paper, units);
  });

  const texts = () => [...laid.half, ...laid.whole, ...laid.booklet];

  test("has every text in every size", () => {
    expect(laid.half.length).toBeGreaterThan(30);
    expect(texts().flatMap(({ overflows }) => overflows)).toEqual([]);
  });

  test("parts no figure from its unit at the end of a line", () => {
    const wrong: string[] = [];
    let figures = 0;
    for (const { text, format, columns } of texts()) {
      for (const group of columns.flatMap(groupsOf).filter(({ role }) => role === "P" || role === "LBody")) {
        const lines = linesOf(group.items);
        figures += lines.filter((line) => /\d/.test(line.text)).length;
        for (const [i, line] of lines.entries()) {
          const next = lines[i + 1];
          if (next && parted(line.text, next.text))
            wrong.push(`${text.id}, ${format.name}: ${line.text} / ${next.text}`);
        }
      }
    }
    expect(wrong).toEqual([]);
    expect(figures).toBeGreaterThan(500);
  });

  test("parts no picture from its words, no heading, and no row of a table", () => {
    const wrong = texts().flatMap(({ text, format, columns }) =>
      ["Sect", "Figure", "H1", "H2", "H3", "TR"].flatMap((role) =>
        broken(columns, role).map(() => `${text.id}, ${format.name}: ${role}`),
      ),
    );
    expect(wrong).toEqual([]);
    const pictures = laid.whole.flatMap(({ columns }) => columns.flatMap(groupsOf));
    expect(pictures.filter(({ role }) => role === "Figure").length).toBeGreaterThan(60);
  });

  test("leaves no heading at the foot of a page", () => {
    const wrong = texts().flatMap(({ text, format, columns }) =>
      columns.flatMap((column) => {
        const last = groupsOf(column)
          .filter(({ role }) => /^(?:H[1-3]|P|LBody|TR|Figure)$/.test(role ?? ""))
          .at(-1);
        return /^H/.test(last?.role ?? "") ? [`${text.id}, ${format.name}`] : [];
      }),
    );
    expect(wrong).toEqual([]);
  });

  test("leaves no line of a paragraph alone, and no item of a list", () => {
    const wrong: string[] = [];
    let parts = 0;
    for (const { text, format, columns } of texts()) {
      const name = `${text.id}, ${format.name}`;
      for (const part of [...broken(columns, "P"), ...broken(columns, "LBody")]) {
        parts += 1;
        const lines = linesOf(part.items);
        if (lines.length < 2) wrong.push(`${name}: ${lines[0]?.text}`);
      }
      for (const part of broken(columns, "L")) {
        parts += 1;
        const items = groupsOf(part.items).filter(({ role }) => role === "LI");
        // An item that goes on over the page is not alone.
        if (items.length < 2 && items[0]?.element === undefined)
          wrong.push(`${name}: ${linesOf(part.items)[0]?.text}`);
      }
    }
    expect(wrong).toEqual([]);
    expect(parts).toBeGreaterThan(50);
  });

  test(`comes on at most ${mostSides} sides of whole sheets, each lesson once and the safety page`, () => {
    const sides = laid.whole
      .filter(({ page }) => page.startsWith("site/lessons/") || page === "site/safety.html")
      .map(({ columns, format }) => Math.ceil(columns.length / format.columns));
    expect(sides).toHaveLength(35);
    expect(sides.reduce((sum, count) => sum + count, 0)).toBeLessThanOrEqual(mostSides);
  });
});
