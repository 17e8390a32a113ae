import { outputFiles, solveContent } from "../build/build.ts";
import { ContentError } from "../build/content-error.ts";
import type { Solved } from "../build/stages.ts";
import type { Message } from "../model/message.ts";
import { buildSettings } from "./build-settings.ts";
import { type CliCommand, exitCodes, type Progress } from "./command.ts";
import { contentFolders, withContentOption } from "./content-option.ts";
import { disk } from "./disk.ts";
import { tell, withReportOptions } from "./report-options.ts";

export const checkCommand: CliCommand = {
  name: "check",
  describe: (command) =>
    withReportOptions(withContentOption(command))
      .summary("do all that build does, but write nothing")
      .description("Reads the content, does the sums, lays out every page and card, and says what is wrong."),
  async run(_args, options, terminal) {
    const { folders, shipped } = await contentFolders(options);
    const progress = options.quiet || options.json ? undefined : terminal.progress?.();
    const checked = await all(folders, shipped, progress).finally(() => progress?.end());
    const { solved, messages, count } = checked;
    const stops = tell(messages, options, terminal);
    if (stops || !solved) return exitCodes.contentErrors;
    if (options.quiet || options.json) return exitCodes.fine;
    const { rigs, library } = solved;
    terminal.result(`${rigs.length} rigs, ${library.lessons.length} lessons, ${count} files: fine\n`);
    return exitCodes.fine;
  },
};

async function all(folders: readonly string[], shipped: string | undefined, progress: Progress | undefined) {
  progress?.say("reading, and doing the sums");
  const { value: solved, messages } = await solveContent(disk, folders, shipped);
  progress?.say("laying out");
  const laidOut = solved ? await layOut(solved) : { count: 0, messages: [] };
  return { solved, count: laidOut.count, messages: [...messages, ...laidOut.messages] };
}

/** How many files a build would write, or what keeps them from being laid out. */
async function layOut(
  solved: Solved,
): Promise<{ readonly count: number; readonly messages: readonly Message[] }> {
  let count = 0;
  try {
    for await (const _ of outputFiles(solved, buildSettings(solved))) count++;
    return { count, messages: [] };
  } catch (error) {
    if (error instanceof ContentError) return { count, messages: error.messages };
    throw error;
  }
}
