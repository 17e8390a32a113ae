/** A number with at most so many decimals, as the language writes it. */
export type NumberText = (value: number, digits: number) => string;

/**
 * Numbers as a language writes them: its decimal sign, no zeros behind it that say nothing at the bank, no signs
 * between thousands, a true minus.
 *
 * @throws RangeError where the language is no BCP 47 tag
 */
export function makeNumberText(language: string): NumberText {
  const formats = new Map<number, Intl.NumberFormat>();
  const format = (digits: number) => {
    const known = formats.get(digits);
    if (known) return known;
    const options = { maximumFractionDigits: digits, useGrouping: false, signDisplay: "negative" } as const;
    const made = new Intl.NumberFormat(language, options);
    formats.set(digits, made);
    return made;
  };
  return (value, digits) => format(digits).format(value).replace("-", "−");
}

/** What is typed with a decimal point, such as `1.7 m`, as a language writes it. */
export function makeTypedText(language: string): (text: string) => string {
  const sign = makeNumberText(language)(0.5, 1).replace(/\d/g, "");
  return (text) => text.replace(/(?<=\d)\.(?=\d)/g, sign);
}
