import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

/** Every file below a folder by its path, with the SHA-256 of its bytes. */
export function hashesBelow(folder: string): Record<string, string> {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));
  const hash = (file: string) => createHash("sha256").update(readFileSync(file)).digest("hex");
  return Object.fromEntries(
    files.sort().map((file) => [file.slice(folder.length + 1).replaceAll("\\", "/"), hash(file)]),
  );
}
