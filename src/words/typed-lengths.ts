import type { Root, Text } from "mdast";
import { parseQuantity } from "../core/quantity.ts";
import { inFeetAlone, type UnitChoice } from "../model/unit-choice.ts";
import { visit } from "../model/visit.ts";
import type { Figures } from "./figures.ts";

/** Turns lengths typed in a text into the units of a guide that shows one system alone. */
export type TypedLengths = (text: string) => string;

const number = String.raw`\d+(?:[.,]\d+)?`;
/** `30 cm`, `10–20 mm`, `0.5 to 1 m`, with the word before it. */
const metric = new RegExp(
  String.raw`(?<before>\babout\s)?(?<![\w.,:/])(?<one>${number})(?:(?<join>–| to | or )(?<two>${number}))?\s(?<unit>mm|cm|m|ml)(?![\w/²³])`,
  "g",
);
/** `12 ft`, `4 ft 6 in`. Inches alone are left: `3 in each hand` is none. */
const feet = new RegExp(String.raw`(?<![\w.,:/])${number}\sft(?:\s\d+\sin)?\b`, "g");

/** None where the guide shows both systems: then texts stand as they are typed. */
export function typedLengths(units: UnitChoice, figures: Figures): TypedLengths | undefined {
  if (units === "metric first") return undefined;
  if (!inFeetAlone(units))
    return (text) => text.replace(feet, (typed) => figures.depth(typedValue("length", typed)));
  return (text) =>
    text.replace(metric, (...found) => {
      const { before = "", one, join = "", two, unit } = found.at(-1) as Record<string, string>;
      const tell = (amount: string) => told(`${amount.replace(",", ".")} ${unit}`, before !== "", figures);
      return `${before}${tell(one!)}${two ? `${join}${tell(two)}` : ""}`;
    });
}

function told(typed: string, isAbout: boolean, figures: Figures): string {
  if (typed.endsWith("ml")) return figures.volume(typedValue("volume", typed));
  const mm = typedValue("length", typed);
  if (typed.endsWith("mm")) return mm < 1 ? figures.diameter(mm) : figures.size(mm);
  if (isAbout) return figures.about(mm);
  return typed.endsWith("cm") ? figures.gap(mm) : figures.depth(mm);
}

function typedValue(kind: "length" | "volume", typed: string): number {
  const read = parseQuantity(kind, typed.replaceAll("\u00a0", " "));
  return read.ok ? read.value : 0;
}

/** The same in all words of a text; the text itself where that changes none of them. */
export function inMarkdown(body: Root, lengths: TypedLengths): Root {
  const told = wordsIn(body).map(({ value }) => lengths(value));
  if (wordsIn(body).every(({ value }, at) => value === told[at])) return body;
  const before = known.get(body);
  if (before?.told.every((text, at) => text === told[at])) return before.root;
  const root = structuredClone(body);
  for (const [at, node] of wordsIn(root).entries()) node.value = told[at] ?? node.value;
  known.set(body, { told, root });
  return root;
}

/** Texts as they were last. */
const known = new WeakMap<Root, { readonly told: readonly string[]; readonly root: Root }>();

/** The words of a text that lengths may be typed in. */
function wordsIn(body: Root): readonly Text[] {
  const found: Text[] = [];
  visit(body, "text", (node, _, parent) => {
    const isPlain = parent?.type === "textDirective" && parent.name === "plain";
    if (!isPlain) found.push(node);
  });
  return found;
}
