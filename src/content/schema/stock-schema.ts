import * as z from "zod";
import { metals } from "../../core/tackle/shot.ts";
import { limits } from "../../model/limits.ts";
import { quantity, strength } from "./quantity-schema.ts";

const pieces = () => z.int().min(0).max(100_000);
const packet = () => z.int().min(1).max(100_000).optional();
/** Of a packet, in the money of the file, to its hundredths. */
export const price = () => z.number().min(0).max(100_000).optional();
const lineLength = () => quantity("length", { least: 0 }, ["100 m", "110 yd"]);
const spool = () => quantity("length", { above: 0 }, ["100 m", "110 yd"]).optional();

const list = <T extends z.ZodType>(entry: T) => z.array(entry).max(limits.tableRows.most).default([]);

const spools = () =>
  list(z.strictObject({ strength: strength(), length: lineLength(), packet: spool(), price: price() }));

/** Tackle as it is in a box or on a shelf: how much of it there is, how it is sold, and what that costs. */
export const stockKeys = {
  floats: list(z.strictObject({ float: z.string(), count: pieces(), packet: packet(), price: price() })),
  shot: list(
    z.strictObject({
      size: z.string(),
      metal: z.enum(metals),
      count: pieces(),
      packet: packet(),
      price: price(),
    }),
  ),
  hooks: list(
    z.strictObject({ size: z.int().min(1).max(30), count: pieces(), packet: packet(), price: price() }),
  ),
  "hook-line": spools(),
  "main-line": spools(),
};

/** What prices are in, such as £ or EUR. */
export const money = () =>
  z
    .string()
    .regex(/^.{1,8}$/u, "write a sign or a few letters, such as £ or EUR")
    .optional();

const metres = (like: string) => quantity("length", { above: 0 }, [like]);

/** `content/shelves/*.yaml`: what a shop has, and which rigs it sells made up. */
export const shelfSchema = z.strictObject({
  title: z.string(),
  money: money(),
  ...stockKeys,
  pack: z
    .strictObject({
      "hook-lengths": z.int().min(1).max(20).default(2),
      "line-for-each": metres("60 cm").default(600),
      "main-line": metres("6 m").default(6000),
    })
    .prefault({}),
  packs: z
    .array(z.strictObject({ rig: z.string(), wanted: z.int().min(0).max(1000), ready: pieces().default(0) }))
    .min(1)
    .max(limits.tableRows.most),
});
