import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";

/**
 * Compiles the tool where it never was, as after an installation without scripts: commands that lay pages out take
 * style sheet, fonts and page scripts from there.
 */
export default function compileOnce() {
  if (existsSync("dist/site-assets")) return;
  const { status } = spawnSync(process.execPath, ["tools/compile.mjs"], { stdio: "inherit" });
  if (status !== 0) throw new Error("the tool does not compile");
}
