import { buildParts } from "../build/stages.ts";
import type { Source } from "../content/world.ts";
import type { OpenStore } from "../model/kept.ts";
import type { Message } from "../model/message.ts";
import type { Progress, Terminal } from "./command.ts";
import type { FileList } from "./output/file-list.ts";
import type { ClaimedOutput } from "./output/with-output.ts";

export type Options = Readonly<Record<string, unknown>>;

/** A build that is asked for. */
export interface Building {
  /** The content folders, by which what is kept of a guide is found again. */
  readonly folders: readonly string[];
  readonly sources: ReadonlyMap<string, Source>;
  readonly options: Options;
  readonly terminal: Terminal;
  readonly progress: Progress | undefined;
  readonly output: ClaimedOutput;
  readonly store: OpenStore;
  /** How many are to be at work where nothing is kept, this one among them, where somebody asks for so many. */
  readonly workers: number | undefined;
}

/** What a build wrote, as many files as it says, and what it had to tell of the content and of the paper. */
export interface Built {
  readonly count: number;
  readonly list: FileList;
  readonly messages: readonly Message[];
  readonly found: readonly Message[];
}

export const partsOf = (options: Options) =>
  buildParts.filter((part) => options.for === undefined || options.for === part);
