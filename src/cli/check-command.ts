import { readSources, type Source } from "../content/world.ts";
import type { Checked } from "./check-anew.ts";
import type { CliCommand, Progress } from "./command.ts";
import { contentFolders, tellWhose, withContentOption } from "./content-option.ts";
import { disk } from "./disk.ts";
import { fromSources } from "./from-sources.ts";
import { storeOnDisk } from "./kept-on-disk.ts";
import { withReportOptions } from "./report-options.ts";

export const checkCommand: CliCommand = {
  name: "check",
  describe: (command) =>
    withReportOptions(withContentOption(command))
      .summary("say what is wrong, and write nothing")
      .description("Reads the content, does the sums, lays out what is printed, and says what is wrong.")
      .option("--watch", "look again after each save, until Ctrl-C"),
  async run(_args, options, terminal) {
    const content = await contentFolders(options);
    tellWhose(content, options, terminal);
    const progress = options.quiet || options.json ? undefined : terminal.progress?.();
    progress?.say("reading, and doing the sums");
    if (options.watch) {
      const { checkAgain } = await import("./watch/check-again.ts");
      return checkAgain(content, options, terminal, progress);
    }
    const sources = await readSources(disk, content.folders, content.shipped);
    const checked = await checkOnce(content.folders, sources, progress).finally(() => progress?.end());
    const { tellChecked } = await import("./tell-checked.ts");
    return tellChecked(checked, options, terminal);
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
