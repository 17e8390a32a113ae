import type { Item } from "../model.ts";
import { pathData } from "../svg-items.ts";
import type { Moment } from "./film.ts";

/** What moves in a film, sent in little room: each part once, and for every moment the poses of its parts (`readPoses`). */
interface PackedFilm {
  readonly parts: readonly Item[];
  readonly poses: readonly string[];
}

/** A tenth of a millimetre is a third of a dot on a phone. */
const tenth = (value: number) => String(Math.round(value * 10) / 10 || 0);

export function packFilm(moments: readonly Moment[]): PackedFilm {
  const { parts, posesOf } = packing();
  return { poses: moments.map(({ moving }) => posesOf(moving)), parts };
}

/** Packs moments one by one: the parts so far, and what puts the items of another moment to them and gives their poses. */
export function packing() {
  const places = new Map<string, number>();
  const parts: Item[] = [];
  const placeOf = (part: Item) => {
    const key = JSON.stringify(part);
    const known = places.get(key);
    if (known !== undefined) return known;
    places.set(key, parts.length);
    return parts.push(part) - 1;
  };
  const pose = (item: Item) => {
    if (item.kind === "path") return placeOf({ ...item, steps: [] }) + pathData(item.steps, tenth);
    if (item.kind !== "group") return String(placeOf(item));
    return `${placeOf({ ...item, xMm: 0, yMm: 0 })}@${tenth(item.xMm)} ${tenth(item.yMm)}`;
  };
  return { parts, posesOf: (items: readonly Item[]) => items.map(pose).join(";") };
}
