import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { readMarkdown } from "../content/markdown-source.ts";
import { libraryIn } from "../content/world.ts";
import { readYaml } from "../content/yaml-source.ts";
import { guideOfThePackage } from "./content-option.ts";
import { namesIn } from "./names-in.ts";

/** A rig by its file's name, and what its front matter says, as it was typed. */
interface TypedRig {
  readonly id: string;
  readonly front: Readonly<Record<string, unknown>>;
}

/** What the guide in a content folder says of itself, as it was typed: a file of it may be begun before the rest is right. */
export interface BegunGuide {
  /** A BCP 47 tag. */
  readonly language: string;
  readonly units: unknown;
  /** Its own rigs, then those of the library that it takes by name. */
  readonly rigs: readonly TypedRig[];
  /** Names of what may be asked for, its own and the library's, by the key that asks for them. */
  readonly names: Readonly<Record<string, readonly string[]>>;
}

/** Where the names stand that a key may have. */
const namedIn: Readonly<Record<string, string>> = {
  float: "floats",
  bait: "baits",
  tub: "tubs",
  scale: "shot",
};

export function begunGuide(folder: string): BegunGuide {
  const file = join(folder, "guide.yaml");
  const { data } = readYaml(existsSync(file) ? readFileSync(file, "utf8") : "", file);
  const told = (data ?? {}) as {
    readonly language?: unknown;
    readonly units?: unknown;
    readonly library?: { readonly rigs?: unknown };
  };
  const language = typeof told.language === "string" ? told.language : "en";
  const named: readonly unknown[] = Array.isArray(told.library?.rigs) ? told.library.rigs : [];
  const library = libraryIn(guideOfThePackage(), language);
  const shipped = join(library, "rigs");
  const taken = namesIn(shipped, ".md").filter((name) => named.includes(name.replace(/\.md$/, "")));
  const own = join(folder, "rigs");
  const namesOf = (kind: string) => [
    ...new Set(
      [folder, library].flatMap((of) =>
        namesIn(join(of, kind), ".yaml").map((name) => name.replace(/\.yaml$/, "")),
      ),
    ),
  ];
  return {
    language,
    units: told.units,
    names: Object.fromEntries(Object.entries(namedIn).map(([key, kind]) => [key, namesOf(kind)])),
    rigs: [
      ...namesIn(own, ".md").map((name) => typedRig(own, name)),
      ...taken.map((name) => typedRig(shipped, name)),
    ],
  };
}

function typedRig(folder: string, name: string): TypedRig {
  const { front } = readMarkdown(readFileSync(join(folder, name), "utf8"), name);
  return { id: name.replace(/\.md$/, ""), front: (front.data ?? {}) as TypedRig["front"] };
}
