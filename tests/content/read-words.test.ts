import { describe, expect, it } from "vitest";
import { solveContent } from "../../src/build/build.ts";
import { formatReport } from "../../src/checks/reporter.ts";
import { inMemory } from "../../src/model/kept.ts";
import { borrowing } from "../support/borrowed.ts";
import { contentWith } from "../support/smallest-content.ts";

const library = contentWith();
const guide = (language: string) =>
  library["guide.yaml"]!.replace("library: none\n", `language: ${language}\n`);

/** What is as it was is read and solved once. */
const keep = inMemory(40);

async function saying(own: Readonly<Record<string, string>>) {
  const { value, messages } = await solveContent(borrowing(own, library), ["content"], "library", keep);
  return { say: value?.kit.words, figures: value?.kit.figures, report: formatReport(messages) };
}

const rigsWord = (text: string) => `page:\n  menu:\n    rigs: ${text}\n`;

describe("a guide in another language", () => {
  it("has the words of its own file, and English where it lacks one, which is told once", async () => {
    const { say, report } = await saying({
      "guide.yaml": guide("de"),
      "words/de.yaml": rigsWord("Montagen"),
    });
    expect(say!("page.menu.rigs")).toBe("Montagen");
    expect(say!("page.menu.floats")).toBe("Floats");
    expect(report).toMatch(
      /words\/de\.yaml\n +warning {2}(\d{3,}) of \d{3,} fixed words stand in English .*"de"/,
    );
    expect(report).toContain("0 errors, 1 warning\n");
  });

  it("has those of its country over those of its language", async () => {
    const { say } = await saying({
      "guide.yaml": guide("de-AT"),
      "words/de.yaml": `${rigsWord("Montagen")}    floats: Posen\n`,
      "words/de-AT.yaml": rigsWord("Zeuge"),
    });
    expect([say!("page.menu.rigs"), say!("page.menu.floats")]).toEqual(["Zeuge", "Posen"]);
  });

  it("says so where there is no word of it yet, in a file of comments or none", async () => {
    const none: readonly Readonly<Record<string, string>>[] = [{}, { "words/de.yaml": "# page:\n" }];
    for (const files of none) {
      const { report } = await saying({ "guide.yaml": guide("de"), ...files });
      expect(report).toContain('the fixed words of pages and cards stand in English: there are none in "de"');
      expect(report).toContain("hint: fill them in in words/de.yaml");
      expect(report).toContain("0 errors, 1 warning\n");
    }
  });

  it("names a file of another language, which nothing reads", async () => {
    const { report } = await saying({ "guide.yaml": guide("de"), "words/fr.yaml": rigsWord("Montages") });
    expect(report).toContain(
      'words/fr.yaml\n         warning  the file is not read: the guide is in "de"  [file-not-read]\n         hint: say `language: fr` in guide.yaml, or call it de.yaml\n',
    );
  });

  it("says nothing in English", async () => {
    const { report } = await saying({ "guide.yaml": guide("en-GB") });
    expect(report).toBe("0 errors, 0 warnings\n");
  });

  it.each(["english", "qqq", "de_DE_x"])("is refused where there is no such language: %s", async (tag) => {
    const { report } = await saying({ "guide.yaml": guide(tag) });
    expect(report).toContain('"language": this is no language tag; write one like en or de-AT');
  });
});

describe("words of one's own", () => {
  it.each([
    ["page:\n  menu:\n    rigz: Rigs\n", '3:5  error    unknown key "rigz"', 'did you mean "rigs"?'],
    ["page: Rigs\n", '1:7  error    "page" should be a group of keys, but is Rigs', ""],
    [
      "page:\n  menu:\n    rigs: { one: Rig }\n",
      '3:11  error    "rigs" should be a text, but is a group of keys',
      "",
    ],
    [
      "drawing:\n  float:\n    takes: Takes {lode}\n",
      '3:12  error    there is no gap in this sentence called "{lode}"',
      "allowed: {capacity}",
    ],
  ])(
    "that the tool never asks for, or gaps that it does not fill, are errors at their place: %j",
    async (words, says, hint) => {
      const { report } = await saying({ "guide.yaml": guide("en"), "words/en.yaml": words });
      expect(report).toContain(says);
      expect(report).toContain(hint);
      expect(report).toContain("1 error, 0 warnings\n");
    },
  );

  it("may leave gaps out, and stand over the tool's own where nothing else is taken from the library", async () => {
    const { report, say } = await saying({
      ...contentWith({ "words/en.yaml": "drawing:\n  float:\n    takes: Takes its load\n" }),
      "guide.yaml": library["guide.yaml"]!,
    });
    expect(report).toBe("0 errors, 0 warnings\n");
    expect(say!("drawing.float.takes")).toBe("Takes its load");
    expect(say!("page.menu.rigs")).toBe("Rigs");
  });
});
