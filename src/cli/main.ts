import { runCli } from "./run.ts";

process.exitCode = await runCli(process.argv.slice(2), {
  result: (text) => process.stdout.write(text),
  report: (text) => process.stderr.write(text),
});
