import { describe, expect, it } from "vitest";
import { contentWith, edited, solveWith } from "../support/smallest-content.ts";

const rig = (from: string, to: string) => edited("rigs/plain.md", from, to);

async function found(changes: Record<string, string>) {
  const files = contentWith(changes);
  const { messages } = await solveWith(changes);
  return messages.map(({ code, severity, place: { file, line, column } }) => {
    const text = files[file.replace("content/", "")]!.split("\n")[line! - 1]!;
    // What stands before the place on its line, and on the line before where the place is a block's.
    const before = text.slice(0, column! - 1).trim();
    const key = before || files[file.replace("content/", "")]!.split("\n")[line! - 2]!;
    return `${file} ${key} ${severity} ${code}`;
  });
}

describe("what the sums find stands at the key of the rig that it is about", () => {
  it.each([
    ["depths: warning sliding-float-needed", rig("depths: [1 m, 1.5 m]", "depths: [4 m]")],
    ["overdepth: error setting-against-overdepth", rig("level: first", "level: first\noverdepth: -5 cm")],
    ["main-line: warning main-line-weak-link", rig("strength: 3 lb", "strength: 5 lb")],
    ["feed: warning feed-too-seldom", rig("every: 45 s", "every: 45 min")],
    ["bait: warning fall-floats", edited("baits/grub.yaml", "density: 1.02", "density: 0.95")],
    ["bait: error hook-and-bait-float", edited("baits/grub.yaml", "density: 1.02", "density: 0.2")],
    ["float: error capacity-below-hook-and-bait", edited("hooks.yaml", "0.03 g", "3 g")],
  ])("%s", async (expected, changes) => {
    expect(await found(changes)).toContain(`content/rigs/plain.md ${expected}`);
  });
});

describe("lead that the rule of the place does not allow", () => {
  const lessAllowed = edited("guide.yaml", "allowed-up-to: 0.06 g", "allowed-up-to: 0.03 g");
  const breach = (severity: string) => `content/rigs/plain.md loading: ${severity} lead-not-allowed`;

  it.each([
    ["is warned of", "", "warning"],
    ["is warned of where the guide says so", "lead-breach: warning\n", "warning"],
    ["is an error where the guide says so", "lead-breach: error\n", "error"],
  ])("%s", async (_, said, severity) => {
    // Its No 8 and its No 10.
    const guide = lessAllowed["guide.yaml"] + said;
    expect(await found({ "guide.yaml": guide })).toEqual([breach(severity), breach(severity)]);
    // The same as long as nobody has read the rule.
    const unread = breach(severity).replace("not-allowed", "rule-unread");
    const asUnread = guide.replace(/^ +checked: .*\n/m, "");
    expect(await found({ "guide.yaml": asUnread })).toEqual([unread, unread]);
  });
});
