import {
  linkSync,
  lstatSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { beforeEach, describe, expect, it } from "vitest";
import { type Sights, seenFiles } from "../../../src/cli/output/seen.ts";
import { fingerprintOf } from "../../../src/model/fingerprint.ts";
import { temporaryFolder } from "../../support/cli.ts";

let file: string;
beforeEach(() => {
  file = join(temporaryFolder(), "a.txt");
  writeFileSync(file, "one");
});

/** After all that tests do; the disk's own clock may stand a little behind this one's. */
const later = () => BigInt(Date.now() + 1e6) * 1_000_000n;
const mark = { bytes: -1, sha256: "not read" };

/** What is known of a file that was read, with a mark in the place of what it held: who gives that has not read it again. */
function marked(nowNs = later): Sights {
  const seen = seenFiles(nowNs);
  expect(seen.fingerprint(file)).toEqual(fingerprintOf("one"));
  const sights = seen.news([file]) ?? new Map();
  return new Map([...sights].map(([place, sight]) => [place, { ...sight, fingerprint: mark }]));
}

describe("a file that was read", () => {
  it("is not read again as long as nobody writes to it, whatever it is called", () => {
    const seen = seenFiles(later, marked());
    expect(seen.fingerprint(file)).toBe(mark);
    const folder = temporaryFolder();
    const { ctimeNs } = lstatSync(file, { bigint: true });
    renameSync(join(file, ".."), join(folder, "moved"));
    const moved = join(folder, "moved/a.txt");
    expect(lstatSync(moved, { bigint: true }).ctimeNs).toBe(ctimeNs);
    expect(seen.fingerprint(moved)).toBe(mark);
    expect(seen.news([moved])).toBeUndefined();
  });

  it("is read again where it was written to, though its size and its date are as they were", () => {
    const day = new Date(2020, 0, 1);
    utimesSync(file, day, day);
    const sights = marked();
    const { ctimeNs } = lstatSync(file, { bigint: true });
    // The system's times go in steps: it may have written both in one of them.
    do {
      writeFileSync(file, "two");
      utimesSync(file, day, day);
    } while (lstatSync(file, { bigint: true }).ctimeNs === ctimeNs);
    expect(statSync(file).mtime).toEqual(day);
    expect(seenFiles(later, sights).fingerprint(file)).toEqual(fingerprintOf("two"));
  });

  it("is read again where another stands in its place", () => {
    const sights = marked();
    const other = `${file}.other`;
    writeFileSync(other, readFileSync(file));
    renameSync(other, file);
    expect(seenFiles(later, sights).fingerprint(file)).toEqual(fingerprintOf("one"));
  });

  it("is read each time where it was changed so late that its times may hide a change", () => {
    const { ctimeNs } = lstatSync(file, { bigint: true });
    expect(marked(() => ctimeNs)).toEqual(new Map());
    expect(marked(() => ctimeNs + 1n).size).toBe(1);
  });

  it("is known by a second name, and after that is gone, where that is told", () => {
    const second = `${file}.second`;
    const seen = seenFiles(later, marked());
    linkSync(file, second);
    seen.named(second);
    expect(seen.fingerprint(file)).toBe(mark);
    rmSync(second);
    seen.named(file);
    expect(seen.fingerprint(file)).toBe(mark);
    expect(seen.news([file])?.size).toBe(1);
  });

  it("is known to a later build by a name that is told with what is handed on", () => {
    const seen = seenFiles(later, marked());
    linkSync(file, `${file}.second`);
    const sights = seen.news([file], true);
    expect(seenFiles(later, sights).fingerprint(file)).toBe(mark);
  });

  it("may be gone by the time that a name is told", () => {
    const seen = seenFiles(later, marked());
    rmSync(file);
    expect(() => seen.named(file)).not.toThrow();
    expect(() => seen.news([file], true)).not.toThrow();
  });

  it("is not known by a name that it got after it was written to", () => {
    const sights = marked();
    const seen = seenFiles(later, sights);
    writeFileSync(file, "three");
    linkSync(file, `${file}.second`);
    seen.named(file);
    expect(seen.fingerprint(file)).toEqual(fingerprintOf("three"));
  });
});
