import type { QuantityProblem } from "../core/quantity.ts";
import { limits } from "../model/limits.ts";
import type { Message } from "../model/message.ts";
import { type LeftOut, type MessageCode, type MessageValues, messageTable } from "../model/message-table.ts";
import { cardLacks, doesNotFit, noRoom } from "./layout-words.ts";
import { planWords } from "./plan-words.ts";
import { rigWords } from "./rig-words.ts";
import { sessionWords } from "./session-words.ts";
import { shelfWords } from "./shelf-words.ts";
import { swimWords } from "./swim-words.ts";
import { badLink, missingAttribute, noSign, slippedWords, textAsBegun } from "./text-words.ts";
import type { WordedMessage } from "./worded-message.ts";
import { frontMatterWords, wrongType, yamlWords } from "./written-words.ts";
import { unknownName, wrongName } from "./wrong-name.ts";

const quantityReasons: Readonly<Record<QuantityProblem, (v: MessageValues["quantity"]) => string>> = {
  "no number": (v) => `"${v.found}" is no ${v.kind}: it does not start with a number`,
  "no unit": (v) => `"${v.found}" has no unit`,
  "unknown unit": (v) => `"${v.unit}" is no unit of ${v.kind}`,
  "pint of which country": (v) => `"${v.found}": a pint is 568 ml in Britain and 473 ml in the USA`,
  "not understood": (v) => `"${v.found}" is not understood as a ${v.kind}`,
  "beyond measure": (v) => `"${v.found}" is a ${v.kind} beyond all measure`,
};

/** A bare number with a unit; what lies between none and one is a share of one hundred. */
function withUnit(typed: string, unit: string): string {
  const isShare = unit === "%" && Number(typed) <= 1;
  return `${isShare ? Number((100 * Number(typed)).toPrecision(6)) : typed} ${unit}`;
}

/** A number with the unit of another, where it has none of its own. */
const withUnitOf = (typed: string, other: string) =>
  /[a-z]/i.test(typed) ? typed : `${typed}${/ ?[a-z].*$/i.exec(other)?.[0] ?? ""}`;

function wrongQuantity(v: MessageValues["quantity"]): WordedMessage {
  const { examples } = v;
  const bare = v.problem === "no unit" && /^[\d./ ]+$/.test(v.found);
  const units = examples.flatMap((example) => /^[\d./]+ (\S+)$/.exec(example)?.[1] ?? []);
  const point = /^(\d+),(\d+.*)$/.exec(v.found);
  const asList = v.comma !== undefined && `a comma parts two of a list; write a point, as in ${v.comma}`;
  const asComma = point && `write a point for the comma: ${point[1]}.${point[2]}`;
  const asUnits =
    bare && units.length > 0 && `say which: ${units.map((unit) => withUnit(v.found, unit)).join(" or ")}`;
  const [, from, to] = /^(\d.*?) ?(?:[-–—;]|to|bis|and|und) ?(\d.*)$/.exec(v.found) ?? [];
  const asTwo = from && to && `write each of its own, with its unit: [${withUnitOf(from, to)}, ${to}]`;
  const hint = asList || asComma || asUnits || asTwo || `write it like ${examples.join(" or ")}`;
  return { reason: quantityReasons[v.problem](v), hint };
}

/** Markdown that neither page nor handout shows, and what to write instead. */
const leftOut: Readonly<Record<LeftOut, WordedMessage>> = {
  html: { reason: "HTML is shown neither on pages nor on paper", hint: "write it in Markdown" },
  footnote: { reason: "a footnote has no foot to stand at", hint: "say it in the sentence" },
  "struck out": { reason: "struck-out words are not shown", hint: "take them out, with their ~ signs" },
  "box to tick": { reason: "a list has no boxes to tick", hint: "take the [ ] out" },
  container: {
    reason: "there are no blocks that start with :::",
    hint: "write it on a line of its own with ::",
  },
  "table without its line": {
    reason: "these lines are no table: below its head it has a line of dashes",
    hint: "put a line like | --- | --- | below the first",
  },
};

/** A sentence that came with its own words. */
function asWorded({ reason }: { readonly reason: string }): WordedMessage {
  return { reason };
}

/** The words of every message about content, by code. */
const table: { readonly [C in MessageCode]: (v: MessageValues[C]) => WordedMessage } = {
  "yaml-syntax": (v) => yamlWords[v.problem](v.said, v.firstLine),
  "hash-cuts": (v) => ({
    reason: `"${v.cut}" counts for nothing: a # behind a space starts a note to other authors`,
    hint: "put the whole value in quotes; or leave a space behind the #, where it is such a note",
  }),
  "text-as-begun": textAsBegun,
  "not-utf-8": (v) =>
    v.as === "UTF-16"
      ? {
          reason: "the file is saved as UTF-16",
          hint: "save it as UTF-8; most editors ask for that under Save as",
        }
      : { reason: "a sign here is not UTF-8", hint: "save the file as UTF-8" },
  "no-front-matter": (v) => frontMatterWords[v.problem](v.first),
  "too-much": (v) => ({
    reason: `${v.found} ${limits[v.limit].of}; the most is ${limits[v.limit].most}`,
    hint: limits[v.limit].instead,
  }),
  "no-sign": noSign,
  "file-too-deep": (v) => ({
    reason: `the file stands in a folder below ${v.folder}/`,
    hint: `move it up into ${v.folder}/, or out of the content`,
  }),
  "file-name": (v) => v,
  "address-taken": (v) => ({
    reason: `what is made of this file comes out at ${v.address}, which is taken by ${v.by}`,
    hint: "call the file something else; letters that differ by case only are the same on some systems",
  }),
  "missing-file": (v) => ({ reason: `there is no ${v.path}`, hint: `add it; ${v.need}` }),
  "lent-left-out": (v) => ({
    reason: `the library's file is left out, as it does not go with this guide: ${worded(v.of as Message).reason}`,
    hint: "choose without it under `library:` in guide.yaml, or put a file of the same name into your own folder",
  }),
  "lent-shortened": (v) => ({
    reason: `what the library's text says here is left out, as it does not go with this guide: ${worded(v.of as Message).reason}`,
    hint: "put a text of the same name into your own folder to say it otherwise",
  }),
  "lent-without-rules": (v) => ({
    reason: `the library's texts ask for rules of your place that guide.yaml does not say, and go without: ${v.rules.join(", ")}`,
    hint: `ask what holds there and say it in guide.yaml, such as \`rules: { ${v.rules[0]}: … }\``,
  }),
  "unlikely-figure": (v) => ({
    reason: `"${v.key}" is ${v.found}; on the bank it is ${v.allowed}`,
    hint: "look at its unit and its decimal point",
  }),
  "words-in-english": (v) => ({
    reason:
      v.missing.length === v.all
        ? `the fixed words of pages and cards stand in English: there are none in "${v.language}"`
        : `${v.missing.length} of ${v.all} fixed words stand in English for want of any in "${v.language}", the first of them ${v.missing[0]}`,
    hint: `fill them in in words/${v.language}.yaml, as few as you like; npx dotdown new words ${v.language} writes there all that are missing`,
  }),
  "image-not-usable": (v) => v,
  "font-not-usable": (v) => ({ ...v, reason: `the font cannot be used: ${v.reason}` }),
  "image-not-used": (v) => ({
    reason: `no text shows ${v.name}`,
    hint: `show it on a line of its own, ![what it shows](../images/${v.name}), or take it out`,
  }),
  "image-in-sentence": () => ({
    reason: "a picture stands within a sentence",
    hint: "put it on a line of its own, with empty lines around it: ![what it shows](../images/pond.jpg)",
  }),
  "no-alt-text": (v) => ({
    reason: `${v.name} has no words for readers who cannot see it`,
    hint: `say between the brackets what it shows, such as ![The swim below the weir](../images/${v.name})`,
  }),
  "file-not-read": (v) => v,
  "unknown-key": (v) =>
    v.comma === undefined
      ? wrongName(`unknown key "${v.key}"`, v.key, v.allowed)
      : {
          reason: `unknown key "${v.key}"`,
          hint: `a comma parts two keys of a group; write a point, as in ${v.comma}`,
        },
  "missing-key": (v) => ({ reason: `"${v.key}" is missing`, hint: `add a line \`${v.key}: …\`` }),
  "missing-attribute": missingAttribute,
  "missing-label": (v) => ({
    reason: `"${v.of}" has no words between its brackets`,
    hint: `write them there: ${v.of}[words]`,
  }),
  "block-as-figure": (v) => ({
    reason: `"${v.name}" stands on a line of its own, with two colons`,
    hint: `write ::${v.name}{…} there, with an empty line above and below`,
  }),
  "figure-as-block": (v) => ({
    reason: `"${v.name}" stands within a sentence, with one colon`,
    hint: `write :${v.name}[]{…} there`,
  }),
  "wrong-type": wrongType,
  "not-a-choice": (v) => wrongName(`"${v.key}" cannot be ${v.found}`, v.found, v.allowed),
  "too-few": (v) => ({
    reason: `"${v.key}" needs at least ${v.least}`,
    hint: "write more between the brackets, parted by commas, or as lines that start with a dash",
  }),
  "too-many": (v) => ({
    reason: `"${v.key}" has ${v.found} entries; the most is ${v.most}`,
    hint: "take out what is not needed",
  }),
  "out-of-range": (v) => ({
    reason: `"${v.key}" is ${v.found}, which is ${v.bound}`,
    ...(v.allowed && { hint: `allowed: ${v.allowed}` }),
  }),
  "not-valid": (v) => ({ reason: `"${v.key}": ${v.problem}` }),
  quantity: wrongQuantity,
  "unknown-name": unknownName,
  "duplicate-name": (v) => ({
    reason: `"${v.found}" stands here twice`,
    hint: "take one of the two out, or call it something else",
  }),
  "order-taken": (v) => ({
    reason: `${v.order} is the order of ${v.by}, too: readers are led by file name from one to the other`,
    hint: `give it a number of its own, such as ${v.free}`,
  }),
  "still-water-key": (v) => ({
    reason: `"${v.key}" tells of a current, and this ${v.of} is ${v.of === "rig" ? "for still" : "still"} water: nothing is made of it`,
    hint: "take it out, or write water: flowing",
  }),
  "unknown-feed": (v) => ({
    reason: `nothing in the guide tells what "${v.feed}" is`,
    hint: `write something that its readers know, or explain the word in glossary.yaml; baits: ${v.baits.join(", ")}`,
  }),
  "band-upside-down": (v) => ({
    reason: `the second of "${v.key}" is less than the first`,
    hint: "write the lower first, then the higher",
  }),
  "falling-profile": (v) => ({
    reason: `the profile's points must rise: ${v.at} mm follows ${v.before} mm`,
    hint: "list them from the lower eye up",
  }),
  "line-too-light": (v) => ({
    reason: `a ${v.line} of ${v.found} is too light for ${v.fish}, which asks for ${v.allowed}${v.underShot}`,
    hint: "give the rig a stronger line, or take the fish out of `catches`",
  }),
  "line-too-heavy": (v) => ({
    reason: `a ${v.line} of ${v.found} is too heavy for ${v.fish}, which asks for ${v.allowed}`,
    hint: "give the rig a finer line, or take the fish out of `catches`",
  }),
  "fish-without-line": (v) =>
    wrongName(
      `no fish "${v.fish}" stands in lines.yaml, which says how strong a line each asks for`,
      v.fish,
      v.allowed,
    ),
  "not-in-kit": (v) => ({
    reason: `the rig takes ${v.what} ${v.found}, which is not in the kit "${v.kit}": ${v.allowed}`,
    hint: "change the rig, add it to the kit, or take the rig out of the kit's `rigs`",
  }),
  ...planWords,
  ...rigWords,
  ...swimWords,
  ...sessionWords,
  ...shelfWords,
  "size-in-no-tub": (v) => ({
    reason: `the text speaks of ${v.size}, which is not in "${v.tub}"`,
    hint: `sizes there: ${v.allowed.join(", ")}`,
  }),
  "bait-in-note": (v) => ({
    reason: `"${v.said}" is said of a rig that ${v.is}`,
    hint: "say where the bait is, or change how the rig is set",
  }),
  "hook-against-bait": (v) => ({
    reason: `a hook ${v.hook} does not suit ${v.bait}, which asks for ${v.allowed}`,
    hint: "give the rig another hook or bait, or mend `hooks` of the bait",
  }),
  "hard-to-read": (v) => ({
    reason: `the lesson needs a reader of ${v.age} (grade ${v.grade}, Flesch–Kincaid); it should stay below grade ${v.gradeBelow}, which is for readers under ${v.ageBelow}`,
    hint: "this is its hardest paragraph: shorten the sentences, then the words",
  }),
  "term-not-explained": (v) => ({
    reason: `"${v.term}" is brought in as a term, but the glossary does not have it`,
    hint: "add it to glossary.yaml, or as another form of a word there",
  }),
  "term-not-used": (v) => ({
    reason: `"${v.term}" stands in the glossary and nowhere else`,
    hint: "use it, add the form that is used under `also`, or take it out",
  }),
  "lesson-not-linked": (v) => ({
    reason: `no text leads to the lesson "${v.title}"`,
    hint: "link to it from the lesson before it",
  }),
  "setting-in-note": (v) => ({
    reason: `the note says "${v.found}", but the rig is set ${v.setting}`,
    hint: "let the note say how the rig is set, or give the other way as a change to try",
  }),
  "typed-figure": (v) => ({
    reason: `"${v.figure.replace(/\s+/g, " ")}" is typed by hand and will go stale`,
    hint: `write ${v.directive}`,
  }),
  "no-basis": (v) => ({
    reason: `"${v.figure}" is a rule of thumb, and its section does not say where it comes from`,
    hint: "put :basis[]{of=practice} or :basis[]{of=memory} after it, or say where it is published, or link to its source",
  }),
  "basis-in-words": (v) => ({
    reason: `"${v.found}" is said in a sentence`,
    hint: `put ${v.directive} after the figure`,
  }),
  "markdown-left-out": (v) => leftOut[v.construct],
  "heading-level": (v) => ({
    reason: `a heading with ${v.found} in a text whose first heading has ${v.highest}`,
    hint: `use ${v.highest} for the parts of the text and ${v.highest}# for the parts below them`,
  }),
  "link-scheme": (v) => ({
    reason: `a guide follows no "${v.scheme}:" links`,
    hint: `allowed: ${v.allowed.map((scheme) => `${scheme}:`).join(", ")} and files of the guide`,
  }),
  "no-address": (v) => ({
    reason: v.link === "" ? "the link leads nowhere" : `${v.link} is no address`,
    hint: "write where it leads, such as https://example.org/page or ../rigs/NAME.md",
  }),
  "slipped-sign": (v) => slippedWords[v.slip](v.found),
  "bad-link": badLink,
  "knot-crossing": asWorded,
  "knot-outside": asWorded,
  "knot-short": asWorded,
  "does-not-fit": doesNotFit,
  "no-room": noRoom,
  "card-lacks": cardLacks,
};

const isContents = (code: Message["code"]): code is MessageCode => code in messageTable;

/** A message as text. */
export function worded({ code, values }: Message): WordedMessage {
  const words = isContents(code) ? (table[code] as (v: unknown) => WordedMessage) : asWorded;
  return words(values as never);
}
