import { outputFiles, solveContent } from "../build/build.ts";
import { formatReport } from "../checks/reporter.ts";
import { buildSettings } from "./build-settings.ts";
import { type CliCommand, exitCodes } from "./command.ts";
import { contentFolders, withContentOption } from "./content-option.ts";
import { disk } from "./disk.ts";

export const checkCommand: CliCommand = {
  name: "check",
  describe: (command) =>
    withContentOption(command)
      .summary("do all that build does, but write nothing")
      .description("Reads the content, does the sums, lays out every page and card, and says what is wrong."),
  async run(_args, options, terminal) {
    const { folders, shipped } = await contentFolders(options);
    const { value: solved, messages } = await solveContent(disk, folders, shipped);
    terminal.report(formatReport(messages));
    if (!solved) return exitCodes.contentErrors;
    let count = 0;
    for await (const _ of outputFiles(solved, buildSettings(solved))) count++;
    terminal.result(
      `${solved.rigs.length} rigs, ${solved.library.lessons.length} lessons, ${count} files: fine\n`,
    );
    return exitCodes.fine;
  },
};
