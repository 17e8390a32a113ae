import { isLanguageTag } from "../content/schema/guide-schema.ts";
import { first } from "../core/lists.ts";
import { UsageError } from "./command.ts";

/**
 * A language as it was typed, as a BCP 47 tag in its usual form.
 *
 * @throws UsageError where it is none
 */
export function languageTag(typed: string): string {
  if (!isLanguageTag(typed)) throw new UsageError(`${typed} is no language tag; write one like en or de-AT`);
  return first(Intl.getCanonicalLocales(typed));
}
