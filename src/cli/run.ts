import { Command, CommanderError } from "commander";
import packageData from "../../package.json" with { type: "json" };
import { ContentError } from "../build/build.ts";
import { WordsError } from "../words/words.ts";
import { buildCommand } from "./build-command.ts";
import { checkCommand } from "./check-command.ts";
import { type CliCommand, exitCodes, type Terminal, UsageError } from "./command.ts";
import { clearLeftovers } from "./output/leftovers.ts";
import { rememberedFolders } from "./output/notes.ts";
import { sheetCommand } from "./sheet-command.ts";

const commands: readonly CliCommand[] = [buildCommand, checkCommand, sheetCommand];

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
      onRun(await run(command.args, command.opts(), terminal));
    });
  }
  return root;
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
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? exitCodes.fine : exitCodes.usage;
    if (error instanceof UsageError) {
      terminal.report(`dotdown: ${error.message}\n`);
      return exitCodes.usage;
    }
    if (error instanceof WordsError) {
      terminal.report(
        `content/words: ${error.message}; add it, or take the words file that comes with dotdown\n`,
      );
      return exitCodes.contentErrors;
    }
    if (error instanceof ContentError) {
      terminal.report(`${error.message}\n`);
      return exitCodes.contentErrors;
    }
    const detail = error instanceof Error ? (error.stack ?? error.message) : String(error);
    terminal.report(`dotdown: this is a fault of ours, not of your content\n${detail}\n`);
    return exitCodes.fault;
  }
  return code;
}
