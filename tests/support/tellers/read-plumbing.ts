import { plain, readCm, readLineCm, readLock } from "./read-words.ts";
import type { Statement } from "./statement.ts";

interface At {
  readonly teller: string;
  readonly depthCm?: number;
}

/** `Use the 7 g zinc plummet, …`, `No plummet in the box …. It needs 1.2 g or more.` */
export function plummetOf(told: string, at: At): Statement {
  const [, mass, metal] = /^Use the ([\d.]+) g (\w+) plummet/.exec(told) ?? [];
  const [, needed] = /It needs ([\d.]+) g or more/.exec(told) ?? [];
  if (mass === undefined && needed === undefined) throw new Error(`"${told}" names no plummet`);
  return { ...at, of: "plummet", g: Number(mass ?? needed), ...(metal !== undefined && { metal }) };
}

/** `… close to the float's eye …: No 8 above, AAA below.`, or nothing where it is not told of. */
export function keptOf(told: string, at: At): Statement[] {
  if (told.includes("All the shot are off for it.")) return [{ ...at, of: "kept", above: {}, below: {} }];
  const [, kept] = /close to the float's eye(?:, just to hold it)?: (.*?)\.(?: |$)/.exec(told) ?? [];
  return kept === undefined ? [] : [{ ...at, of: "kept", ...readLock(kept) }];
}

const settings = { deeper: "set too shallow", shallower: "set too deep", stays: "set right" };

/** A try with the plummet: `1.5 m`, `goes under: set too shallow`, `50 cm deeper`. What it says of the setting must lead to the move. */
export function tryOf(index: number, set: string, says: string, next: string, at: At): Statement {
  const moveCm = next === "that is the depth" ? 0 : readLineCm(next) * (next.endsWith(" deeper") ? 1 : -1);
  const [sign = "", setting] = plain(says).split(": ");
  const meant = settings[moveCm === 0 ? "stays" : moveCm > 0 ? "deeper" : "shallower"];
  if (setting !== meant) throw new Error(`"${says}" does not lead to "${next}"`);
  return { ...at, of: "plumbing try", at: index, cm: readCm(set), sign, moveCm };
}
