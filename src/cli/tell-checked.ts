import { counted } from "../checks/counted.ts";
import type { Checked } from "./check-anew.ts";
import { exitCodes, type Terminal } from "./command.ts";
import { tell } from "./tell.ts";

/**
 * Tells what a check found, and that all is fine where it is.
 *
 * @returns the exit code
 */
export function tellChecked(
  { messages, counts }: Checked,
  options: Readonly<Record<string, unknown>>,
  terminal: Terminal,
): number {
  const stops = tell(messages, options, terminal);
  if (stops || !counts) return exitCodes.contentErrors;
  if (!options.quiet && !options.json) {
    const but = messages.length > 0 ? ` but for ${counted(messages.length, "warning")}` : "";
    terminal.result(`${counted(counts.rigs, "rig")}, ${counted(counts.lessons, "lesson")}: fine${but}\n`);
  }
  return exitCodes.fine;
}
