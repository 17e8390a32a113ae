import type { ShotScale } from "../core/tackle/shot.ts";
import { literal } from "../model/literal.ts";

/** Finds the sizes of a scale in a text: 1 is a count before it, if any, 2 the size. */
export function shotNames({ sizes }: ShotScale): RegExp {
  const names = sizes
    .map(({ name }) => literal(name).replace(" ", "\\s"))
    .sort((a, b) => b.length - a.length);
  return new RegExp(`(?:(\\d+)\\s?)?\\b(${names.join("|")})(?![\\p{L}\\d])`, "gu");
}
