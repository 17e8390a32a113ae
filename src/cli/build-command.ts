import { outputFiles, solveContent } from "../build/build.ts";
import { formatReport } from "../report/reporter.ts";
import { buildSettings } from "./build-settings.ts";
import { type CliCommand, exitCodes } from "./command.ts";
import { contentFolders, withContentOption } from "./content-option.ts";
import { disk } from "./disk.ts";
import { writeOutput } from "./staging.ts";

export const buildCommand: CliCommand = {
  name: "build",
  describe: (command) =>
    withContentOption(command)
      .summary("make the guide, the cards and the data")
      .description("Reads the content, does the sums and writes the site, the cards and the data.")
      .option("--out <folder>", "folder to write; replaced as a whole", "out"),
  async run(_args, options, terminal) {
    const { value: solved, messages } = await solveContent(disk, contentFolders(options));
    if (messages.length > 0) terminal.report(formatReport(messages));
    if (!solved) return exitCodes.contentErrors;
    const out = String(options.out);
    const count = await writeOutput(out, outputFiles(solved, buildSettings(solved)));
    terminal.result(`${count} files in ${out}; open ${out}/site/index.html\n`);
    return exitCodes.fine;
  },
};
