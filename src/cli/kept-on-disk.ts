import { createHash, type Hash } from "node:crypto";
import {
  closeSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  readSync,
  renameSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { homedir } from "node:os";
import { join } from "node:path";
import { deserialize, serialize } from "node:v8";
import { isMainThread, threadId } from "node:worker_threads";
import { noStore, type OpenStore, type Pieces } from "../model/kept.ts";
import { ownCode } from "./own-code.ts";

/**
 * When a command begins to keep something, no more than this is left, and of what was used within a day as much as a guide of
 * a thousand rigs takes: a rig with all that is printed of it takes two megabytes.
 */
const bytesMost = 512_000_000;
const bytesOfToday = 4_000_000_000;
const dayMs = 86_400_000;

const sha256 = (...parts: readonly (string | Uint8Array)[]): Buffer =>
  parts.reduce<Hash>((hash, part) => hash.update(part), createHash("sha256")).digest();

/** So much is read at once of what is opened: pieces are asked for much in the order in which they lie there. */
const aheadBytes = 32_768;

/** Length of the hash that stands before what is kept. */
export const sealBytes = 32;

/** Bytes with a hash before them, over their name and themselves. */
export const sealed = (name: string, bytes: Uint8Array): readonly Uint8Array[] => [
  sha256(name, bytes),
  bytes,
];

/** The bytes behind their hash; undefined where it does not agree, however that came about. */
export function unsealed(name: string, bytes: Uint8Array): Uint8Array | undefined {
  const body = bytes.subarray(sealBytes);
  return sha256(name, body).equals(bytes.subarray(0, sealBytes)) ? body : undefined;
}

/**
 * Keeps results in the system's folder for what can be made again. Each file begins with a hash over its name and
 * the rest: one that does not agree, however it came about, is as if it were not there; of a piece alone nobody knows that. The name is a hash over the tool's own code, and all
 * that the result depends on. What cannot be read or written there changes nothing but the time that it takes.
 */
export function storeOnDisk(folder = usualFolder(), tool = toolIn(folder)): OpenStore {
  if (folder === undefined || tool === undefined) return noStore;
  const nameOf = (kind: string, from: string) => sha256(tool, kind, "\0", from).toString("hex");
  // A thread beside a build leaves that to the build.
  let isRoomMade = !isMainThread;
  return {
    find: (kind, from) => read(folder, nameOf(kind, from)),
    put: (kind, from, value, bytes) => {
      if (!isRoomMade) forgetOldest(folder);
      isRoomMade = true;
      write(folder, nameOf(kind, from), () => bytes ?? serialize(value));
    },
    open: (kind, from) => open(join(folder, nameOf(kind, from))),
  };
}

/** A hash over the tool; it is read once as long as nobody writes to it. */
function toolIn(folder: string | undefined): Buffer | undefined {
  const code = folder === undefined ? undefined : ownCode();
  if (!code?.sight) return code?.content();
  const known = storeOnDisk(folder, code.sight);
  const before = known.find("tool", "")?.value;
  if (before instanceof Uint8Array) return Buffer.from(before);
  const tool = code.content();
  known.put("tool", "", tool);
  return tool;
}

/** Source: the XDG base directory specification; `DOTDOWN_CACHE` names another folder, or `off`. */
function usualFolder(): string | undefined {
  const { DOTDOWN_CACHE: asked, XDG_CACHE_HOME: cache, LOCALAPPDATA: local } = process.env;
  if (asked) return asked === "off" ? undefined : asked;
  const base = cache || (process.platform === "win32" && local) || join(homedir(), ".cache");
  return join(base, "dotdown");
}

function read(folder: string, name: string): { readonly value: unknown } | undefined {
  const file = join(folder, name);
  try {
    if (!isOurs(file)) return undefined;
    const body = unsealed(name, readFileSync(file));
    if (!body) return undefined;
    markUsed(file);
    return { value: deserialize(body) };
  } catch {
    return undefined;
  }
}

function open(file: string): Pieces | undefined {
  try {
    if (!isOurs(file)) return undefined;
    const opened = openSync(file, "r");
    markUsed(file);
    const read = (bytes: Buffer, begin: number) =>
      bytes.subarray(0, readSync(opened, bytes, 0, bytes.length, sealBytes + begin));
    let ahead: { readonly begin: number; readonly bytes: Buffer } = { begin: 0, bytes: Buffer.alloc(0) };
    return {
      piece(begin, length) {
        const at = begin - ahead.begin;
        const isAhead = at >= 0 && at + length <= ahead.bytes.length;
        if (!isAhead) ahead = { begin, bytes: read(Buffer.allocUnsafe(Math.max(length, aheadBytes)), begin) };
        const from = isAhead ? at : 0;
        // What is held of a piece is not to hold what lies beside it.
        const piece = Buffer.from(ahead.bytes.subarray(from, from + length));
        return piece.length === length ? piece : undefined;
      },
      close: () => closeSync(opened),
    };
  } catch {
    return undefined;
  }
}

function markUsed(file: string): void {
  const now = new Date();
  utimesSync(file, now, now);
}

/** There, and nobody else's: what is kept may be code. Systems without users of this kind tell no owner. */
function isOurs(file: string): boolean {
  const found = statSync(file, { throwIfNoEntry: false });
  return found !== undefined && found.uid === (process.getuid?.() ?? found.uid);
}

/** Written beside its name and moved there whole, so that two builds, or threads, at once never read half of it. */
function write(folder: string, name: string, content: () => Uint8Array): void {
  const file = join(folder, name);
  const beside = `${file}.${process.pid}.${threadId}`;
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    writeFileSync(beside, Buffer.concat(sealed(name, content())), { mode: 0o600 });
    renameSync(beside, file);
  } catch {
    forget(beside);
  }
}

function forget(file: string): void {
  try {
    rmSync(file, { force: true });
  } catch {
    // Where there is no folder there is no file either.
  }
}

/** What was used longest ago goes first. */
function forgetOldest(folder: string): void {
  const files = filesIn(folder);
  const sinceMs = Date.now() - dayMs;
  let bytes = files.reduce((sum, { size }) => sum + size, 0);
  for (const { name, size, mtimeMs } of files.sort((a, b) => a.mtimeMs - b.mtimeMs)) {
    if (bytes <= (mtimeMs < sinceMs ? bytesMost : bytesOfToday)) return;
    forget(join(folder, name));
    bytes -= size;
  }
}

/** Another build may take one away meanwhile. */
function filesIn(folder: string) {
  try {
    return readdirSync(folder).flatMap((name) => {
      const found = statSync(join(folder, name), { throwIfNoEntry: false });
      return found ? [{ name, size: found.size, mtimeMs: found.mtimeMs }] : [];
    });
  } catch {
    return [];
  }
}
