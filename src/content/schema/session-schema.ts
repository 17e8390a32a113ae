import * as z from "zod";
import { limits } from "../../model/limits.ts";
import { date } from "./date-schema.ts";
import { mass, massOrNone, quantity, time, volume } from "./quantity-schema.ts";
import { money, price, stockKeys } from "./stock-schema.ts";

/** Minutes after midnight. */
const clock = () =>
  z
    .string()
    .regex(/^(?:[01]?\d|2[0-3]):[0-5]\d$/, "this is no time of day; write it like 09:30")
    .meta({ form: "a time of day, such as 09:30" })
    .transform((typed) => {
      const [hours = "", minutes = ""] = typed.split(":");
      return 60 * Number(hours) + Number(minutes);
    });

/** Figures with a word between them, so that nobody's name can stand there. */
const ages = () =>
  z
    .string()
    .regex(
      /^\d{1,2}\+?(?:\s?(?:[–,-]|\p{L}{1,4})\s?\d{1,2}\+?)*$/u,
      "these are no ages; write them like 9 to 13, and never names",
    )
    .meta({ form: "ages, such as 9 to 13" });

const names = () => z.array(z.string()).max(limits.depths.most).default([]);
const part = (like: string) => quantity("time", { least: 0 }, [like]);
const people = () => z.int().min(1).max(60);
const volumeOrNone = () => quantity("volume", { least: 0 });

/** `content/sessions/*.yaml`: a day by the water with a group. */
export const sessionSchema = z.strictObject({
  title: z.string(),
  date: date(),
  from: clock(),
  hours: time(),
  page: z.boolean().default(false),
  swims: z
    .array(z.strictObject({ swim: z.string(), spot: z.string(), rigs: names() }))
    .min(1)
    .max(limits.depths.most),
  learners: z.strictObject({
    count: people(),
    ages: ages().optional(),
    "first-time": z.boolean().default(false),
  }),
  adults: people(),
  rods: z.int().min(0).max(200),
  lessons: names(),
  rigs: z.array(z.string()).min(1).max(limits.depths.most),
  baits: z.array(z.string()).min(1).max(limits.depths.most),
  "hook-bait": volumeOrNone().default(50),
  kit: z.string(),
  "set-up": part("20 min").default(20 * 60),
  fishing: part("30 min").default(30 * 60),
  "pack-up": part("15 min").default(15 * 60),
  money: money(),
  box: z
    .strictObject({
      ...stockKeys,
      feeds: z
        .array(
          z.strictObject({
            feed: z.string(),
            volume: volumeOrNone().default(0),
            packet: volume().optional(),
            price: price(),
          }),
        )
        .max(limits.tableRows.most)
        .default([]),
      groundbait: z
        .strictObject({ mass: massOrNone().default(0), packet: mass().optional(), price: price() })
        .optional(),
    })
    .prefault({}),
});
