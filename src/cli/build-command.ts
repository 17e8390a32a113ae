import { Option } from "commander";
import { buildParts } from "../build/stages.ts";
import { readSources } from "../content/world.ts";
import { buildOnce } from "./build-once.ts";
import type { CliCommand } from "./command.ts";
import { contentFolders, tellWhose, withContentOption } from "./content-option.ts";
import { workersFor } from "./crew/crew.ts";
import { disk } from "./disk.ts";
import { storeOnDisk } from "./kept-on-disk.ts";
import { withOutput } from "./output/with-output.ts";
import { withReportOptions } from "./report-options.ts";

export const buildCommand: CliCommand = {
  name: "build",
  describe: (command) =>
    withReportOptions(withContentOption(command))
      .summary("make the guide, the cards and the data")
      .description("Reads the content, does the sums and writes the site, the cards and the data.")
      .option("--out <folder>", "folder to write; replaced as a whole", "out")
      .option("--keep-going", "make all that fits where something does not, and say what does not")
      .option("--rigs <names>", "only these rigs on the sheets of cards, such as first-session,margin")
      .option("--copies <number>", "so many copies of each card on the sheets")
      .option(
        "--workers <number>",
        "so many threads at work on a guide that is new; as DOTDOWN_WORKERS says, else two where there are processors for it",
      )
      .addOption(
        new Option("--for <part>", "make only the site, what is printed, or the data").choices(buildParts),
      ),
  async run(_args, options, terminal) {
    const out = String(options.out);
    const workers = workersFor(options.workers);
    const content = await contentFolders(options);
    const { folders, shipped } = content;
    tellWhose(content, options, terminal);
    const say = (line: string) => terminal.report(`dotdown: ${line}\n`);
    const progress = options.quiet || options.json ? undefined : terminal.progress?.();
    const store = storeOnDisk();
    // The folder is claimed before the content is read: who builds last has read last.
    try {
      return await withOutput(
        { out, contentFolders: [...folders, ...(shipped ? [shipped] : [])], tell: say, store },
        async (output) => {
          progress?.say("reading, and doing the sums");
          const sources = await readSources(disk, folders, shipped);
          const building = { folders, sources, options, terminal, progress, output, store, workers };
          return buildOnce(building);
        },
      );
    } finally {
      progress?.end();
    }
  },
};
