import type { z } from "zod";
import type { Library } from "../../model/library.ts";
import type { Read, Reading } from "../reading.ts";
import type { choosingSchema } from "../schema/choosing-schema.ts";
import type { notesSchema } from "../schema/notes-schema.ts";
import type { swimSchema } from "../schema/swim-schema.ts";
import { linkChoosing } from "./choosing-link.ts";
import { linkNotes } from "./notes-link.ts";
import { linkSwim } from "./swim-link.ts";

interface ReadSwims {
  readonly swims: readonly Read<z.output<typeof swimSchema>>[];
  readonly notes: readonly Read<z.output<typeof notesSchema>>[];
  readonly choosing: Read<z.output<typeof choosingSchema>> | undefined;
}

/** Places to fish from, what was found there, the earliest day first, and how rigs are chosen for them. */
export function swimsOf(
  read: ReadSwims,
  rigs: Library["rigs"],
  species: Library["species"],
  reading: Reading,
): Pick<Library, "swims" | "notes" | "choosing"> {
  const swims = read.swims.flatMap((one) => linkSwim(one, species, reading) ?? []);
  const notes = read.notes.flatMap((one) => linkNotes(one, { swims, rigs, species }, reading) ?? []);
  return {
    swims,
    notes: notes.sort((a, b) => (a.date < b.date ? -1 : 1)),
    ...(read.choosing && { choosing: linkChoosing(read.choosing, reading) }),
  };
}
