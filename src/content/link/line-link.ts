import type { z } from "zod";
import type { Species } from "../../model/library.ts";
import type { LineTable, StrengthBand } from "../../model/line-table.ts";
import type { Read, Reading } from "../reading.ts";
import type { linesSchema } from "../schema/reference-schema.ts";
import { knownFish } from "./known-fish.ts";

/** The table of line by fish, each of its names one that the guide knows a fish by. */
export function linkLines(
  { value, yaml }: Read<z.output<typeof linesSchema>>,
  species: readonly Species[],
  reading: Reading,
): LineTable {
  const rows = value.fish.map((row, at) => {
    knownFish(row.fish, species, yaml.placeOf(["fish", at, "fish"]), reading);
    const band = (key: "main-line" | "hook-length"): StrengthBand => {
      const [leastG, mostG] = row[key];
      if (leastG > mostG) reading.error(yaml.placeOf(["fish", at, key]), "band-upside-down", { key });
      return { leastG, mostG };
    };
    return { fish: row.fish, mainLine: band("main-line"), hookLine: band("hook-length") };
  });
  const { basis, source, "left-under-shot": leftUnderShot } = value;
  return { basis, source, leftUnderShot, rows };
}
