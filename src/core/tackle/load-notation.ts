import { type Answer, answer, noAnswer } from "../finding.ts";
import { parseQuantity } from "../quantity.ts";
import type { G } from "../units.ts";
import type { ShotScale, ShotSize } from "./shot.ts";

/** A term of a load: so many shot of a size, or a mass in grams (once, without a size). */
interface LoadPart {
  readonly count: number;
  readonly size?: string;
  /** Mass of one [g]. */
  readonly massG: G;
}

/** A load as it is written on a float or in a rig. */
interface Load {
  readonly massG: G;
  readonly parts: readonly LoadPart[];
}

/**
 * Reads a load such as `2 AAA + 3 No 8`, `4BB`, `1½ SSG` or `1.2 g` by a shot scale. Capitals, spaces and a stop after
 * `No` make no difference. A number alone, a size without a number and a text with two readings are not guessed at.
 *
 * @returns mass [g] and terms; no answer where a size is not in the scale (`load.unknown-size`, with the scale and
 * its sizes), where a term cannot be read (`load.not-understood`), has no number (`load.no-count`) or neither size
 * nor `g` (`load.bare-number`), where it comes to nothing (`load.zero`) or can be read in two ways
 * (`load.two-readings`)
 */
export function parseLoad(text: string, scale: ShotScale): Answer<Load> {
  const parts: LoadPart[] = [];
  for (const term of text.split("+")) {
    const part = parseTerm(term.trim(), text, scale);
    if (!part.ok) return part;
    parts.push(part.value);
  }
  return answer({ massG: parts.reduce((sum, { count, massG }) => sum + count * massG, 0), parts });
}

const halves: Readonly<Record<string, number>> = { "": 0, "½": 0.5 };

function parseTerm(term: string, text: string, scale: ShotScale): Answer<LoadPart> {
  const mass = parseQuantity("mass", term);
  if (mass.ok) {
    return mass.value > 0 ? answer({ count: 1, massG: mass.value }) : noAnswer("load.zero", { term, text });
  }
  if (/^[\d.½]+$/.test(term)) {
    return noAnswer("load.bare-number", { term, text, scale: scale.title, sizes: sizeNames(scale) });
  }
  const whole = sizeNamed(term, scale);
  const counted = /^(\d*)(½?)\s*(?:[x×]\s*)?(.*)$/i.exec(term);
  const [, digits = "", half = "", name = ""] = counted ?? [];
  const size = sizeNamed(name, scale);
  const hasCount = digits !== "" || half !== "";

  if (whole && hasCount && size && whole !== size) {
    return noAnswer("load.two-readings", {
      term,
      text,
      scale: scale.title,
      size: whole.name,
      count: digits,
      countedSize: size.name,
    });
  }
  if (whole) return noAnswer("load.no-count", { term, text, size: whole.name });
  if (!hasCount || /^\d*[.,]/.test(term)) return unreadable(term, text, scale);
  if (!size) {
    return noAnswer("load.unknown-size", {
      size: name.trim(),
      text,
      scale: scale.title,
      sizes: sizeNames(scale),
    });
  }
  const count = Number(digits) + halves[half]!;
  if (!(count > 0)) return noAnswer("load.zero", { term, text });
  return answer({ count, size: size.name, massG: size.massG });
}

function unreadable(term: string, text: string, scale: ShotScale) {
  return noAnswer("load.not-understood", { term, text, scale: scale.title, sizes: sizeNames(scale) });
}

/** The size of a name as people write it: `No 8`, `no8`, `No. 8`. */
export function sizeNamed(name: string, scale: ShotScale): ShotSize | undefined {
  const wanted = plain(name);
  return scale.sizes.find((size) => plain(size.name) === wanted);
}

function plain(name: string): string {
  return name.toLowerCase().replace(/[\s.]/g, "");
}

function sizeNames(scale: ShotScale): string {
  return scale.sizes.map(({ name }) => name).join(", ");
}
