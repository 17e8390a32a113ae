import type { Drawing } from "../drawing/model.ts";
import type { OutputFile } from "../markup/output.ts";
import type { Place } from "../model/message.ts";
import type { Severity } from "../model/message-table.ts";
import type { SolvedRig } from "../model/solved.ts";

export type { Drawing, Item } from "../drawing/model.ts";
export type { OutputFile } from "../markup/output.ts";
export type { Rig } from "../model/rig.ts";
export type { SolvedDepth, SolvedRig } from "../model/solved.ts";

/** Something that is wrong, or weak, in the content. */
export interface Told extends Place {
  readonly severity: Severity;
  /** Keeps its meaning from one edition of dotdown to the next. */
  readonly code: string;
  readonly reason: string;
  readonly hint?: string;
}

/** What a stage gives: its value, missing where something is an error, and all that it has to tell. */
export interface Outcome<T> {
  readonly value: T | undefined;
  readonly messages: readonly Told[];
}

interface Named {
  readonly id: string;
  readonly title: string;
}

/** A guide whose files are right by themselves. */
export interface ReadGuide {
  readonly title: string;
  readonly rigs: readonly Named[];
  readonly lessons: readonly Named[];
}

/** A guide with its sums done. Lengths are in mm, weights in g, times in s, as the names of the fields say. */
export interface SolvedGuide {
  readonly title: string;
  readonly rigs: readonly SolvedRig[];
}

/**
 * Reads a guide.
 *
 * @param folders content folders, later ones over earlier ones; the guide that comes with dotdown stands below them, or
 *   alone where none is named
 * @throws Error where a folder is not there, or cannot be read
 */
export declare function readGuide(...folders: readonly string[]): Promise<Outcome<ReadGuide>>;

/** Does the sums of a guide: every rig at each of its depths, in its water. */
export declare function solve(guide: ReadGuide): Promise<Outcome<SolvedGuide>>;

/** How a rig is drawn. */
export interface DrawOptions {
  /** Depth of water [mm]; the rig's first where nothing is said. */
  readonly depthMm?: number;
  readonly widthMm?: number;
  readonly heightMm?: number;
  /** Height of the letters [mm]. */
  readonly textMm?: number;
}

/**
 * Draws a rig of the guide, made up for a depth of water.
 *
 * @throws Error where there is no such rig, it cannot be had at that depth, or there is no room for it
 * @throws TypeError where a measure is no number above 0
 */
export declare function draw(guide: SolvedGuide, rigId: string, options?: DrawOptions): Drawing;

/** A drawing as SVG, in black on white. */
export declare function svg(drawing: Drawing): string;

/** What is built: the site, what is printed, the figures as data. */
export type Part = "web" | "print" | "data";

/**
 * The files of a guide, one at a time, as they are made.
 *
 * @param parts all where nothing is said
 * @throws Error whose message says what does not fit its card or page
 * @throws TypeError where a part is none of those that there are
 */
export declare function build(guide: SolvedGuide, parts?: readonly Part[]): AsyncIterable<OutputFile>;

/**
 * Writes files in place of a folder: whole or not at all, and over nothing but what was written so before.
 *
 * @returns how many files there are
 * @throws Error where the folder holds something else, or cannot be written
 */
export declare function write(folder: string, files: AsyncIterable<OutputFile>): Promise<number>;
