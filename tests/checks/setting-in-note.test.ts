import { describe, expect, it } from "vitest";
import { settingInNote } from "../../src/checks/setting-in-note.ts";
import { edited } from "../support/smallest-content.ts";
import { toldBy } from "./checked.ts";

const rig = "rigs/plain.md";

/** What is told of the plain rig with these notes, set as its front matter says. */
function told(notes: string, frontMatter = "") {
  const { [rig]: set } = edited(rig, "loading:", `${frontMatter}loading:`);
  return toldBy(settingInNote, { [rig]: set!.replace("Notes.", notes) });
}

const overDepth = "setting: over depth\noverdepth: 5 cm\n";

describe("a rig's notes against its setting", () => {
  it("warn where they name another setting, at its place", () => {
    expect(told("Set it\nover depth.")).toEqual([
      {
        at: "content/rigs/plain.md:26:1",
        code: "setting-in-note",
        found: "over depth",
        setting: "dead depth",
      },
    ]);
    expect(told("The bait hangs just off the bed.")).toHaveLength(1);
    expect(told("It is fished up in the water.")).toHaveLength(1);
    expect(told("It is fished at dead depth.", overDepth)).toHaveLength(1);
  });

  it("warn where they name another length for it", () => {
    expect(told("It is set 20 cm over depth.", overDepth)).toMatchObject([{ found: "20 cm over depth" }]);
    expect(told("It is set 0.2 m over depth.", overDepth)).toHaveLength(1);
  });

  it("say nothing where they agree, or speak of something else", () => {
    expect(told("It is fished at dead depth.")).toEqual([]);
    expect(told("It is set 5 cm over depth.", overDepth)).toEqual([]);
    expect(told("It is set 0.05 m over depth.", overDepth)).toEqual([]);
    expect(told("Lay the rod over the rest. A fish takes the bait off the hook.")).toEqual([]);
  });

  it("warn of title, purpose and note on feed alike", () => {
    const changed = (from: string, to: string) => toldBy(settingInNote, edited(rig, from, to));
    expect(changed("title: Plain rig", "title: Plain rig, laid on")).toMatchObject([
      { at: "content/rigs/plain.md:2:8", found: "laid on" },
    ]);
    expect(changed("A rig for tests.", "Fish over depth.")).toMatchObject([{ found: "over depth" }]);
    expect(changed("every: 45 s", 'every: 45 s, note: "Set it off the bottom."')).toHaveLength(1);
  });

  it("leave the bait of a rig for running water where the current holds it", () => {
    const { [rig]: flowing } = edited(rig, "water: still", "water: flowing\npaces: [10 m in 40 s]");
    const changed = flowing!.replace("Notes.", "It runs just off the bed, often 3 cm off the bed.");
    expect(toldBy(settingInNote, { [rig]: changed })).toEqual([]);
  });
});
