import { describe, expect, it } from "vitest";
import { sizeInTub } from "../../src/checks/size-in-tub.ts";
import { edited } from "../support/smallest-content.ts";
import { lesson, toldBy } from "./checked.ts";

/** The scale knows a No 1 and a No 12; the guide's box has neither, and another tub the No 12. */
const scale = {
  ...edited(
    "shot/plain.yaml",
    "  - { name: BB",
    "  - { name: No 1, mass: 0.3 g }\n  - { name: No 12, mass: 0.02 g }\n  - { name: BB",
  ),
  "tubs/dust.yaml": "title: dust\nscale: plain\nsizes:\n  - { size: No 12, metal: tin, count: plenty }\n",
};
const told = (changes: Record<string, string>) => toldBy(sizeInTub, { ...scale, ...changes });
const inBox = { code: "size-in-no-tub", tub: "box", allowed: ["BB", "No 4", "No 6", "No 8", "No 10"] };

describe("sizes of shot in texts", () => {
  it("are in the guide's tub where a lesson says to use them", () => {
    expect(told(lesson("Add a No 10. Then take off two No 8."))).toEqual([]);
    expect(told(lesson("Too much tip? Add a No 12 at the float."))).toEqual([
      { at: "content/lessons/first.md:8:21", size: "No 12", ...inBox },
    ]);
  });

  it("may be in any tub where they are only spoken of", () => {
    expect(told(lesson("A No 12 is smaller than a No 10."))).toEqual([]);
    expect(told(lesson("A No 1 is smaller than a BB."))).toMatchObject([{ size: "No 1", tub: "all tubs" }]);
  });

  it("are in the guide's tub where the list of troubles says to use them", () => {
    const troubles = (size: string) => ({
      "troubles.yaml": `- { sign: It sinks., causes: [Shot.], do: [Look., "Add a ${size}."] }\n`,
    });
    expect(told(troubles("No 8"))).toEqual([]);
    expect(told(troubles("No 12"))).toEqual([{ at: "content/troubles.yaml:1:3", size: "No 12", ...inBox }]);
  });

  it("are in the rig's own tub where its notes say to use them", () => {
    const rig = (size: string, tub: string) =>
      edited("rigs/plain.md", "change-first: [nothing]", `change-first: ["Add a ${size}."]\ntub: ${tub}`);
    const boxOfDust = edited(
      "tubs/box.yaml",
      "sizes:\n",
      "sizes:\n  - { size: No 12, metal: tin, count: plenty }\n",
    );
    const tubs = { "tubs/all.yaml": boxOfDust["tubs/box.yaml"]! };
    expect(told({ ...rig("No 8", "box"), ...tubs })).toEqual([]);
    expect(told({ ...rig("No 12", "all"), ...tubs })).toEqual([]);
    expect(told({ ...rig("No 12", "box"), ...tubs })).toEqual([
      { at: "content/rigs/plain.md:16:16", size: "No 12", ...inBox },
    ]);
  });
});
