import { drawPictures } from "../../src/drawing/pictures.ts";
import type { OutputFile } from "../../src/markup/output.ts";
import type { Guide, Library, RigEntry } from "../../src/model/library.ts";
import type { SolvedRig } from "../../src/model/solved.ts";
import { type PrintInput, printFiles } from "../../src/print/print-files.ts";
import { drawingKit } from "../support/drawing-kit.ts";
import { sampleAvon, sampleRigs, sampleWaggler } from "../support/sample-rig.ts";

export const sampleGuide: Guide = {
  title: "Float Fishing at Makebelieve Pool",
  publisher: "Makebelieve Junior Anglers",
  language: "en",
  units: "metric",
  scaleId: "trade",
  tubId: "tub",
  leadRule: { place: "here", allowedUpToG: 0.06, source: "none", checked: "2026-05-01" },
  rules: {},
  contacts: [],
  leadBreach: "warning",
  plummets: [],
  conditions: { tempC: 15, salinity: 0 },
  paper: "A4",
  rodLengthMm: 3600,
  edition: "2026-05-01",
};

export function sampleInput(guide: Partial<Guide> = {}, rigs: readonly SolvedRig[] = sampleRigs): PrintInput {
  return {
    guide: { ...sampleGuide, ...guide },
    rigs: rigs.map((solved) => ({ entry: entryOf(solved), solved })),
    markings: new Map(rigs.map(({ rig: { float } }) => [float.id, "2 AAA"])),
    plans: [],
    swims: [],
    shelves: [],
    sessions: [],
    handouts: {
      lessons: [],
      pages: [],
      drawings: drawPictures({ library: {} as Library, solved: new Map(), images: new Map() }),
      liveBody: ({ body }) => body,
    },
    images: new Map(),
    kit: drawingKit,
    dataOf: ({ rig }) => JSON.stringify({ id: rig.id }),
    date: "2026-05-01",
  };
}

function entryOf({ rig }: SolvedRig): RigEntry {
  const { id, title, purpose } = rig;
  return {
    id,
    path: `rigs/${id}.md`,
    placeOf: () => ({ file: `rigs/${id}.md` }),
    title,
    summary: purpose,
    body: { type: "root", children: [] },
    rig,
    level: "first",
    catches: ["roach"],
    useWhen: ["The water is calm."],
    notWhen: ["The wind is up."],
    changeFirst: ["Move the telltale."],
  };
}

export const sampleAddress = "https://makebelieve.example";

const twoRigs = new Map<Guide["paper"], Promise<ReadonlyMap<string, Uint8Array>>>();

/** All that is printed of two rigs of a guide with an address, by path; made once for the tests that only read it. */
export function printedOfTwoRigs(paper: Guide["paper"]): Promise<ReadonlyMap<string, Uint8Array>> {
  const guide = { siteAddress: sampleAddress, paper };
  const files = twoRigs.get(paper) ?? printed(sampleInput(guide, [sampleWaggler, sampleAvon]));
  twoRigs.set(paper, files);
  return files;
}

/** Everything printed, by path. */
export async function printed(input: PrintInput): Promise<Map<string, Uint8Array>> {
  const files = new Map<string, Uint8Array>();
  for await (const { path, content } of printFiles(input) as AsyncIterable<OutputFile>) {
    files.set(path, typeof content === "string" ? new TextEncoder().encode(content) : content);
  }
  return files;
}
