import { type Answer, answer, noAnswer } from "./finding.ts";
import { parseQuantity } from "./quantity.ts";
import type { ShotScale, ShotSize } from "./shot.ts";

/** A load as it is written: so many of each size, or a bare mass. */
export interface Load {
  readonly massG: number;
  /** Empty where the load is given as a mass. */
  readonly parts: readonly { readonly count: number; readonly size: ShotSize }[];
}

/** `No 8` and `no8` are the same size; nothing else about a name is forgiven. */
const plain = (name: string) => name.toLowerCase().replace(/[\s.]+/g, "");

/**
 * A load such as `2 AAA + 3 No 8`, `4BB` or `1.2 g`.
 *
 * @returns the load with its mass in air [g]; no answer where a size is not in the scale (`load.unknown-size`, naming
 *   the scale and its sizes) or the text is no load at all (`load.not-understood`).
 */
export function parseLoad(text: string, scale: ShotScale): Answer<Load> {
  const mass = parseQuantity("mass", text);
  if (mass.ok) {
    return mass.value > 0
      ? answer({ massG: mass.value, parts: [] })
      : noAnswer("load.not-understood", { text });
  }
  const parts: { count: number; size: ShotSize }[] = [];
  for (const piece of text.split("+")) {
    const found = /^\s*(\d+)\s*(?:[x×]\s*)?(\S.*?)\s*$/i.exec(piece);
    if (!found || Number(found[1]) === 0) return noAnswer("load.not-understood", { text });
    const size = scale.sizes.find(({ name }) => plain(name) === plain(found[2]!));
    if (!size) {
      const sizes = scale.sizes.map(({ name }) => name).join(", ");
      return noAnswer("load.unknown-size", { size: found[2]!, scale: scale.title, sizes });
    }
    parts.push({ count: Number(found[1]), size });
  }
  return answer({ massG: parts.reduce((sum, { count, size }) => sum + count * size.massG, 0), parts });
}
