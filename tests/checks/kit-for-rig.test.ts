import { describe, expect, it } from "vitest";
import { kitForRig } from "../../src/checks/kit-for-rig.ts";
import { edited, smallestKit } from "../support/smallest-content.ts";
import { toldBy } from "./checked.ts";

/** A kit that the plain rig can be made up from, with a piece of it replaced. */
const kit = (from = "title: Box", to = from) => ({
  "kits/box.yaml": smallestKit.replace(from, to),
});

const pebble = { "baits/pebble.yaml": "title: pebble\nmass: 0.1 g\ndensity: 2 g/cm3\nbasis: from memory\n" };
const told = (changes: Record<string, string>) => toldBy(kitForRig, changes);

describe("the kit of a rig", () => {
  it("says nothing where the rig takes what is in it, nor where there are no kits", () => {
    expect(told(kit())).toEqual([]);
    expect(told({})).toEqual([]);
  });

  it.each([
    ["main line", kit("main-line: 4 lb", "main-line: 5 lb"), "6:24", "4 lb (1.8 kg)", "5 lb (2.3 kg)"],
    ["hook length", kit("hook-length: 3 lb", "hook-length: 2 lb"), "7:26", "3 lb (1.4 kg)", "2 lb (0.9 kg)"],
    ["bait", { ...kit("baits: [grub]", "baits: [pebble]"), ...pebble }, "9:7", "grub", "pebble"],
    ["hook", { ...kit("hooks: [16]", "hooks: [14]"), "hooks.yaml": hooks(14, 16) }, "8:7", "16", "14"],
  ])("warns of a %s that is not in it", (what, changes, at, found, allowed) => {
    expect(told(changes)).toEqual([
      { at: `content/rigs/plain.md:${at}`, code: "not-in-kit", what, found, kit: "Box", allowed },
    ]);
  });

  it("warns of a float that is not in it", () => {
    const other = edited("floats/waggler.yaml", "title: Test waggler", "title: Another");
    const changes = {
      ...kit("floats: [waggler]", "floats: [other]"),
      "floats/other.yaml": Object.values(other)[0]!,
    };
    expect(told(changes)).toMatchObject([{ what: "float", found: "Test waggler", allowed: "Another" }]);
  });

  it("warns of shot that its tub does not hold enough of", () => {
    const tub = (count: number) => ({
      ...kit("tub: box", "tub: small"),
      "tubs/small.yaml": `title: small
scale: plain
sizes:
  - { size: BB, metal: tin, count: plenty }
  - { size: No 4, metal: tin, count: 20 }
  - { size: No 6, metal: tin, count: 20 }
  - { size: No 8, metal: tin, count: 20 }
  - { size: No 10, metal: tin, count: ${count} }
`,
    });
    const holds = (count: number) => `BB, 20 × No 4, 20 × No 6, 20 × No 8, ${count} × No 10`;
    const needed = Number(/(\d+) × No 10/.exec(JSON.stringify(told(tub(0))))?.[1]);
    expect(needed).toBeGreaterThan(0);
    expect(told(tub(needed))).toEqual([]);
    expect(told(tub(needed - 1))).toMatchObject([
      {
        at: expect.stringContaining("rigs/plain.md"),
        what: "shot",
        found: `${needed} × No 10`,
        allowed: holds(needed - 1),
      },
    ]);
  });

  it("warns of a first rig that no kit is for, and of nothing in it or in any other", () => {
    const second = (level: string) => {
      const [text] = Object.values(edited("rigs/plain.md", "level: first", `level: ${level}`));
      return {
        ...kit(),
        "rigs/second.md": text!.replace("title: Plain rig", "title: Second rig").replace("4 lb", "8 lb"),
      };
    };
    expect(told(second("first"))).toEqual([
      { at: "content/rigs/second.md:2:8", code: "rig-without-kit", title: "Second rig", kits: ["box"] },
    ]);
    expect(told(second("next"))).toEqual([]);
  });
});

function hooks(...sizes: number[]): string {
  return sizes.map((size) => `- { size: ${size}, mass: 0.03 g, basis: from memory }\n`).join("");
}
