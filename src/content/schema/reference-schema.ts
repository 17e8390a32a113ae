import { z } from "zod";

/** `content/glossary.yaml`. */
export const glossarySchema = z.array(
  z.strictObject({ term: z.string(), meaning: z.string(), also: z.array(z.string()).default([]) }),
);

/** `content/troubles.yaml`: what the float does, why, and what to do. */
export const troublesSchema = z.array(
  z.strictObject({
    sign: z.string(),
    causes: z.array(z.string()).min(1),
    do: z.array(z.string()).min(1),
  }),
);

/** `content/species/*.yaml`. */
export const speciesSchema = z.strictObject({
  title: z.string(),
  asks: z.string(),
  notes: z.string().default(""),
});
