import type { Checked } from "../check-anew.ts";
import { exitCodes, type Progress, type Terminal } from "../command.ts";
import type { ContentFolders } from "../content-option.ts";
import { endedBy } from "../ended-by.ts";
import { tellChecked } from "../tell-checked.ts";
import { checkOnSaves } from "./check-on-saves.ts";
import { untilAskedToEnd } from "./saves.ts";

type Options = Readonly<Record<string, unknown>>;

/** So many files of a save are named. */
const namedMost = 3;

/** Tells what is wrong now and after each save, until it is asked to end. */
export async function checkAgain(
  { folders, shipped }: ContentFolders,
  options: Options,
  terminal: Terminal,
  progress: Progress | undefined,
): Promise<number> {
  let isFirst = true;
  const told = {
    checked: (checked: Checked, changed: readonly string[]) => {
      progress?.end();
      tellRound(checked, isFirst ? [] : changed, options, terminal);
      isFirst = false;
    },
    failed: (error: unknown) => {
      progress?.end();
      terminal.report(`${endedBy(error).text}\n`);
    },
  };
  const watched = await checkOnSaves(folders, shipped, told, progress);
  await untilAskedToEnd();
  await watched.close();
  return exitCodes.fine;
}

function tellRound(checked: Checked, saved: readonly string[], options: Options, terminal: Terminal): void {
  if (saved.length > 0 && !options.json && !options.quiet) terminal.report(`\nsaved: ${named(saved)}\n`);
  tellChecked(checked, options, terminal);
  if (options.json) terminal.result(`${JSON.stringify(roundOf(checked, saved))}\n`);
}

function named(saved: readonly string[]): string {
  const rest = saved.length - namedMost;
  return `${saved.slice(0, namedMost).join(", ")}${rest > 0 ? ` and ${rest} more` : ""}`;
}

/** What ends a round, for programs. */
function roundOf({ messages }: Checked, saved: readonly string[]) {
  const count = (of: string) => messages.filter(({ severity }) => severity === of).length;
  return { saved, errors: count("error"), warnings: count("warning") };
}
