import { afterEach, describe, expect, it, vi } from "vitest";
import { buildSettings } from "../../src/cli/build-settings.ts";
import { UsageError } from "../../src/cli/command.ts";
import { solveWith } from "../support/smallest-content.ts";

const { value: solved } = await solveWith();
const date = () => buildSettings(solved!).date;

afterEach(() => vi.unstubAllEnvs());

describe("the day that files are dated", () => {
  it.each([undefined, ""])("is the guide's edition where SOURCE_DATE_EPOCH is %o", (epoch) => {
    vi.stubEnv("SOURCE_DATE_EPOCH", epoch);
    expect(date()).toBe("2026-11-20");
  });

  // Seconds since 1970: reproducible-builds.org, SOURCE_DATE_EPOCH specification 1.1. Day from `date -u -d @1000000000`.
  it.each([
    ["0", "1970-01-01"],
    ["86399", "1970-01-01"],
    ["86400", "1970-01-02"],
    ["1000000000", "2001-09-09"],
  ])("is that of SOURCE_DATE_EPOCH, %s", (epoch, day) => {
    vi.stubEnv("SOURCE_DATE_EPOCH", epoch);
    expect(date()).toBe(day);
  });

  it.each(["tomorrow", "-1", "1.5", "1e9", " 1", "99999999999999999999"])(
    "cannot be that of SOURCE_DATE_EPOCH, %o",
    (epoch) => {
      vi.stubEnv("SOURCE_DATE_EPOCH", epoch);
      expect(date).toThrow(UsageError);
      expect(date).toThrow(`SOURCE_DATE_EPOCH is ${epoch}; it counts whole seconds since 1970`);
    },
  );
});
