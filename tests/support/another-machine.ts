import { join } from "node:path";
import { expect, onTestFinished, vi } from "vitest";
import { cli, temporaryFolder, writeContent } from "./cli.ts";
import { hashesBelow } from "./files-below.ts";
import { contentWith } from "./smallest-content.ts";

/** What differs from one machine to the next and may not show in what a build writes. */
interface Machine {
  readonly zone: string;
  readonly language: string;
  /** Its day and time. */
  readonly clock: string;
  /** Rights that new files do not get. */
  readonly umask: number;
  /** Folder of the content, below one of the test's. */
  readonly folder: string;
  /** Whether the files of the content came onto the disk in the other order. */
  readonly backwards: boolean;
}

/** A build of the smallest content on such a machine: its files by their paths, with their hashes. */
export async function buildOn(machine: Machine): Promise<Record<string, string>> {
  const { zone, language, clock, umask, folder, backwards } = machine;
  const before = { TZ: process.env.TZ, LANG: process.env.LANG, LC_ALL: process.env.LC_ALL };
  const umaskBefore = process.umask(umask);
  Object.assign(process.env, { TZ: zone, LANG: language, LC_ALL: language });
  vi.useFakeTimers({ toFake: ["Date"], now: new Date(clock) });
  const restore = () => {
    vi.useRealTimers();
    process.umask(umaskBefore);
    for (const [name, value] of Object.entries(before)) {
      if (value === undefined) delete process.env[name];
      else process.env[name] = value;
    }
  };
  onTestFinished(restore);
  const files = Object.entries(contentWith());
  const place = temporaryFolder();
  const content = writeContent(
    join(place, folder),
    Object.fromEntries(backwards ? files.toReversed() : files),
  );
  const out = join(place, "out");
  const { code, report } = await cli("build", "--content", content, "--out", out);
  restore();
  expect({ code, report }).toEqual({ code: 0, report: "" });
  return hashesBelow(out);
}
