import type { z } from "zod";
import type { BaitEntry } from "../../model/library.ts";
import { parseNotes } from "../markdown-source.ts";
import type { Read, Reading } from "../reading.ts";
import type { baitSchema } from "../schema/tackle-schema.ts";

/** A bait with its notes, and the hooks that suit it. */
export function linkBait(
  { id, source, value, yaml }: Read<z.output<typeof baitSchema>>,
  reading: Reading,
): BaitEntry & { readonly id: string } {
  const { title, mass, density, basis, fall } = value;
  const hooks = value.hooks && { largest: value.hooks[0], smallest: value.hooks[1] };
  if (hooks && hooks.largest > hooks.smallest) {
    reading.error(yaml.placeOf(["hooks"]), "band-upside-down", { key: "hooks" });
  }
  return {
    id,
    path: source.file,
    bait: {
      id,
      title,
      massG: mass,
      densityKgM3: density,
      basis,
      ...(fall !== undefined && { fallMs: fall }),
    },
    ...(hooks && { hooks }),
    ...(value.feed !== undefined && { feed: value.feed }),
    ...(value.looks && {
      looks: { ...value.looks, lengthMm: value.looks.length, widthMm: value.looks.width },
    }),
    notes: parseNotes(value.notes, yaml.placeOf(["notes"]), reading.keep),
  };
}
