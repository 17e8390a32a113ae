import type { WaterKind } from "../../core/water/water.ts";
import { jsonSchemaOf } from "../schema/json-schema.ts";
import type { CommentWords } from "./comment-words.ts";
import { commentedYaml, type StartValues } from "./commented.ts";
import { copiedRig, newFile, schemaLine } from "./new-file.ts";
import { inOwnUnits } from "./own-units.ts";
import { starterIn } from "./starters.ts";

/** What a new guide is told. */
export interface NewGuide {
  readonly title: string;
  readonly publisher: string;
  readonly water: WaterKind;
  readonly units: string;
  readonly paper: string;
  readonly language: string;
  /**
   * Whose law of lead shot it is, and up to which weight lead may be used, which nobody has looked up yet; the library's
   * law where it is left out.
   */
  readonly law?: { readonly place: string; readonly upTo: string };
  /** ISO date. */
  readonly day: string;
}

/** Rigs of the library that a guide begins with, by the water that is fished. */
export const firstRigs: Readonly<Record<NewGuide["water"], string>> = {
  still: "first-session",
  flowing: "stick-shirt-button",
};

/** Pages of the library that every guide should have: cautions, and what stands behind the figures. */
const pages = ["safety", "about-figures"];

/**
 * The files of a guide of one's own, by their paths: as few as it takes.
 *
 * @param firstRig text of the rig to begin with
 */
export function newGuide(told: NewGuide, firstRig: string): ReadonlyMap<string, string> {
  const { comments, rig, lesson, words, readme } = starterIn(told.language);
  const isThere = (url: string) => pages.some((page) => new RegExp(`(?:^|/)${page}\\.`).test(url));
  const copied = copiedRig(firstRig, firstRigs[told.water], rig.id, isThere);
  return new Map([
    [
      "content/guide.yaml",
      `${schemaLine("guide")}\n${inOwnUnits(commentedYaml(jsonSchemaOf("guide"), guideValues(told, comments), comments), told.units, "guide")}\n`,
    ],
    [
      `content/rigs/${rig.id}.md`,
      inOwnUnits(copied.replace(/^title: .*$/m, `title: ${rig.title}`), told.units, rig.id),
    ],
    [
      `content/lessons/${lesson.id}.md`,
      newFile("lesson", lesson.id, { values: lesson.front, words: comments, text: lesson.body }),
    ],
    [`content/words/${told.language}.yaml`, `${schemaLine("words")}\n${words(told.language)}`],
    ["README.md", `# ${told.title}\n\n${readme}`],
  ]);
}

/** As YAML reads it, whatever is in it. */
const quoted = (text: string) => JSON.stringify(text);

function guideValues(told: NewGuide, comments: CommentWords): StartValues {
  const { title, publisher, units, paper, language, law, day } = told;
  return {
    title: quoted(title),
    publisher: quoted(publisher),
    language,
    units,
    paper,
    edition: day,
    ...(law && {
      "lead-rule": {
        place: quoted(law.place),
        "allowed-up-to": law.upTo,
        source: quoted(comments.atFirst("Not looked up yet.")),
      },
    }),
    library: {
      lessons: "none",
      rigs: "none",
      floats: "none",
      baits: "none",
      knots: "none",
      species: "none",
      kits: "none",
      pages: `[${pages.join(", ")}]`,
    },
  };
}
