/** Saves come in bursts: a file is emptied, written, and its date set. */
const settleMs = 25;
/** The watcher passes over what is saved again within 50 ms, so what is there is looked at once more after that. */
const lookAgainMs = 80;

/** What to do when something in the folders was saved. */
interface OnSave {
  look(): void;
  /** There is seldom anything new. */
  lookAgain(): void;
}

/**
 * Watches folders for saves, until it is closed.
 *
 * @returns once every save will be seen
 */
export async function watchSaves(
  folders: readonly string[],
  { look, lookAgain }: OnSave,
): Promise<{ close(): Promise<void> }> {
  let waiting: readonly NodeJS.Timeout[] = [];
  const stopWaiting = () => waiting.forEach(clearTimeout);
  const { watch } = await import("chokidar");
  const watcher = watch([...folders], { ignoreInitial: true }).on("all", () => {
    stopWaiting();
    waiting = [setTimeout(look, settleMs), setTimeout(lookAgain, lookAgainMs)];
  });
  await new Promise<void>((watching) => watcher.once("ready", () => watching()));
  return {
    close: async () => {
      stopWaiting();
      await watcher.close();
    },
  };
}

/** Waits for Ctrl-C, or for a polite request to end. */
export const untilAskedToEnd = () =>
  new Promise<unknown>((asked) => process.once("SIGINT", asked).once("SIGTERM", asked));
