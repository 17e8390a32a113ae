import { Command, CommanderError } from "commander";
import packageData from "../../package.json" with { type: "json" };
import { clearStages, stageTimes } from "../model/stage-times.ts";
import { type CliCommand, exitCodes, type Terminal } from "./command.ts";
import { clearLeftovers } from "./output/leftovers.ts";
import { rememberedFolders } from "./output/notes.ts";

/** Every command of the tool, loaded once it is asked for: loading all that they need takes longer than a build without a change. */
export const commands: Readonly<Record<string, () => Promise<CliCommand>>> = {
  init: async () => (await import("./init-command.ts")).initCommand,
  new: async () => (await import("./new-command.ts")).newCommand,
  build: async () => (await import("./build-command.ts")).buildCommand,
  check: async () => (await import("./check-command.ts")).checkCommand,
  preview: async () => (await import("./preview-command.ts")).previewCommand,
  sheet: async () => (await import("./sheet-command.ts")).sheetCommand,
  choose: async () => (await import("./choose-command.ts")).chooseCommand,
  schema: async () => (await import("./schema-command.ts")).schemaCommand,
};

/** The command that is asked for; all of them where none is, as a list of them is shown then. */
async function commandsFor([asked = ""]: readonly string[]): Promise<readonly CliCommand[]> {
  const ofName = Object.hasOwn(commands, asked) ? commands[asked] : undefined;
  return Promise.all((ofName ? [ofName] : Object.values(commands)).map((load) => load()));
}

function program(
  commands: readonly CliCommand[],
  terminal: Terminal,
  onRun: (code: number) => void,
): Command {
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

/**
 * Runs the command line.
 *
 * @param args what stands behind the command's own name
 * @returns the exit code
 */
export async function runCli(args: readonly string[], terminal: Terminal): Promise<number> {
  let code: number = exitCodes.fine;
  try {
    const asked = await commandsFor(args);
    await program(asked, terminal, (ran) => {
      code = ran;
    }).parseAsync(args, { from: "user" });
    return code;
  } catch (error) {
    // What commander has to say it has said.
    if (error instanceof CommanderError) {
      if (error.exitCode === 0) return exitCodes.fine;
      const { keyOfGuide } = await import("./key-of-guide.ts");
      const hint = keyOfGuide(error.message);
      if (hint !== undefined) terminal.report(`hint: ${hint}\n`);
      return exitCodes.usage;
    }
    const { endedBy } = await import("./ended-by.ts");
    const ended = endedBy(error);
    terminal.report(`${ended.text}\n`);
    return ended.code;
  }
}
