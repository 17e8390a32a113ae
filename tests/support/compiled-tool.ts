import { join } from "node:path";
import { expect } from "vitest";
import { copySources } from "./clean-copy.ts";
import { run } from "./run-process.ts";

/** Compiles the tool from a copy of its sources in a new folder; gives the command's file. */
export async function compiledTool(folder: string): Promise<string> {
  const tool = copySources(folder);
  const compiled = await run(process.execPath, ["tools/compile.mjs"], tool);
  expect(compiled, compiled.stderr).toMatchObject({ code: 0 });
  return join(tool, "dist/dotdown.js");
}
