import { readFileSync } from "node:fs";
import type { Root } from "mdast";
import remarkGfm from "remark-gfm";
import remarkParse from "remark-parse";
import { unified } from "unified";
import { parse } from "yaml";
import { drawFilms, drawPictures } from "../../src/drawing/pictures.ts";
import type { OutputFile } from "../../src/markup/output.ts";
import { makeAnew, once } from "../../src/model/kept.ts";
import type { Library, Prose, RigEntry } from "../../src/model/library.ts";
import type { SolvedRig } from "../../src/model/solved.ts";
import { withCardFaces } from "../../src/print/card-faces.ts";
import { fileHash } from "../../src/site/file-hash.ts";
import type { SiteInput } from "../../src/site/input.ts";
import { siteFiles } from "../../src/site/site-files.tsx";
import { reasonText } from "../../src/words/reason.ts";
import { rigTexts } from "../../src/words/rig-texts.ts";
import { feedText, waterText } from "../../src/words/water-text.ts";
import { drawingKit } from "../support/drawing-kit.ts";
import { sampleAvon, sampleRigs, sampleStick, sampleWaggler } from "../support/sample-rig.ts";
import { siteAssets } from "../support/site-assets.ts";

function markdown(text: string): Root {
  return unified().use(remarkParse).use(remarkGfm).parse(text);
}

function prose(folder: string, id: string, title: string, text: string): Prose {
  return { id, path: `${folder}/${id}.md`, title, summary: `About: ${title}.`, body: markdown(text) };
}

function rigEntry({ rig }: SolvedRig, level: RigEntry["level"], catches: string[]): RigEntry {
  return {
    ...prose("rigs", rig.id, rig.title, "## How it works\n\nSlowly.\n\n### In wind\n\nSink the line."),
    rig,
    placeOf,
    level,
    catches,
    useWhen: ["The water is calm."],
    notWhen: ["It blows."],
    changeFirst: ["Go shallower."],
  };
}

const lessonText = `## First

Tie the hook length. Then read the [safety page](../pages/safety.md) and the [waggler](../rigs/waggler-strung-out.md#notes-how-it-works).

| Size | What it is |
| --- | --- |
| AAA | large |

## Then

See [the next](../lessons/second.html). A hook link is weaker. The Tip shows.`;

const placeOf = () => ({ file: "sample", line: 1, column: 1 });

/** A small library around the sample rigs. */
export const sampleLibrary: Library = {
  lent: new Map(),
  leftOut: new Set(),
  guideFile: "content/guide.yaml",
  plans: [],
  swims: [],
  notes: [],
  shelves: [],
  sessions: [],
  images: new Map(),
  templates: new Map(),
  guide: {
    title: "Float Fishing from the First Knot",
    publisher: "Makebelieve Junior Anglers",
    siteAddress: "https://makebelieve.example/guide/",
    language: "en",
    units: "metric",
    scaleId: "trade",
    tubId: "full",
    leadRule: {
      place: "England and Wales",
      allowedUpToG: 0.06,
      allowedAboveG: 28.35,
      source: "sample",
      checked: "2026-11-20",
    },
    rules: {},
    contacts: [],
    leadBreach: "warning",
    plummets: [],
    conditions: { tempC: 12, salinity: 0 },
    paper: "A4",
    rodLengthMm: 3600,
    edition: "2026-11-20",
  },
  words: parse(readFileSync("content/words/en.yaml", "utf8")),
  scales: [
    {
      id: "trade",
      title: "Round figures",
      source: "Sample.",
      basis: "common practice",
      sizes: sampleWaggler.rig.tub.map(({ size, massG }) => ({ name: size, massG })),
    },
    {
      id: "other",
      title: "Another scale",
      source: "Sample.",
      basis: "from memory",
      sizes: [
        { name: "AAA", massG: 0.81 },
        { name: "No 8", massG: 0.07 },
        { name: "LG", massG: 3 },
      ],
    },
  ],
  tubs: [{ id: "full", title: "Full tub", scaleId: "trade", tub: sampleWaggler.rig.tub }],
  floats: sampleRigs.map(({ rig: { float } }) => ({
    ...prose("floats", float.id, float.title, "It stands up."),
    placeOf,
    float,
    marking: "2 AAA",
    basis: "from memory",
  })),
  baits: [
    { path: "content/baits/maggot.yaml", bait: sampleWaggler.rig.bait, notes: markdown("It wriggles.") },
    {
      path: "content/baits/corn.yaml",
      bait: { ...sampleWaggler.rig.bait, id: "corn", title: "Corn", fallMs: 0.1 },
      notes: markdown("Sweet."),
    },
  ],
  hooks: [],
  knots: [
    {
      id: "loop",
      title: "Overhand loop",
      joins: "loop at the end of a line",
      strengthShare: { low: 0.6, high: 0.8, basis: "common practice" },
      frame: [20, 10],
      steps: [],
      placeOf,
    },
  ],
  kits: [],
  rigs: [
    rigEntry(sampleWaggler, "first", ["roach", "rudd"]),
    rigEntry(sampleStick, "next", ["dace"]),
    rigEntry(sampleAvon, "next", ["chub"]),
  ],
  lessons: [
    { ...prose("lessons", "first", "Tie a loop", lessonText), order: 10, part: "Knots" },
    {
      ...prose("lessons", "second", "Shot the float", "## Only\n\nBack to [the first](first.md)."),
      order: 20,
      part: "Shot",
    },
  ],
  species: [
    {
      id: "roach",
      path: "content/species/roach.yaml",
      title: "Roach",
      also: ["small roach"],
      asks: "A slow fall.",
      notes: markdown("They shoal."),
    },
  ],
  synonyms: [["thunder", "lightning"]],
  glossary: [
    {
      term: "Hook length",
      meaning: "The last, weaker piece of line.",
      also: ["hook link"],
      unlinked: [],
      link: true,
      place: placeOf(),
    },
    { term: "Tie", meaning: "To make a knot.", also: [], unlinked: [], link: false, place: placeOf() },
    {
      term: "Tip",
      meaning: "The part of a float that shows.",
      also: [],
      unlinked: [],
      link: true,
      place: placeOf(),
    },
  ],
  changes: [
    {
      date: "2026-11-20",
      title: "A new lesson",
      summary: "Shot the float.",
      page: "lessons/second.html",
      place: placeOf(),
    },
  ],
  troubles: [
    {
      place: placeOf(),
      sign: "The tip rises",
      when: "on a bite",
      water: "either",
      shows: "rises-flat",
      causes: ["A fish lifts a shot."],
      remedies: ["Strike."],
    },
  ],
  pages: [prose("pages", "safety", "Stay safe", "## Rules\n\n- Ask first.\n\n## Water\n\nKeep back.")],
};

/** Stands for what is printed. */
export const samplePdf = "%PDF-1.7";

/** All that the site is made from, with the real style sheet, fonts and scripts; the same for all that ask. */
export const sampleSite = once(async (): Promise<SiteInput> => {
  const solved = new Map(sampleRigs.map((one) => [one.rig.id, one]));
  return {
    library: sampleLibrary,
    solved,
    drawings: drawPictures({ library: sampleLibrary, solved, images: new Map() }),
    films: drawFilms({ solved, library: sampleLibrary }),
    swims: [],
    kept: (_kind, _from, draw) => draw(drawingKit),
    keptPage: (_kind, _from, make) => make(),
    tried: (_from, draw) => draw(),
    images: new Map(),
    kit: drawingKit,
    assets: withCardFaces(await siteAssets(), sampleLibrary, makeAnew),
    liveBody: ({ body }) => body,
    inWater: (rig, depth) => waterText(rig, depth, drawingKit),
    feedPlaces: (rig) => feedText(rig, drawingKit),
    reason: (finding) => reasonText(finding, drawingKit.words, drawingKit.figures),
    rigTexts: rigTexts(drawingKit),
    sessions: [],
    printables: [
      {
        path: "site/cards/waggler-strung-out.pdf",
        title: "Waggler strung out",
        kind: "card",
        rigId: "waggler-strung-out",
        sizeBytes: 20000,
        hash: fileHash(samplePdf),
      },
      {
        path: "site/cards/all.pdf",
        title: "All cards",
        kind: "sheet",
        sizeBytes: 90000,
        hash: fileHash(samplePdf),
      },
    ],
  };
});

/** The files of the site, made once for all the tests that share their modules. */
export const sampleFiles = once(async (): Promise<readonly OutputFile[]> => {
  const files: OutputFile[] = [];
  for await (const file of siteFiles(await sampleSite())) files.push(file);
  return files;
});
