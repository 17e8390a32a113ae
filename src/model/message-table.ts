import type { QuantityKind, QuantityProblem } from "../core/quantity.ts";
import type { LimitName } from "./limits.ts";
import { type SessionMessageValues, sessionSeverity } from "./session-messages.ts";

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

/** Every message about content: what it is about, for its words to speak of. */
export interface MessageValues extends SessionMessageValues {
  readonly "yaml-syntax": { readonly problem: YamlProblem; readonly said: string };
  readonly "hash-cuts": { readonly cut: string };
  readonly "not-utf-8": { readonly as: "UTF-16" | "another encoding" };
  readonly "no-front-matter": { readonly problem: FrontMatterProblem; readonly first: string };
  readonly "too-much": { readonly limit: LimitName; readonly found: number };
  readonly "no-sign": {
    readonly sign: string;
    readonly number: string;
    /** Whether it joins others, so that no font helps. */
    readonly isJoined: boolean;
    /** The guide's own font, which lacks it, too. */
    readonly font?: string;
  };
  readonly "file-too-deep": { readonly folder: string };
  readonly "file-name": { readonly reason: string; readonly hint: string };
  readonly "address-taken": { readonly address: string; readonly by: string };
  readonly "missing-file": { readonly path: string; readonly need: string };
  readonly "lent-left-out": { readonly of: OtherMessage };
  readonly "lent-shortened": { readonly of: OtherMessage };
  readonly "unlikely-figure": { readonly key: string; readonly found: string; readonly allowed: string };
  readonly "words-in-english": { readonly language: string; readonly missing: Names; readonly all: number };
  readonly "image-not-usable": { readonly reason: string; readonly hint: string };
  readonly "font-not-usable": { readonly reason: string; readonly hint: string };
  readonly "image-not-used": { readonly name: string };
  readonly "image-in-sentence": None;
  readonly "no-alt-text": { readonly name: string };
  readonly "file-not-read": { readonly reason: string; readonly hint: string };
  readonly "unknown-key": { readonly key: string; readonly allowed: Names };
  readonly "missing-key": { readonly key: string };
  readonly "missing-attribute": {
    readonly name: string;
    /** What is asked to say it, with its colons. */
    readonly of: string;
    readonly slip: AttributeSlip;
    /** The words between its brackets. */
    readonly label: string;
  };
  readonly "missing-label": { readonly of: string };
  readonly "block-as-figure": { readonly name: string };
  readonly "figure-as-block": { readonly name: string };
  readonly "wrong-type": {
    readonly key: string;
    readonly expected: string;
    readonly found: string;
    /** What was typed, and how it would be what is expected. */
    readonly fix?: { readonly by: TypeFix; readonly typed: string };
  };
  readonly "not-a-choice": { readonly key: string; readonly found: string; readonly allowed: Names };
  readonly "too-few": { readonly key: string; readonly least: number };
  readonly "too-many": { readonly key: string; readonly found: number; readonly most: number };
  readonly "out-of-range": {
    readonly key: string;
    readonly found: string;
    readonly bound: string;
    readonly allowed?: string;
  };
  readonly "not-valid": { readonly key: string; readonly problem: string };
  readonly quantity: {
    readonly kind: QuantityKind;
    readonly problem: QuantityProblem;
    readonly unit: string;
    readonly found: string;
    readonly examples: Names;
    /** The quantity with a point, where a comma of a list stands for one. */
    readonly comma?: string;
  };
  readonly "unknown-name": {
    readonly what: string;
    readonly found: string;
    readonly allowed: Names;
    /** The one of that title. */
    readonly meant?: string;
  };
  readonly "duplicate-name": { readonly found: string };
  readonly "order-taken": { readonly order: number; readonly by: string; readonly free: number };
  readonly "still-water-key": { readonly key: string };
  readonly "unknown-feed": { readonly feed: string; readonly baits: Names };
  readonly "falling-profile": { readonly at: number; readonly before: number };
  readonly "band-upside-down": { readonly key: string };
  readonly "line-too-light": LineAgainstFish & { readonly underShot: string };
  readonly "line-too-heavy": LineAgainstFish;
  readonly "fish-without-line": { readonly fish: string; readonly allowed: Names };
  readonly "not-in-kit": {
    readonly what: "float" | "hook" | "bait" | "main line" | "hook length" | "shot";
    readonly found: string;
    readonly kit: string;
    readonly allowed: string;
  };
  readonly "rig-without-kit": { readonly title: string; readonly kits: Names };
  readonly "size-in-no-tub": { readonly size: string; readonly tub: string; readonly allowed: Names };
  readonly "bait-in-note": { readonly said: string; readonly is: string };
  readonly "hook-against-bait": { readonly hook: number; readonly bait: string; readonly allowed: string };
  readonly "rig-not-for-fish": { readonly fish: string; readonly rig: string; readonly allowed: Names };
  readonly "hard-to-read": {
    readonly grade: string;
    readonly age: number;
    readonly gradeBelow: number;
    readonly ageBelow: number;
  };
  readonly "term-not-explained": { readonly term: string };
  readonly "term-not-used": { readonly term: string };
  readonly "lesson-not-linked": { readonly title: string };
  readonly "rig-not-taught": { readonly title: string };
  readonly "lesson-without-plan": { readonly title: string; readonly file: string };
  /** Nothing found where a section is missing at the end, nothing wanted where one is too many. */
  readonly "plan-sections": { readonly found: string; readonly wanted: string; readonly allowed: Names };
  readonly "plan-never-held": { readonly title: string; readonly needs: Names };
  readonly "plan-before-need": { readonly title: string; readonly needs: string };
  readonly "plan-without-safety": { readonly title: string; readonly allowed: Names };
  readonly "sounding-twice": { readonly found: string; readonly line: string };
  readonly "beyond-soundings": { readonly found: string; readonly line: string; readonly allowed: string };
  readonly "choosing-limit-missing": { readonly rule: string };
  readonly "swim-hazard-untold": { readonly found: string; readonly hazard: string };
  readonly "swim-ledge-not-found": { readonly found: string; readonly line: string };
  readonly "swim-spot-without-rig": { readonly spot: string };
  readonly "notes-depth-other": { readonly spot: string; readonly found: string; readonly plumbed: string };
  readonly "swim-spot-unsure": { readonly spot: string; readonly nearest: string };
  readonly "setting-in-note": { readonly found: string; readonly setting: string };
  readonly "typed-figure": { readonly figure: string; readonly directive: string };
  readonly "no-basis": { readonly figure: string };
  readonly "basis-in-words": { readonly found: string; readonly directive: string };
  readonly "markdown-left-out": { readonly construct: LeftOut };
  readonly "slipped-sign": { readonly slip: SlippedSign; readonly found: string };
  readonly "heading-level": { readonly found: string; readonly highest: string };
  readonly "link-scheme": { readonly scheme: string; readonly allowed: Names };
  readonly "no-address": { readonly link: string };
  readonly "bad-link": { readonly link: string; readonly meant?: string };
  readonly "knot-crossing": Worded;
  readonly "knot-outside": Worded;
  readonly "knot-short": Worded;
  readonly "does-not-fit": Worded & {
    readonly shorten?: "title" | "change-first" | "float" | "bait" | "shot";
  };
  readonly "no-room": Worded;
  readonly "card-lacks": Worded;
}

/** What is wrong with the way in which keys and values are written. */
export type YamlProblem =
  | "no colon"
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
  | "colon in quotes"
  | "hash in quotes";

export type MessageCode = keyof MessageValues;

/** Markdown that neither page nor handout shows. */
export type LeftOut = "html" | "footnote" | "struck out" | "box to tick" | "container";

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

export type Severity = "error" | "warning";

/** How bad each is: an error stops the build. */
export const messageSeverity: { readonly [C in MessageCode]: Severity } = {
  "yaml-syntax": "error",
  "hash-cuts": "warning",
  "not-utf-8": "error",
  "no-front-matter": "error",
  "too-much": "error",
  "no-sign": "error",
  "file-too-deep": "error",
  "file-name": "error",
  "address-taken": "error",
  "missing-file": "error",
  "lent-left-out": "warning",
  "lent-shortened": "warning",
  "unlikely-figure": "warning",
  "words-in-english": "warning",
  "image-not-usable": "error",
  "font-not-usable": "error",
  "image-not-used": "warning",
  "image-in-sentence": "error",
  "no-alt-text": "error",
  "file-not-read": "warning",
  "unknown-key": "error",
  "missing-key": "error",
  "missing-attribute": "error",
  "missing-label": "error",
  "block-as-figure": "error",
  "figure-as-block": "error",
  "wrong-type": "error",
  "not-a-choice": "error",
  "too-few": "error",
  "too-many": "error",
  "out-of-range": "error",
  "not-valid": "error",
  quantity: "error",
  "unknown-name": "error",
  "duplicate-name": "error",
  "order-taken": "warning",
  "still-water-key": "warning",
  "unknown-feed": "warning",
  "falling-profile": "error",
  "band-upside-down": "error",
  "line-too-light": "warning",
  "line-too-heavy": "warning",
  "fish-without-line": "warning",
  "not-in-kit": "warning",
  "rig-without-kit": "warning",
  "size-in-no-tub": "warning",
  "bait-in-note": "warning",
  "hook-against-bait": "warning",
  "rig-not-for-fish": "warning",
  "hard-to-read": "warning",
  "term-not-explained": "warning",
  "term-not-used": "warning",
  "lesson-not-linked": "warning",
  "rig-not-taught": "warning",
  "lesson-without-plan": "warning",
  "plan-sections": "warning",
  "plan-never-held": "error",
  "plan-before-need": "warning",
  "plan-without-safety": "warning",
  "sounding-twice": "error",
  "beyond-soundings": "error",
  "choosing-limit-missing": "error",
  "swim-hazard-untold": "warning",
  "swim-ledge-not-found": "warning",
  "swim-spot-without-rig": "warning",
  "notes-depth-other": "warning",
  "swim-spot-unsure": "warning",
  ...sessionSeverity,
  "setting-in-note": "warning",
  "typed-figure": "warning",
  "no-basis": "warning",
  "basis-in-words": "warning",
  "markdown-left-out": "error",
  "slipped-sign": "error",
  "heading-level": "error",
  "link-scheme": "error",
  "no-address": "error",
  "bad-link": "error",
  "knot-crossing": "error",
  "knot-outside": "error",
  "knot-short": "error",
  "does-not-fit": "error",
  "no-room": "error",
  "card-lacks": "warning",
};
