import * as z from "zod";
import { limits } from "../../model/limits.ts";
import { date } from "./date-schema.ts";
import { anyLength, pace, waterDepth } from "./quantity-schema.ts";

const many = limits.tableRows.most;

/** `content/notes/*.yaml`: what was found at a swim on one day. */
export const notesSchema = z.strictObject({
  swim: z.string(),
  date: date(),
  level: anyLength().optional(),
  pace: pace().optional(),
  depths: z
    .array(z.strictObject({ spot: z.string(), depth: waterDepth() }))
    .max(many)
    .default([]),
  rigs: z
    .array(
      z.strictObject({
        rig: z.string(),
        spot: z.string().optional(),
        worked: z.string().optional(),
        catches: z
          .array(z.strictObject({ fish: z.string(), count: z.int().min(1) }))
          .max(many)
          .default([]),
      }),
    )
    .max(many)
    .default([]),
});
