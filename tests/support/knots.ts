import { readdirSync, readFileSync } from "node:fs";
import { parse } from "yaml";
import { knotSchema } from "../../src/content/schema/knot-schema.ts";
import type { KnotPicture } from "../../src/model/knot-picture.ts";

const folder = "content/knots";

export function readKnot(id: string): KnotPicture {
  return { id, ...knotSchema.parse(parse(readFileSync(`${folder}/${id}.yaml`, "utf8"))) };
}

/** Every knot that is shipped. */
export const knots: readonly KnotPicture[] = readdirSync(folder)
  .sort()
  .map((file) => readKnot(file.replace(/\.yaml$/, "")));
