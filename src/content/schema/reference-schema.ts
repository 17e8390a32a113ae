import * as z from "zod";
import { bases } from "../../core/basis.ts";
import { limits } from "../../model/limits.ts";
import { signPictures, signTimes, signWaters } from "../../model/signs.ts";
import { date } from "./date-schema.ts";
import { fishLooksSchema } from "./looks-schema.ts";
import { share, strength } from "./quantity-schema.ts";

/** A word that can be an anchor and be found in a text. */
const term = z.string().regex(/[\p{L}\d]/u, "has no letter and no digit");

/**
 * `content/glossary.yaml`. `link: false` keeps everyday words, which have other senses too, from becoming links;
 * `unlinked` does so for some forms of a word only (a canal's lock is no locking shot).
 */
export const glossarySchema = z.array(
  z.strictObject({
    term,
    meaning: z.string(),
    also: z.array(term).default([]),
    unlinked: z.array(z.string()).default([]),
    link: z.boolean().default(true),
  }),
);

/** `content/troubles.yaml`: what the float does, why, and what to do. */
export const troublesSchema = z.array(
  z.strictObject({
    sign: z.string(),
    when: z.enum(signTimes).optional(),
    water: z.enum(signWaters).default("either"),
    shows: z.enum(signPictures).optional(),
    causes: z.array(z.string()).min(1),
    do: z.array(z.string()).min(1),
  }),
);

/** `content/synonyms.yaml`: words that readers use for one thing, each line a group; the search takes one for another. */
export const synonymsSchema = z.array(
  z
    .array(
      z
        .string()
        .regex(
          /^[\p{L}\d'’-]+( [\p{L}\d'’-]+)*$/u,
          "write words in letters, digits, hyphens and single spaces",
        ),
    )
    .min(2),
);

/** `content/changes.yaml`: what is new in the guide, for those who follow it. */
export const changesSchema = z.array(
  z.strictObject({
    date: date(),
    title: z.string(),
    summary: z.string(),
    page: z
      .string()
      .regex(/^[\w/-]+\.html(#.+)?$/, "name a page of the site, such as rigs/first-session.html"),
  }),
);

/** `content/species/*.yaml`; `also` has other names by which rigs say that they catch it. */
export const speciesSchema = z.strictObject({
  title: z.string(),
  also: z.array(z.string()).default([]),
  asks: z.string(),
  looks: fishLooksSchema.optional(),
  notes: z.string().default(""),
});

const strengths = z.tuple([strength(), strength()]);

/** `content/lines.yaml`: the least and the most that line for each kind of fish should break at. */
export const linesSchema = z.strictObject({
  basis: z.enum(bases),
  source: z.string(),
  "left-under-shot": share(),
  fish: z
    .array(z.strictObject({ fish: z.string(), "main-line": strengths, "hook-length": strengths }))
    .min(1)
    .max(limits.tableRows.most),
});
