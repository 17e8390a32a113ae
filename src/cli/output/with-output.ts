import { existsSync, mkdirSync, rmdirSync, statSync, utimesSync } from "node:fs";
import { dirname, join } from "node:path";
import type { OutputFile } from "../../markup/output.ts";
import { noStore, type Store } from "../../model/kept.ts";
import { exitCodes } from "../command.ts";
import { Trouble, writeTrouble } from "../trouble.ts";
import { claim } from "./claim.ts";
import { type FileList, readList, sameList } from "./file-list.ts";
import { endWork, type Tell } from "./leftovers.ts";
import { refuseProtected, requireOwnFolder, truePlace } from "./own-folder.ts";
import { signEveryMs } from "./owner.ts";
import type { Sights } from "./seen.ts";
import { onSignal } from "./signals.ts";
import { stage } from "./stage.ts";
import { SpoiltError, swap } from "./swap.ts";
import type { WorkFolder } from "./work-folder.ts";

/** Where an output is to be written. */
interface Place {
  /** The output folder as it was asked for. */
  readonly out: string;
  /** Never written to. */
  readonly contentFolders: readonly string[];
  readonly tell: Tell;
  /** Where it is kept what was found in the output, so that the next build need not read all of it. */
  readonly store?: Store;
}

/** An output folder that no other build writes to meanwhile. */
export interface ClaimedOutput {
  /** What a build has listed there. */
  list(): FileList | undefined;
  /** Whether it was, when it was claimed, what a build once wrote there, each file to the byte. */
  holds(files: FileList): boolean;
  /**
   * Writes all files into a folder beside the output folder and swaps the two at the end, so that the output is the
   * old one or the new one and never half of each.
   *
   * @returns how many files were written
   */
  replace(files: AsyncIterable<OutputFile>): Promise<number>;
}

/**
 * Waits until an output folder is free, keeps it for a piece of work, and clears up after that, whether it went well,
 * failed, or was stopped by a signal.
 *
 * @throws UsageError where the output folder holds something that no build wrote
 * @throws Trouble where the system does not let it be written
 */
export async function withOutput<T>(place: Place, run: (output: ClaimedOutput) => Promise<T>): Promise<T> {
  const { out, tell, store = noStore } = place;
  const writing = <R>(write: () => R | Promise<R>) => inOwnWords(out, write);
  const { target, firstMade } = await writing(() => prepare(place));
  let work: WorkFolder | undefined;
  let isReplaced = false;
  const clearUp = () => {
    if (work) release(work, tell);
    if (firstMade !== undefined) removeEmpty(dirname(target), firstMade);
  };
  const offSignal = onSignal(clearUp);
  try {
    const claimed = await writing(() =>
      claim(target, out, tell, () => store.find("seen", target)?.value as Sights | undefined),
    );
    work = claimed;
    // Before all the work, and again before the swap: not while another build may be at its own.
    const whole = await writing(() => requireOwnFolder(target, out, claimed.seen));
    const sign = setInterval(() => showSign(claimed), signEveryMs).unref();
    const replace = (files: AsyncIterable<OutputFile>) =>
      writing(async () => {
        const { list, lent } = await stage(claimed, target, files);
        requireOwnFolder(target, out, claimed.seen);
        isReplaced = true;
        swap(claimed, target, list, lent);
        return list.size - 1;
      });
    return await run({
      replace,
      list: () => readList(target),
      holds: (files) => whole !== undefined && sameList(whole, files),
    }).finally(() => clearInterval(sign));
  } finally {
    clearUp();
    // Not before: a signal that comes while it clears up would end it half done.
    offSignal();
    if (work) keepSeen(work, target, store, isReplaced);
  }
}

/** Keeps what was found in an output. That an old one was deleted has taken a name from what both had, if one was replaced. */
function keepSeen({ seen }: WorkFolder, target: string, store: Store, isReplaced: boolean): void {
  if (store === noStore) return;
  try {
    const files = [...(readList(target)?.keys() ?? [])].map((path) => join(target, path));
    const news = seen.news(files, isReplaced);
    if (news) store.put("seen", target, news);
  } catch {
    // What is not kept is read again.
  }
}

/** Finds the output folder's true place, refuses what no build may replace, and makes the way there. */
function prepare({ out, contentFolders }: Place) {
  const target = truePlace(out);
  refuseProtected(target, out, contentFolders);
  return { target, firstMade: makeWay(dirname(target)) };
}

/**
 * Makes a folder and those that it is in, as far as they are not there; one by one, as then the system says what is in
 * the way.
 *
 * @returns the outermost one that was made
 */
function makeWay(folder: string): string | undefined {
  if (statSync(folder, { throwIfNoEntry: false })) return undefined;
  const outermost = makeWay(dirname(folder));
  try {
    mkdirSync(folder);
  } catch (error) {
    if (outermost !== undefined) removeEmpty(dirname(folder), outermost);
    throw error;
  }
  return outermost ?? folder;
}

/** Does something to an output, and tells what comes between in words that help. */
async function inOwnWords<T>(out: string, act: () => T | Promise<T>): Promise<T> {
  try {
    return await act();
  } catch (error) {
    const kept = existsSync(out) ? "what is there is as it was" : "nothing was written";
    throw error instanceof SpoiltError
      ? new Trouble(
          `${out} cannot be written: ${error.message}; ${kept}. To go on, build again`,
          exitCodes.tryAgain,
        )
      : writeTrouble(error, out, kept);
  }
}

/** Ends a build's work; where that cannot be done now, the next command of any kind does it. */
function release(work: WorkFolder, tell: Tell): void {
  try {
    endWork(work, tell);
  } catch (error) {
    tell(`${work.path} cannot be cleared up now (${(error as Error).message}); the next command tries again`);
  }
}

/** Tells others that this build is alive. */
function showSign(work: WorkFolder): void {
  try {
    utimesSync(work.path, new Date(), new Date());
  } catch {
    // Where the folder was taken away, moving its content will fail, and that is told.
  }
}

/** Deletes the folders that were made on the way to an output, as far as they are still empty. */
function removeEmpty(from: string, to: string): void {
  for (let folder = from; ; folder = dirname(folder)) {
    try {
      rmdirSync(folder);
    } catch {
      return;
    }
    if (folder === to) return;
  }
}
