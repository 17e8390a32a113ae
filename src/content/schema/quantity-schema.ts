import * as z from "zod";
import { parseQuantity, type QuantityKind, quantityExamples } from "../../core/quantity.ts";
import type { MessageValues } from "../../model/message-table.ts";

/** What is wrong with a quantity, for a message about the key that it stands at. */
export type QuantityFault =
  | { readonly code: "quantity"; readonly values: MessageValues["quantity"] }
  | { readonly code: "out-of-range"; readonly values: Omit<MessageValues["out-of-range"], "key"> };

interface Range {
  readonly least?: number;
  readonly above?: number;
  readonly most?: number;
  /** How what is outside is told. */
  readonly told?: { readonly least: string; readonly most: string };
}

/**
 * A quantity with its unit, read into the core's unit for its kind.
 *
 * @param like how such a quantity is usually written, likeliest first
 */
export function quantity(
  kind: QuantityKind,
  range: Range = {},
  like: readonly string[] = quantityExamples[kind],
) {
  const schema = z.unknown().transform((typed, context): number => {
    const text = typeof typed === "string" || typeof typed === "number" ? String(typed) : "";
    const read = parseQuantity(kind, text);
    if (!read.ok) {
      context.issues.push({
        code: "custom",
        input: typed,
        params: {
          code: "quantity",
          values: {
            kind,
            problem: read.problem,
            unit: read.unit,
            found: text === "" ? JSON.stringify(typed) : text,
            examples: like,
          },
        } satisfies QuantityFault,
      });
      return z.NEVER;
    }
    const bound =
      range.least !== undefined && read.value < range.least
        ? (range.told?.least ?? "below nothing")
        : range.above !== undefined && read.value <= range.above
          ? "not above nothing"
          : range.most !== undefined && read.value > range.most
            ? (range.told?.most ?? "too much")
            : undefined;
    if (bound !== undefined) {
      context.issues.push({
        code: "custom",
        input: typed,
        params: { code: "out-of-range", values: { found: text, bound } } satisfies QuantityFault,
      });
      return z.NEVER;
    }
    return read.value;
  });
  // For editors: a quantity is typed as a text, and looks like one of these.
  return schema.meta({ type: "string", like });
}

/** How thick line is. */
export const thickness = () => quantity("length", { above: 0 }, ["0.18 mm"]);
/** How thick, how high or how far out of the water a float is. */
export const smallLength = () => quantity("length", { above: 0 }, ["15 mm", "1.5 cm", "1/2 in"]);
/** What line breaks at. */
export const strength = () => quantity("mass", { above: 0 }, ["4 lb", "1.8 kg"]);
/** How deep water is. */
export const waterDepth = () => quantity("length", { above: 0 }, ["1.5 m", "150 cm", "5 ft"]);
export const length = () => quantity("length", { above: 0 });
/** A length that may be nothing or negative, such as a setting off the bottom. */
export const anyLength = () => quantity("length");
export const mass = () => quantity("mass", { above: 0 });
export const massOrNone = () => quantity("mass", { least: 0 });
/** Lead is allowed up to the first of these two weights and above the second, as the law has it; between them it is not. */
export const leadUpTo = () => quantity("mass", { least: 0 }, ["0.06 g"]);
export const leadAbove = () => quantity("mass", { above: 0 }, ["28.35 g", "1 oz"]);
export const plummetMass = () => quantity("mass", { above: 0 }, ["5 g"]);
export const time = () => quantity("time", { above: 0 });
export const temperature = () =>
  quantity("temperature", {
    least: 0,
    most: 40,
    told: { least: "below 0 C, where water is ice", most: "more than 40 C, where no fish lives" },
  });
export const volume = () => quantity("volume", { above: 0 });
export const pace = () => quantity("pace", { above: 0 });
export const density = () => quantity("density", { above: 0 });
export const share = () =>
  quantity("share", { least: 0, most: 1, told: { least: "less than none", most: "more than 100 %" } });
