import { expect, it } from "vitest";
import { checkContent, contentChecks } from "../../src/checks/table.ts";
import { checkedOf, lesson } from "./checked.ts";

it("finds nothing in the smallest content", () => {
  expect(checkContent(checkedOf({}))).toEqual([]);
});

it("runs every check and only warns", () => {
  const messages = checkContent(
    checkedOf({
      ...lesson(
        "Notwithstanding considerable *understanding*, a BB weighs 0.4 g and interpretation necessitates 80 % deliberation.",
      ),
      "lessons/second.md":
        "---\norder: 2\npart: Start\ntitle: Second\nsummary: More.\n---\n\nThat is from memory.\n",
      "species/roach.yaml": "title: Roach\nasks: A bait.\n",
      "species/tench.yaml":
        'title: Tench\nasks: A bait.\nnotes: "Use the [plain rig](../rigs/plain.html)."\n',
      "lines.yaml":
        "basis: from memory\nsource: made up\nleft-under-shot: 80 %\nfish: [{ fish: roach, main-line: [4 lb, 4 lb], hook-length: [4 lb, 4 lb] }]\n",
      "glossary.yaml": "- { term: eddy, meaning: Water that turns. }\n",
    }),
  );
  expect(messages.map(({ code }) => code).sort()).toEqual([
    "basis-in-words",
    "hard-to-read",
    "lesson-not-linked",
    "line-too-light",
    "no-basis",
    "rig-not-for-fish",
    "rig-not-taught",
    "term-not-explained",
    "term-not-used",
    "typed-figure",
  ]);
  expect(messages).toHaveLength(Object.keys(contentChecks).length);
  expect(new Set(messages.map(({ severity }) => severity))).toEqual(new Set(["warning"]));
});
