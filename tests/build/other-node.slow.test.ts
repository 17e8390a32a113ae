import { existsSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { temporaryFolder } from "../support/cli.ts";
import { compiledTool } from "../support/compiled-tool.ts";
import { hashesBelow } from "../support/files-below.ts";
import { run } from "../support/run-process.ts";

/** Another version of Node from the package registry; undefined where it cannot be had here. */
async function otherNode(version: number): Promise<string | undefined> {
  const folder = temporaryFolder();
  const options = [
    "--prefix",
    folder,
    "--no-audit",
    "--no-fund",
    "--fetch-retries=1",
    "--fetch-timeout=60000",
  ];
  const { code } = await run("npm", ["install", ...options, `node@${version}`], folder);
  const node = join(folder, "node_modules/node/bin/node");
  if (code !== 0 || !existsSync(node)) return undefined;
  // It may be made for another machine than this.
  const asked = await run(node, ["--version"], folder).catch(() => undefined);
  return asked?.code === 0 ? node : undefined;
}

it("gives the same bytes on Node 20, 22 and 24: the figures of the shipped guide, and the whole of a new one", async ({
  skip,
}) => {
  const others = await Promise.all([20, 22, 24].map(otherNode));
  const nodes = others.filter((node) => node !== undefined);
  if (nodes.length < 2) skip("no other version of Node can be had here");
  const folder = temporaryFolder();
  const tool = await compiledTool(join(folder, "tool"));
  const ours = join(folder, "ours");
  expect(await run(process.execPath, [tool, "init", ours], folder)).toMatchObject({ code: 0 });
  const built: Record<string, string>[] = [];
  for (const [at, node] of nodes.entries()) {
    const out = (what: string) => join(folder, `${what}-${at}`);
    const env = { ...process.env, DOTDOWN_CACHE: "off" };
    const data = await run(node, [tool, "build", "--for", "data", "--out", out("data")], folder, { env });
    expect(data, data.stderr).toMatchObject({ code: 0 });
    const whole = await run(node, [tool, "build", "--out", out("whole")], ours, { env });
    expect(whole, whole.stderr).toMatchObject({ code: 0 });
    built.push({ ...hashesBelow(out("data")), ...hashesBelow(out("whole")) });
  }
  for (const one of built.slice(1)) expect(one).toEqual(built[0]);
}, 1_200_000);
