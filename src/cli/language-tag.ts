import { isLanguageTag } from "../content/schema/guide-schema.ts";
import { first } from "../core/lists.ts";
import { UsageError } from "./command.ts";

/**
 * A language as it was typed, by its tag or its name in English or in itself, as a BCP 47 tag in its usual form.
 *
 * @throws UsageError where it is none
 */
export function languageTag(typed: string): string {
  const tag = isLanguageTag(typed) ? typed : tagOfName(typed);
  if (tag !== undefined) return first(Intl.getCanonicalLocales(tag));
  throw new UsageError(
    `${typed} is no known language; write it short, such as en for English or de for German`,
  );
}

const letters = [..."abcdefghijklmnopqrstuvwxyz"];
const twoLetters = letters.flatMap((one) => letters.map((other) => one + other));

/** The tag of two letters (ISO 639-1) of a language that is called so. */
function tagOfName(typed: string): string | undefined {
  const wanted = typed.trim().toLowerCase();
  const isCalledSo = (tag: string, inLanguage: string) =>
    new Intl.DisplayNames([inLanguage], { type: "language", fallback: "none" }).of(tag)?.toLowerCase() ===
    wanted;
  return twoLetters.find((tag) => isLanguageTag(tag) && (isCalledSo(tag, "en") || isCalledSo(tag, tag)));
}
