import { type Answer, answer, noAnswer } from "../finding.ts";
import { sizeNamed } from "./load-notation.ts";
import { type Metal, metals, type ShotScale, type StockedShot, type Tub } from "./shot.ts";

/**
 * Reads what is in somebody's shot box, such as `BB, 12 No 4, lead No 8`: sizes, with a count where there are few of
 * them and a metal where it is not the usual one.
 *
 * @param usualMetal the metal of a size where none is said
 * @returns the shot, heaviest first; no answer where a part is no size of the scale, or its count no whole number above
 *   0 (`box.not-understood`)
 */
export function parseBox(text: string, scale: ShotScale, usualMetal: (size: string) => Metal): Answer<Tub> {
  const box: StockedShot[] = [];
  for (const term of text.split(/[,;+]/).map((part) => part.trim())) {
    const shot = parseShot(term, scale, usualMetal);
    if (!shot) return noAnswer("box.not-understood", { term, text, sizes: namesOf(scale) });
    const same = box.findIndex(({ size, metal }) => size === shot.size && metal === shot.metal);
    if (same < 0) box.push(shot);
    else box[same] = { ...shot, count: shot.count + box[same]!.count };
  }
  return answer(box.sort((a, b) => b.massG - a.massG));
}

function parseShot(
  term: string,
  scale: ShotScale,
  usualMetal: (size: string) => Metal,
): StockedShot | undefined {
  const metal = metals.find((name) => new RegExp(`\\b${name}\\b`, "i").test(term));
  const rest = metal ? term.replace(new RegExp(`\\b${metal}\\b`, "i"), "").trim() : term;
  const whole = sizeNamed(rest, scale);
  const [, digits = "", name = ""] = /^(\d{1,4})\s*(?:[x×]\s*)?(.+)$/i.exec(rest) ?? [];
  const counted = sizeNamed(name, scale);
  const size = whole ?? counted;
  const count = whole ? Number.POSITIVE_INFINITY : Number(digits);
  if (!size || (whole && counted) || !(count > 0)) return undefined;
  return { size: size.name, massG: size.massG, metal: metal ?? usualMetal(size.name), count };
}

/** The same box as it is written: its counts, and its metals where they are not the usual ones. */
export function boxText(box: Tub, usualMetal: (size: string) => Metal): string {
  return box
    .map(({ size, metal, count }) =>
      [count < Number.POSITIVE_INFINITY ? String(count) : "", metal === usualMetal(size) ? "" : metal, size]
        .filter(Boolean)
        .join(" "),
    )
    .join(", ");
}

/** The metal that a size has where a box does not say: that of the guide's own shot. */
export const metalIn =
  (tub: Tub) =>
  (size: string): Metal =>
    (tub.find((shot) => shot.size === size) ?? tub[0])?.metal ?? "tin";

const namesOf = (scale: ShotScale) => scale.sizes.map(({ name }) => name).join(", ");
