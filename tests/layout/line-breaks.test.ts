import LineBreaker from "linebreak";
import { expect, test } from "vitest";
import { breakable } from "../../src/layout/line-breaks.ts";
import { fontSigns } from "../../src/model/font-signs.ts";
import { seeded } from "../support/seeded.ts";

/** Parts of a text by a general-purpose implementation of Unicode Standard Annex #14. */
function reference(text: string): string[] {
  const breaker = new LineBreaker(text);
  const parts: string[] = [];
  let from = 0;
  for (let one = breaker.nextBreak(); one; one = breaker.nextBreak()) {
    parts.push(text.slice(from, one.position));
    from = one.position;
  }
  return parts;
}

const signs = fontSigns
  .flatMap(([first, last]) =>
    Array.from({ length: last - first + 1 }, (_, i) => String.fromCodePoint(first + i)),
  )
  .filter((sign) => sign !== " ")
  .concat("\uFEFF");

/** One sign of every kind that the annex tells apart among those of the fonts. */
const kinds = [...'!"a$()},-/0|\u00A0´—…\uFEFF'];

test("lines break between any sign and one of every kind as Unicode has it, with a space between them or not", () => {
  for (const sign of signs) {
    for (const kind of kinds) {
      for (const text of [sign + kind, kind + sign, `${sign} ${kind}`, `${kind} ${sign}`]) {
        expect(breakable(text), JSON.stringify(text)).toEqual(reference(text));
      }
    }
  }
});

test("lines of any text break as Unicode has it", () => {
  const numbers = seeded(3);
  const any = (list: readonly string[]) => list[Math.floor(numbers.next().value * list.length)]!;
  for (let i = 0; i < 3000; i++) {
    const text = Array.from({ length: 12 }, () => (numbers.next().value < 0.2 ? " " : any(kinds)))
      .join("")
      .replace(/ +/g, " ")
      .trim();
    expect(breakable(text), JSON.stringify(text)).toEqual(text === "" ? [] : reference(text));
  }
});
