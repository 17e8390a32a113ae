import { distance } from "fastest-levenshtein";
import { first, last } from "../core/lists.ts";
import { type Message, message } from "../model/message.ts";
import { fontEndings, isFontFile } from "../model/own-font.ts";
import { imageEndings, imageKindOf } from "../model/own-image.ts";
import { isTemplateName, templateNames } from "../model/own-templates.ts";
import type { Source } from "./world.ts";

/** What files of each folder end in. */
const folders: Readonly<Record<string, ".md" | ".yaml" | "a picture" | "a font">> = {
  rigs: ".md",
  lessons: ".md",
  plans: ".md",
  pages: ".md",
  floats: ".yaml",
  shot: ".yaml",
  tubs: ".yaml",
  baits: ".yaml",
  knots: ".yaml",
  kits: ".yaml",
  species: ".yaml",
  swims: ".yaml",
  notes: ".yaml",
  shelves: ".yaml",
  sessions: ".yaml",
  words: ".yaml",
  images: "a picture",
  fonts: "a font",
  templates: ".md",
};

/** Files that stand beside the folders. */
const alone = [
  "guide",
  "hooks",
  "lines",
  "glossary",
  "troubles",
  "synonyms",
  "tools",
  "choosing",
  "changes",
].map((name) => `${name}.yaml`);

/** Notes to other authors, which are no part of a guide. */
const notes = /^(?:readme|licen[cs]e)(?:\.\w+)?$/i;

/** A warning for each file that nothing reads, with what was likely meant. */
export function strayFiles(sources: ReadonlyMap<string, Source>): readonly Message[] {
  return [...sources.values()].flatMap(({ path, file }) => {
    const wrong = strayness(path);
    return wrong ? [message("file-not-read", { file }, wrong)] : [];
  });
}

function strayness(path: string): { reason: string; hint: string } | undefined {
  const parts = path.split("/");
  const name = last(parts);
  if (parts.length === 1) return alone.includes(name) || notes.test(name) ? undefined : atTheTop(name);
  const folder = first(parts);
  const ending = Object.hasOwn(folders, folder) ? folders[folder]! : undefined;
  if (ending === undefined) return inOtherFolder(folder);
  if (ending === "a picture")
    return parts.length === 2 && imageKindOf(name) ? undefined : otherThanPicture(parts);
  if (ending === "a font") return isFontFile(path) ? undefined : otherThanFont;
  if (folder === "templates" && name.endsWith(".md") && !isTemplateName(name.replace(/\.md$/, "")))
    return otherThanTemplate(name);
  return name.endsWith(ending) ? undefined : otherEnding(folder, name, ending);
}

function atTheTop(name: string): { reason: string; hint: string } {
  const reason = "the file is not read: it stands outside the folders of the guide";
  if (imageKindOf(name)) return { reason, hint: "move a picture, a logo too, into images/" };
  if (isFontFile(`fonts/${name}`)) return { reason, hint: "move a font into fonts/" };
  const meant = near(withEnding(name, ".yaml").toLowerCase(), alone);
  if (meant !== undefined) return { reason, hint: `did you mean ${meant}?` };
  return /\.(?:md|markdown|txt)$/i.test(name)
    ? { reason, hint: "move a rig into rigs/, a lesson into lessons/, any other text into pages/" }
    : { reason, hint: `files that stand here are ${alone.join(", ")}` };
}

function inOtherFolder(folder: string): { reason: string; hint: string } {
  const names = Object.keys(folders);
  const meant = near(folder.toLowerCase(), names);
  return {
    reason: `the file is not read: a guide has no folder ${folder}/`,
    hint: meant === undefined ? `its folders are ${names.join(", ")}` : `did you mean ${meant}/?`,
  };
}

function otherThanPicture({ length }: readonly string[]): { reason: string; hint: string } {
  const endings = Object.keys(imageEndings).map((ending) => `.${ending}`);
  return length > 2
    ? { reason: "the file is not read: it stands in a folder below images/", hint: "move it up into images/" }
    : {
        reason: "the file is not read: it is no picture that a guide shows",
        hint: `save it as ${endings.join(", ")}`,
      };
}

const otherThanFont = {
  reason: "the file is not read: it is no font that a guide is set in",
  hint: `save it straight below fonts/, as ${fontEndings.join(", ")}`,
};

function otherThanTemplate(name: string): { reason: string; hint: string } {
  const files = templateNames.map((known) => `${known}.md`);
  const meant = near(name.toLowerCase(), files);
  return {
    reason: "the file is not read: no part of a page is called so",
    hint: meant === undefined ? `templates are ${files.join(", ")}` : `did you mean ${meant}?`,
  };
}

function otherEnding(
  folder: string,
  name: string,
  ending: ".md" | ".yaml",
): { reason: string; hint: string } {
  const reason = `the file is not read: files in ${folder}/ end in ${ending}`;
  const isText = /\.(?:ya?ml|md|markdown|txt)$/i.test(name);
  if (!isText) return { reason, hint: "take it out of the content" };
  const sameKind = ending === ".yaml" ? /\.ya?ml$/i : /\.(?:md|markdown|md\.txt)$/i;
  const hint = sameKind.test(name)
    ? `call it ${withEnding(name, ending)}`
    : ending === ".yaml"
      ? "write it as keys and values, without --- lines, and let its name end in .yaml"
      : "write it as a text whose keys stand between --- lines, and let its name end in .md";
  return { reason, hint };
}

const withEnding = (name: string, ending: string) =>
  `${name.replace(/(?:\.(?:ya?ml|md|markdown|txt))+$/i, "")}${ending}`;

/** The name that a slip of the finger, or one letter of its number, was meant for. */
const near = (typed: string, names: readonly string[]): string | undefined =>
  names.find((name) => distance(typed, name) <= 2 && typed[0] === name[0]);
