import type { z } from "zod";
import { byId } from "../../core/lists.ts";
import type { RigEntry } from "../../model/library.ts";
import type { Shelf } from "../../model/shelf.ts";
import type { Read, Reading } from "../reading.ts";
import type { shelfSchema } from "../schema/stock-schema.ts";
import { linkStock, type StockShelves } from "./stock-link.ts";

/** A shop's shelf with its names looked up; a rig that it wants packs of twice is an error at its second place. */
export function linkShelf(
  read: Read<z.output<typeof shelfSchema>>,
  shelves: StockShelves & { readonly rigs: readonly RigEntry[] },
  reading: Reading,
): Shelf {
  const { id, source, value, yaml } = read;
  const rigs = byId(shelves.rigs);
  const named = value.packs.map(({ rig }) => rig);
  const packs = value.packs.flatMap(({ rig: name, wanted, ready }, at) => {
    const place = yaml.placeOf(["packs", at, "rig"]);
    const rig = reading.lookUp(rigs, name, "rig", place);
    if (named.indexOf(name) < at) reading.error(place, "duplicate-name", { found: name });
    return rig ? [{ rigId: rig.id, wanted, ready }] : [];
  });
  return {
    id,
    title: value.title,
    path: source.file,
    placeOf: yaml.placeOf,
    ...(value.money !== undefined && { money: value.money }),
    stock: linkStock(value, [], read, shelves, reading),
    pack: {
      hookLengths: value.pack["hook-lengths"],
      hookLineM: value.pack["line-for-each"] / 1000,
      mainLineM: value.pack["main-line"] / 1000,
    },
    packs,
  };
}
