import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { StartValues } from "../content/start/commented.ts";
import { firstRigs } from "../content/start/new-guide.ts";
import { readYaml } from "../content/yaml-source.ts";
import type { BegunGuide } from "./begun-guide.ts";
import { UsageError } from "./command.ts";
import { namesIn } from "./names-in.ts";

const baits = { still: "double-maggot", flowing: "maggot" } as const;

/** What a new session says of the first swim of a content folder, and the guide's first rig for such water; the usual one where it has none. */
export function sessionStart(folder: string, { rigs }: BegunGuide): StartValues {
  const swims = join(folder, "swims");
  const [file] = namesIn(swims, ".yaml");
  if (file === undefined) {
    throw new UsageError(
      "a session is held at a swim, and there is none yet; begin one with npx dotdown new swim NAME",
    );
  }
  const { data } = readYaml(readFileSync(join(swims, file), "utf8"), file);
  const told = data as {
    readonly water?: unknown;
    readonly spots?: readonly { readonly title?: unknown }[];
  } | null;
  const water = told?.water === "flowing" ? "flowing" : "still";
  const spot = JSON.stringify(String(told?.spots?.[0]?.title ?? ""));
  const rig = rigs.find(({ front }) => front.water === water);
  return {
    swims: `\n  - { swim: ${file.replace(/\.yaml$/, "")}, spot: ${spot} }`,
    rigs: `[${rig?.id ?? firstRigs[water]}]`,
    baits: `[${rig?.front.bait ?? baits[water]}]`,
  };
}
