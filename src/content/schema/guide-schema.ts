import { z } from "zod";
import { metals } from "../../core/tackle/shot.ts";
import { limits } from "../../model/limits.ts";
import { unitChoices } from "../../model/unit-choice.ts";
import { date } from "./date-schema.ts";
import { length, mass, massOrNone, temperature } from "./quantity-schema.ts";

/** Names of those languages that there are. */
const languageNames = new Intl.DisplayNames("en", { type: "language", fallback: "none" });

/** A BCP 47 tag: it says how numbers are written, and screen readers speak by it. */
const languageTag = () =>
  z.string().refine(isLanguageTag, "this is no language tag; write one like en or de-AT");

function isLanguageTag(typed: string): boolean {
  try {
    return languageNames.of(typed) !== undefined;
  } catch {
    return false;
  }
}

/** What of the shipped library can be chosen, by its folder. */
export const libraryKinds = [
  "lessons",
  "rigs",
  "floats",
  "baits",
  "knots",
  "species",
  "kits",
  "pages",
] as const;

const choice = z
  .union([z.enum(["all", "none"]), z.array(z.string())])
  .meta({ form: "all, none, or a list of names and tags, such as [first-session, beginner]" })
  .default("all");

/** What the guide takes from the library that comes with the tool. */
export const librarySchema = z
  .union([
    z.literal("none"),
    z.strictObject(
      Object.fromEntries(libraryKinds.map((kind) => [kind, choice])) as Record<
        (typeof libraryKinds)[number],
        typeof choice
      >,
    ),
  ])
  .meta({ form: `none, or a group of choices by ${libraryKinds.join(", ")}` });

/** `content/guide.yaml`. */
export const guideSchema = z.strictObject({
  title: z.string(),
  publisher: z.string(),
  "site-address": z
    .url({ protocol: /^https?$/, error: "write the whole address, starting with https://" })
    .refine(
      (address) => address.length <= limits.addressSigns.most && !/[?#@]/.test(address),
      `give a plain address of at most ${limits.addressSigns.most} signs, without ?, # and @`,
    )
    .optional(),
  language: languageTag().default("en"),
  units: z.enum(unitChoices).default("metric first"),
  "shot-scale": z.string(),
  tub: z.string(),
  "lead-rule": z.strictObject({
    place: z.string(),
    "allowed-up-to": massOrNone(),
    "allowed-above": mass().optional(),
    source: z.string(),
    checked: date(),
  }),
  rules: z
    .record(
      z.string().regex(/^[a-z][a-z-]*$/, "name a rule in small letters, such as close-season"),
      z.string(),
    )
    .refine((rules) => !("lead" in rules || "place" in rules), "lead and place are taken from lead-rule")
    .default({}),
  contacts: z
    .array(z.strictObject({ when: z.string(), who: z.string(), number: z.string().optional() }))
    .default([]),
  "lead-breach": z.enum(["error", "warning"]).default("warning"),
  plummets: z.array(z.strictObject({ mass: mass(), metal: z.enum(metals) })).default([]),
  "water-temperature": temperature(),
  salinity: z.number().min(0).max(42).default(0),
  paper: z.enum(["A4", "Letter"]).default("A4"),
  "rod-length": length(),
  edition: date(),
  library: librarySchema.prefault({}),
});
