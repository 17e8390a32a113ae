import { fileKinds } from "../schema/file-kinds.ts";
import { jsonSchemaOf } from "../schema/json-schema.ts";
import { commentedYaml, type StartValues } from "./commented.ts";
import { type StartKind, startValues } from "./start-values.ts";

/** Path below the content folder of a file of a kind. */
export function pathOf(kind: StartKind, id: string): string {
  const { folder, ending } = fileKinds[kind];
  return `${folder}/${id}${ending}`;
}

/** A name of a file as a title: `our-pond` is `Our pond`. */
export function titleOf(id: string): string {
  const words = id.replace(/[-_]+/g, " ").trim();
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/**
 * A file to begin with, every key of it explained; it builds as it is.
 *
 * @param values what it says in place of the usual
 * @param text what stands below them, the same
 */
export function newFile(kind: StartKind, id: string, values: StartValues = {}, text?: string): string {
  const { front, body: usual } = startValues[kind];
  const body = text === undefined ? usual : () => text;
  const yaml = commentedYaml(jsonSchemaOf(kind), { title: titleOf(id), ...front, ...values });
  return body ? `---\n${yaml}\n---\n\n${body(id)}` : `${yaml}\n`;
}

/** A front matter, the key that names the rig, and the text below. */
const titleLine = /^title:.*$/m;

/**
 * A rig of the library as one of one's own: what it says of itself is said of the new one.
 *
 * @param text the file that is copied
 * @param isThere whether a link of the text leads anywhere from the guide
 */
export function copiedRig(text: string, from: string, id: string, isThere: (url: string) => boolean): string {
  return text
    .replace(titleLine, `title: ${titleOf(id)}`)
    .replace(/(\{[^}\n]*\brigs?=)("[^"]*"|[\w-]+)/g, (_, before: string, names: string) => {
      const own = names.replace(new RegExp(`(?<![\\w-])${from}(?![\\w-])`, "g"), id);
      return `${before}${own}`;
    })
    .replace(/\[([^\]]+)\]\(([^)\s]+)\)/g, (link, words: string, url: string) =>
      isThere(url) ? link : words,
    );
}
