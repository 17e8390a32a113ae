import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { StartValues } from "../content/start/commented.ts";
import { firstRigs } from "../content/start/new-guide.ts";
import { readYaml } from "../content/yaml-source.ts";
import { UsageError } from "./command.ts";

const baits = { still: "double-maggot", flowing: "maggot" } as const;

/** Names of the files in a folder that end so, in their order; none where there is no such folder. */
export const namesIn = (folder: string, ending: string): readonly string[] =>
  existsSync(folder)
    ? readdirSync(folder)
        .filter((name) => name.endsWith(ending))
        .sort()
    : [];

/** What a new session says of the first swim of a content folder, and the rig to begin with on such water. */
export function sessionStart(folder: string): StartValues {
  const swims = join(folder, "swims");
  const [file] = namesIn(swims, ".yaml");
  if (file === undefined) {
    throw new UsageError(
      "a session is held at a swim, and there is none yet; begin one with dotdown new swim NAME",
    );
  }
  const { data } = readYaml(readFileSync(join(swims, file), "utf8"), file);
  const told = data as {
    readonly water?: unknown;
    readonly spots?: readonly { readonly title?: unknown }[];
  } | null;
  const water = told?.water === "flowing" ? "flowing" : "still";
  const spot = JSON.stringify(String(told?.spots?.[0]?.title ?? ""));
  return {
    swims: `\n  - { swim: ${file.replace(/\.yaml$/, "")}, spot: ${spot} }`,
    rigs: `[${firstRigs[water]}]`,
    baits: `[${baits[water]}]`,
  };
}
