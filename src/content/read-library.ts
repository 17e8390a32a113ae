import type { z } from "zod";
import { byId } from "../core/lists.ts";
import { type Keep, makeAnew } from "../model/kept.ts";
import type { Lesson, LessonPlan, Library, PlaceOf, Prose } from "../model/library.ts";
import { bytesLimit, limits } from "../model/limits.ts";
import { hasErrors, type Message, message, type Staged } from "../model/message.ts";
import type { WordTree } from "../model/word-tree.ts";
import { makeWords } from "../words/words.ts";
import { begunTexts } from "./begun-texts.ts";
import { leftOutBy } from "./chosen.ts";
import { guideOver, withoutRefused } from "./layers.ts";
import { linkBait } from "./link/bait-link.ts";
import { linkFloat } from "./link/float-link.ts";
import { guideOf } from "./link/guide-link.ts";
import { linkKit } from "./link/kit-link.ts";
import { linkLines } from "./link/line-link.ts";
import { linkPlan } from "./link/plan-link.ts";
import { changesOf, speciesOf, termsOf, troublesOf } from "./link/reference-link.ts";
import { linkRig, lookUpNames } from "./link/rig-link.ts";
import { linkSession } from "./link/session-link.ts";
import { linkShelf } from "./link/shelf-link.ts";
import { linkScale, linkTub } from "./link/shot-link.ts";
import { swimsOf } from "./link/swims-of.ts";
import { lookUpFont, readOwnFont } from "./own-font.ts";
import { readImages } from "./own-images.ts";
import { readTemplates } from "./read-templates.ts";
import { readWords } from "./read-words.ts";
import { Reading, type ReadProse } from "./reading.ts";
import { choosingSchema } from "./schema/choosing-schema.ts";
import { guideSchema } from "./schema/guide-schema.ts";
import { knotSchema } from "./schema/knot-schema.ts";
import { notesSchema } from "./schema/notes-schema.ts";
import { planSchema, toolsSchema } from "./schema/plan-schema.ts";
import {
  changesSchema,
  glossarySchema,
  linesSchema,
  speciesSchema,
  synonymsSchema,
  troublesSchema,
} from "./schema/reference-schema.ts";
import { lessonSchema, pageSchema, rigSchema } from "./schema/rig-schema.ts";
import { sessionSchema } from "./schema/session-schema.ts";
import { shelfSchema } from "./schema/stock-schema.ts";
import { swimSchema } from "./schema/swim-schema.ts";
import {
  baitSchema,
  floatSchema,
  hooksSchema,
  kitSchema,
  scaleSchema,
  tubSchema,
} from "./schema/tackle-schema.ts";
import { strayFiles } from "./stray-files.ts";
import { noHookTwice, noOrderTwice } from "./taken-twice.ts";
import { tooMuch } from "./text-limits.ts";
import type { Source } from "./world.ts";

/**
 * The content as one checked value: every file held against its schema, every name looked up. It is there only when no
 * message is an error; all errors of all files are found in one run. A file that was lent to the guide stops nothing: it
 * is left out.
 */
export function readLibrary(
  given: ReadonlyMap<string, Source>,
  keep: Keep = makeAnew,
): Staged<Library | undefined> {
  const sources = withoutRefused(given);
  const beyond = tooMuchToRead(sources);
  if (beyond) return { value: undefined, messages: [beyond] };
  const own = readOwnFont(sources);
  const words = readWords(sources, own.font, keep);
  if (!words.value) return { value: undefined, messages: [...own.messages, ...words.messages] };
  const reading = new Reading(sources, makeWords(words.value), own.font, keep);
  reading.messages.push(...own.messages, ...words.messages);
  const library = linkLibrary(reading, words.value);
  reading.messages.push(...strayFiles(sources), ...begunTexts(sources));
  const { broken, messages } = lentWithErrors(sources, reading.messages);
  if (!library || hasErrors(messages)) return { value: undefined, messages };
  return { value: { ...library, leftOut: new Set([...library.leftOut, ...broken]) }, messages };
}

/** Folder and name of a file of the content, as `rigs/stick-tapered`. */
const keyOf = ({ path }: Source) => path.replace(/\.\w+$/, "").normalize("NFC");

/** Files of the library that do not go with what the guide says elsewhere: each is told once, and stops nothing. */
function lentWithErrors(
  sources: ReadonlyMap<string, Source>,
  messages: readonly Message[],
): { readonly broken: readonly string[]; readonly messages: readonly Message[] } {
  const lent = new Map(
    [...sources.values()].flatMap((source) => (source.fromLibrary ? [[source.file, keyOf(source)]] : [])),
  );
  const broken = new Map<string, Message>();
  const others: Message[] = [];
  for (const told of messages) {
    const key = told.severity === "error" ? lent.get(told.place.file) : undefined;
    if (key === undefined) others.push(told);
    else if (!broken.has(key)) broken.set(key, message("lent-left-out", told.place, { of: told }));
  }
  return { broken: [...broken.keys()], messages: [...others, ...broken.values()] };
}

/** More content than is read at all, at the file where it goes beyond. */
function tooMuchToRead(sources: ReadonlyMap<string, Source>): Message | undefined {
  let bytes = 0;
  for (const [at, source] of [...sources.values()].entries()) {
    if (!source.content) bytes += source.bytes;
    const { file } = source;
    if (at + 1 > limits.files.most) return tooMuch("files", sources.size, { file });
    if (source.bytes <= limits[bytesLimit(source.path)].most && bytes > limits.contentBytes.most) {
      return tooMuch("contentBytes", bytes, { file });
    }
  }
  return undefined;
}

/** Every file of the content, held against its schema. */
function readFiles(reading: Reading) {
  const need = "it names the guide, its units, scale, tub and lead rule";
  const guide = reading.layered("guide.yaml", guideSchema, need, guideOver);
  const hooks = reading.file("hooks.yaml", hooksSchema, "it lists hook sizes and what they weigh");
  const baits = reading.folder("baits", baitSchema);
  const scales = byId(reading.folder("shot", scaleSchema).map((read) => linkScale(read, reading)));
  const tubs = byId(reading.folder("tubs", tubSchema).map((read) => linkTub(read, scales, reading)));
  // News of the library's own edition are none of a guide that only borrows from it.
  const isNews = !reading.sources.get("changes.yaml")?.fromLibrary;
  const read = {
    guide,
    hooks,
    baits,
    scales,
    tubs,
    floats: reading.folder("floats", floatSchema),
    rigs: reading.prose("rigs", rigSchema),
    kits: reading.folder("kits", kitSchema),
    lessons: reading.prose("lessons", lessonSchema),
    plans: reading.prose("plans", planSchema),
    tools: reading.optionalFile("tools.yaml", toolsSchema),
    pages: reading.prose("pages", pageSchema),
    species: reading.folder("species", speciesSchema),
    knots: reading.folder("knots", knotSchema),
    swims: reading.folder("swims", swimSchema),
    notes: reading.folder("notes", notesSchema),
    shelves: reading.folder("shelves", shelfSchema),
    sessions: reading.folder("sessions", sessionSchema),
    lines: reading.optionalFile("lines.yaml", linesSchema),
    choosing: reading.optionalFile("choosing.yaml", choosingSchema),
    glossary: reading.optionalFile("glossary.yaml", glossarySchema),
    troubles: reading.optionalFile("troubles.yaml", troublesSchema),
    synonyms: reading.optionalFile("synonyms.yaml", synonymsSchema),
    changes: isNews ? reading.optionalFile("changes.yaml", changesSchema) : undefined,
  };
  const { images, messages } = readImages(reading.sources);
  reading.messages.push(...messages);
  return { ...read, images };
}

function linkLibrary(reading: Reading, words: WordTree): Library | undefined {
  const read = readFiles(reading);
  const { scales, tubs, images } = read;
  if (!read.guide || !read.hooks) return undefined;

  const { value: typed, yaml } = read.guide;
  const scale = reading.lookUp(scales, typed["shot-scale"], "shot scale", yaml.placeOf(["shot-scale"]));
  const tub = reading.lookUp(tubs, typed.tub, "tub", yaml.placeOf(["tub"]));
  if (!scale || !tub) return undefined;

  const logo = typed.look?.logo;
  if (logo !== undefined) reading.lookUp(images, logo, "picture in images/", yaml.placeOf(["look", "logo"]));
  lookUpFont(typed.look?.font, yaml.placeOf(["look", "font"]), reading);
  const guide = guideOf(read.guide, reading);
  const floats = byId(read.floats.flatMap((one) => linkFloat(one, scale, reading) ?? []));
  const baits = byId(read.baits.map((one) => linkBait(one, reading)));
  noHookTwice(read.hooks, reading);
  noOrderTwice(read.lessons, reading);
  const hooks = new Map(
    read.hooks.value.map(({ size, mass, basis }) => [size, { size, massG: mass, basis }]),
  );
  const knots = byId(read.knots.map(({ id, value, yaml }) => ({ id, ...value, placeOf: yaml.placeOf })));
  const species = read.species.map((one) => speciesOf(one, reading));
  const lines = read.lines && linkLines(read.lines, species, reading);
  const shelves = { floats, baits, hooks, knots, scale, tubs, guide, lines };
  const rigs = byId(read.rigs.flatMap((one) => linkRig(one, shelves, reading) ?? []));
  lookUpNames(shelves, reading);
  const lessons = lessonsOf(read.lessons);
  const all = {
    lent: lentFiles(reading.sources),
    guide,
    guideFile: read.guide.source.file,
    words,
    images,
    ...(reading.font && { font: reading.font }),
    templates: readTemplates(reading),
    scales: [...scales.values()],
    tubs: [...tubs.values()],
    floats: [...floats.values()],
    baits: [...baits.values()],
    hooks: [...hooks.values()],
    knots: [...knots.values()],
    rigs: [...rigs.values()],
    kits: read.kits.flatMap((one) => linkKit(one, shelves, rigs, reading) ?? []),
    lessons,
    pages: read.pages.map(proseOf),
    species,
    ...swimsOf(read, [...rigs.values()], species, reading),
    ...(lines && { lines }),
    glossary: termsOf(read.glossary, reading).sort((a, b) =>
      a.term.toLowerCase() < b.term.toLowerCase() ? -1 : 1,
    ),
    troubles: troublesOf(read.troubles),
    synonyms: read.synonyms?.value ?? [],
    changes: changesOf(read.changes),
  };
  const atHand = atHandOf(read, { ...all, scale }, reading);
  const placeOf: PlaceOf = (path) => yaml.placeOf(["library", ...path]);
  return { ...all, ...atHand, leftOut: leftOutBy(typed.library, all, placeOf, reading) };
}

function lentFiles(sources: ReadonlyMap<string, Source>): ReadonlyMap<string, string> {
  const lent = [...sources.values()].filter(({ fromLibrary }) => fromLibrary);
  return new Map(lent.map((source) => [keyOf(source), source.file]));
}

/** What is made of all the rest: coaches' plans, what shops have, and days by the water. */
function atHandOf(
  read: ReturnType<typeof readFiles>,
  shelves: Parameters<typeof plansOf>[1] & Omit<Parameters<typeof linkSession>[1], "plans">,
  reading: Reading,
): Pick<Library, "plans" | "shelves" | "sessions"> {
  const plans = plansOf(read, shelves, reading);
  return {
    plans,
    sessions: read.sessions.flatMap((one) => linkSession(one, { ...shelves, plans }, reading) ?? []),
    shelves: read.shelves.map((one) => linkShelf(one, shelves, reading)),
  };
}

/** Coaches' plans in the order of their lessons. */
function plansOf(
  { plans, tools }: Pick<ReturnType<typeof readFiles>, "plans" | "tools">,
  shelves: Omit<Parameters<typeof linkPlan>[1], "tools">,
  reading: Reading,
): readonly LessonPlan[] {
  const all = plans.flatMap((one) => linkPlan(one, { ...shelves, tools: tools?.value ?? [] }, reading) ?? []);
  return shelves.lessons.flatMap(({ id }) => all.filter((plan) => plan.id === id));
}

/** In the order of the course. */
function lessonsOf(read: readonly ReadProse<z.output<typeof lessonSchema>>[]): readonly Lesson[] {
  return read
    .map((one) => ({ ...proseOf(one), order: one.value.order, part: one.value.part }))
    .sort((a, b) => a.order - b.order || (a.id < b.id ? -1 : 1));
}

function proseOf(read: ReadProse<{ title: string; summary: string }>): Prose {
  const { id, source, value, body } = read;
  return { id, path: source.file, title: value.title, summary: value.summary, body };
}
