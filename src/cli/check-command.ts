import { counted } from "../checks/counted.ts";
import { readSources, type Source } from "../content/world.ts";
import type { Checked } from "./check-anew.ts";
import { type CliCommand, exitCodes, type Progress } from "./command.ts";
import { contentFolders, withContentOption } from "./content-option.ts";
import { disk } from "./disk.ts";
import { fromSources } from "./from-sources.ts";
import { storeOnDisk } from "./kept-on-disk.ts";
import { withReportOptions } from "./report-options.ts";

export const checkCommand: CliCommand = {
  name: "check",
  describe: (command) =>
    withReportOptions(withContentOption(command))
      .summary("say what is wrong, and write nothing")
      .description("Reads the content, does the sums, lays out what is printed, and says what is wrong."),
  async run(_args, options, terminal) {
    const { folders, shipped } = await contentFolders(options);
    const progress = options.quiet || options.json ? undefined : terminal.progress?.();
    progress?.say("reading, and doing the sums");
    const sources = await readSources(disk, folders, shipped);
    const checked = await checkOnce(folders, sources, progress).finally(() => progress?.end());
    const { tell } = await import("./tell.ts");
    const stops = tell(checked.messages, options, terminal);
    if (stops || !checked.counts) return exitCodes.contentErrors;
    if (options.quiet || options.json) return exitCodes.fine;
    const { rigs, lessons } = checked.counts;
    terminal.result(`${counted(rigs, "rig")}, ${counted(lessons, "lesson")}: fine\n`);
    return exitCodes.fine;
  },
};

/** Of the same content the same is told: it is looked at once, and what looking needs is loaded only then. */
async function checkOnce(
  folders: readonly string[],
  sources: ReadonlyMap<string, Source>,
  progress: Progress | undefined,
): Promise<Checked> {
  const store = storeOnDisk();
  const from = fromSources(sources, []);
  const before = store.find("checked", from);
  if (before) return before.value as Checked;
  const { checkAnew } = await import("./check-anew.ts");
  const checked = await checkAnew(folders, sources, store, progress);
  store.put("checked", from, checked);
  return checked;
}
