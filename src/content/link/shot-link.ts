import type { z } from "zod";
import type { StockedShot } from "../../core/tackle/shot.ts";
import type { ScaleEntry, TubEntry } from "../../model/library.ts";
import type { Read, Reading } from "../reading.ts";
import type { scaleSchema, tubSchema } from "../schema/tackle-schema.ts";
import { eachOnce } from "../taken-twice.ts";

/** A scale with its sizes heaviest first; a size given by weighing a number of them gets its mean. */
export function linkScale(read: Read<z.output<typeof scaleSchema>>, reading: Reading): ScaleEntry {
  const { id, value, yaml } = read;
  const sizes = value.sizes.map((size) => ({
    name: size.name,
    massG: "mass" in size ? size.mass : size.weighed.mass / size.weighed.count,
  }));
  const names = sizes.map(({ name }) => name);
  eachOnce(reading, names, (at) => yaml.placeOf(["sizes", at, "name"]));
  const { title, source, basis } = value;
  return { id, title, source, basis, sizes: sizes.sort((a, b) => b.massG - a.massG) };
}

/** A tub with its sizes looked up in its scale. */
export function linkTub(
  read: Read<z.output<typeof tubSchema>>,
  scales: ReadonlyMap<string, ScaleEntry>,
  reading: Reading,
): TubEntry {
  const { id, value, yaml } = read;
  const scale = reading.lookUp(scales, value.scale, "shot scale", yaml.placeOf(["scale"]));
  const sizes = new Map((scale?.sizes ?? []).map((size) => [size.name, size]));
  const tub = !scale
    ? []
    : value.sizes.flatMap(({ size, metal, count }, at): StockedShot[] => {
        const what = `shot in the scale "${scale.title}" called`;
        const found = reading.lookUp(sizes, size, what, yaml.placeOf(["sizes", at, "size"]));
        const held = count === "plenty" ? Number.POSITIVE_INFINITY : count;
        return found ? [{ size, massG: found.massG, metal, count: held }] : [];
      });
  const named = value.sizes.map(({ size, metal }) => `${size} of ${metal}`);
  eachOnce(reading, named, (at) => yaml.placeOf(["sizes", at, "size"]));
  return { id, title: value.title, scaleId: value.scale, tub: tub.sort((a, b) => b.massG - a.massG) };
}
