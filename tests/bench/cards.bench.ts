import { PassThrough } from "node:stream";
import { NodeCompiler } from "@myriaddreamin/typst-ts-node-compiler";
import PDFDocument from "pdfkit";
import { bench, describe } from "vitest";
import type { Item, TextItem } from "../../src/drawing/model.ts";
import { mmPerPoint } from "../../src/markup/boxes.ts";
import type { SolvedRig } from "../../src/model/solved.ts";
import type { FinishedCard } from "../../src/print/cards/lay-out-card.ts";
import { sampleGuide } from "../print/sample-print.ts";
import { drawingKit } from "../support/drawing-kit.ts";
import { sampleAvon, sampleStick, sampleWaggler } from "../support/sample-rig.ts";
import { bundledTool } from "./bundled.ts";

type Tool = typeof import("../../src/layout/node-fonts.ts") &
  typeof import("../../src/print/cards/card-formats.ts") &
  typeof import("../../src/print/cards/card-sides.ts") &
  typeof import("../../src/print/cards/lay-out-card.ts") &
  typeof import("../../src/print/pdf/pdf.ts") &
  typeof import("../../src/solve/solve-rig.ts");

const { nodeFonts, cardFormats, cardSides, layOutCard, paintPdf, solveRig } = await bundledTool<Tool>(
  "cards",
  [
    "src/layout/node-fonts.ts",
    "src/print/cards/card-formats.ts",
    "src/print/cards/card-sides.ts",
    "src/print/cards/lay-out-card.ts",
    "src/print/pdf/pdf.ts",
    "src/solve/solve-rig.ts",
  ],
);

const count = 1000;

const fonts = nodeFonts();
const kit = { ...drawingKit, measure: fonts.measure };
const facts = { title: "Cards", author: "Club", language: "en", date: "2026-05-01" };

/** Rigs for water of ever another depth, so that no two cards say the same. */
const rigs: SolvedRig[] = Array.from({ length: count }, (_, i) => {
  const { rig } = [sampleWaggler, sampleStick, sampleAvon][i % 3]!;
  const solved = solveRig({ ...rig, depthsMm: rig.depthsMm.map((depth) => depth + 10 * Math.floor(i / 3)) });
  return solved.ok ? [solved.value] : [];
}).flat();

const laidOut = () => rigs.map((solved) => layOutCard(solved, cardFormats["ID-1"], sampleGuide, kit, fonts));
const cards = laidOut();

const linesOf = (items: readonly Item[]): TextItem[] =>
  items.flatMap((item) => (item.kind === "text" ? [item] : item.kind === "group" ? linesOf(item.items) : []));

const sidesOf = ({ front, back }: FinishedCard) => [front, back];

/** The words of a card in its sizes, to be set by others: without its drawing, its code and its tags. */
const words = cards.flatMap(sidesOf).map(({ widthMm, heightMm, items }) => ({
  widthMm,
  heightMm,
  lines: linesOf(items),
}));

function byPdfkit(): void {
  const document = new PDFDocument({ autoFirstPage: false });
  document.pipe(new PassThrough().resume());
  for (const face of ["regular", "bold"] as const) {
    document.registerFont(face, Buffer.from(fonts.files[face].bytes));
  }
  for (const { widthMm, heightMm, lines } of words) {
    document.addPage({ size: [widthMm / mmPerPoint, heightMm / mmPerPoint], margin: 0 });
    for (const { text, face, sizeMm, xMm, yMm } of lines) {
      document.font(face).fontSize(sizeMm / mmPerPoint);
      document.text(text, xMm / mmPerPoint, (yMm - sizeMm) / mmPerPoint, { lineBreak: false });
    }
  }
  document.end();
}

const escaped = (text: string) => text.replace(/[\\#$*_`<>@=\-+/~'"[\]]/g, "\\$&");

const markup = [
  '#set text(font: "IBM Plex Sans")',
  ...words.map(
    ({ widthMm, heightMm, lines }) =>
      `#page(width: ${widthMm}mm, height: ${heightMm}mm, margin: 2.6mm)[\n${lines
        .map(({ text, face, sizeMm }) => {
          const weight = face === "bold" ? ', weight: "semibold"' : "";
          return `#text(size: ${(sizeMm / mmPerPoint).toFixed(2)}pt${weight})[${escaped(text)}]`;
        })
        .join("\n")}\n]`,
  ),
].join("\n");

const typesetter = NodeCompiler.create({
  workspace: process.cwd(),
  fontArgs: [
    { fontBlobs: [fonts.files.regular.bytes, fonts.files.bold.bytes].map((one) => Buffer.from(one)) },
  ],
});

let edition = 0;

/** Another document each time, as what it has set it remembers. */
function byTypesetter(): void {
  edition += 1;
  typesetter.pdf({ mainFileContent: `${markup}\n#page[${edition}]` });
  typesetter.evictCache(0);
}

const few = { iterations: 3, time: 0, warmupIterations: 1, warmupTime: 0 };

/** The peers set the words alone; ours also draws, makes the code and tags all that it says. */
describe(`${rigs.length} pocket cards, no two alike, in one file`, () => {
  bench(
    "laid out and painted",
    () => {
      paintPdf(
        laidOut().flatMap(({ alone }) => cardSides(alone)),
        facts,
        fonts,
      );
    },
    few,
  );

  bench(
    "painted alone",
    () => {
      paintPdf(
        cards.flatMap(({ alone }) => cardSides(alone)),
        facts,
        fonts,
      );
    },
    few,
  );

  bench("their words by the typesetter", byTypesetter, few);

  bench("their words by pdfkit", byPdfkit, few);
});
