/**
 * Days as a language writes them, from ISO dates; English without a country as it is written in Britain, since so are the
 * words.
 *
 * @throws RangeError where the language is no BCP 47 tag
 */
export function makeDateText(language: string, parts: Intl.DateTimeFormatOptions): (iso: string) => string {
  const format = new Intl.DateTimeFormat(language === "en" ? "en-GB" : language, {
    ...parts,
    timeZone: "UTC",
  });
  return (iso) => format.format(new Date(`${iso}T00:00:00Z`));
}
