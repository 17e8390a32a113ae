import packageData from "../../package.json" with { type: "json" };
import { ContentError } from "../build/content-error.ts";
import { formatReport } from "../checks/reporter.ts";
import { ChangingContentError } from "../content/world.ts";
import type { Message } from "../model/message.ts";
import { WordsError } from "../words/words.ts";
import { exitCodes, UsageError } from "./command.ts";
import { linesOnDisk, whyStopped } from "./tell.ts";
import { systemTrouble } from "./trouble.ts";

/** What is said of an error, and the exit code. */
export function endedBy(error: unknown): { code: number; text: string } {
  if (error instanceof UsageError) return { code: exitCodes.usage, text: `dotdown: ${error.message}` };
  if (error instanceof ContentError)
    return { code: exitCodes.contentErrors, text: reportOf(error.messages).trimEnd() };
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

/** Warnings alone are thrown only where they count as errors. */
const reportOf = (messages: readonly Message[]) =>
  formatReport(messages, linesOnDisk()) + whyStopped(messages);

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
