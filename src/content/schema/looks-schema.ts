import * as z from "zod";
import { bases } from "../../core/basis.ts";
import { baitPlaces, baitShapes } from "../../model/bait-looks.ts";
import { finEdges, fishPlaces, mouths, scaleSizes, sideMarks } from "../../model/fish-looks.ts";
import { share, smallLength } from "./quantity-schema.ts";

/** What is written beside a picture: a few words, none too long for its room. */
const say = z.string().regex(/^\S{1,16}( \S{1,16}){0,7}$/u, "takes up to eight words of up to 16 signs");
const fishSays = z
  .array(z.strictObject({ at: z.enum(fishPlaces), say }))
  .max(2)
  .default([]);

const fin = z.strictObject({ from: share(), to: share(), height: share(), edge: z.enum(finEdges) });

/** `looks` of `content/species/*.yaml`: proportions from the side, as shares of the length from nose to root of tail. */
export const fishLooksSchema = z.strictObject({
  body: z.strictObject({ depth: share(), deepest: share(), back: share(), "tail-root": share() }),
  head: z.strictObject({
    gill: share(),
    mouth: z.enum(mouths),
    wide: z.boolean().default(false),
    barbels: z.int().min(0).max(3).default(0),
  }),
  "back-fins": z.array(fin).max(3),
  "vent-fin": fin,
  "belly-fin": share(),
  tail: z.strictObject({ reach: share(), fork: share() }),
  scales: z.enum(scaleSizes).default("none"),
  marks: z.enum(sideMarks).default("none"),
  "red-fins": z.boolean().default(false),
  "red-eye": z.boolean().default(false),
  basis: z.enum(bases),
  tell: z.strictObject({ above: fishSays, below: fishSays }),
});

/** `looks` of `content/baits/*.yaml`. */
export const baitLooksSchema = z.strictObject({
  shape: z.enum(baitShapes),
  length: smallLength(),
  width: smallLength(),
  count: z.int().min(1).max(2).default(1),
  tell: z.array(z.strictObject({ at: z.enum(baitPlaces), say })).max(3),
});
