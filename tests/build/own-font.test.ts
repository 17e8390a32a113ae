import * as fontkit from "fontkit";
import { beforeAll, describe, expect, it } from "vitest";
import { outputFiles, solveContent } from "../../src/build/build.ts";
import { formatReport } from "../../src/checks/reporter.ts";
import { lesson } from "../checks/checked.ts";
import { readPdf } from "../print/read-pdf.ts";
import { lentFont } from "../support/lent-font.ts";
import { contentWith, edited, worldOf } from "../support/smallest-content.ts";

const named = edited("guide.yaml", "edition:", "look: { font: signs.ttf }\nedition:");
const font = lentFont.toString("latin1");

async function told(changes: Readonly<Record<string, string | null>>): Promise<string> {
  const { messages } = await solveContent(worldOf(contentWith(changes)), ["content"]);
  return formatReport(messages);
}

describe("a font of a guide's own", () => {
  const files = new Map<string, string | Uint8Array>();

  beforeAll(async () => {
    const content = contentWith({
      ...named,
      ...edited("rigs/plain.md", "title: Plain rig", "title: Plain ♪ rig"),
      ...lesson("See ☺ here, in Ärger, on the [rig](../rigs/plain.md).\n"),
      "fonts/signs.ttf": font,
    });
    const { value, messages } = await solveContent(worldOf(content), ["content"]);
    if (!value) throw new Error(formatReport(messages));
    expect(messages).toEqual([]);
    const assets = ["icon.svg", "site.css", "service-worker.js", "card.js"].map(
      (name) => [name, ""] as const,
    );
    const settings = { date: "2026-11-20", siteAssets: new Map(assets) };
    for await (const { path, content } of outputFiles(value, settings)) files.set(path, content);
  });

  it("lends pages the signs that ours lack and no others, as a file that phones keep", () => {
    const lent = fontkit.create(Buffer.from(files.get("site/assets/own-signs.woff") as Uint8Array));
    const has = (sign: string) =>
      "characterSet" in lent && lent.glyphForCodePoint(sign.codePointAt(0)!).path.commands.length > 0;
    expect(["☺", "♪", "A", "♂"].map(has)).toEqual([true, true, false, false]);
    const [, style] = [...files].find(([path]) => /assets\/site\.\w+\.css$/.test(path))!;
    expect(style).toContain("unicode-range:U+263A,U+266A}");
    expect(String(files.get("site/sw.js"))).toContain("own-signs.woff");
  });

  it("sets them on cards and handouts, where they can be searched and copied", async () => {
    const pdf = async (path: string) => (await readPdf(files.get(path) as Uint8Array)).pages[0]!.text;
    expect(await pdf("cards/plain.pdf")).toContain("Plain ♪ rig");
    expect(await pdf("handouts/first-a5.pdf")).toContain("See ☺ here");
  });

  it("is in the table of the script that makes cards in the browser", () => {
    const [, script] = [...files].find(([path]) => /assets\/card\.\w+\.js$/.test(path))!;
    expect(/"signs":"(?:[^"\\]|\\.)*♪/.test(String(script))).toBe(true);
  });
});

describe("what keeps a font of one's own from being used", () => {
  it("a file that is none is an error at it", async () => {
    const report = await told({ ...named, "fonts/signs.ttf": "no font" });
    expect(report).toContain("content/fonts/signs.ttf");
    expect(report).toContain("the font cannot be used: no font can be found in it  [font-not-usable]");
    expect(report).toContain("hint: take a font of one face, as .ttf, .otf, .woff or .woff2");
  });

  it("a font that is cut off is an error, too", async () => {
    expect(await told({ ...named, "fonts/signs.ttf": font.slice(0, 9000) })).toContain("[font-not-usable]");
  });

  it("a name that no file has is an error at the name, with those that there are", async () => {
    const report = await told({ ...named, "fonts/sings.ttf": font });
    expect(report).toMatch(/guide\.yaml\n\s+\d+:\d+ {2}error {4}there is no font in fonts\/ "signs\.ttf"/);
    expect(report).toContain('did you mean "sings.ttf"?');
  });

  it("one that guide.yaml does not name is a warning, and so is another file there", async () => {
    const report = await told({ "fonts/signs.ttf": font, "fonts/read.txt": "x" });
    expect(report).toContain("the font is not used: guide.yaml does not name it");
    expect(report).toContain("it is no font that a guide is set in");
  });

  it("a sign that it lacks, too, is an error that says so; one that joins others is no matter of fonts", async () => {
    const star = await told({ ...named, "fonts/signs.ttf": font, ...lesson("A ★ here.") });
    expect(star).toContain(`neither the guide's fonts nor signs.ttf has a sign for "★" (U+2605)  [no-sign]`);
    const arabic = await told(lesson("See سمك here."));
    expect(arabic).toContain("paper sets no letters that join or run from right to left");
  });
});
