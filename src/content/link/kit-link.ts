import type { z } from "zod";
import type { BaitEntry, FloatEntry, GroupUse, Kit, RigEntry, TubEntry } from "../../model/library.ts";
import type { Hook } from "../../model/rig.ts";
import type { Read, Reading } from "../reading.ts";
import type { kitSchema } from "../schema/tackle-schema.ts";

/** What a kit's names are looked up in. */
interface Shelves {
  readonly floats: ReadonlyMap<string, FloatEntry>;
  readonly tubs: ReadonlyMap<string, TubEntry>;
  readonly hooks: ReadonlyMap<number, Hook>;
  readonly baits: ReadonlyMap<string, BaitEntry>;
}

type TypedGroup = NonNullable<z.output<typeof kitSchema>["group"]>;

function groupUse(typed: TypedGroup): GroupUse {
  return {
    spareShare: typed.spares,
    hookLengths: typed["hook-lengths"],
    hookLineMm: typed["line-for-each"],
    mainLineMm: typed["line-on-reel"],
    hooksInPacket: typed["hooks-in-packet"],
    hookLineOnSpoolMm: typed["hook-line-on-spool"],
    mainLineOnSpoolMm: typed["main-line-on-spool"],
  };
}

/** A kit with its names looked up; undefined where its tub is not there. */
export function linkKit(
  { id, value, yaml }: Read<z.output<typeof kitSchema>>,
  shelves: Shelves,
  rigs: ReadonlyMap<string, RigEntry>,
  reading: Reading,
): Kit | undefined {
  const all = <T>(
    key: "rigs" | "floats" | "hooks" | "baits",
    shelf: ReadonlyMap<string, T>,
    what: string,
  ): T[] =>
    value[key].flatMap(
      (name, at) => reading.lookUp(shelf, String(name), what, yaml.placeOf([key, at])) ?? [],
    );
  const hooks = new Map([...shelves.hooks].map(([size, hook]) => [String(size), hook]));
  const tub = reading.lookUp(shelves.tubs, value.tub, "tub", yaml.placeOf(["tub"]));
  const kit = {
    id,
    title: value.title,
    rigIds: all("rigs", rigs, "rig").map((rig) => rig.id),
    floats: all("floats", shelves.floats, "float"),
    hooks: all("hooks", hooks, "hook size"),
    mainLineG: value["main-line"],
    hookLineG: value["hook-length"],
    baits: all("baits", shelves.baits, "bait"),
    ...(value.group && { group: groupUse(value.group) }),
  };
  return tub && { ...kit, tub };
}
