import type { QuantityKind, QuantityProblem } from "../core/quantity.ts";
import type { WaterKind } from "../core/water/water.ts";
import type { LimitName } from "./limits.ts";

type Names = readonly string[];
type None = Readonly<Record<never, never>>;
/** A sentence that is already worded. */
type Worded = { readonly reason: string };

/** Another message, which would name this table in its type. */
interface OtherMessage {
  readonly code: string;
  readonly values: object;
}

/** A line of a rig, and the breaking strains between which it suits a fish that the rig is for. */
interface LineAgainstFish {
  readonly line: "main line" | "hook length";
  readonly found: string;
  readonly fish: string;
  readonly allowed: string;
}

/** An error stops the build. */
export type Severity = "error" | "warning";

/** How bad a message is, and what its words speak of: values are a type alone. */
interface Row<Values> {
  readonly severity: Severity;
  readonly values?: Values;
}

const error = <Values = None>(): Row<Values> => ({ severity: "error" });
const warning = <Values = None>(): Row<Values> => ({ severity: "warning" });

/** Every message about content. */
export const messageTable = {
  "yaml-syntax": error<{
    readonly problem: YamlProblem;
    readonly said: string;
    /** Where the other one of two stands, in another line. */
    readonly firstLine?: number;
  }>(),
  "hash-cuts": warning<{ readonly cut: string }>(),
  /** A file still has what it was begun with, and so many more such sentences. */
  "text-as-begun": warning<{ readonly sentence: string; readonly others: number }>(),
  "not-utf-8": error<{ readonly as: "UTF-16" | "another encoding" }>(),
  "no-front-matter": error<{ readonly problem: FrontMatterProblem; readonly first: string }>(),
  "too-much": error<{ readonly limit: LimitName; readonly found: number }>(),
  "no-sign": error<{
    readonly sign: string;
    readonly number: string;
    /** The other signs of the same piece that are lacking, too. */
    readonly others: Names;
    /** Whether it joins others, so that no font helps. */
    readonly isJoined: boolean;
    /** The guide's own font, which lacks it, too. */
    readonly font?: string;
  }>(),
  "file-too-deep": error<{ readonly folder: string }>(),
  "file-name": error<{ readonly reason: string; readonly hint: string }>(),
  "address-taken": error<{ readonly address: string; readonly by: string }>(),
  "missing-file": error<{ readonly path: string; readonly need: string }>(),
  "lent-left-out": warning<{ readonly of: OtherMessage }>(),
  "lent-shortened": warning<{ readonly of: OtherMessage }>(),
  /** Rules that lent texts ask for, each once, in their order. */
  "lent-without-rules": warning<{ readonly rules: Names }>(),
  "unlikely-figure": warning<{ readonly key: string; readonly found: string; readonly allowed: string }>(),
  "words-in-english": warning<{ readonly language: string; readonly missing: Names; readonly all: number }>(),
  "image-not-usable": error<{ readonly reason: string; readonly hint: string }>(),
  "font-not-usable": error<{ readonly reason: string; readonly hint: string }>(),
  "image-not-used": warning<{ readonly name: string }>(),
  "image-in-sentence": error(),
  "no-alt-text": error<{ readonly name: string }>(),
  "file-not-read": warning<{ readonly reason: string; readonly hint: string }>(),
  "unknown-key": error<{
    readonly key: string;
    readonly allowed: Names;
    /** The number with a point, where a comma between keys stands for one. */
    readonly comma?: string;
  }>(),
  "missing-key": error<{ readonly key: string }>(),
  "missing-attribute": error<{
    readonly name: string;
    /** What is asked to say it, with its colons. */
    readonly of: string;
    readonly slip: AttributeSlip;
    /** The words between its brackets. */
    readonly label: string;
  }>(),
  "missing-label": error<{ readonly of: string }>(),
  "block-as-figure": error<{ readonly name: string }>(),
  "figure-as-block": error<{ readonly name: string }>(),
  "wrong-type": error<{
    readonly key: string;
    readonly expected: string;
    readonly found: string;
    /** What was typed, and how it would be what is expected. */
    readonly fix?: { readonly by: TypeFix; readonly typed: string };
  }>(),
  "not-a-choice": error<{ readonly key: string; readonly found: string; readonly allowed: Names }>(),
  "too-few": error<{ readonly key: string; readonly least: number }>(),
  "too-many": error<{ readonly key: string; readonly found: number; readonly most: number }>(),
  "out-of-range": error<{
    readonly key: string;
    readonly found: string;
    readonly bound: string;
    readonly allowed?: string;
  }>(),
  "not-valid": error<{ readonly key: string; readonly problem: string }>(),
  quantity: error<{
    readonly kind: QuantityKind;
    readonly problem: QuantityProblem;
    readonly unit: string;
    readonly found: string;
    readonly examples: Names;
    /** The quantity with a point, where a comma of a list stands for one. */
    readonly comma?: string;
  }>(),
  "unknown-name": error<{
    readonly what: string;
    readonly found: string;
    readonly allowed: Names;
    /** The one of that title. */
    readonly meant?: string;
  }>(),
  "duplicate-name": error<{ readonly found: string }>(),
  "order-taken": warning<{ readonly order: number; readonly by: string; readonly free: number }>(),
  "still-water-key": warning<{ readonly key: string; readonly of: "rig" | "swim" }>(),
  "unknown-feed": warning<{ readonly feed: string; readonly baits: Names }>(),
  "falling-profile": error<{ readonly at: number; readonly before: number }>(),
  "band-upside-down": error<{ readonly key: string }>(),
  "line-too-light": warning<LineAgainstFish & { readonly underShot: string }>(),
  "line-too-heavy": warning<LineAgainstFish>(),
  "fish-without-line": warning<{ readonly fish: string; readonly allowed: Names }>(),
  "not-in-kit": warning<{
    readonly what: "float" | "hook" | "bait" | "main line" | "hook length" | "shot";
    readonly found: string;
    readonly kit: string;
    readonly allowed: string;
  }>(),
  "rig-without-kit": warning<{ readonly title: string; readonly kits: Names }>(),
  "size-in-no-tub": warning<{ readonly size: string; readonly tub: string; readonly allowed: Names }>(),
  "bait-in-note": warning<{ readonly said: string; readonly is: string }>(),
  "hook-against-bait": warning<{ readonly hook: number; readonly bait: string; readonly allowed: string }>(),
  "rig-not-for-fish": warning<{ readonly fish: string; readonly rig: string; readonly allowed: Names }>(),
  "hard-to-read": warning<{
    readonly grade: string;
    readonly age: number;
    readonly gradeBelow: number;
    readonly ageBelow: number;
  }>(),
  "term-not-explained": warning<{ readonly term: string }>(),
  "term-not-used": warning<{ readonly term: string }>(),
  "lesson-not-linked": warning<{ readonly title: string }>(),
  "rig-not-taught": warning<{ readonly title: string }>(),
  "thick-hook-length": warning(),
  "date-far-off": warning<{ readonly key: string; readonly date: string; readonly edition: string }>(),
  "rig-title-taken": warning<{ readonly title: string; readonly by: string }>(),
  "rig-shows-another": warning<{ readonly title: string; readonly another: string; readonly id: string }>(),
  "lesson-without-plan": warning<{ readonly title: string; readonly file: string }>(),
  /** Nothing found where a section is missing at the end, nothing wanted where one is too many. */
  "plan-sections": warning<{ readonly found: string; readonly wanted: string; readonly allowed: Names }>(),
  "plan-never-held": error<{ readonly title: string; readonly needs: Names }>(),
  "plan-before-need": warning<{ readonly title: string; readonly needs: string }>(),
  "plan-without-safety": warning<{ readonly title: string; readonly allowed: Names }>(),
  "sounding-twice": error<{ readonly found: string; readonly line: string }>(),
  "beyond-soundings": error<{ readonly found: string; readonly line: string; readonly allowed: string }>(),
  "choosing-limit-missing": error<{ readonly rule: string }>(),
  "swim-hazard-untold": warning<{ readonly found: string; readonly hazard: string }>(),
  "swim-ledge-not-found": warning<{ readonly found: string; readonly line: string }>(),
  "swim-spot-without-rig": warning<{ readonly spot: string }>(),
  "notes-depth-other": warning<{ readonly spot: string; readonly found: string; readonly plumbed: string }>(),
  "swim-spot-unsure": warning<{ readonly spot: string; readonly nearest: string }>(),
  "session-past-midnight": error<{ readonly hours: number; readonly left: number }>(),
  "session-too-few-rods": error<{
    readonly learners: number;
    /** More than learners where they fish with a whip and a rod in turn. */
    readonly needed: number;
    readonly rods: number;
  }>(),
  "session-rig-water": error<{ readonly rig: string; readonly water: WaterKind }>(),
  "session-swim-without-rig": error<{ readonly swim: string; readonly water: WaterKind }>(),
  "session-rig-not-for-spot": error<{ readonly rig: string; readonly spot: string; readonly said: string }>(),
  "session-too-long": warning<{ readonly over: number; readonly leaveOut: Names }>(),
  "session-lesson-needs": warning<{
    readonly title: string;
    readonly needs: Names;
    readonly areNew: boolean;
  }>(),
  "session-lesson-place": warning<{ readonly title: string; readonly water: WaterKind }>(),
  "session-group": warning<{
    readonly title: string;
    readonly most: number;
    readonly learners: number;
    readonly adults: number;
  }>(),
  "session-too-few-places": warning<{ readonly learners: number; readonly places: number }>(),
  "session-bait-missing": warning<{ readonly rig: string; readonly bait: string }>(),
  "shelf-rig-left-out": warning<{ readonly rig: string }>(),
  "shelf-shot-unused": warning<{ readonly size: string; readonly metal: string; readonly wanted: Names }>(),
  "setting-in-note": warning<{ readonly found: string; readonly setting: string }>(),
  "typed-figure": warning<{ readonly figure: string; readonly directive: string }>(),
  "no-basis": warning<{ readonly figure: string }>(),
  "basis-in-words": warning<{ readonly found: string; readonly directive: string }>(),
  "markdown-left-out": error<{ readonly construct: LeftOut }>(),
  "slipped-sign": error<{ readonly slip: SlippedSign; readonly found: string }>(),
  "heading-level": error<{ readonly found: string; readonly highest: string }>(),
  "link-scheme": error<{ readonly scheme: string; readonly allowed: Names }>(),
  "no-address": error<{ readonly link: string }>(),
  "bad-link": error<{ readonly link: string; readonly meant?: string }>(),
  "knot-crossing": error<Worded>(),
  "knot-outside": error<Worded>(),
  "knot-short": error<Worded>(),
  "does-not-fit": error<
    Worded & {
      readonly shorten?: "title" | "change-first" | "float" | "bait" | "shot";
    }
  >(),
  "no-room": error<Worded>(),
  "card-lacks": warning<Worded>(),
};

export type MessageCode = keyof typeof messageTable;

/** What each message is about, for its words to speak of. */
export type MessageValues = {
  readonly [C in MessageCode]: (typeof messageTable)[C] extends Row<infer Values> ? Values : never;
};

/** What is wrong with the way in which keys and values are written. */
export type YamlProblem =
  | "no colon"
  | "comment"
  | "quotes"
  | "not closed"
  | "comma"
  | "indent"
  | "dash"
  | "tab"
  | "twice"
  | "second document"
  | "other";

/** How a text comes to have no keys before it. */
export type FrontMatterProblem = "none" | "not closed" | "not opened" | "other dashes" | "below something";

/** How a value becomes one of the type that is asked for. */
export type TypeFix =
  | "in quotes"
  | "without quotes"
  | "in brackets"
  | "without brackets"
  | "from and to"
  | "as a group"
  | "as entries"
  | "behind the colon"
  | "like"
  /** It says what holds where nothing is said. */
  | "line out"
  | "colon in quotes"
  | "hash in quotes";

/** Markdown that neither page nor handout shows. */
export type LeftOut =
  | "html"
  | "footnote"
  | "struck out"
  | "box to tick"
  | "container"
  | "table without its line";

/** Where what a directive does not say may stand instead: in its brackets, or in braces that are not read. */
export type AttributeSlip = "none" | "in brackets" | "in braces";

/** How a link, a figure or a drawing comes to stand in a text as it was typed. */
export type SlippedSign =
  | "space in address"
  | "no address"
  | "parts swapped"
  | "block in sentence"
  | "space behind colons"
  | "space before brace"
  | "space behind colon"
  | "near a name";
