import { Command, CommanderError } from "commander";
import packageData from "../../package.json" with { type: "json" };
import { ContentError } from "../build/content-error.ts";
import { formatReport } from "../checks/reporter.ts";
import { ChangingContentError } from "../content/world.ts";
import { clearStages, stageTimes } from "../model/stage-times.ts";
import { WordsError } from "../words/words.ts";
import { buildCommand } from "./build-command.ts";
import { checkCommand } from "./check-command.ts";
import { chooseCommand } from "./choose-command.ts";
import { type CliCommand, exitCodes, type Terminal, UsageError } from "./command.ts";
import { initCommand } from "./init-command.ts";
import { newCommand } from "./new-command.ts";
import { clearLeftovers } from "./output/leftovers.ts";
import { rememberedFolders } from "./output/notes.ts";
import { previewCommand } from "./preview-command.ts";
import { linesOnDisk } from "./report-options.ts";
import { schemaCommand } from "./schema-command.ts";
import { sheetCommand } from "./sheet-command.ts";
import { systemTrouble } from "./trouble.ts";

/** Every command of the tool. */
export const commands: readonly CliCommand[] = [
  initCommand,
  newCommand,
  buildCommand,
  checkCommand,
  previewCommand,
  sheetCommand,
  chooseCommand,
  schemaCommand,
];

function program(terminal: Terminal, onRun: (code: number) => void): Command {
  const root = new Command("dotdown")
    .description(
      "Float-fishing lessons and rig files in; a guide, handouts and rig cards out, with the sums done.",
    )
    .version(packageData.version)
    .exitOverride()
    .configureOutput({ writeOut: terminal.result, writeErr: terminal.report });
  for (const { name, describe, run } of commands) {
    const command = describe(root.command(name));
    command.action(async () => {
      clearLeftovers([process.cwd(), ...rememberedFolders()], (line) =>
        terminal.report(`dotdown: ${line}\n`),
      );
      onRun(await timed(() => run(command.args, command.opts(), terminal), command.opts(), terminal));
    });
  }
  return root;
}

/** Runs a command, and says at its end what each stage did, where that is asked for. */
async function timed(
  run: () => Promise<number>,
  { verbose }: Readonly<Record<string, unknown>>,
  terminal: Terminal,
): Promise<number> {
  if (!verbose) return run();
  clearStages();
  const [startMs, cpu] = [performance.now(), process.cpuUsage()];
  try {
    return await run();
  } finally {
    const used = process.cpuUsage(cpu);
    const seconds = (ms: number) => (ms / 1000).toFixed(2);
    const total = `all: ${seconds(performance.now() - startMs)} s, ${seconds((used.user + used.system) / 1000)} s of them reckoned`;
    const memory = `most memory: ${Math.round(process.resourceUsage().maxRSS / 1024)} MB`;
    for (const line of [...stageTimes(startMs), total, memory]) terminal.report(`dotdown: ${line}\n`);
  }
}

/** What is said of an error, and the exit code. */
function endedBy(error: unknown): { code: number; text: string } {
  if (error instanceof UsageError) return { code: exitCodes.usage, text: `dotdown: ${error.message}` };
  if (error instanceof ContentError)
    return { code: exitCodes.contentErrors, text: formatReport(error.messages, linesOnDisk()).trimEnd() };
  if (error instanceof WordsError)
    return {
      code: exitCodes.contentErrors,
      text: `content/words: ${error.message}; add it, or take the words file that comes with dotdown`,
    };
  if (error instanceof ChangingContentError)
    return {
      code: exitCodes.tryAgain,
      text: `dotdown: the content ${error.message}; nothing was written. Wait until it is at rest, and try again`,
    };
  const trouble = systemTrouble(error);
  if (trouble) return { code: trouble.exitCode, text: `dotdown: ${trouble.message}` };
  return { code: exitCodes.fault, text: faultText(error) };
}

/** A fault of the tool, with what those who mend it need to know. */
function faultText(error: unknown): string {
  const detail = error instanceof Error ? (error.stack ?? error.message) : String(error);
  const { platform, arch, version } = process;
  return [
    "dotdown: this is a fault of ours, not of your content; the output is as it was before.",
    "Please report it to whoever gave you dotdown: send these lines, the command, and the content if you may.",
    `dotdown ${packageData.version}, Node ${version}, ${platform} ${arch}`,
    detail,
  ].join("\n");
}

/**
 * Runs the command line.
 *
 * @param args what stands behind the command's own name
 * @returns the exit code
 */
export async function runCli(args: readonly string[], terminal: Terminal): Promise<number> {
  let code: number = exitCodes.fine;
  try {
    await program(terminal, (ran) => {
      code = ran;
    }).parseAsync(args, { from: "user" });
    return code;
  } catch (error) {
    // What commander has to say it has said.
    if (error instanceof CommanderError) return error.exitCode === 0 ? exitCodes.fine : exitCodes.usage;
    const ended = endedBy(error);
    terminal.report(`${ended.text}\n`);
    return ended.code;
  }
}
