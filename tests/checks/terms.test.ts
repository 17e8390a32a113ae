import { describe, expect, it } from "vitest";
import { unexplainedTerms } from "../../src/checks/unexplained-terms.ts";
import { unusedTerms } from "../../src/checks/unused-terms.ts";
import { lesson, toldBy } from "./checked.ts";

const deadDepth =
  "- { term: dead depth, meaning: Hook just at the bed., also: [true depth] }\n- { term: eddy, meaning: Water that turns. }\n";

describe("unexplained terms", () => {
  const told = (body: string, glossary: string | null = null) =>
    toldBy(unexplainedTerms, { ...lesson(body), "glossary.yaml": glossary });

  it.each([
    ["bold in a sentence", "We call it **dead depth** here.", 12],
    ["emphasised in a sentence", "We call it *dead depth* here.", 12],
    ["that lead to the glossary", "It is at [dead depth](../glossary.html#term-dead-depth).", 10],
    ["in a list", "- a **dead depth** is next", 5],
  ])("warns of words %s that the glossary lacks", (_, body, column) => {
    expect(told(body)).toEqual([
      { at: `content/lessons/first.md:8:${column}`, code: "term-not-explained", term: "dead depth" },
    ]);
    expect(told(body, deadDepth)).toEqual([]);
  });

  it("knows a term by its plural, its other form and with a capital", () => {
    expect(told("We know **eddies**, the **True depth** and **dead depths**.", deadDepth)).toEqual([]);
    expect(told("We know **eddying** too.", deadDepth)).toMatchObject([{ term: "eddying" }]);
  });

  it.each([
    ["a lead-in", "**Cold water** slows fish."],
    ["a warning", "Please **keep well back!** now"],
    ["a figure", "Use **2 BB** here."],
    ["a stressed sentence", "Do **not ever go in** alone."],
    ["a link elsewhere", "See [the rig](../rigs/plain.md)."],
  ])("takes %s for no term", (_, body) => {
    expect(told(body)).toEqual([]);
  });
});

describe("unused terms", () => {
  const told = (body: string, glossary: string) =>
    toldBy(unusedTerms, { ...lesson(body), "glossary.yaml": glossary });
  const eddy = "- { term: eddy, meaning: An eddy is water that turns., also: [back water] }\n";

  it("warns of a word that stands nowhere but in its own meaning", () => {
    const unused = { at: "content/glossary.yaml:1:3", code: "term-not-used", term: "eddy" };
    expect(told("A lesson on teddy bears.", eddy)).toEqual([unused]);
  });

  it.each([
    ["itself", "An eddy turns."],
    ["a plural", "Eddies turn."],
    ["another form, over two lines", "The back\nwater turns."],
    ["a heading", "## The eddy"],
  ])("takes %s for a use", (_, body) => {
    expect(told(body, eddy)).toEqual([]);
  });

  it("takes another word's meaning for a use", () => {
    const glossary = `${eddy}- { term: hook, meaning: Not for an eddy. }\n`;
    expect(told("A hook.", glossary)).toEqual([]);
  });
});
