import type { Root } from "mdast";
import type { Basis } from "../core/basis.ts";
import type { Plummet } from "../core/depth/plumbing.ts";
import type { Float } from "../core/float/float.ts";
import type { LeadRule } from "../core/tackle/lead-rule.ts";
import type { ShotScale, Tub } from "../core/tackle/shot.ts";
import type { G, Mm, Share } from "../core/units.ts";
import type { Water } from "../core/water/water.ts";
import type { BaitLooks } from "./bait-looks.ts";
import type { ChoosingRules } from "./choosing-rules.ts";
import type { FishLooks } from "./fish-looks.ts";
import type { KnotPicture } from "./knot-picture.ts";
import type { PlanFacts } from "./lesson-plan.ts";
import type { LineTable } from "./line-table.ts";
import type { OwnColours } from "./look-colours.ts";
import type { Place } from "./message.ts";
import type { OwnFont } from "./own-font.ts";
import type { OwnImage } from "./own-image.ts";
import type { TemplateName } from "./own-templates.ts";
import type { Bait, Hook, Rig } from "./rig.ts";
import type { Session } from "./session.ts";
import type { Shelf } from "./shelf.ts";
import type { SignPicture, SignTime, SignWater } from "./signs.ts";
import type { SwimEntry } from "./swim.ts";
import type { SwimNotes } from "./swim-notes.ts";
import type { UnitChoice } from "./unit-choice.ts";
import type { WordTree } from "./word-tree.ts";

export type { LeadRule } from "../core/tackle/lead-rule.ts";

/** `content/guide.yaml`. */
export interface Guide {
  readonly title: string;
  readonly publisher: string;
  /** Where the site will be served; without it there are no QR codes. */
  readonly siteAddress?: string;
  readonly language: string;
  readonly units: UnitChoice;
  readonly scaleId: string;
  readonly tubId: string;
  readonly leadRule: LeadRule;
  /** What else the law, and public advice, of the place say, in whole sentences that texts ask for by name. */
  readonly rules: Readonly<Record<string, string>>;
  /** Whom to ring, in the order of a list to keep by the water. */
  readonly contacts: readonly Contact[];
  /** The club's own number, and where help gets to the water: where nobody has said, readers write their own. */
  readonly clubNumber?: string;
  readonly accessPoint?: string;
  /** Whether a rig that breaks the lead rule stops the build. */
  readonly leadBreach: "error" | "warning";
  readonly plummets: readonly Plummet[];
  readonly conditions: Water;
  readonly paper: "A4" | "Letter";
  readonly rodLengthMm: Mm;
  /** ISO date printed on cards and pages. */
  readonly edition: string;
  /** Name of the picture that is the mark of its makers. */
  readonly logo?: string;
  /** Colours of the guide's own. */
  readonly colours?: OwnColours;
  /** Where its makers are found, and when they are open. */
  readonly visit?: { readonly address: string; readonly hours: readonly string[] };
}

/** Whom to ring when something has happened. */
interface Contact {
  readonly when: string;
  /** Their role, such as the owner of the water. */
  readonly who: string;
  /** Where it is the same everywhere the guide is used; else readers write their own. */
  readonly number?: string;
}

/** Any Markdown of the content and the file it stands in. */
export interface MarkdownText {
  /** Path as its author knows it, for messages. */
  readonly path: string;
  readonly body: Root;
}

/** A Markdown page with its place in the guide. */
export interface Prose extends MarkdownText {
  /** File name without its ending. */
  readonly id: string;
  readonly title: string;
  readonly summary: string;
}

export interface Lesson extends Prose {
  readonly order: number;
  /** The shape of the course: lessons with the same part stand together. */
  readonly part: string;
}

/** `content/plans/*.md`: how the lesson with the same id is taught. Its title is the lesson's, its summary the aim. */
export interface LessonPlan extends Prose, PlanFacts {
  readonly placeOf: PlaceOf;
}

export const levels = ["first", "beginner", "next"] as const;

/** Where the value at a path of a file's data stands. */
export type PlaceOf = (path: readonly (string | number)[]) => Place;

/** A rig with what a coach says of it. */
export interface RigEntry extends Prose {
  readonly placeOf: PlaceOf;
  readonly rig: Rig;
  readonly level: (typeof levels)[number];
  /** Kinds of fish it is meant for. */
  readonly catches: readonly string[];
  readonly useWhen: readonly string[];
  readonly notWhen: readonly string[];
  /** What to change first when no bites come. */
  readonly changeFirst: readonly string[];
  /** The same as cards tell lengths, where pages tell them otherwise. */
  readonly changeFirstOnCards?: readonly string[];
}

export interface FloatEntry extends Prose {
  readonly placeOf: PlaceOf;
  readonly float: Float;
  /** The capacity as it is written on the float, such as `2 AAA`. */
  readonly marking: string;
  readonly basis: Basis;
}

export interface ScaleEntry extends ShotScale {
  readonly source: string;
  readonly basis: Basis;
}

export interface TubEntry {
  readonly id: string;
  readonly title: string;
  readonly scaleId: string;
  readonly tub: Tub;
}

export interface BaitEntry {
  /** Path as its author knows it, for messages. */
  readonly path: string;
  readonly bait: Bait;
  /** Sizes of hook that suit it, by their numbers: the largest hook has the lowest. */
  readonly hooks?: { readonly largest: number; readonly smallest: number };
  /** What it is called where it is fed; its title where nothing is said. */
  readonly feed?: string;
  /** Whether it is drawn, and how. */
  readonly looks?: BaitLooks;
  readonly notes: Root;
}

/** What a group uses up in which every learner makes up the rigs of a kit, and how it is sold. */
export interface GroupUse {
  /** What is bought on top, for what breaks or is lost. */
  readonly spareShare: Share;
  /** Hook lengths that a learner ties for each rig, and line that is cut off for one. */
  readonly hookLengths: number;
  readonly hookLineMm: Mm;
  /** Line that goes on a learner's reel. */
  readonly mainLineMm: Mm;
  readonly hooksInPacket: number;
  readonly hookLineOnSpoolMm: Mm;
  readonly mainLineOnSpoolMm: Mm;
}

/** `content/kits/*.yaml`: tackle that a learner is told to bring, and the rigs that it must do for. */
export interface Kit {
  readonly id: string;
  readonly title: string;
  readonly rigIds: readonly string[];
  readonly floats: readonly FloatEntry[];
  readonly tub: TubEntry;
  readonly hooks: readonly Hook[];
  readonly mainLineG: G;
  readonly hookLineG: G;
  readonly baits: readonly BaitEntry[];
  readonly group?: GroupUse;
}

/** A knot with its step pictures. */
export interface KnotEntry extends KnotPicture {
  readonly placeOf: PlaceOf;
}

/** What a kind of fish asks of a rig. */
export interface Species {
  readonly id: string;
  /** Path as its author knows it, for messages. */
  readonly path: string;
  readonly title: string;
  /** Other names by which rigs say that they catch it. */
  readonly also: readonly string[];
  readonly asks: string;
  /** Whether it is drawn, and how. */
  readonly looks?: FishLooks;
  readonly notes: Root;
}

/** A word of the glossary. */
export interface Term {
  readonly term: string;
  readonly meaning: string;
  /** Other forms of the word that mean the same. */
  readonly also: readonly string[];
  /** Forms of which a reader should know, but which mean other things too and never become links. */
  readonly unlinked: readonly string[];
  /** Whether its first use on a page leads to what it means. */
  readonly link: boolean;
  readonly place: Place;
}

/** Something new in the guide. */
interface Change {
  /** ISO date. */
  readonly date: string;
  readonly title: string;
  readonly summary: string;
  /** Page below the site. */
  readonly page: string;
  readonly place: Place;
}

/** What the float does, why, likeliest first, and what to do. */
export interface Trouble {
  readonly place: Place;
  readonly sign: string;
  /** When and on which water it is seen; one without a time is in the list alone. */
  readonly when?: SignTime;
  readonly water: SignWater;
  readonly shows?: SignPicture;
  readonly causes: readonly string[];
  readonly remedies: readonly string[];
}

/** Everything read from the content folders, checked and with its names looked up. */
export interface Library {
  /**
   * Files that come from the library that the tool brings to a guide of one's own, as their authors know them, by folder
   * and name: `rigs/stick-tapered`. None where the library itself is the guide.
   */
  readonly lent: ReadonlyMap<string, string>;
  /** What of these the guide does not take. */
  readonly leftOut: ReadonlySet<string>;
  readonly guide: Guide;
  /** The file that says it, as its author knows it. */
  readonly guideFile: string;
  readonly words: WordTree;
  /** Photos and drawings of the guide's own, by the names of their files. */
  readonly images: ReadonlyMap<string, OwnImage>;
  /** Parts of pages that the guide writes itself. */
  readonly templates: ReadonlyMap<TemplateName, MarkdownText>;
  /** A font of the guide's own, for signs that the tool's lack. */
  readonly font?: OwnFont;
  readonly scales: readonly ScaleEntry[];
  readonly tubs: readonly TubEntry[];
  readonly floats: readonly FloatEntry[];
  readonly baits: readonly BaitEntry[];
  readonly hooks: readonly Hook[];
  readonly knots: readonly KnotEntry[];
  readonly rigs: readonly RigEntry[];
  readonly kits: readonly Kit[];
  readonly lessons: readonly Lesson[];
  /** Coaches' plans, in the order of their lessons. */
  readonly plans: readonly LessonPlan[];
  /** What shops have; those of a guide of one's own are its own alone. */
  readonly shelves: readonly Shelf[];
  /** Days by the water with a group; these are never lent either. */
  readonly sessions: readonly Session[];
  /** Single pages such as `safety`. */
  readonly pages: readonly Prose[];
  readonly species: readonly Species[];
  /** Places to fish from; those of a guide of one's own are its own alone. */
  readonly swims: readonly SwimEntry[];
  /** What was found at them, by day. */
  readonly notes: readonly SwimNotes[];
  readonly lines?: LineTable;
  /** Without it no rigs are chosen for swims. */
  readonly choosing?: ChoosingRules;
  /** In order of their terms. */
  readonly glossary: readonly Term[];
  readonly troubles: readonly Trouble[];
  /** Groups of words that the search takes for one another. */
  readonly synonyms: readonly (readonly string[])[];
  /** Newest first. */
  readonly changes: readonly Change[];
}
