import { expect, it } from "vitest";
import { checkContent, contentChecks } from "../../src/checks/table.ts";
import { samplePlan } from "../support/sample-plan.ts";
import { sampleSwim } from "../support/sample-swim.ts";
import { edited, smallestKit } from "../support/smallest-content.ts";
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
      ...edited("baits/grub.yaml", "basis:", "hooks: [20, 22]\nbasis:"),
      "kits/wrong.yaml": smallestKit.replace("Box", "Wrong").replace("4 lb", "5 lb"),
      "plans/first.md": samplePlan("## Drills", "## Drill"),
      "plans/second.md": samplePlan(),
      "troubles.yaml": "- { sign: It sinks., causes: [Shot.], do: [Add a No 1.] }\n",
      ...sampleSwim("depth: 1.1 m", "depth: 1.3 m"),
      "swims/later.yaml": sampleSwim("2026", "2036")["swims/pond.yaml"]!,
      "species/roach.yaml": "title: Roach\nasks: A bait.\n",
      "species/tench.yaml":
        'title: Tench\nasks: A bait.\nnotes: "Use the [plain rig](../rigs/plain.html)."\n',
      "lines.yaml":
        "basis: from memory\nsource: made up\nleft-under-shot: 80 %\nfish: [{ fish: roach, main-line: [4 lb, 4 lb], hook-length: [4 lb, 4 lb] }]\n",
      ...edited("shot/plain.yaml", "sizes:\n", "sizes:\n  - { name: No 1, mass: 0.3 g }\n"),
      "rigs/plain.md": edited(
        "rigs/plain.md",
        "Notes.",
        "Fish it over depth. It hangs the bait half way down. So does :figure[]{rig=other of=tip}.",
      )
        ["rigs/plain.md"]!.replace("what: grubs", "what: unicorns")
        .replace("level:", "held-back: 40 %\nlevel:")
        .replace("0.14 mm", "0.24 mm"),
      "glossary.yaml": "- { term: eddy, meaning: Water that turns. }\n",
    }),
  );
  expect(messages.map(({ code }) => code).sort()).toEqual([
    "bait-in-note",
    "basis-in-words",
    "date-far-off",
    "hard-to-read",
    "hook-against-bait",
    "lesson-not-linked",
    "line-too-light",
    "no-basis",
    "not-in-kit",
    "plan-sections",
    "rig-not-for-fish",
    "rig-not-taught",
    "rig-shows-another",
    "setting-in-note",
    "size-in-no-tub",
    "still-water-key",
    "swim-hazard-untold",
    "term-not-explained",
    "term-not-used",
    "thick-hook-length",
    "typed-figure",
    "unknown-feed",
  ]);
  expect(messages).toHaveLength(Object.keys(contentChecks).length);
  expect(new Set(messages.map(({ severity }) => severity))).toEqual(new Set(["warning"]));
});
