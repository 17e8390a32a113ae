import { outputFiles, solveContent } from "../build/build.ts";
import { ContentError } from "../build/content-error.ts";
import type { Solved } from "../build/stages.ts";
import type { Message } from "../model/message.ts";
import { buildSettings } from "./build-settings.ts";
import { type CliCommand, exitCodes, type Progress } from "./command.ts";
import { contentFolders, withContentOption } from "./content-option.ts";
import { disk } from "./disk.ts";
import { keptOnDisk } from "./kept-on-disk.ts";
import { tell, withReportOptions } from "./report-options.ts";

export const checkCommand: CliCommand = {
  name: "check",
  describe: (command) =>
    withReportOptions(withContentOption(command))
      .summary("say what is wrong, and write nothing")
      .description("Reads the content, does the sums, lays out what is printed, and says what is wrong."),
  async run(_args, options, terminal) {
    const { folders, shipped } = await contentFolders(options);
    const progress = options.quiet || options.json ? undefined : terminal.progress?.();
    const checked = await all(folders, shipped, progress).finally(() => progress?.end());
    const { solved, messages } = checked;
    const stops = tell(messages, options, terminal);
    if (stops || !solved) return exitCodes.contentErrors;
    if (options.quiet || options.json) return exitCodes.fine;
    const { rigs, library } = solved;
    terminal.result(`${rigs.length} rigs, ${library.lessons.length} lessons: fine\n`);
    return exitCodes.fine;
  },
};

async function all(folders: readonly string[], shipped: string | undefined, progress: Progress | undefined) {
  progress?.say("reading, and doing the sums");
  const { value: solved, messages } = await solveContent(disk, folders, shipped, keptOnDisk());
  progress?.say("laying out");
  return { solved, messages: [...messages, ...(solved ? await problemsOfLayout(solved) : [])] };
}

/** What keeps cards and handouts from being laid out, or what they lack: it is told before the first of them is given. */
async function problemsOfLayout(solved: Solved): Promise<readonly Message[]> {
  const messages: Message[] = [];
  const settings = {
    ...buildSettings(solved),
    parts: ["print"] as const,
    tell: (told: readonly Message[]) => messages.push(...told),
  };
  try {
    for await (const _ of outputFiles(solved, settings)) break;
    return messages;
  } catch (error) {
    if (error instanceof ContentError) return [...messages, ...error.messages];
    throw error;
  }
}
