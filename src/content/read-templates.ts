import type { Library } from "../model/library.ts";
import { templateNames } from "../model/own-templates.ts";
import type { Reading } from "./reading.ts";

/** Parts of pages that the guide writes itself. */
export function readTemplates(reading: Reading): Library["templates"] {
  return new Map(
    templateNames.flatMap((name) => {
      const text = reading.text(`templates/${name}.md`);
      return text ? [[name, text] as const] : [];
    }),
  );
}
