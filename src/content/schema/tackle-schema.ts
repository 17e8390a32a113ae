import * as z from "zod";
import { bases } from "../../core/basis.ts";
import { attachments } from "../../core/float/float.ts";
import { metals } from "../../core/tackle/shot.ts";
import { limits } from "../../model/limits.ts";
import { baitLooksSchema } from "./looks-schema.ts";
import {
  density,
  mass,
  massOrNone,
  pace,
  quantity,
  share,
  smallLength,
  strength,
} from "./quantity-schema.ts";

const basis = z.enum(bases);
const hookSize = z.int().min(1).max(30);
/** Line on a reel, a whip or a spool from the shop. */
const onReel = () => quantity("length", { above: 0 }, ["100 m", "110 yd"]);

/** `content/shot/*.yaml`: a scale, its sizes by mass or by weighing a number of them. */
export const scaleSchema = z.strictObject({
  title: z.string(),
  source: z.string(),
  basis,
  sizes: z
    .array(
      z.union([
        z.strictObject({ name: z.string(), mass: mass(), basis: basis.optional() }),
        z.strictObject({
          name: z.string(),
          weighed: z.strictObject({ count: z.int().min(1), mass: mass() }),
          basis: basis.optional(),
        }),
      ]),
    )
    .min(1)
    .max(limits.shotSizes.most),
});

/** `content/tubs/*.yaml`: what is in a box of shot. */
export const tubSchema = z.strictObject({
  title: z.string(),
  scale: z.string(),
  sizes: z
    .array(
      z.strictObject({
        size: z.string(),
        metal: z.enum(metals),
        count: z
          .union([z.int().min(0), z.literal("plenty")])
          .meta({ form: "a whole number of shot, or plenty" }),
      }),
    )
    .min(1)
    .max(limits.shotSizes.most),
});

/** `content/floats/*.yaml`. */
export const floatSchema = z.strictObject({
  title: z.string(),
  summary: z.string(),
  kind: z.string(),
  attachment: z.enum(attachments),
  "held-by": z.enum(["shot", "rubbers", "stop knot"]),
  marking: z.string(),
  "marked-metal": z.enum(metals),
  "self-load": massOrNone().default(0),
  "tip-showing": smallLength(),
  profile: z
    .array(z.strictObject({ at: quantity("length", { least: 0 }, ["8 mm"]), diameter: smallLength() }))
    .min(2)
    .max(limits.profilePoints.most),
  measured: z
    .strictObject({ load: z.string(), metal: z.enum(metals), "tip-showing": smallLength() })
    .optional(),
  mass: mass().optional(),
  basis,
  notes: z.string().default(""),
});

/** `content/hooks.yaml`. */
export const hooksSchema = z.array(z.strictObject({ size: hookSize, mass: mass(), basis })).min(1);

/** `content/kits/*.yaml`: what a learner brings, and for which rigs. */
export const kitSchema = z.strictObject({
  title: z.string(),
  rigs: z.array(z.string()).min(1),
  floats: z.array(z.string()).min(1),
  tub: z.string(),
  hooks: z.array(hookSize).min(1),
  "main-line": strength(),
  "hook-length": strength(),
  baits: z.array(z.string()).min(1),
  group: z
    .strictObject({
      spares: share(),
      "hook-lengths": z.int().min(1),
      "line-for-each": quantity("length", { above: 0 }, ["60 cm"]),
      "line-on-reel": onReel(),
      "hooks-in-packet": z.int().min(1),
      "hook-line-on-spool": onReel(),
      "main-line-on-spool": onReel(),
    })
    .optional(),
});

/** `content/baits/*.yaml`; `hooks` has the largest hook that suits it, then the smallest. */
export const baitSchema = z.strictObject({
  title: z.string(),
  mass: mass(),
  density: density(),
  fall: pace().optional(),
  hooks: z.tuple([hookSize, hookSize]).optional(),
  feed: z.string().optional(),
  looks: baitLooksSchema.optional(),
  basis,
  notes: z.string().default(""),
});
