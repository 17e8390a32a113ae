import { withId } from "../core/lists.ts";
import type { ChoosingData } from "../model/choosing-data.ts";
import { hasPage } from "../model/has-page.ts";
import type { Library } from "../model/library.ts";
import { hazardLines } from "../words/swim-hazards.ts";
import type { TableKit } from "../words/table-kit.ts";

/** What the page to choose rigs by has of the guide; nothing in a guide without rules for it. */
export function choosingData(library: Library, kit: TableKit): ChoosingData | undefined {
  const { choosing, rigs, species, lines, swims, tubs, guide } = library;
  if (!choosing || !hasPage(library, "choose")) return undefined;
  return {
    rules: choosing,
    shelf: {
      rigs: rigs.map(({ id, title, level, catches, rig }) => ({ id, title, level, catches, rig })),
      species: species.map(({ title, also }) => ({ title, also })),
      ...(lines && { lines: { rows: lines.rows } }),
    },
    swims: swims.map((swim) => ({
      id: swim.id,
      title: swim.title,
      water: swim.water,
      ...(swim.paceMs !== undefined && { paceMs: swim.paceMs }),
      fish: swim.fish,
      hazards: hazardLines(swim, guide, kit),
      spots: swim.spots.map(({ title, fromBankMm, line: { soundings, features } }) => ({
        title,
        fromBankMm,
        line: { soundings, features },
      })),
    })),
    tub: withId(tubs, guide.tubId).tub,
  };
}
