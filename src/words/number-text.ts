/** A number with at most so many decimals, as the language writes it. */
export type NumberText = (value: number, digits: number) => string;

/**
 * Numbers as a language writes them: its decimal sign, no zeros behind it that say nothing at the bank, no signs
 * between thousands, a true minus.
 *
 * @throws RangeError where the language is no BCP 47 tag
 */
export function makeNumberText(language: string): NumberText {
  const writers = new Map<number, (value: number) => string>();
  const writer = (digits: number) => {
    const known = writers.get(digits);
    if (known) return known;
    const options = { maximumFractionDigits: digits, useGrouping: false, signDisplay: "negative" } as const;
    const format = new Intl.NumberFormat(language, options);
    const made = remembered((value) => format.format(value).replace("-", "−"));
    writers.set(digits, made);
    return made;
  };
  return (value, digits) => writer(digits)(value);
}

/** Numbers that are remembered of each sort: a guide has the same ones again and again. */
const mostKnown = 5_000;

/** Writes each number once: the language's own way of writing one takes as long as a whole sentence. */
function remembered(write: (value: number) => string): (value: number) => string {
  const known = new Map<number, string>();
  return (value) => {
    let text = known.get(value);
    // A map does not tell 0 from −0, which is written as 0, too.
    if (text === undefined) {
      if (known.size >= mostKnown) known.clear();
      text = write(value);
      known.set(value, text);
    }
    return text;
  };
}

/** What is typed with a decimal point, such as `1.7 m`, as a language writes it. */
export function makeTypedText(language: string): (text: string) => string {
  const sign = makeNumberText(language)(0.5, 1).replace(/\d/g, "");
  return (text) => text.replace(/(?<=\d)\.(?=\d)/g, sign);
}
