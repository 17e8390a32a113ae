import type { Licence } from "../model/licence.ts";
import type { SiteInput } from "./input.ts";

/** As far as it is read: CycloneDX 1.6. */
interface Bill {
  readonly components: readonly {
    readonly name: string;
    readonly version: string;
    readonly licenses: readonly {
      readonly license: {
        readonly id?: string;
        readonly name?: string;
        readonly text?: { readonly content: string };
      };
    }[];
  }[];
}

/** What the list of works of others has, for people to read. */
export function licencesOf({ assets }: Pick<SiteInput, "assets">): readonly Licence[] {
  const bill = assets.get("licences.cdx.json");
  if (bill === undefined) return [];
  const { components } = JSON.parse(String(bill)) as Bill;
  return components.map(({ name, version, licenses }) => ({
    name,
    version,
    terms: licenses.map(({ license: { id, name: named } }) => id ?? named ?? "").join(", "),
    text: licenses
      .map(({ license: { text } }) => text?.content ?? "")
      .join("\n")
      .trim(),
  }));
}
