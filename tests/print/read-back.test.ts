import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import jsQR from "jsqr";
import { beforeAll, describe, expect, test } from "vitest";
import { sampleAvon, sampleWaggler } from "../support/sample-rig.ts";
import { type Dots, dotsOf } from "./raster.ts";
import { rawPdf } from "./raw-pdf.ts";
import { readPdf } from "./read-pdf.ts";
import { printedOfTwoRigs, sampleAddress as site } from "./sample-print.ts";
import { lengthOf, type Segment, segmentsOf } from "./segments.ts";
import { elementsOf } from "./ua/rule.ts";

/** Points of a millimetre. Source: ISO 32000-1, section 8.3.2.3: 72 to the inch. */
const pt = 72 / 25.4;
const papers = ["A4", "Letter"] as const;
const files = new Map<string, ReadonlyMap<string, Uint8Array>>();

beforeAll(async () => {
  for (const paper of papers) files.set(paper, await printedOfTwoRigs(paper));
}, 240_000);

/** Sources: ISO/IEC 7810 (ID-1), ISO 216 (A4 to A7), ANSI/ASME Y14.1 (Letter is 8.5 × 11 in). */
const sizesMm = {
  "": [85.6, 53.98],
  "-a7": [74, 105],
  "-a6": [105, 148],
  "-a5": [148, 210],
  "-quarter-letter": [107.95, 139.7],
  "-half-letter": [139.7, 215.9],
  A4: [210, 297],
  Letter: [215.9, 279.4],
} as const;

function pdfs(paper: string): [string, Uint8Array][] {
  return [...files.get(paper)!].filter(([path]) => path.endsWith(".pdf"));
}

describe.each(papers)("on %s", (paper) => {
  test("every page has the size of its card or paper, to 0.01 mm", async () => {
    let cards = 0;
    for (const [path, bytes] of pdfs(paper)) {
      const [, suffix] =
        /^cards\/(?!sheet)[a-z-]+?(-a[567]|-(?:quarter|half)-letter)?\.pdf$/.exec(path) ?? [];
      const isCard = /^cards\/(?!sheet)/.test(path);
      if (isCard) cards += 1;
      const [widthMm, heightMm] = sizesMm[isCard ? ((suffix ?? "") as "-a7") : paper];
      for (const { box } of (await readPdf(bytes)).pages) {
        expect(Math.abs((box[2]! - box[0]!) / pt - widthMm), path).toBeLessThan(0.01);
        expect(Math.abs((box[3]! - box[1]!) / pt - heightMm), path).toBeLessThan(0.01);
      }
    }
    expect(cards).toBe(8);
  });

  test("every sheet, strip and gauge has a bar of 100 mm, level, inside the unprintable edge; none is on cards that fill it", async () => {
    const wanted = pdfs(paper).filter(([path]) => /sheet|strip|gauge/.test(path));
    expect(wanted.length).toBeGreaterThan(10);
    for (const [path, bytes] of wanted) {
      const filled = /sheet-(a[56]|quarter|half)/.test(path);
      for (const [i, { content }] of (await rawPdf(bytes)).pages.entries()) {
        const bars = segmentsOf(content).filter(
          (one) => Math.abs(lengthOf(one) - 100 * pt) < 1e-3 && Math.abs(one.from[1] - one.to[1]) < 1e-6,
        );
        expect(bars, path).toHaveLength(filled && i > 0 ? 0 : 1);
        const [bar] = bars;
        if (!bar) continue;
        const ends = [bar.from[0], bar.to[0]].sort((a, b) => a - b);
        expect(ends[0]! / pt).toBeGreaterThan(6.35);
        expect(ends[1]! / pt).toBeLessThan(sizesMm[paper][0] - 6.35);
      }
    }
  });

  test("the ruler on a card's front is 80 mm in true millimetres, and so is the scale beside its tip", async () => {
    const fronts = pdfs(paper).filter(([path]) => /^cards\/(?!sheet)/.test(path));
    expect(fronts.length).toBe(8);
    for (const [path, bytes] of fronts) {
      const [ruler, ...others] = scalesOf(segmentsOf((await rawPdf(bytes)).pages[0]!.content));
      expect(ruler, path).toHaveLength(81);
      expect(others, path).toHaveLength(1);
      // The sample rigs show 15 mm of tip; their scale goes on above it.
      expect(others[0]!.length, path).toBeGreaterThan(16);
      for (const scale of [ruler!, others[0]!]) {
        for (const [i, at] of scale.entries()) expect((at - scale[0]!) / pt, path).toBeCloseTo(i, 3);
      }
    }
  });

  test("a strip's ruler is 200 mm long on the page, and its centimetres are", async () => {
    for (const [, bytes] of pdfs(paper).filter(([path]) => path.includes("strip-"))) {
      const segments = segmentsOf((await rawPdf(bytes)).pages[0]!.content);
      const [ruler] = segments.filter((one) => Math.abs(lengthOf(one) - 200 * pt) < 1e-3);
      expect(ruler!.from[0]).toBeCloseTo(ruler!.to[0], 6);
      const ticks = segments
        .filter(({ from, to }) => Math.abs(from[0] - ruler!.from[0]) < 1e-6 && from[1] === to[1])
        .map(({ from }) => Math.round((1e4 * Math.abs(from[1] - ruler!.to[1])) / pt) / 1e4);
      for (let cm = 0; cm <= 20; cm++) expect(ticks.some((mm) => Math.abs(mm - 10 * cm) < 1e-3)).toBe(true);
    }
  });
});

/**
 * Where the lines of each scale stand along it [pt], the longest scale first: at least ten short lines that begin on one
 * line and stand across it.
 */
function scalesOf(segments: readonly Segment[]): number[][] {
  const scales = new Map<string, Set<number>>();
  for (const { from, to } of segments.filter((one) => lengthOf(one) < 3 * pt)) {
    for (const [across, along] of [
      [0, 1],
      [1, 0],
    ] as const) {
      if (from[across] === to[across] || Math.abs(from[along] - to[along]) > 1e-6) continue;
      const key = `${across} ${from[across].toFixed(3)}`;
      scales.set(key, (scales.get(key) ?? new Set()).add(Math.round(from[along] * 1e6) / 1e6));
    }
  }
  return [...scales.values()]
    .map((places) => [...places].sort((a, b) => a - b))
    .filter(({ length }) => length >= 10)
    .sort((a, b) => b.length - a.length);
}

const mutool = spawnSync("mutool", ["-v"]).error === undefined;

/** Dots to the inch of a printer. */
const dpi = 300;

/** A page as such a printer makes it. */
function dotsAt300(pdf: Uint8Array, page: number): Dots {
  const folder = mkdtempSync(join(tmpdir(), "codes-"));
  try {
    const [input, output] = [join(folder, "in.pdf"), join(folder, "out.png")];
    writeFileSync(input, pdf);
    spawnSync("mutool", ["draw", "-q", "-r", String(dpi), "-c", "rgb", "-o", output, input, String(page)]);
    return dotsOf(readFileSync(output));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** A part of a page [pt, from the bottom left], as dots. */
function cut({ width, height, data }: Dots, [left, bottom, right, top]: readonly number[]): Dots {
  const [x0, x1] = [Math.floor((left! * dpi) / 72), Math.ceil((right! * dpi) / 72)];
  const [y0, y1] = [height - Math.ceil((top! * dpi) / 72), height - Math.floor((bottom! * dpi) / 72)];
  const rows = Array.from({ length: y1 - y0 }, (_, y) =>
    data.subarray(4 * ((y0 + y) * width + x0), 4 * ((y0 + y) * width + x1)),
  );
  return { width: x1 - x0, height: y1 - y0, data: Buffer.concat(rows) };
}

const isWhite = ({ data }: Dots) => data.every((value) => value > 250);

describe.skipIf(!mutool)("the printed sheet at 300 dpi", () => {
  // The back of the cards, behind the sheet that is printed first. Modules: 0.4 mm. On smaller cards a code would take the room of what must stand.
  test.each([["sheet-a5", 4, 0.4]] as const)(
    "%s has a code for each rig that reads, large enough and clear all round",
    async (name, page, leastMm) => {
      const bytes = files.get("A4")!.get(`cards/${name}.pdf`)!;
      const pdf = await rawPdf(bytes);
      const dots = dotsAt300(bytes, page);
      const codes = elementsOf(pdf).filter(
        ({ type, alt, content }) =>
          type === "Figure" && alt!.includes(site) && content[0]!.page === pdf.pages[page - 1]!.ref,
      );
      const read = codes.map(({ box }) => {
        const [left, bottom, right, top] = box as [number, number, number, number];
        // The largest code that fits a card leaves more than this round its quiet zone.
        const wide = 6;
        const around = cut(dots, [left - wide, bottom - wide, right + wide, top + wide]);
        const code = jsQR(new Uint8ClampedArray(around.data), around.width, around.height)!;
        const modulePt = (right - left) / (17 + 4 * code.version);
        expect(modulePt / pt).toBeGreaterThanOrEqual(leastMm - 1e-3);
        // Paper is no whole number of dots high, so the page lies up to a dot off, and a dot at an edge may be grey.
        const dot = (2 * 72) / dpi;
        const quiet = 4 * modulePt - dot;
        for (const band of [
          [left - quiet, bottom - quiet, right + quiet, bottom - dot],
          [left - quiet, top + dot, right + quiet, top + quiet],
          [left - quiet, bottom - quiet, left - dot, top + quiet],
          [right + dot, bottom - quiet, right + quiet, top + quiet],
        ]) {
          expect(isWhite(cut(dots, band))).toBe(true);
        }
        return code.data;
      });
      const wanted = [sampleWaggler, sampleAvon].map(({ rig }) => `${site}/rigs/${rig.id}.html`);
      expect(read.sort()).toEqual(wanted.sort());
    },
    60_000,
  );
});

describe("bytes", () => {
  test("a pocket card alone is under 40 kB", () => {
    for (const { rig } of [sampleWaggler, sampleAvon]) {
      expect(files.get("A4")!.get(`cards/${rig.id}.pdf`)!.length).toBeLessThan(40_000);
    }
  });
});
