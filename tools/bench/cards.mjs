// Pocket cards, no two alike, laid out and painted into one file, and as near the same cards by a typesetter, a PDF library and
// a headless browser, in turn. `--cards 1000` says how many, `--runs 3` how often, `--json FILE` where the figures go, too,
// `--keep FOLDER` where one file of each goes, to be looked at.
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { parseArgs } from "node:util";
import { build } from "esbuild";
import { nodeBundle } from "../bundle-options.mjs";
import { partsOf } from "./card-parts.mjs";
import { byBrowser, byPdfkit, byTypesetter } from "./card-peers.mjs";
import { inTurn, machine, table } from "./contest.mjs";

const root = join(import.meta.dirname, "../..");
process.chdir(root);
const { values: asked } = parseArgs({
  options: {
    cards: { type: "string", default: "1000" },
    runs: { type: "string", default: "3" },
    without: { type: "string", default: "" },
    json: { type: "string" },
    keep: { type: "string" },
  },
});
const count = Number(asked.cards);

/** What lays out and paints cards, bundled as it is shipped. */
async function tool() {
  const folder = join(root, "node_modules/.cache/dotdown");
  const outfile = join(folder, "bench-cards.mjs");
  mkdirSync(folder, { recursive: true });
  const modules = [
    "build/build",
    "cli/disk",
    "drawing/palette",
    "layout/node-fonts",
    "model/card-content",
    "print/cards/card-formats",
    "print/cards/card-sides",
    "print/cards/lay-out-card",
    "print/pdf/pdf",
  ];
  const contents = modules.map((one) => `export * from "./src/${one}.ts";`).join("\n");
  await build({ ...nodeBundle, stdin: { contents, resolveDir: root }, outfile });
  return import(pathToFileURL(outfile).href);
}

const { solveContent, disk, nodeFonts, cardNotes, cardFormats, cardSides, layOutCard, paintPdf, printGrey } =
  await tool();
const { value } = await solveContent(disk, ["content"]);
const { library, rigs } = value;
const fonts = nodeFonts();
const kit = { ...value.kit, measure: fonts.measure };

/** Rigs of the shipped guide, round after round with depths, settings and places of shot of their own. */
const made = Array.from({ length: count }, (_, i) => {
  const solved = rigs[i % rigs.length];
  const round = Math.floor(i / rigs.length);
  const entry = library.rigs.find(({ id }) => id === solved.rig.id);
  const marking = library.floats.find(({ float }) => float.id === solved.rig.float.id)?.marking;
  return { solved: round === 0 ? solved : shifted(solved, round), notes: cardNotes(entry, marking) };
});

/** A rig for other water: deeper by a centimetre a round, its shot above the hook length half of that further up. */
function shifted({ rig, depths, ...solved }, round) {
  const moreMm = 10 * round;
  const higher = (shot) =>
    shot.fromHookMm > rig.hookLengthMm ? { ...shot, fromHookMm: shot.fromHookMm + moreMm / 2 } : shot;
  return {
    ...solved,
    rig: { ...rig, title: `${rig.title} ${round}` },
    depths: depths.map((depth) => ({
      ...depth,
      depthMm: depth.depthMm + moreMm,
      floatToHookMm: depth.floatToHookMm + moreMm,
      lineShot: depth.lineShot.map(higher),
    })),
  };
}

const facts = { title: "Cards", author: "Club", language: "en", date: library.guide.edition };
const laidOut = () =>
  made.map(({ solved, notes }) =>
    layOutCard(solved, cardFormats["ID-1"], library.guide, kit, fonts, { notes }),
  );
const cards = laidOut();
const sides = cards.flatMap(({ front, back }) => [partsOf(front, fonts), partsOf(back, fonts)]);
const { regular, bold } = fonts.files;
const given = { faces: { regular: regular.bytes, bold: bold.bytes }, greyOf: printGrey };

const browser = await byBrowser(sides, given);
const contestants = {
  "laid out and painted": () =>
    paintPdf(
      laidOut().flatMap(({ alone }) => cardSides(alone)),
      facts,
      fonts,
    ),
  "painted alone": () =>
    paintPdf(
      cards.flatMap(({ alone }) => cardSides(alone)),
      facts,
      fonts,
    ),
  "by the typesetter": byTypesetter(sides, given),
  "by the PDF library": byPdfkit(sides, given),
  "printed by a headless browser": browser.print,
};
for (const name of asked.without.split(",")) delete contestants[name];

if (asked.keep) {
  mkdirSync(asked.keep, { recursive: true });
  for (const [name, run] of Object.entries(contestants)) {
    const bytes = await run(0);
    if (ArrayBuffer.isView(bytes)) writeFileSync(join(asked.keep, `${name.replaceAll(" ", "-")}.pdf`), bytes);
  }
}
const rows = await inTurn(contestants, Number(asked.runs));
await browser.close();
process.stdout.write(
  `${count} pocket cards, ${asked.runs} runs\n\n${table(rows)}\n\n${JSON.stringify(machine())}\n`,
);
const figures = { date: new Date().toISOString().slice(0, 10), machine: machine(), cards: count, rows };
if (asked.json) writeFileSync(asked.json, `${JSON.stringify(figures, null, 2)}\n`);
