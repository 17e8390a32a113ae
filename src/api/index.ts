import { outputFiles, readContent } from "../build/build.ts";
import { solveLibrary } from "../build/solve-library.ts";
import { buildParts, type Read, type Solved } from "../build/stages.ts";
import { messageAsJson } from "../checks/reporter.ts";
import { buildSettings } from "../cli/build-settings.ts";
import { UsageError } from "../cli/command.ts";
import { contentFolders } from "../cli/content-option.ts";
import { disk } from "../cli/disk.ts";
import { withOutput } from "../cli/output/with-output.ts";
import { Trouble } from "../cli/trouble.ts";
import { first } from "../core/lists.ts";
import type { DrawingKit } from "../drawing/kit.ts";
import { drawRig } from "../drawing/rig/rig-drawing.ts";
import { drawingToSvg } from "../drawing/svg.ts";
import { hasErrors, type Message } from "../model/message.ts";
import { solveRig } from "../solve/solve-rig.ts";
import { reasonText } from "../words/reason.ts";
import type * as contract from "./contract.ts";
import type { DrawOptions, Outcome, Part, ReadGuide, SolvedGuide, Told } from "./contract.ts";

/** What a guide that was handed out stands for; nobody outside reaches into it. */
const inRead = new WeakMap<ReadGuide, Read & { readonly folders: readonly string[] }>();
const inSolved = new WeakMap<SolvedGuide, Solved & { readonly folders: readonly string[] }>();
/** Content folders of those whose files are being written: they are never written over. */
const ofFiles = new WeakMap<object, readonly string[]>();

const told = (message: Message): Told => {
  const { values, ...rest } = JSON.parse(messageAsJson(message));
  return rest;
};

function handedOut<K extends object, V>(inside: WeakMap<K, V>, handle: K, from: string): V {
  const value = inside.get(handle);
  if (!value) throw new Error(`this guide was not made by ${from}`);
  return value;
}

const named = (entries: readonly { readonly id: string; readonly title: string }[]) =>
  entries.map(({ id, title }) => ({ id, title }));

/** What messages call options of the command line, and who takes the same here. */
const namedHere = [
  ["--content", "readGuide"],
  ["--out", "write"],
] as const;

/** Does something, and tells what is in the way in the words of those who call this, not of the command line. */
async function inOwnWords<T>(work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    if (!(error instanceof UsageError || error instanceof Trouble)) throw error;
    error.message = namedHere.reduce((said, [option, here]) => said.replaceAll(option, here), error.message);
    throw error;
  }
}

const readGuide = (...asked: readonly string[]): Promise<Outcome<ReadGuide>> =>
  inOwnWords(() => readFolders(asked));

async function readFolders(asked: readonly string[]): Promise<Outcome<ReadGuide>> {
  if (asked.some((folder) => typeof folder !== "string"))
    throw new TypeError('readGuide takes folders one after another, such as readGuide("content")');
  const { folders, shipped } = await contentFolders(asked.length > 0 ? { content: asked } : {});
  const { value, messages } = await readContent(disk, folders, shipped);
  const listed = messages.map(told);
  if (!value || hasErrors(messages)) return { value: undefined, messages: listed };
  const { guide, rigs, lessons } = value.library;
  const handle = { title: guide.title, rigs: named(rigs), lessons: named(lessons) };
  inRead.set(handle, { ...value, folders: [...folders, ...(shipped ? [shipped] : [])] });
  return { value: handle, messages: listed };
}

const solve = async (guide: ReadGuide): Promise<Outcome<SolvedGuide>> => {
  const read = handedOut(inRead, guide, "readGuide");
  const { value, messages } = await solveLibrary(read);
  const listed = messages.map(told);
  if (!value) return { value: undefined, messages: listed };
  const handle = { title: guide.title, rigs: value.rigs };
  inSolved.set(handle, { ...value, folders: read.folders });
  return { value: handle, messages: listed };
};

const draw = (guide: SolvedGuide, rigId: string, options: DrawOptions = {}) => {
  const { rigs, kit } = handedOut(inSolved, guide, "solve");
  const found = rigs.find(({ rig }) => rig.id === rigId);
  if (!found)
    throw new Error(`there is no rig "${rigId}"; there are ${rigs.map(({ rig }) => rig.id).join(", ")}`);
  for (const [name, value] of Object.entries(options)) {
    if (value !== undefined && !(Number.isFinite(value) && value > 0))
      throw new TypeError(
        `${name} is ${typeof value === "number" ? value : JSON.stringify(value)}; give millimetres above 0 as a number`,
      );
  }
  const { depthMm, widthMm = 100, heightMm = 130, textMm = 3.5 } = options;
  const isKnown = depthMm === undefined || found.depths.some((depth) => depth.depthMm === depthMm);
  const solved = isKnown ? found : atDepth(found.rig, depthMm, kit);
  const depth = solved.depths.find((one) => one.depthMm === depthMm) ?? first(solved.depths);
  return drawRig(solved, depth, { widthMm, heightMm }, kit, { labels: "full", textMm });
};

function atDepth(rig: contract.Rig, depthMm: number, { words, figures }: DrawingKit): contract.SolvedRig {
  const solved = solveRig({ ...rig, depthsMm: [depthMm] });
  if (solved.ok) return solved.value;
  const said = solved.findings.map((finding) => reasonText(finding, words, figures)).join(" ");
  throw new Error(`${rig.id} cannot be had at ${depthMm} mm: ${said}`);
}

const svg: typeof contract.svg = (drawing) => drawingToSvg(drawing, { idPrefix: "drawing", theme: "print" });

const build = (guide: SolvedGuide, parts?: readonly Part[]) => {
  const solved = handedOut(inSolved, guide, "solve");
  const unknown = parts?.find((part) => !buildParts.includes(part));
  if (unknown !== undefined)
    throw new TypeError(`there is no part "${unknown}" to build; there are ${buildParts.join(", ")}`);
  const files = outputFiles(solved, { ...buildSettings(solved), ...(parts && { parts }) });
  ofFiles.set(files, solved.folders);
  return files;
};

const write: typeof contract.write = (folder, files) =>
  inOwnWords(() =>
    withOutput({ out: folder, contentFolders: ofFiles.get(files) ?? [], tell: () => {} }, (output) =>
      output.replace(files),
    ),
  );

// The package as other programs see it is what the contract says, no less and no more.
({ readGuide, solve, draw, svg, build, write }) satisfies typeof contract;

export { build, draw, readGuide, solve, svg, write };
