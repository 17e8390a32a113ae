import * as z from "zod";
import { metals } from "../../core/tackle/shot.ts";
import { limits } from "../../model/limits.ts";
import { nearestLegible, type OwnColours } from "../../model/look-colours.ts";
import { unitChoices } from "../../model/unit-choice.ts";
import { usualAccent, usualMain } from "../../model/usual-colours.ts";
import { date } from "./date-schema.ts";
import { leadAbove, leadUpTo, plummetMass, quantity, temperature } from "./quantity-schema.ts";

/** Names of those languages that there are. */
const languageNames = new Intl.DisplayNames("en", { type: "language", fallback: "none" });

/** A BCP 47 tag: it says how numbers are written, and screen readers speak by it. */
const languageTag = () =>
  z.string().refine(isLanguageTag, "this is no language tag; write one like en or de-AT");

export function isLanguageTag(typed: string): boolean {
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

/** A colour that can be read on the pages; one that cannot is an error that names the nearest that can. */
const colour = (role: keyof OwnColours, example: string) =>
  z
    .string()
    .regex(/^#[0-9a-fA-F]{6}$/, `write it as # and six digits or letters from a to f, such as ${example}`)
    .superRefine((typed, context) => {
      if (!/^#[0-9a-fA-F]{6}$/.test(typed)) return;
      const nearest = nearestLegible(role, typed);
      if (nearest === typed.toLowerCase()) return;
      const message = `${typed} cannot be read on the light pages; the nearest that can is "${nearest}"`;
      context.addIssue({ code: "custom", message });
    })
    .meta({ examples: [`"${example}"`] });

/** How the guide looks, where its makers want it their own. */
const lookSchema = z.strictObject({
  logo: z
    .string()
    .meta({ examples: ["logo.svg", "logo.png"] })
    .optional(),
  font: z
    .string()
    .meta({ examples: ["signs.ttf"] })
    .optional(),
  colours: z
    .strictObject({
      main: colour("main", "#0a4d57").default(usualMain),
      accent: colour("accent", "#a8330c").default(usualAccent),
    })
    .optional(),
});

/** Where its makers are found. */
const visitSchema = z.strictObject({ address: z.string(), hours: z.array(z.string()).default([]) });

/** `content/guide.yaml`. */
export const guideSchema = z.strictObject({
  title: z.string(),
  publisher: z.string(),
  "site-address": z
    .url({ protocol: /^https?$/, error: "write the whole address, starting with https://" })
    .refine(
      (address) => address.length <= limits.addressSigns.most && !/[?#@\s]/.test(address),
      `give a plain address of at most ${limits.addressSigns.most} signs, without spaces, ?, # and @`,
    )
    .superRefine((address, context) => {
      // Repositories and folders may have points in their names, too: only what is surely a file is refused.
      const [, folder] =
        /^(https?:\/\/[^/]+\/(?:.*\/)?)[^/]+\.(?:html?|php|aspx?|xml|pdf|txt)$/i.exec(address) ?? [];
      if (folder === undefined) return;
      const message = `this is the address of a file; write that of the folder: ${folder}`;
      context.addIssue({ code: "custom", message });
    })
    .optional(),
  language: languageTag().default("en"),
  units: z.enum(unitChoices).default("metric first"),
  "shot-scale": z.string(),
  tub: z.string(),
  "lead-rule": z.strictObject({
    place: z.string(),
    "allowed-up-to": leadUpTo(),
    "allowed-above": leadAbove().optional(),
    source: z.string(),
    checked: date().optional(),
  }),
  rules: z
    .record(
      z.string().regex(/^[a-z][a-z-]*$/, "name a rule in small letters, such as close-season"),
      z.string(),
    )
    .superRefine((rules, context) => {
      for (const path of ["lead", "place"].filter((name) => name in rules)) {
        const message = "this is taken from lead-rule; take it out here, or call it something else";
        context.addIssue({ code: "custom", message, path: [path] });
      }
    })
    .default({}),
  contacts: z
    .array(z.strictObject({ when: z.string(), who: z.string(), number: z.string().optional() }))
    .max(limits.tableRows.most)
    .default([]),
  "club-number": z.string().optional(),
  "access-point": z.string().optional(),
  "lead-breach": z.enum(["error", "warning"]).default("warning"),
  plummets: z.array(z.strictObject({ mass: plummetMass(), metal: z.enum(metals) })).default([]),
  "water-temperature": temperature(),
  salinity: z.number().min(0).max(42).default(0),
  paper: z.enum(["A4", "Letter"]).default("A4"),
  "rod-length": quantity("length", { above: 0 }, ["3.6 m", "12 ft"]),
  edition: date(),
  look: lookSchema.optional(),
  visit: visitSchema.optional(),
  library: librarySchema.prefault({}),
});
