import type { Choices } from "./random.ts";

/** What people, programs and malice put into a text that nobody thought of. */
const odd: readonly string[] = [
  "",
  " ",
  "\t",
  "\n\n",
  "\0",
  "\u001b[2J",
  "\u2060",
  "\u202e",
  "\ufeff",
  "\u{1f41f}",
  "\u0645\u0631\u062d\u0628\u0627",
  "u\u0308",
  "\ud800",
  "-1",
  "0",
  "-0",
  "1e999",
  ".nan",
  ".inf",
  "1/0 %",
  "9".repeat(400),
  "0 cm",
  "-5 m",
  "999 m",
  "0.0000001 mm",
  "1000 kg",
  "30",
  "null",
  "~",
  "true",
  "[]",
  "{}",
  "[[[[",
  "*x",
  "&x [*x]",
  "<<: *x",
  "!!binary x",
  "__proto__",
  "constructor",
  "toString",
  "# x",
  "---",
  "- - - x",
  "> > > x",
  ":::x",
  "::knot{knot=constructor}",
  "::scene{scene=}",
  '::rig-drawing{rig=__proto__ depth="1 m"}',
  ":figure[]{rig=x depth=1 of=tip}",
  ':weight[]{load="0 BB"}',
  ':weight[]{load="99999999999 SSG"}',
  '::groundbait-fall{paces="0 m/s, 100 m/s" depths="-1 m, 999 m"}',
  '::feed-places{bait=maggot paces="99 m/s" depths="999 m"}',
  '::pattern-chart{rigs="," depth="1 m"}',
  '::float-chart{floats=","}',
  "[x](javascript:alert(1))",
  "[x](http://)",
  "[x](../constructor/y.md)",
  "[x](<a b>)",
  "[x][y]\n\n[y]: ../rigs/%00.md",
  "![x](y)",
  "<script>alert(1)</script>",
  "<!-- x -->",
  "| a | b |\n|---|---|\n| c |",
  "```\nx\n```",
  "{size}",
  '"',
  "'",
  "\\",
  ["$", "{x}"].join(""),
  "\uFFFD",
  `${"x".repeat(250)}`,
  `${"word ".repeat(1100)}`,
  `${"*a_".repeat(400)}`,
  `${">".repeat(30)} x`,
];

const units = [
  "mm",
  "cm",
  "m",
  "g",
  "kg",
  "oz",
  "lb",
  "ft",
  "in",
  "s",
  "min",
  "h",
  "ml",
  "l",
  "%",
  "C",
  "F",
  "m/s",
  "BB",
  "SSG",
  "No 8",
];
const numbers = [
  "0",
  "-1",
  "1e9",
  "0.0001",
  "100000",
  "7",
  "3.5",
  "999999999999",
  "1/3",
  "00",
  "1.2.3",
  ".5",
];

/** One change to a text; most leave it nearly right, so that what comes after reading sees it too. */
type Mutation = (text: string, choices: Choices) => string;

const onLines =
  (change: (lines: string[], at: number, choices: Choices) => void): Mutation =>
  (text, choices) => {
    const lines = text.split("\n");
    change(lines, choices.below(lines.length), choices);
    return lines.join("\n");
  };

/** Puts something else in place of one of the places that a pattern finds. */
const inPlaceOf =
  (pattern: RegExp, make: (found: string, choices: Choices) => string): Mutation =>
  (text, choices) => {
    const places = [...text.matchAll(pattern)];
    if (places.length === 0) return text;
    const { 0: found, index } = choices.of(places);
    return text.slice(0, index) + make(found, choices) + text.slice(index + found.length);
  };

const mutations: readonly Mutation[] = [
  onLines((lines, at) => lines.splice(at, 1)),
  onLines((lines, at) => lines.splice(at, 0, lines[at]!)),
  onLines((lines, at, choices) => lines.splice(at, 0, lines.splice(choices.below(lines.length), 1)[0]!)),
  onLines((lines, at, choices) => lines.splice(at, 0, choices.of(odd))),
  onLines((lines, at, choices) => {
    lines[at] = `${" ".repeat(choices.below(6))}${lines[at]!.trimStart()}`;
  }),
  onLines((lines, at, choices) => {
    lines.splice(at, choices.below(lines.length));
  }),
  onLines((lines, at, choices) => {
    lines.splice(at, 0, ...Array.from({ length: choices.below(300) }, () => lines[at]!));
  }),
  inPlaceOf(/\d+(?:\.\d+)?/g, (_, choices) => choices.of(numbers)),
  inPlaceOf(/\d+(?:\.\d+)?/g, (_, choices) => choices.of(numbers)),
  inPlaceOf(/(?<=\d )[A-Za-z%/]+/g, (_, choices) => choices.of(units)),
  inPlaceOf(/(?<=: ).+/g, (_, choices) => choices.of(odd)),
  inPlaceOf(/[\w-]+/g, (_, choices) => choices.of(odd)),
  inPlaceOf(/[\w-]+(?=:)/g, (found, choices) =>
    choices.of([`${found}s`, "__proto__", "", found.toUpperCase()]),
  ),
  inPlaceOf(/./gsu, (_, choices) => choices.of(odd)),
  inPlaceOf(/./gsu, () => ""),
  inPlaceOf(/[\w-]+/g, (found) => `${found} ${found}`),
];

/** A text with one to three changes. */
export function mutated(text: string, choices: Choices): string {
  let changed = text;
  for (let count = 1 + choices.below(3); count > 0; count--)
    changed = choices.of(mutations)(changed, choices);
  return changed;
}

/** A name for a file that somebody might have given it. */
export function oddName(path: string, choices: Choices): string {
  const [, folder, name, ending] = /^(.*\/)?([^/]*)(\.\w+)$/s.exec(path)!;
  const names = [
    `${name} copy`,
    name!.toUpperCase(),
    `old/${name}`,
    "index",
    "sheet",
    `${name}-a6`,
    "con",
    `.${name}`,
    "main",
  ];
  return `${folder ?? ""}${choices.of([...names, `${choices.of(odd).slice(0, 80)}${name}`])}${ending}`;
}
