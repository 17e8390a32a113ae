import { describe, expect, it } from "vitest";
import { unlinkedLessons } from "../../src/checks/unlinked-lessons.ts";
import { untaughtRigs } from "../../src/checks/untaught-rigs.ts";
import { lesson, lessonFile, toldBy } from "./checked.ts";

describe("unlinked lessons", () => {
  const told = (first: string, second: string) =>
    toldBy(unlinkedLessons, { ...lesson(first), "lessons/second.md": lessonFile(2, second) });

  it("warns of a lesson that nothing leads to, or only itself", () => {
    const unlinked = {
      at: "content/lessons/second.md:1:1",
      code: "lesson-not-linked",
      title: "Lesson 2",
    };
    expect(told("Words.", "Words.")).toEqual([unlinked]);
    expect(told("Words.", "See [above](second.md#words).")).toEqual([unlinked]);
    expect(told("See [far away](https://example.org/lessons/second.md).", "Words.")).toEqual([unlinked]);
  });

  it.each(["second.md", "second.html#part", "../lessons/second.html"])(
    "takes a link to %s for one",
    (url) => {
      expect(told(`Next comes [more](${url}).`, "Words.")).toEqual([]);
    },
  );
});

describe("untaught rigs", () => {
  const told = (body: string) => toldBy(untaughtRigs, lesson(body));

  it("warns of a rig that no lesson leads to or shows", () => {
    const untaught = { at: "content/rigs/plain.md:2:8", code: "rig-not-taught", title: "Plain rig" };
    expect(told("Words about the plain rig.")).toEqual([untaught]);
    expect(told("A lesson on the [plain](plain.md).")).toEqual([untaught]);
  });

  it.each([
    ["a link", "See the [plain rig](../rigs/plain.md)."],
    ["a picture", '::rig-drawing{rig=plain depth="1 m"}'],
    ["a figure", 'It has :figure[]{rig=plain depth="1 m" of=shot-count} shot.'],
  ])("takes %s for teaching", (_, body) => {
    expect(told(body)).toEqual([]);
  });
});
