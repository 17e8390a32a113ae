import * as z from "zod";
import { bases } from "../../core/basis.ts";
import { facings, type KnotPicture, strandPatterns } from "../../model/knot-picture.ts";

const flat = z.tuple([z.number(), z.number()]);
const point = z
  .union([flat, z.tuple([z.number(), z.number(), z.number()])])
  .meta({ form: "a place such as [12, 8], or with a height [12, 8, 1]" });
const size = z.number().positive();
const facing = z.enum(facings);
const lying = z.boolean().optional();

const coil = z.strictObject({
  coil: z.strictObject({
    from: flat,
    to: flat,
    turns: z.number().multipleOf(0.5).positive(),
    radius: size,
    start: z.enum(["top", "bottom"]),
    first: z.enum(["front", "back"]),
  }),
});

const doubled = z.strictObject({
  doubled: z.strictObject({
    gap: size,
    along: z.array(z.union([point, coil])).min(2),
    loop: z.array(point).min(1),
  }),
});

const strand = z.strictObject({
  name: z.string(),
  pattern: z.enum(strandPatterns),
  path: z
    .array(
      z
        .union([point, coil, doubled, z.literal("tag")])
        .meta({ form: "a place such as [12, 8] or [12, 8, 1], a coil, a doubled strand, or tag" }),
    )
    .min(1),
});

const object = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("hook"), at: point, size, facing }),
  z.strictObject({
    kind: z.literal("float"),
    at: point,
    length: size,
    shape: z.enum(["waggler", "stick"]),
    eye: size.optional(),
    lying,
  }),
  z.strictObject({ kind: z.literal("rubber"), at: point, length: size, width: size, lying }),
  z.strictObject({ kind: z.literal("shot"), at: point, radius: size, facing }),
  z.strictObject({ kind: z.literal("bead"), at: point, radius: size }),
  z.strictObject({ kind: z.literal("tied"), at: point, length: size, width: size }),
  z.strictObject({ kind: z.literal("cut"), at: point, facing }),
  z.strictObject({ kind: z.literal("span"), at: point, to: point }),
  z.strictObject({ kind: z.literal("cross"), at: point, size }),
  z.strictObject({ kind: z.literal("drop"), at: point, size }),
]);

const step = z.strictObject({
  caption: z.string(),
  strands: z.array(strand).min(1),
  objects: z.array(object).default([]),
  arrows: z.array(z.strictObject({ kind: z.enum(["pull", "way"]), path: z.array(point).min(2) })).default([]),
  labels: z
    .array(
      z.strictObject({
        at: point,
        text: z.string(),
        anchor: z.enum(["start", "middle", "end"]).default("middle"),
      }),
    )
    .default([]),
});

const share = z.number().gt(0).max(1);

/** `content/knots/<id>.yaml`; the id is the file's name. */
export const knotSchema = z
  .strictObject({
    title: z.string(),
    joins: z.string(),
    "strength-share": z
      .strictObject({ low: share, high: share, basis: z.enum(bases) })
      .refine(({ low, high }) => low <= high, "the low share is above the high one")
      .optional(),
    frame: z.tuple([size, size]),
    steps: z.array(step).min(1),
  })
  .transform(
    ({ "strength-share": strengthShare, ...rest }): Omit<KnotPicture, "id"> => ({
      ...rest,
      ...(strengthShare && { strengthShare }),
    }),
  );
