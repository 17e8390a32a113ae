import { describe, expect, it } from "vitest";
import { reading, systemTrouble, writeTrouble } from "../../src/cli/trouble.ts";

const answer = (code: string) =>
  Object.assign(new Error(code), { code, syscall: "open", path: "place/file" });
const written = (code: string) =>
  systemTrouble(writeTrouble(answer(code), "out", "what is there is as it was"))!;

const read = (fault: unknown) => reading("place", () => Promise.reject(fault)).catch((told: unknown) => told);

describe("what the system answers", () => {
  // Names of errors: POSIX.1-2017, <errno.h>; exit codes: sysexits.h of 4.3BSD, EX_CANTCREAT and EX_IOERR.
  it.each([
    ["EACCES", 73],
    ["EPERM", 73],
    ["EROFS", 73],
    ["ENAMETOOLONG", 73],
    ["ENOTDIR", 73],
    ["ENOENT", 73],
    ["EEXIST", 73],
    ["ENOTEMPTY", 73],
    ["EBUSY", 73],
    ["EXDEV", 73],
    ["ELOOP", 73],
    ["EMFILE", 73],
    ["EINVAL", 73],
    ["ENOSPC", 74],
    ["EDQUOT", 74],
    ["EFBIG", 74],
    ["EIO", 74],
    ["ENXIO", 74],
    ["ESTALE", 74],
    ["ENOSUCH", 74],
  ])("to writing, %s, is one sentence with exit code %i", (code, exitCode) => {
    const trouble = written(code);
    expect(trouble.exitCode).toBe(exitCode);
    expect(trouble.message).toMatch(
      /^out cannot be written: [a-z][^.\n]+; what is there is as it was\. To go on, [a-z][^.\n]+$/,
    );
  });

  it.each(["EACCES", "EISDIR", "ELOOP", "ERR_STRING_TOO_LONG", "ERR_FS_FILE_TOO_LARGE", "EIO", "ENOSUCH"])(
    "to reading, %s, is one sentence with exit code 66 and the path",
    async (code) => {
      const trouble = systemTrouble(await read(answer(code)))!;
      expect(trouble.exitCode).toBe(66);
      expect(trouble.message).toMatch(
        /^place\/file cannot be read: [a-z][^.\n]+; nothing was written\. To go on, [a-z][^.\n]+$/,
      );
    },
  );

  it("is told apart from a fault of the tool", async () => {
    for (const fault of [new TypeError("x is not a function"), "thrown", undefined]) {
      expect(writeTrouble(fault, "out", "")).toBe(fault);
      expect(await read(fault)).toBe(fault);
      expect(systemTrouble(fault)).toBeUndefined();
    }
  });
});
