import { describe, expect, it } from "vitest";
import { lineForFish } from "../../src/checks/line-for-fish.ts";
import { worded } from "../../src/checks/messages.ts";
import { rigsForFish } from "../../src/checks/rigs-for-fish.ts";
import { edited } from "../support/smallest-content.ts";
import { checkedOf, toldBy } from "./checked.ts";

const fish = (title: string, notes = "Silver.") => `title: ${title}\nasks: A bait.\nnotes: ${notes}\n`;

/** A table with one fish; the plain rig has a main line of 4 lb and a hook length of 3 lb. */
const lines = (main: string, hook: string) => ({
  "species/roach.yaml": fish("Roach"),
  "lines.yaml": `basis: from memory
source: made up for tests
left-under-shot: 80 %
fish:
  - { fish: roach, main-line: [${main}], hook-length: [${hook}] }
`,
});

const rig = (from: string, to: string) => edited("rigs/plain.md", from, to);

describe("line for fish", () => {
  it("says nothing of line in the fish's bands, nor where there is no table", () => {
    expect(toldBy(lineForFish, lines("4 lb, 4 lb", "3 lb, 3 lb"))).toEqual([]);
    expect(toldBy(lineForFish, {})).toEqual([]);
  });

  it("warns of a main line and a hook length that are too light", () => {
    const told = { code: "line-too-light", fish: "roach", underShot: "" };
    expect(toldBy(lineForFish, lines("5 lb, 8 lb", "3.5 lb, 5 lb"))).toEqual([
      {
        at: "content/rigs/plain.md:6:24",
        ...told,
        line: "main line",
        found: "4 lb (1.8 kg)",
        allowed: "5 lb (2.3 kg) to 8 lb (3.6 kg)",
      },
      {
        at: "content/rigs/plain.md:7:26",
        ...told,
        line: "hook length",
        found: "3 lb (1.4 kg)",
        allowed: "3.5 lb (1.6 kg) to 5 lb (2.3 kg)",
      },
    ]);
  });

  it("warns of line that is too light by a fortieth", () => {
    expect(toldBy(lineForFish, lines("4.1 lb, 8 lb", "3.1 lb, 5 lb"))).toMatchObject([
      { code: "line-too-light", line: "main line" },
      { code: "line-too-light", line: "hook length" },
    ]);
  });

  it("warns of line that is too heavy", () => {
    expect(toldBy(lineForFish, lines("2 lb, 3 lb", "1 lb, 2 lb"))).toMatchObject([
      { code: "line-too-heavy", line: "main line", found: "4 lb (1.8 kg)" },
      { code: "line-too-heavy", line: "hook length", found: "3 lb (1.4 kg)" },
    ]);
  });

  it("asks for more where a shot is pinched on the hook length", () => {
    const onIt = rig("telltale: { size: No 10 }", "telltale: { size: No 10, from-hook: 10 cm }");
    // 80 % of 3 lb is 2.4 lb.
    expect(toldBy(lineForFish, { ...onIt, ...lines("4 lb, 4 lb", "2.4 lb, 3 lb") })).toEqual([]);
    const short = { ...onIt, ...lines("4 lb, 4 lb", "2.6 lb, 3 lb") };
    expect(toldBy(lineForFish, short)).toMatchObject([{ code: "line-too-light", line: "hook length" }]);
    expect(worded(lineForFish(checkedOf(short))[0]!).reason).toBe(
      "a hook length of 3 lb (1.4 kg) is too light for roach, which asks for 2.6 lb (1.2 kg) to 3 lb (1.4 kg): under the shot on it the line keeps 80 % of its strength",
    );
    expect(toldBy(lineForFish, lines("4 lb, 4 lb", "2.6 lb, 3 lb"))).toEqual([]);
  });

  it("takes the whole strength of a hook length where nobody knows what is pinched on it", () => {
    const checked = { ...checkedOf(lines("4 lb, 4 lb", "3 lb, 3 lb")), rigs: [] };
    expect(lineForFish(checked)).toEqual([]);
  });

  it("warns of a fish that the table has no line for, whatever its capitals", () => {
    const pike = {
      ...lines("4 lb, 4 lb", "3 lb, 3 lb"),
      ...rig("catches: [roach]", "catches: [ROACH, pike]"),
    };
    expect(toldBy(lineForFish, pike)).toEqual([
      { at: "content/rigs/plain.md:13:18", code: "fish-without-line", fish: "pike", allowed: ["roach"] },
    ]);
  });
});

describe("rigs for fish", () => {
  const told = (title: string, changes: Readonly<Record<string, string>> = {}) =>
    toldBy(rigsForFish, {
      "species/a-fish.yaml": fish(title, "Use the [plain rig](../rigs/plain.html)."),
      ...changes,
    });

  it("warns of notes that lead to a rig for other fish", () => {
    expect(told("Tench")).toEqual([
      {
        at: "content/species/a-fish.yaml:3:16",
        code: "rig-not-for-fish",
        fish: "tench",
        rig: "Plain rig",
        allowed: [],
      },
    ]);
  });

  it("lets them lead to a rig that says it catches the fish", () => {
    expect(told("Roach")).toEqual([]);
    expect(told("Roach", rig("catches: [roach]", "catches: [perch, roach]"))).toEqual([]);
  });
});
