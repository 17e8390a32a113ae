import type { Library } from "../model/library.ts";
import { startOf } from "../model/message.ts";
import { templateNames } from "../model/own-templates.ts";
import type { Reading } from "./reading.ts";

/** Parts of pages that the guide writes itself. */
export function readTemplates(reading: Reading): Library["templates"] {
  return new Map(
    templateNames.flatMap((name) => {
      const path = `templates/${name}.md`;
      const text = reading.text(path);
      if (text?.body.children[0]?.type === "yaml") {
        const problem = "a part of a page has no keys; take out the --- lines and what stands between them";
        reading.error(startOf(text.path), "not-valid", { key: `${name}.md`, problem });
      }
      return text ? [[name, text] as const] : [];
    }),
  );
}
