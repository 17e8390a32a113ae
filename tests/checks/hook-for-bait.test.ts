import { describe, expect, it } from "vitest";
import { hookForBait } from "../../src/checks/hook-for-bait.ts";
import { edited } from "../support/smallest-content.ts";
import { toldBy } from "./checked.ts";

/** The plain rig has a hook 16; its bait suits these. */
const told = (hooks: string) =>
  toldBy(hookForBait, edited("baits/grub.yaml", "basis:", `hooks: [${hooks}]\nbasis:`));

describe("the hook for a bait", () => {
  it.each(["16, 18", "14, 16", "16, 16"])("may be one of those that suit it: %s", (hooks) => {
    expect(told(hooks)).toEqual([]);
  });

  it.each([
    ["too large", "18, 20", "18 to 20"],
    ["too small", "8, 14", "8 to 14"],
  ])("is told where it is %s", (_, hooks, allowed) => {
    expect(told(hooks)).toEqual([
      { at: "content/rigs/plain.md:8:7", code: "hook-against-bait", hook: 16, bait: "grub", allowed },
    ]);
  });

  it("may be any for a bait that names none", () => {
    expect(toldBy(hookForBait, {})).toEqual([]);
  });
});
