import { createHash, type Hash } from "node:crypto";
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { homedir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { deserialize, serialize } from "node:v8";
import { type Keep, makeAnew } from "../model/kept.ts";

/** More than this is never kept; a solved rig takes some hundred kilobytes. */
const bytesMost = 128_000_000;
const hashBytes = 32;

const sha256 = (...parts: readonly (string | Uint8Array)[]): Buffer =>
  parts.reduce<Hash>((hash, part) => hash.update(part), createHash("sha256")).digest();

/**
 * Keeps results in the system's folder for what can be made again. Each file begins with a hash over the rest: one that
 * does not agree, however it came about, is as if it were not there. The name is a hash over the tool's own code, the
 * engine that runs it, and all that the result depends on. What cannot be read or written there changes nothing but the
 * time that it takes.
 */
export function keptOnDisk(folder = usualFolder(), tool = ownCode()): Keep {
  if (folder === undefined || tool === undefined) return makeAnew;
  return (kind, from, make) => {
    const file = join(folder, sha256(tool, process.version, kind, "\0", from).toString("hex"));
    const found = read(file);
    if (found) return found.value as ReturnType<typeof make>;
    const made = make();
    write(folder, file, made);
    return made;
  };
}

/** Run from its sources the tool changes from one run to the next; then nothing is kept. */
function ownCode(): Buffer | undefined {
  const here = dirname(fileURLToPath(import.meta.url));
  if (!here.endsWith("dist")) return undefined;
  const files = readdirSync(here).filter((name) => name.endsWith(".js"));
  return sha256(...files.sort().map((name) => readFileSync(join(here, name))));
}

/** Source: the XDG base directory specification; `DOTDOWN_CACHE` names another folder, or `off`. */
function usualFolder(): string | undefined {
  const { DOTDOWN_CACHE: asked, XDG_CACHE_HOME: cache, LOCALAPPDATA: local } = process.env;
  if (asked) return asked === "off" ? undefined : asked;
  const base = cache || (process.platform === "win32" && local) || join(homedir(), ".cache");
  return join(base, "dotdown");
}

function read(file: string): { readonly value: unknown } | undefined {
  try {
    if (!existsSync(file)) return undefined;
    const bytes = readFileSync(file);
    const body = bytes.subarray(hashBytes);
    if (!sha256(body).equals(bytes.subarray(0, hashBytes))) return undefined;
    const now = new Date();
    utimesSync(file, now, now);
    return { value: deserialize(body) };
  } catch {
    return undefined;
  }
}

/** Written beside its name and moved there whole, so that two builds at once never read half of it. */
function write(folder: string, file: string, value: unknown): void {
  const beside = `${file}.${process.pid}`;
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    const body = serialize(value);
    writeFileSync(beside, Buffer.concat([sha256(body), body]), { mode: 0o600 });
    renameSync(beside, file);
    forgetOldest(folder);
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
  const files = readdirSync(folder).map((name) => {
    const { size, mtimeMs } = statSync(join(folder, name));
    return { name, size, mtimeMs };
  });
  let bytes = files.reduce((sum, { size }) => sum + size, 0);
  for (const { name, size } of files.sort((a, b) => a.mtimeMs - b.mtimeMs)) {
    if (bytes <= bytesMost) return;
    rmSync(join(folder, name), { force: true });
    bytes -= size;
  }
}
