import { type Command, Option } from "commander";

/** Adds the options that say how messages are told. */
export function withReportOptions(command: Command): Command {
  return command
    .option("--strict", "count warnings as errors")
    .addOption(new Option("--quiet", "say nothing of warnings, nor that all is fine").conflicts("json"))
    .option("--verbose", "say at the end what each stage did, and in how long")
    .option("--json", "each message as a line of JSON");
}
