import { describe, expect, it } from "vitest";
import { checkLinks } from "../../src/checks/links.ts";
import { brief, checkedOf, lesson, lessonFile } from "./checked.ts";

const glossary = "- { term: dead depth, meaning: Hook just at the bed. }\n";

const told = (body: string) =>
  checkLinks(
    checkedOf({
      ...lesson(body),
      "lessons/second.md": lessonFile(2, "## A part\n\nWords."),
      "pages/safety.md": "---\ntitle: Safety\nsummary: Keep safe.\n---\n\n## On the bank\n\nWords.\n",
      "glossary.yaml": glossary,
    }).library,
  );

describe("links", () => {
  it.each([
    "second.md",
    "second.html#a-part",
    "../lessons/second.md#a-part",
    "../rigs/plain.md",
    "../floats/waggler.yaml",
    "../baits/grub.yaml",
    "../shot/plain.yaml",
    "../knots/half-blood.yaml",
    "../pages/safety.md#on-the-bank",
    "../safety.html",
    "../glossary.html",
    "#here",
    "https://example.org/nowhere",
    "mailto:club@example.org",
  ])("to %s are right", (url) => {
    expect(told(`## Here\n\nSee [this](${url}).`)).toEqual([]);
  });

  it.each([
    "../swims/index.html",
    "../soundings.html",
    "../choose.html",
    "../sessions/index.html",
    "../plans/index.html",
    "../fish.html",
    "../what-the-float-says.html",
  ])("to %s, of which the guide has nothing to show, are errors", (url) => {
    expect(told(`See [this](${url}).`)).toHaveLength(1);
  });

  it.each([
    ["second.md#no-part", "place on the page second.html", "no-part", ["a-part"]],
    ["third.md", "page in lessons", "third", ["first", "second"]],
    ["../rigs/plane.md", "page in rigs", "plane", ["plain"]],
    ["../floats/quill.yaml", "place on the page floats.html", "quill", ["waggler"]],
    ["#there", "place on the page first.html", "there", ["here"]],
  ])("to %s are errors that name what there is", (url, what, found, allowed) => {
    const messages = told(`## Here\n\nSee [this](${url}).`);
    expect(messages.map(brief)).toMatchObject([
      {
        at: "content/lessons/first.md:10:5",
        code: "unknown-name",
        what,
        found,
        allowed: expect.arrayContaining(allowed),
      },
    ]);
    expect(messages[0]!.severity).toBe("error");
  });

  it.each(["javascript:alert(1)", "data:text/html,x", "vbscript:x", "file:///etc/x"])(
    "by %s are errors that name what is allowed",
    (url) => {
      const [message] = told(`See [this](${url}).`);
      expect(message!.severity).toBe("error");
      expect(brief(message!)).toEqual({
        at: "content/lessons/first.md:8:5",
        code: "link-scheme",
        scheme: url.split(":")[0],
        allowed: ["http", "https", "mailto"],
      });
    },
  );

  it.each([
    ["http://", "no-address"],
    ["http://x:99999/", "no-address"],
    ["../constructor/x.md", "bad-link"],
    ["../__proto__/x.md", "bad-link"],
  ])("to %s are errors, not faults", (url, code) => {
    expect(told(`See [this](${url}).`).map(brief)).toMatchObject([
      { at: "content/lessons/first.md:8:5", code, link: url },
    ]);
  });

  it("to a folder that has no pages are errors", () => {
    expect(told("See [this](../nets/landing.md).").map(brief)).toEqual([
      { at: "content/lessons/first.md:8:5", code: "bad-link", link: "../nets/landing.md" },
    ]);
  });

  it("defined once below the text are looked at too", () => {
    expect(told("See [this][a].\n\n[a]: third.md").map(brief)).toMatchObject([
      { at: "content/lessons/first.md:10:1", code: "unknown-name" },
    ]);
  });
});
