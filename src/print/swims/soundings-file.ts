import { SoundingsSheet } from "../../../templates/handouts/soundings.tsx";
import { layOut } from "../../layout/lay-out.ts";
import { printPaths } from "../../model/addresses.ts";
import { digestOf } from "../../model/digest.ts";
import { exampleDistanceMm } from "../../model/swim.ts";
import { keptPage } from "../kept-page.ts";
import type { Press } from "../press.ts";
import { paperSizes, unprintableMm } from "../sheets/paper-sizes.ts";
import type { TrueSizeFile } from "../true-size/true-size-files.ts";

const bodyPt = 11;
const marginMm = unprintableMm + 3;

const fields = [
  "title",
  "sounded",
  "level-mark",
  "road",
  "way",
  "grid-reference",
  "pace",
  "places",
  "fish",
  "line",
] as const;

/** A page to fill in by the water, from which a swim's file is made. */
export function soundingsFile(press: Press): TrueSizeFile {
  const { words, figures } = press.kit;
  const field = (
    name: (typeof fields)[number] | "from-bank" | "depth" | "found" | "hazard" | "hazard-where" | "hazard-do",
  ) => words(`page.soundings.field.${name}`);
  const title = words("page.soundings.title");
  const from = digestOf(press.from, "soundings");
  const page = keptPage(press.keep, "soundings", from, () =>
    layOut(
      SoundingsSheet({
        title,
        lines: [
          words("page.soundings.mind"),
          words("page.soundings.how", { example: figures.shortDepth(exampleDistanceMm) }),
        ],
        fields: fields.map(field),
        tables: [
          { head: [field("from-bank"), field("depth"), field("found")], rows: 12 },
          { head: [field("hazard"), field("hazard-where"), field("hazard-do")], rows: 3 },
        ],
        marginMm,
        bodyPt,
      }),
      paperSizes[press.guide.paper],
      press.fonts,
    ),
  );
  return { path: printPaths.soundings, title, listed: title, of: "soundings", page, from };
}
