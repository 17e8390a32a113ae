import { joiner } from "../markup/boxes.ts";

/**
 * Classes of signs by how lines break at them, each with its signs; all others are letters. Of the classes of UAX #14 that
 * the fonts have signs for, those with the same row and column in its table are one.
 */
const signsOf = {
  exclamation: "!?",
  quotation: "\"'«»‘’“”‹›",
  letter: "",
  affix: "$%+\\¢£¤¥°±฿‰′″₡₤₦₨₩₪₫€₭₮₱₲₴₵₸₹₺₽₿№−",
  opening: "([{¡¿‚„",
  closing: ")]",
  separator: ",.:;\u037E⁄",
  hyphen: "-",
  slash: "/",
  digit: "0123456789",
  breakAfter: "|‐‒–",
  brace: "}",
  glue: "\u00A0\u2011",
  breakBefore: "´",
  dash: "—",
  dots: "…",
  joiner,
} as const;

type SignClass = keyof typeof signsOf;

const classNames = Object.keys(signsOf) as SignClass[];

/**
 * Whether a line may end between a sign of the row and the sign of the column: `^` never, `_` only at a space between
 * them, `.` always. Columns in the order of the rows. Source: Unicode Standard Annex #14, pair table of the default
 * algorithm.
 */
const pairs: Readonly<Record<SignClass, string>> = {
  exclamation: "^_...^^_^._^_.._^",
  quotation: "^___^^^_^__^____^",
  letter: "^____^^_^__^_.._^",
  affix: "^__._^^_^__^_.._^",
  opening: "^^^^^^^^^^^^^^^^^",
  closing: "^___.^^_^__^_.._^",
  separator: "^__..^^_^__^_.._^",
  hyphen: "^_...^^_^__^..._^",
  slash: "^_...^^_^__^_.._^",
  digit: "^____^^_^__^_.._^",
  breakAfter: "^_...^^_^._^..._^",
  brace: "^_._.^^_^._^_.._^",
  glue: "^____^^_^__^____^",
  breakBefore: "^____^^_^__^____^",
  dash: "^_...^^_^._^_.^_^",
  dots: "^_...^^_^._^_.._^",
  joiner: "^____^^_^__^____^",
};

const letter = classNames.indexOf("letter");
/** By the sign's code; none of them has two. */
const classOf = new Uint8Array(0x10000).fill(letter);
for (const [at, name] of classNames.entries()) {
  for (const sign of signsOf[name]) classOf[sign.charCodeAt(0)] = at;
}
const table = classNames.map((name) => pairs[name]);
const space = 0x20;

/**
 * A text in the parts after which a line may end, each with the spaces at its end.
 *
 * @param text with single spaces, and no line ends
 */
export function breakable(text: string): string[] {
  const parts: string[] = [];
  let from = 0;
  let before: number | undefined;
  let spaced = false;
  for (let at = 0; at < text.length; at++) {
    const sign = text.charCodeAt(at);
    if (sign === space) {
      spaced = true;
      continue;
    }
    const here = classOf[sign] ?? letter;
    if (before !== undefined && mayBreak(before, here, spaced)) {
      parts.push(text.slice(from, at));
      from = at;
    }
    before = here;
    spaced = false;
  }
  if (from < text.length) parts.push(text.slice(from));
  return parts;
}

function mayBreak(before: number, after: number, spaced: boolean): boolean {
  const rule = table[before]?.[after];
  return rule === "." || (rule === "_" && spaced);
}
