import * as z from "zod";
import { waterKinds } from "../../core/water/water.ts";
import { limits } from "../../model/limits.ts";
import { bedFeatures, hazardKinds, winds } from "../../model/swim.ts";
import { date } from "./date-schema.ts";
import { pace, quantity } from "./quantity-schema.ts";

const fromBank = () => quantity("length", { least: 0 }, ["6 m", "20 ft"]);
const plumbed = () => quantity("length", { least: 0 }, ["1.5 m", "150 cm", "5 ft"]);

const line = z.strictObject({
  title: z.string(),
  soundings: z
    .array(z.strictObject({ "from-bank": fromBank(), depth: plumbed() }))
    .min(2)
    .max(limits.tableRows.most),
  features: z
    .array(
      z.strictObject({ what: z.enum(bedFeatures), "from-bank": fromBank(), note: z.string().optional() }),
    )
    .default([]),
});

/** `content/swims/*.yaml`: a place to fish from, as somebody found it. */
export const swimSchema = z
  .strictObject({
    title: z.string(),
    summary: z.string(),
    water: z.enum(waterKinds),
    pace: pace().optional(),
    sounded: date(),
    "level-mark": z.string().optional(),
    lines: z.array(line).min(1).max(limits.depths.most),
    spots: z
      .array(z.strictObject({ title: z.string(), line: z.string().optional(), "from-bank": fromBank() }))
      .min(1)
      .max(limits.depths.most),
    "exposed-to": z.array(z.enum(winds)).default([]),
    hazards: z
      .array(z.strictObject({ what: z.enum(hazardKinds), where: z.string(), do: z.string() }))
      .default([]),
    access: z.strictObject({
      "grid-reference": z.string().optional(),
      road: z.string(),
      way: z.string().optional(),
    }),
    places: z.int().min(1).max(30),
    fish: z.array(z.string()).min(1),
    rules: z.array(z.string()).default([]),
  })
  .refine(({ water, pace: ms }) => water === "still" || ms !== undefined, {
    message: "flowing water needs its pace, such as pace: 10 m in 40 s",
    path: ["water"],
  });
