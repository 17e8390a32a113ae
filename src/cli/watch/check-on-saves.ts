import { inRounds, keeping } from "../../model/kept.ts";
import { type Checked, checkAll } from "../check-anew.ts";
import type { Progress } from "../command.ts";
import { disk } from "../disk.ts";
import { keptOf } from "../kept-on-shelf.ts";
import { remembering } from "./remembering.ts";
import { SavedSources } from "./saved-sources.ts";
import { watchSaves } from "./saves.ts";

/** Who is told of what was found. */
interface Told {
  /** @param saved the files that are other than they were; all of them at first */
  checked(checked: Checked, saved: readonly string[]): void;
  /** The content could not be looked at, this time. */
  failed(error: unknown): void;
}

/**
 * Checks content now and after each save, until it is closed; what a save does not touch is not looked at again.
 *
 * @returns once the first look is over
 */
export async function checkOnSaves(
  folders: readonly string[],
  shipped: string | undefined,
  told: Told,
  progress?: Progress,
): Promise<{ close(): Promise<void> }> {
  const shelf = keptOf(folders);
  const keepRead = keeping(shelf);
  const { keep, nextRound } = inRounds(keepRead);
  const sources = new SavedSources(remembering(disk), folders, shipped);
  const check = async () => {
    const saved = await sources.read();
    if (!saved) return;
    nextRound();
    told.checked(await checkAll(saved.sources, keep, progress, keepRead), saved.changed);
  };
  let looking = Promise.resolve();
  const look = () => {
    looking = looking.then(check).catch(told.failed);
  };
  const watched = await watchSaves(folders, { look, lookAgain: look });
  look();
  await looking;
  return {
    close: async () => {
      await watched.close();
      await looking;
      shelf.end();
    },
  };
}
