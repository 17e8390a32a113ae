import { briefReport } from "../checks/reporter.ts";
import { keeping } from "../model/kept.ts";
import type { Message } from "../model/message.ts";
import { buildSettings } from "./build-settings.ts";
import { type CliCommand, exitCodes, type Terminal, UsageError } from "./command.ts";
import { contentFolders, tellWhose, withContentOption } from "./content-option.ts";
import { disk } from "./disk.ts";
import { keptOf } from "./kept-on-shelf.ts";
import { startPreview } from "./preview/server.ts";
import { PreviewSession } from "./preview/session.ts";
import { remembering } from "./watch/remembering.ts";
import { untilAskedToEnd } from "./watch/saves.ts";

export const previewCommand: CliCommand = {
  name: "preview",
  describe: (command) =>
    withContentOption(command)
      .summary("look at the guide while you write it")
      .description(
        "Shows the guide in a browser of this machine. Each save shows at once; what is wrong stands on the page.",
      )
      .option("--port <number>", "port to serve at; 0 for any that is free", "8642"),
  async run(_args, options, terminal) {
    const content = await contentFolders(options);
    const { folders, shipped } = content;
    tellWhose(content, options, terminal);
    if (!/^\d{1,5}$/.test(String(options.port)) || Number(options.port) > 65_535) {
      throw new UsageError(`--port ${options.port} is not understood; write a number from 0 to 65535`);
    }
    const store = keptOf(folders);
    const session = new PreviewSession(remembering(disk), folders, shipped, keeping(store), buildSettings);
    const preview = await startPreview(session, folders, Number(options.port), teller(terminal)).catch(
      (error) => {
        if (error.code !== "EADDRINUSE") throw error;
        throw new UsageError(`port ${options.port} is taken; name another with --port`);
      },
    );
    terminal.result(`${preview.address} shows the guide; Ctrl-C ends it\n`);
    await untilAskedToEnd();
    await preview.close();
    store.end();
    return exitCodes.fine;
  },
};

/** Says in the terminal, too, that something is wrong, and when it is mended: the browser may lie behind another window. */
function teller(terminal: Pick<Terminal, "report">) {
  let isWrong = false;
  return (errors: readonly Message[]) => {
    if (errors.length > 0) terminal.report(`${briefReport(errors)}\n`);
    else if (isWrong) terminal.report("mended; the pages show it\n");
    isWrong = errors.length > 0;
  };
}
