import type { z } from "zod";
import { choosingSchema } from "./choosing-schema.ts";
import { guideSchema } from "./guide-schema.ts";
import type { FileKind } from "./key-notes.ts";
import { knotSchema } from "./knot-schema.ts";
import { notesSchema } from "./notes-schema.ts";
import { planSchema } from "./plan-schema.ts";
import { speciesSchema } from "./reference-schema.ts";
import { lessonSchema, pageSchema, rigSchema } from "./rig-schema.ts";
import { sessionSchema } from "./session-schema.ts";
import { shelfSchema } from "./stock-schema.ts";
import { swimSchema } from "./swim-schema.ts";
import { baitSchema, floatSchema, kitSchema, scaleSchema, tubSchema } from "./tackle-schema.ts";

/** A kind of file: where it stands, and what it must hold. */
interface FileForm {
  /** Folder of the content; none for a file that stands beside the folders. */
  readonly folder?: string;
  readonly ending: ".md" | ".yaml";
  readonly schema: z.ZodType;
  /** Keys that each file must have, where others are taken from the library's. */
  readonly needs?: readonly string[];
}

/** Every kind of file that has its keys explained. */
export const fileKinds: { readonly [K in FileKind]: FileForm } = {
  rig: { folder: "rigs", ending: ".md", schema: rigSchema },
  lesson: { folder: "lessons", ending: ".md", schema: lessonSchema },
  plan: { folder: "plans", ending: ".md", schema: planSchema },
  page: { folder: "pages", ending: ".md", schema: pageSchema },
  float: { folder: "floats", ending: ".yaml", schema: floatSchema },
  bait: { folder: "baits", ending: ".yaml", schema: baitSchema },
  species: { folder: "species", ending: ".yaml", schema: speciesSchema },
  knot: { folder: "knots", ending: ".yaml", schema: knotSchema },
  scale: { folder: "shot", ending: ".yaml", schema: scaleSchema },
  tub: { folder: "tubs", ending: ".yaml", schema: tubSchema },
  swim: { folder: "swims", ending: ".yaml", schema: swimSchema },
  kit: { folder: "kits", ending: ".yaml", schema: kitSchema },
  shelf: { folder: "shelves", ending: ".yaml", schema: shelfSchema },
  notes: { folder: "notes", ending: ".yaml", schema: notesSchema },
  choosing: { ending: ".yaml", schema: choosingSchema },
  session: { folder: "sessions", ending: ".yaml", schema: sessionSchema },
  guide: { ending: ".yaml", schema: guideSchema, needs: ["title", "publisher", "edition"] },
};
