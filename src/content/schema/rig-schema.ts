import * as z from "zod";
import { settings } from "../../core/depth/setting.ts";
import { usualSessionS } from "../../core/feed/feed.ts";
import { waterKinds } from "../../core/water/water.ts";
import { levels } from "../../model/library.ts";
import { limits } from "../../model/limits.ts";
import {
  anyLength,
  length,
  pace,
  quantity,
  share,
  strength,
  thickness,
  time,
  volume,
  waterDepth,
} from "./quantity-schema.ts";

const line = { strength: strength(), diameter: thickness() };

const telltale = z.strictObject({ size: z.string(), "from-hook": length().optional() });
const lockShare = share().default(0);
const shotNames = z.array(z.string()).max(limits.shotNames.most);
const sizes = shotNames.min(1);

const bulk = {
  "lock-share": lockShare,
  sizes,
  share: share().optional(),
  "from-hook": length(),
  droppers: shotNames,
  telltale,
};

/** How the load is shared out between the lock and the line. */
export const loadingSchema = z.discriminatedUnion("pattern", [
  z.strictObject({
    pattern: z.literal("strung out"),
    "lock-share": lockShare,
    size: z.string(),
    gap: length(),
    telltale,
  }),
  z.strictObject({ pattern: z.literal("bulk"), ...bulk }),
  z.strictObject({ pattern: z.literal("spread bulk"), ...bulk, over: length() }),
  z.strictObject({ pattern: z.enum(["shirt button", "tapered shirt button"]), sizes, telltale }),
  z.strictObject({
    pattern: z.literal("lift"),
    "lock-share": lockShare,
    anchor: z.string(),
    "from-hook": length(),
  }),
  z.strictObject({ pattern: z.literal("all at the float"), "lock-share": lockShare }),
]);

/** Front matter of `content/rigs/*.md`. */
export const rigSchema = z.strictObject({
  title: z.string(),
  purpose: z.string(),
  water: z.enum(waterKinds),
  float: z.string(),
  "main-line": z.strictObject(line),
  "hook-length": z.strictObject({ ...line, length: length() }),
  hook: z.int().min(1).max(30),
  bait: z.string(),
  feed: z.strictObject({
    what: z.string(),
    portion: volume(),
    every: time(),
    for: time().default(usualSessionS),
    note: z.string().optional(),
    groundbait: z.boolean().default(false),
  }),
  setting: z.enum(settings).default("dead depth"),
  overdepth: anyLength().default(0),
  depths: z.array(waterDepth()).min(1).max(limits.depths.most),
  paces: z.array(pace()).max(limits.depths.most).default([]),
  whip: quantity("length", { above: 0 }, ["4 m", "13 ft"]).optional(),
  "held-back": share().optional(),
  knots: z
    .strictObject({ hook: z.string().default("half-blood"), loop: z.string().default("overhand-loop") })
    .prefault({}),
  tub: z.string().optional(),
  level: z.enum(levels),
  catches: z.array(z.string()).min(1),
  "use-when": z.array(z.string()).min(1),
  "not-when": z.array(z.string()).min(1),
  "change-first": z.array(z.string()).min(1),
  loading: loadingSchema,
});

/** Front matter of `content/lessons/*.md`. */
export const lessonSchema = z.strictObject({
  order: z.int().min(1),
  part: z.string(),
  title: z.string(),
  summary: z.string(),
});

/** Front matter of `content/pages/*.md`. */
export const pageSchema = z.strictObject({ title: z.string(), summary: z.string() });
