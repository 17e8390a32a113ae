import {
  chmodSync,
  chownSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  rmSync,
  statfsSync,
  truncateSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it, onTestFinished } from "vitest";
import { temporaryFolder, writeContent } from "../support/cli.ts";
import { compiledTool } from "../support/compiled-tool.ts";
import { hashesBelow } from "../support/files-below.ts";
import { run } from "../support/run-process.ts";
import { contentWith, edited } from "../support/smallest-content.ts";

/** What only a real system does: full and read-only disks, rights, limits. Some of it only an administrator may set up. */

let command: string;
let tools: string;
beforeAll(async () => {
  tools = mkdtempSync(join(tmpdir(), "dotdown-"));
  // Tools and tests may run as two users.
  chmodSync(tools, 0o755);
  command = await compiledTool(join(tools, "tool"));
});
afterAll(() => rmSync(tools, { recursive: true }));

const isRoot = process.getuid?.() === 0;
/** A user who owns nothing; only an administrator may run a process as another one. */
const nobody = 65_534;
const asNobody = isRoot ? { uid: nobody, gid: nobody } : {};

const dotdown = (...args: string[]) => run(process.execPath, [command, ...args], tools);
const build = (out: string, from = content()) => dotdown("build", "--content", from, "--out", out);

/** A folder that other users may look into. */
function openFolder(): string {
  const folder = temporaryFolder();
  chmodSync(folder, 0o755);
  return folder;
}
const content = (changes: Readonly<Record<string, string>> = {}) =>
  writeContent(join(openFolder(), "content"), contentWith(changes));

/** One sentence on stderr with the exit code, and nothing on stdout. */
async function expectOneSentence(
  ended: ReturnType<typeof run>,
  code: number,
  sentence: string,
): Promise<void> {
  const { stderr, ...rest } = await ended;
  expect({ ...rest, stderr }).toMatchObject({ code, stdout: "" });
  expect(stderr).toMatch(/^dotdown: [^\n]+\. To go on, [^\n]+\n$/);
  expect(stderr).toContain(sentence);
}

/** A build that fails and leaves all as it was in the place of its output. */
async function expectNothingChanged(
  out: string,
  place: string,
  code: number,
  sentence: string,
): Promise<void> {
  const before = hashesBelow(place);
  await expectOneSentence(build(out), code, sentence);
  expect(hashesBelow(place)).toEqual(before);
}

describe("a disk", () => {
  const cannot = "only an administrator may mount a disk, and not on every machine";

  /** Mounts a disk in memory until the test is over; undefined where that is not allowed. */
  async function mounted(at = join(temporaryFolder(), "disk")): Promise<string | undefined> {
    mkdirSync(at, { recursive: true });
    const args = ["-t", "tmpfs", "-o", "size=64m,nr_inodes=2k", "tmpfs", at];
    const done = isRoot ? await run("mount", args, tools).catch(() => undefined) : undefined;
    if (done?.code !== 0) return undefined;
    onTestFinished(async () => {
      await run("umount", [at], tools);
    });
    return at;
  }

  /** A disk with an output of another guide on it: files that are as they were would need no room. */
  async function withOutput(): Promise<{ disk: string; out: string } | undefined> {
    const disk = await mounted();
    if (!disk) return undefined;
    const out = join(disk, "place/out");
    const other = content(edited("guide.yaml", "Test guide", "Another guide"));
    expect(await build(out, other)).toMatchObject({ code: 0 });
    return { disk, out };
  }

  it("without room for more bytes keeps the old output, and takes the new one when room is made", async ({
    skip,
  }) => {
    const found = await withOutput();
    if (!found) return skip(cannot);
    const { bavail, bsize } = statfsSync(found.disk);
    writeFileSync(join(found.disk, "filler"), Buffer.alloc(bavail * bsize - 300_000));
    await expectNothingChanged(
      found.out,
      found.disk,
      74,
      "there is no room left on the disk; what is there is as it was.",
    );
    rmSync(join(found.disk, "filler"));
    expect(await build(found.out)).toMatchObject({ code: 0, stderr: "" });
  });

  it("without room for more files keeps the old output", async ({ skip }) => {
    const found = await withOutput();
    if (!found) return skip(cannot);
    const { ffree } = statfsSync(found.disk);
    for (let file = 0; file < ffree - 20; file++) writeFileSync(join(found.disk, `filler-${file}`), "");
    await expectNothingChanged(
      found.out,
      found.disk,
      74,
      "there is no room left on the disk; what is there is as it was.",
    );
  });

  it("that is full to the last byte leaves nothing behind that would fill it more", async ({ skip }) => {
    const disk = await mounted();
    if (!disk) return skip(cannot);
    const { bavail, bsize } = statfsSync(disk);
    writeFileSync(join(disk, "filler"), Buffer.alloc(bavail * bsize));
    await expectNothingChanged(
      join(disk, "a/b/out"),
      disk,
      74,
      "there is no room left on the disk; nothing was written.",
    );
  });

  it("that can only be read keeps the old output", async ({ skip }) => {
    const found = await withOutput();
    if (!found) return skip(cannot);
    await run("mount", ["-o", "remount,ro", found.disk], tools);
    await expectNothingChanged(
      found.out,
      found.disk,
      73,
      "the disk can only be read; what is there is as it was.",
    );
    await expectOneSentence(
      build(join(found.disk, "new/out")),
      73,
      "the disk can only be read; nothing was written.",
    );
  });

  it("that is mounted at the output folder itself is left alone", async ({ skip }) => {
    const disk = await mounted();
    if (!disk) return skip(cannot);
    await expectNothingChanged(disk, disk, 73, "something else is using it, or a disk is mounted there;");
  });

  it("that can only be read may hold the content", async ({ skip }) => {
    const disk = await mounted();
    if (!disk) return skip(cannot);
    writeContent(join(disk, "content"), contentWith());
    await run("mount", ["-o", "remount,ro", disk], tools);
    const out = join(temporaryFolder(), "out");
    expect(await build(out, join(disk, "content"))).toMatchObject({ code: 0, stderr: "" });
  });
});

describe.skipIf(process.platform === "win32")("rights", () => {
  const asUser = (...args: string[]) =>
    run(process.execPath, [command, ...args], tools, { ...asNobody, env: { HOME: tools } });

  it.each([
    ["an output in a folder without the right to write there", (place: string) => chmodSync(place, 0o555)],
    ["an output in a folder without any right", (place: string) => chmodSync(place, 0o000)],
  ])("%s cannot be written", async (_, take) => {
    const place = openFolder();
    if (isRoot) chownSync(place, nobody, nobody);
    take(place);
    const out = join(place, "out");
    await expectOneSentence(
      asUser("build", "--content", content(), "--out", out),
      73,
      "the system does not allow it; nothing was written.",
    );
    chmodSync(place, 0o755);
    expect(readdirSync(place)).toEqual([]);
  });

  it.each([
    ["a file", "rigs/plain.md"],
    ["a folder", "rigs"],
  ])("content of which %s may not be read is named", async (_, path) => {
    const folder = content();
    chmodSync(join(folder, path), 0o000);
    if (!isRoot) onTestFinished(() => chmodSync(join(folder, path), 0o755));
    await expectOneSentence(
      asUser("check", "--content", folder),
      66,
      `${join(folder, path)} cannot be read: the system does not allow it;`,
    );
  });
});

describe("limits", () => {
  it.skipIf(process.platform === "win32")("on the size of files keep the old output", async () => {
    const folder = temporaryFolder();
    const out = join(folder, "out");
    const from = content();
    expect(await build(out, from)).toMatchObject({ code: 0 });
    const before = hashesBelow(folder);
    const script = `ulimit -f 8; DOTDOWN_CACHE=off exec "${process.execPath}" "${command}" build --content "${from}" --out "${out}"`;
    await expectOneSentence(
      run("bash", ["-c", script], tools),
      74,
      "the file is too large; what is there is as it was.",
    );
    expect(hashesBelow(folder)).toEqual(before);
  });

  it("on the size of a text are met before it is read", async () => {
    for (const bytes of [600e6, 3e9]) {
      const folder = content();
      writeFileSync(join(folder, "rigs/large.md"), "");
      truncateSync(join(folder, "rigs/large.md"), bytes);
      const { code, stdout, stderr } = await dotdown("check", "--content", folder);
      expect(code, stderr).toBeGreaterThan(0);
      expect(code, stderr).toBeLessThan(70);
      expect(stdout).toBe("");
      expect(stderr).toMatch(/ bytes .*the most is/);
    }
  });
});

describe.skipIf(process.platform === "win32")("a shell", () => {
  const rig = ["sheet", "plain", "--json", "--content"];
  const shell = (script: string) =>
    run("bash", ["-c", script], tools, { env: { ...process.env, TOOL: command } });
  const sheet = () => `"${process.execPath}" "$TOOL" ${rig.join(" ")} "${content()}"`;

  it("that stops listening hears nothing more, and gets the command's own exit code", async () => {
    expect(await shell(`${sheet()} | true; exit "\${PIPESTATUS[0]}"`)).toMatchObject({ code: 0, stderr: "" });
    expect(await shell(`${sheet()} 2>&1 >/dev/null | true; exit "\${PIPESTATUS[0]}"`)).toMatchObject({
      code: 0,
    });
  });

  it.skipIf(!existsSync("/dev/full"))("that has no room for the results is told", async () => {
    const { code, stderr } = await shell(`${sheet()} > /dev/full`);
    expect({ code, stderr }).toMatchObject({
      code: 74,
      stderr: expect.stringMatching(/^dotdown: the results cannot be written: .*\n$/),
    });
  });

  it.each([rig.slice(0, 2), ["check"], ["build"]])(
    "whose working folder is gone is told so (%s)",
    async (...args) => {
      const gone = join(temporaryFolder(), "gone");
      mkdirSync(gone);
      const script = `cd "${gone}"; rmdir "${gone}"; exec "${process.execPath}" "$TOOL" ${args.join(" ")} --content "${content()}"`;
      await expectOneSentence(shell(script), 66, "the working folder is gone; nothing was written.");
    },
  );
});
