import { Command, CommanderError } from "commander";
import packageData from "../../package.json" with { type: "json" };
import { buildCommand } from "./build-command.ts";
import { checkCommand } from "./check-command.ts";
import { type CliCommand, exitCodes, type Terminal, UsageError } from "./command.ts";
import { sheetCommand } from "./sheet-command.ts";

const commands: readonly CliCommand[] = [buildCommand, checkCommand, sheetCommand];

const terminal: Terminal = {
  result: (text) => process.stdout.write(text),
  report: (text) => process.stderr.write(text),
};

function program(onRun: (code: number) => void): Command {
  const root = new Command("dotdown")
    .description(
      "Float-fishing lessons and rig files in; a guide, handouts and rig cards out, with the sums done.",
    )
    .version(packageData.version)
    .exitOverride();
  for (const { name, describe, run } of commands) {
    const command = describe(root.command(name)).exitOverride();
    command.action(async () => onRun(await run(command.args, command.opts(), terminal)));
  }
  return root;
}

async function main(): Promise<number> {
  let code: number = exitCodes.fine;
  try {
    await program((ran) => {
      code = ran;
    }).parseAsync();
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? exitCodes.fine : exitCodes.usage;
    if (error instanceof UsageError) {
      terminal.report(`dotdown: ${error.message}\n`);
      return exitCodes.usage;
    }
    const detail = error instanceof Error ? (error.stack ?? error.message) : String(error);
    terminal.report(`dotdown: this is a fault of ours, not of your content\n${detail}\n`);
    return exitCodes.fault;
  }
  return code;
}

process.exitCode = await main();
