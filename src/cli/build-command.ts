import { Option } from "commander";
import { outputFiles, solveContent } from "../build/build.ts";
import { ContentError } from "../build/content-error.ts";
import { type BuildSettings, buildParts, type Solved } from "../build/stages.ts";
import type { OutputFile } from "../markup/output.ts";
import type { Message } from "../model/message.ts";
import { buildSettings } from "./build-settings.ts";
import { type CliCommand, exitCodes, type Progress, UsageError } from "./command.ts";
import { contentFolders, withContentOption } from "./content-option.ts";
import { disk } from "./disk.ts";
import { keptOnDisk } from "./kept-on-disk.ts";
import { withOutput } from "./output/with-output.ts";
import { tell, withReportOptions } from "./report-options.ts";

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
      .addOption(
        new Option("--for <part>", "make only the site, what is printed, or the data").choices(buildParts),
      ),
  async run(_args, options, terminal) {
    const out = String(options.out);
    const { folders, shipped } = await contentFolders(options);
    const say = (line: string) => terminal.report(`dotdown: ${line}\n`);
    const progress = options.quiet || options.json ? undefined : terminal.progress?.();
    // The folder is claimed before the content is read: who builds last has read last.
    try {
      return await withOutput(
        { out, contentFolders: [...folders, ...(shipped ? [shipped] : [])], tell: say },
        async (output) => {
          progress?.say("reading, and doing the sums");
          const { value: solved, messages } = await solveContent(disk, folders, shipped, keptOnDisk());
          progress?.end();
          const stops = messages.length > 0 && tell(messages, options, terminal);
          if (stops || !solved) return exitCodes.contentErrors;
          const parts = buildParts.filter((part) => options.for === undefined || options.for === part);
          const found: Message[] = [];
          const settings = {
            ...buildSettings(solved),
            sheets: sheetChoice(options, solved),
            parts,
            keepGoing: options.keepGoing === true,
            tell: (told: readonly Message[]) => {
              found.push(...told);
              // Nothing is written yet: an earlier output stays whole.
              if (options.strict && !options.keepGoing && found.length > 0) throw new ContentError(found);
            },
          };
          progress?.say("writing");
          const count = await output.replace(counted(outputFiles(solved, settings), progress));
          progress?.end();
          if (found.length > 0 && tell(found, options, terminal)) return exitCodes.contentErrors;
          if (options.quiet || options.json) return exitCodes.fine;
          const open = parts.includes("web") ? `; open ${out}/site/index.html` : "";
          terminal.result(`${count} files in ${out}${open}\n`);
          return exitCodes.fine;
        },
      );
    } finally {
      progress?.end();
    }
  },
};

/** Files on their way, counted for whoever waits. */
async function* counted(files: AsyncIterable<OutputFile>, progress: Progress | undefined) {
  let count = 0;
  for await (const file of files) {
    progress?.say(`writing file ${++count}: ${file.path}`);
    yield file;
  }
}

/** The cards asked for on the sheets. */
function sheetChoice({ rigs, copies }: Options, solved: Solved): NonNullable<BuildSettings["sheets"]> {
  const names = rigs === undefined ? undefined : String(rigs).split(",");
  const known = solved.rigs.map(({ rig }) => rig.id);
  const unknown = names?.find((name) => !known.includes(name));
  if (unknown !== undefined)
    throw new UsageError(`there is no rig "${unknown}"; there are ${known.join(", ")}`);
  if (copies !== undefined && !/^[1-9]\d{0,2}$/.test(String(copies))) {
    throw new UsageError(`--copies ${copies} is not understood; write a number from 1 to 999`);
  }
  return { ...(names && { rigs: names }), ...(copies !== undefined && { copies: Number(copies) }) };
}

type Options = Readonly<Record<string, unknown>>;
