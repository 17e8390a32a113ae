import { cpSync, symlinkSync } from "node:fs";
import { join } from "node:path";

const root = join(import.meta.dirname, "../..");

/** What a package is made from. */
const entries = [
  "package.json",
  "README.md",
  "LICENSE",
  "tsconfig.json",
  "src",
  "templates",
  "tools",
  "content",
  "content-de",
  "docs",
];

/**
 * Copies the sources into a folder, without anything that was built, so that a test can compile there while others
 * run beside it. The installed packages are shared.
 */
export function copySources(folder: string): string {
  for (const entry of entries) cpSync(join(root, entry), join(folder, entry), { recursive: true });
  symlinkSync(join(root, "node_modules"), join(folder, "node_modules"), "junction");
  return folder;
}
