import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { StartValues } from "../content/start/commented.ts";
import { namesIn } from "./start-session.ts";

/** What a new shelf says of the first rig of a content folder: a pack of it, and what it is made of; the usual where there is none. */
export function shelfStart(folder: string): StartValues {
  const rigs = join(folder, "rigs");
  const [file] = namesIn(rigs, ".md");
  if (file === undefined) return {};
  const text = readFileSync(join(rigs, file), "utf8");
  const told = (key: string) => new RegExp(`^${key}: *([\\w-]+) *$`, "m").exec(text)?.[1];
  const float = told("float");
  const hook = told("hook");
  return {
    packs: `\n  - { rig: ${file.replace(/\.md$/, "")}, wanted: 5 }`,
    ...(float !== undefined && { floats: `\n  - { float: ${float}, count: 5, packet: 1 }` }),
    ...(hook !== undefined && { hooks: `\n  - { size: ${hook}, count: 20, packet: 10 }` }),
  };
}
