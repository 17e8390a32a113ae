import { entry, rising, withId } from "../core/lists.ts";
import { parseLoad } from "../core/tackle/load-notation.ts";
import type { ShotScale } from "../core/tackle/shot.ts";
import { sitePaths } from "../model/addresses.ts";
import { digestOnce } from "../model/digest.ts";
import type { FloatEntry, Library, Prose } from "../model/library.ts";
import { message } from "../model/message.ts";
import type { SolvedRig } from "../model/solved.ts";
import type { Figures } from "../words/figures.ts";
import { blocksOf, sentencesOf } from "./blocks.ts";
import { type Checked, type ContentCheck, toldOnce } from "./check.ts";
import { shotNames } from "./shot-names.ts";
import { linkedPages, liveAttributes, pageTexts } from "./texts.ts";

/** A figure in a sentence that the tool could put in, and the directive that does. */
interface Typed {
  readonly at: number;
  readonly figure: string;
  readonly directive: string;
}

/**
 * Figures typed by hand that the tool knows: they go stale when a float, a scale or a rig changes. To keep false alarms
 * few a figure is only held against what its own sentence is about.
 */
export const typedFigures: ContentCheck = (checked) => {
  const { library } = checked;
  const scale = withId(library.scales, library.guide.scaleId);
  const floats = library.floats.map(({ id, title, path, marking }) => [id, title, path, marking]);
  const others = [scale, floats, checked.saidFrom];
  const aboutOf = lookingUp(checked);
  const tell = toldOnce(
    checked,
    "typed figures",
    others,
    (prose: Prose) => {
      const about = aboutOf(prose);
      return blocksOf(prose.body, prose.path).flatMap((block) =>
        sentencesOf(block).flatMap(({ at, text }) =>
          [
            ...typedWeights(text, scale),
            ...typedMarkings(text, floatsOf(text, prose, about, library), scale),
            ...typedDepths(text, about.rigs, checked.figures),
            ...typedStrengths(text, about.rigs, checked.figures),
          ].map(({ figure, directive, ...typed }) =>
            message("typed-figure", block.placeAt(at + typed.at), { figure, directive }),
          ),
        ),
      );
    },
    (prose) => aboutOf(prose).rigs.map(({ rig }) => digestOnce(rig)),
  );
  return [...pageTexts(library), ...library.floats].flatMap(tell);
};

/** What a text is about. */
interface About {
  /** The rig whose text it is, and those that it leads to or shows, in the order of the guide. */
  readonly rigs: readonly SolvedRig[];
  readonly floatIds: ReadonlySet<string>;
}

/** Looks up what a text is about, in a guide whose rigs may be thousands. */
function lookingUp({ library, rigs }: Checked): (prose: Prose) => About {
  const entries = new Map(library.rigs.map((entry) => [entry.path, entry]));
  const places = new Map(rigs.map(({ rig }, at) => [rig.id, at]));
  const byPage = new Map(rigs.map(({ rig }) => [sitePaths.rig(rig.id), rig.id]));
  return (prose) => {
    const own = entries.get(prose.path);
    const linked = [...linkedPages(prose)].map((page) => byPage.get(page));
    const ids = new Set([own?.id, ...linked, ...liveAttributes(prose, "rig")]);
    const found = [...ids].flatMap((id) => (id === undefined ? [] : (places.get(id) ?? [])));
    return {
      rigs: rising(found).map((at) => entry(rigs, at)),
      floatIds: new Set([...liveAttributes(prose, "float"), ...(own ? [own.rig.float.id] : [])]),
    };
  };
}

/** Loads in a sentence: `2 AAA`, `one BB`, a bare `No 4`. */
function loadsIn(sentence: string, scale: ShotScale) {
  return [...sentence.matchAll(shotNames(scale))].flatMap(({ 0: found, 1: count, 2: size, index }) => {
    const text = `${count ?? 1} ${size!.replace(/\s/, " ")}`;
    const parsed = parseLoad(text, scale);
    return parsed.ok
      ? [{ at: index, found, text, massG: parsed.value.massG, counted: count !== undefined }]
      : [];
  });
}

/** The weight of a size or load, beside its name: `a BB weighs 0.4 g`. */
function typedWeights(sentence: string, scale: ShotScale): Typed[] {
  const loads = loadsIn(sentence, scale);
  return [...sentence.matchAll(/(\d+(?:\.\d+)?)\sg(?![\p{L}])/gu)].flatMap(
    ({ 0: figure, 1: grams, index }) => {
      const load = loads.find(({ massG }) => Math.abs(massG - Number(grams)) < 1e-6);
      return load ? [{ at: index, figure, directive: `:weight[]{load="${load.text}"}` }] : [];
    },
  );
}

/** What is written on a float that the sentence is about: `the stick is marked 4 No 4`. */
function typedMarkings(sentence: string, floats: readonly FloatEntry[], scale: ShotScale): Typed[] {
  const loads = loadsIn(sentence, scale).filter(({ counted }) => counted);
  return floats.flatMap(({ id, marking }) =>
    loads
      .filter(({ text }) => text === marking)
      .map(({ at, found }) => ({ at, figure: found, directive: `:marking[]{float=${id}}` })),
  );
}

/** Floats that a sentence names, and where it speaks of a marking, those that its text is about. */
function floatsOf(
  sentence: string,
  prose: Prose,
  { floatIds }: About,
  { floats }: Library,
): readonly FloatEntry[] {
  const said = sentence.toLowerCase().replace(/\s+/g, " ");
  const marked = /\bmark(?:ed|ing|s)?\b/.test(said);
  return floats.filter(
    ({ id, title, path }) =>
      said.includes(title.toLowerCase()) || path === prose.path || (marked && floatIds.has(id)),
  );
}

/** The draught or the distance from float to hook of a rig at one of its depths, in a sentence that speaks of it. */
function typedDepths(sentence: string, rigs: readonly SolvedRig[], figures: Figures): Typed[] {
  const wanted = [
    { of: "draught", said: /\bdraught\b/i, length: "draughtMm" },
    { of: "float-to-hook", said: /\bfloat\s(?:to|and)\s(?:the\s)?hook\b/i, length: "floatToHookMm" },
  ] as const;
  const asked = wanted.filter(({ said }) => said.test(sentence));
  const lengths = [...sentence.matchAll(/\d+(?:\.\d+)?\s(?:m|cm)(?![\p{L}])/gu)];
  return lengths.flatMap(({ 0: figure, index }) => {
    const plain = figure.replace(/\s/, " ");
    for (const { of, length } of asked) {
      for (const { rig, depths } of rigs) {
        const depth = depths.find((one) => figures.shortGap(one[length]) === plain);
        if (!depth) continue;
        const at = figures.shortDepth(depth.depthMm);
        return [{ at: index, figure, directive: `:figure[]{rig=${rig.id} depth="${at}" of=${of}}` }];
      }
    }
    return [];
  });
}

/** The strength of a rig's line in a sentence that speaks of that line: `a main line of 4 lb`. */
function typedStrengths(sentence: string, rigs: readonly SolvedRig[], figures: Figures): Typed[] {
  const lines = [
    { of: "main-line", said: /\bmain\sline\b/i, line: "mainLine" },
    { of: "hook-line", said: /\bhook\slength\b/i, line: "hookLine" },
  ] as const;
  return [...sentence.matchAll(/\d+(?:\.\d+)?\slb(?![\p{L}])/gu)].flatMap(({ 0: figure, index }) => {
    for (const { of, said, line } of lines) {
      const rig = said.test(sentence)
        ? rigs.find(({ rig }) => figures.shortStrength(rig[line].strengthG) === figure.replace(/\s/, " "))
            ?.rig
        : undefined;
      if (rig) return [{ at: index, figure, directive: `:figure[]{rig=${rig.id} of=${of}}` }];
    }
    return [];
  });
}
