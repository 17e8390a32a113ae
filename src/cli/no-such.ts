import { wrongName } from "../checks/wrong-name.ts";
import { UsageError } from "./command.ts";

/** A name that was asked for and is not there, with the one that was likely meant, and all that there are. */
export function noSuch(what: string, name: string, known: readonly string[]): UsageError {
  const { reason, hint } = wrongName(`there is no ${what} "${name}"`, name, known);
  return new UsageError(`${reason}; ${hint}`);
}
