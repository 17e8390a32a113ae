import { solveChecked } from "../build/build.ts";
import { checkSources } from "../build/check-sources.ts";
import { layoutProblems } from "../build/layout-problems.ts";
import { readSources, type Source } from "../content/world.ts";
import { keeping, type Store } from "../model/kept.ts";
import type { Message } from "../model/message.ts";
import { buildSettings } from "./build-settings.ts";
import { type CliCommand, exitCodes, type Progress } from "./command.ts";
import { contentFolders, withContentOption } from "./content-option.ts";
import { disk } from "./disk.ts";
import { fromSources } from "./from-sources.ts";
import { keptOf } from "./kept-on-shelf.ts";
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
    progress?.say("reading, and doing the sums");
    const sources = await readSources(disk, folders, shipped);
    const store = keptOf(folders);
    const checked = await check(sources, store, progress).finally(() => {
      store.end();
      progress?.end();
    });
    const stops = tell(checked.messages, options, terminal);
    if (stops || !checked.counts) return exitCodes.contentErrors;
    if (options.quiet || options.json) return exitCodes.fine;
    const { rigs, lessons } = checked.counts;
    terminal.result(`${rigs} rigs, ${lessons} lessons: fine\n`);
    return exitCodes.fine;
  },
};

/** All that there is to tell, and how much content is behind it where that is right. */
interface Checked {
  readonly messages: readonly Message[];
  readonly counts: { readonly rigs: number; readonly lessons: number } | undefined;
}

/** Of the same content the same is told: it is looked at once. */
async function check(
  sources: ReadonlyMap<string, Source>,
  store: Store,
  progress: Progress | undefined,
): Promise<Checked> {
  const keep = keeping(store);
  const from = fromSources(sources, []);
  const before = store.find("checked", from);
  if (before) return before.value as Checked;
  const { value: solved, messages } = await solveChecked(checkSources(sources, keep), keep);
  progress?.say("laying out");
  const checked = {
    messages: [
      ...messages,
      ...(solved ? await layoutProblems(solved, { ...buildSettings(solved), keep }) : []),
    ],
    counts: solved && { rigs: solved.rigs.length, lessons: solved.library.lessons.length },
  };
  store.put("checked", from, checked);
  return checked;
}
