import * as z from "zod";
import { bases } from "../../core/basis.ts";
import { windStrengths } from "../../model/choosing-rules.ts";
import { quantity, strength } from "./quantity-schema.ts";

/** A share that may be more than the whole. */
const shareOf = () => quantity("share", { above: 0 }, ["60 %", "125 %"]);
const distance = () => quantity("length", { above: 0 }, ["4 m", "12 ft"]);
const load = () => quantity("mass", { above: 0 }, ["1 g"]);

const limit = z.discriminatedUnion("rule", [
  z.strictObject({ rule: z.enum(["water", "rod", "box", "line"]) }),
  z.strictObject({ rule: z.literal("pace"), most: shareOf() }),
  z.strictObject({ rule: z.literal("depth"), least: shareOf(), most: shareOf() }),
  z.strictObject({ rule: z.literal("distance"), from: distance(), "load-each-metre": load() }),
  z.strictObject({ rule: z.literal("two points"), "rod-lengths": z.number().positive().max(10) }),
  z.strictObject({ rule: z.literal("snag"), within: distance(), "main-line": strength() }),
  z.strictObject({ rule: z.literal("level"), above: z.int().min(0).max(2) }),
  z.strictObject({ rule: z.literal("wind"), of: z.enum(windStrengths), load: load() }),
]);

const points = z.int().min(1).max(100);

const point = z.discriminatedUnion("rule", [
  z.strictObject({ rule: z.enum(["fish", "depth", "pace", "level"]), points }),
  z.strictObject({ rule: z.literal("wind"), of: z.enum(windStrengths), points }),
]);

/** `content/choosing.yaml`: what rules a rig out, and what speaks for it. */
export const choosingSchema = z.strictObject({
  basis: z.enum(bases),
  "rules-out": z.array(limit).min(1).max(20),
  "speaks-for": z.array(point).min(1).max(20),
});
