import { createHash, randomBytes } from "node:crypto";
import { readFileSync, readlinkSync, statSync } from "node:fs";
import { hostname } from "node:os";
import { last } from "../../core/lists.ts";

/** Whose a work folder is. It stands in the folder's name, so that no moment shows a folder without it. */
export interface Owner {
  /** Stands for the output's name. */
  readonly output: string;
  /** Stands for the computer, and on it for the room that process numbers are counted in. */
  readonly host: string;
  readonly pid: number;
  /** When the process began, as its system counts; 0 where that cannot be asked. */
  readonly begun: number;
}

/** An owner of whom only the folder's age tells shows a sign at least this often [ms]. */
export const signEveryMs = 10_000;
/** Without a sign for so long it is taken for dead [ms]. */
const deadAfterMs = 10 * 60_000;

const short = (text: string) => createHash("sha256").update(text).digest("hex").slice(0, 8);

/** Stands for an output in the names of its work folders, the same on disks that do not tell large letters from small. */
export const outputKey = (name: string) => short(name.normalize("NFC").toLowerCase());

const thisHost = short(`${hostname()} ${asked(() => readlinkSync("/proc/self/ns/pid"), "")}`);

/** When a process began, in ticks since its system did: field 22 of proc(5), behind a name that may hold anything. */
const begun = (pid: number) =>
  asked(() => Number(last(readFileSync(`/proc/${pid}/stat`, "latin1").split(") ")).split(" ")[19]), 0);

/** What the system answers, or something else where it has no such answer. */
function asked<T>(question: () => T, otherwise: T): T {
  try {
    return question();
  } catch {
    return otherwise;
  }
}

/** A name for a work folder of this process; no other was or will be called so. */
export function workName(output: string): string {
  const { pid } = process;
  return `.dotdown-${output}-${thisHost}-${pid}-${begun(pid)}-${randomBytes(4).toString("hex")}`;
}

/** Whose a folder of this name is; undefined where it is no work folder. */
export function ownerOf(name: string): Owner | undefined {
  const parts = /^\.dotdown-([\da-f]{8})-([\da-f]{8})-(\d+)-(\d+)-[\da-f]{8}$/.exec(name);
  if (!parts) return undefined;
  return { output: parts[1]!, host: parts[2]!, pid: Number(parts[3]), begun: Number(parts[4]) };
}

export const isHere = (owner: Owner) => owner.host === thisHost;

/** Whether the owner of a work folder is at work, as far as can be told: a folder of unknown owner counts by its age. */
export function isAlive(owner: Owner, folder: string): boolean {
  if (isHere(owner)) {
    if (!isRunning(owner.pid)) return false;
    if (owner.begun !== 0) return begun(owner.pid) === owner.begun;
  }
  const found = statSync(folder, { throwIfNoEntry: false });
  return found !== undefined && Date.now() - found.mtimeMs < deadAfterMs;
}

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    // Without the right to signal it, it is there.
    return (error as NodeJS.ErrnoException).code === "EPERM";
  }
}
