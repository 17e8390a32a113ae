import { readFileSync } from "node:fs";
import { join } from "node:path";
import { readMarkdown } from "../content/markdown-source.ts";
import type { StartValues } from "../content/start/commented.ts";
import { namesIn } from "./start-session.ts";

/** What a new shelf says of the first rig of a content folder: a pack of it, and what it is made of; the usual where there is none. */
export function shelfStart(folder: string): StartValues {
  const rigs = join(folder, "rigs");
  const [file] = namesIn(rigs, ".md");
  if (file === undefined) return {};
  const { front } = readMarkdown(readFileSync(join(rigs, file), "utf8"), file);
  const { float, hook } = (front.data ?? {}) as { readonly float?: unknown; readonly hook?: unknown };
  return {
    packs: `\n  - { rig: ${file.replace(/\.md$/, "")}, wanted: 5 }`,
    ...(float !== undefined && { floats: `\n  - { float: ${float}, count: 5, packet: 1 }` }),
    ...(hook !== undefined && { hooks: `\n  - { size: ${hook}, count: 20, packet: 10 }` }),
  };
}
