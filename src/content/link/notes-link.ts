import type { z } from "zod";
import { byId } from "../../core/lists.ts";
import type { Library } from "../../model/library.ts";
import type { SwimNotes } from "../../model/swim-notes.ts";
import type { Read, Reading } from "../reading.ts";
import type { notesSchema } from "../schema/notes-schema.ts";
import { eachOnce } from "../taken-twice.ts";
import { knownFish } from "./known-fish.ts";

type Typed = z.output<typeof notesSchema>;
type Shelves = Pick<Library, "swims" | "rigs" | "species">;

/** Notes with their names looked up; undefined where there is no such swim. */
export function linkNotes(read: Read<Typed>, shelves: Shelves, reading: Reading): SwimNotes | undefined {
  const { id, source, value, yaml } = read;
  const swim = reading.lookUp(byId(shelves.swims), value.swim, "swim", yaml.placeOf(["swim"]));
  if (!swim) return undefined;
  const spots = new Map(swim.spots.map((spot) => [spot.title, spot]));
  const placeOf = (at: number) => yaml.placeOf(["depths", at, "spot"]);
  eachOnce(
    reading,
    value.depths.map(({ spot }) => spot),
    placeOf,
  );
  const depths = value.depths.flatMap(({ spot, depth }, at) => {
    const found = reading.lookUp(spots, spot, "place of this swim", placeOf(at));
    return found ? [{ spot: found.title, depthMm: depth }] : [];
  });
  const rigs = value.rigs.flatMap(({ rig: name, spot, worked, catches }, at) => {
    const rig = reading.lookUp(byId(shelves.rigs), name, "rig", yaml.placeOf(["rigs", at, "rig"]));
    const place =
      spot === undefined
        ? undefined
        : reading.lookUp(spots, spot, "place of this swim", yaml.placeOf(["rigs", at, "spot"]));
    const caught = catches.filter(({ fish }, i) =>
      knownFish(fish, shelves.species, yaml.placeOf(["rigs", at, "catches", i, "fish"]), reading),
    );
    if (!rig) return [];
    return [
      {
        rig: { id: rig.id, title: rig.title },
        ...(place && { spot: place.title }),
        ...(worked !== undefined && { worked }),
        catches: caught,
      },
    ];
  });
  return {
    id,
    path: source.file,
    placeOf: yaml.placeOf,
    swim: swim.id,
    date: value.date,
    ...(value.level !== undefined && { levelMm: value.level }),
    ...(value.pace !== undefined && { paceMs: value.pace }),
    depths,
    rigs,
  };
}
