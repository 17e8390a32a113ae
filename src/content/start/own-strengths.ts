import { parseQuantity } from "../../core/quantity.ts";

/** Strengths of lines in a begun rig as the guide shows them: in a metric one in kilograms to a tenth, as they stand on spools. */
export function ownStrengths(text: string, units: unknown): string {
  if (units !== "metric") return text;
  return text.replace(/(?<=\bstrength: )\d+(?:\.\d+)? lb/g, (typed) => {
    const read = parseQuantity("mass", typed);
    return read.ok ? `${(read.value / 1000).toFixed(1)} kg` : typed;
  });
}
