import { describe, expect, it } from "vitest";
import { outputFiles } from "../../src/build/build.ts";
import { ContentError } from "../../src/build/content-error.ts";
import { layoutProblems } from "../../src/build/layout-problems.ts";
import { oneFile } from "../../src/build/one-file.ts";
import { type BuildSettings, buildParts } from "../../src/build/stages.ts";
import type { Message } from "../../src/model/message.ts";
import { longWords } from "../support/long-words.ts";
import { contentWith, edited, solveWith } from "../support/smallest-content.ts";

/** What the build says of the smallest content with these changes, as it lays everything out. */
async function told(changes: Readonly<Record<string, string>>): Promise<string> {
  const { value } = await solveWith(changes);
  const files = outputFiles(value!, { date: "2026-11-20", siteAssets: new Map() });
  try {
    for await (const _ of files);
    return "";
  } catch (error) {
    expect(error).toBeInstanceOf(ContentError);
    return (error as Error).message;
  }
}

/** What the build makes of the smallest content with these changes where it keeps going, and what it tells. */
async function kept(changes: Readonly<Record<string, string>>, parts: BuildSettings["parts"] = buildParts) {
  const { value } = await solveWith(changes);
  const messages: Message[] = [];
  const tell = (found: readonly Message[]) => messages.push(...found);
  const settings = { date: "2026-11-20", siteAssets: new Map(), keepGoing: true, tell, parts };
  const paths: string[] = [];
  for await (const { path } of outputFiles(value!, settings)) paths.push(path);
  return { messages, paths };
}

it("a word too long for the column of a handout is told with its file and line", async () => {
  const long = `Some words.\n\n${"x".repeat(150)}`;
  const said = await told(edited("lessons/first.md", "Some words about", `${long}\n\nSome words about`));
  expect(said).toMatch(
    /^content\/lessons\/first\.md\n {3}12:1 {2}error {4}First lesson: what stands here is [\d.]+ mm too wide for the handout on A5 {2}\[does-not-fit\]\n/,
  );
  expect(said).toMatch(/2 errors, 0 warnings$/);
});

it("a title too long for a card is told with its file and line", async () => {
  const said = await told(
    edited("rigs/plain.md", "title: Plain rig", "title: Plainrigforeverybodywhowantsnospacesinthename"),
  );
  expect(said).toMatch(
    /^content\/rigs\/plain\.md\n {4}2:8 {2}error {4}plain, ID-1 card, front: title is .* too wide/,
  );
  expect(said).toContain("hint: shorten its title");
});

describe("asked to keep going", () => {
  it("the build makes all but the card that does not fit, and tells of it", async () => {
    const title = "title: Plainrigforeverybodywhowantsnospacesinthename";
    const { messages, paths } = await kept(edited("rigs/plain.md", "title: Plain rig", title));
    expect(messages.map(({ code }) => code)).toContain("does-not-fit");
    expect(paths).not.toContain("cards/plain.pdf");
    expect(paths).toContain("site/rigs/plain.html");
    expect(paths.some((path) => path.startsWith("handouts/"))).toBe(true);
  });

  it("a card without room for what to change first is made without, and told of", async () => {
    const change = `["Bites stop. ${"Wait and wait again. ".repeat(60)}"]`;
    const { messages, paths } = await kept(
      edited("rigs/plain.md", "change-first: [nothing]", `change-first: ${change}`),
      ["print"],
    );
    const lacks = messages.filter(({ code }) => code === "card-lacks");
    expect(lacks.map(({ severity, place }) => [severity, place.file])[0]).toEqual([
      "warning",
      "content/rigs/plain.md",
    ]);
    expect(JSON.stringify(lacks[0]!.values)).toContain("plain, ID-1 card: no room for what to change first");
    expect(paths).toContain("cards/plain.pdf");
  });

  it("the build makes every card of the smallest content and tells nothing", async () => {
    const { messages, paths } = await kept({}, ["print"]);
    expect(messages).toEqual([]);
    expect(paths).toContain("cards/plain.pdf");
  });
});

describe("a drawing without room for its words", () => {
  it("is an error at what it is of, in a text and on a page of its own", async () => {
    const first = contentWith()["lessons/first.md"]!;
    const inText = { "lessons/first.md": `${first}\n::float-drawing{float=waggler}\n` };
    expect(await told({ ...longWords(), ...inText })).toMatch(
      /^content\/floats\/waggler\.yaml\n {4}1:8 {2}error {4}no room for a float with its parts in \d+ × \d+ mm {2}\[no-room\]\n/,
    );
    expect(await told(longWords())).toMatch(
      /^content\/(?:rigs\/plain\.md|floats\/waggler\.yaml)\n.* error {4}no room for /,
    );
  });

  it("is told by a check for pages and paper alike, each drawing once, and a build that keeps going makes all else", async () => {
    const first = contentWith()["lessons/first.md"]!;
    const pictures = '\n::float-drawing{float=waggler}\n\n::rig-drawing{rig=plain depth="1 m"}\n';
    const changes = { ...longWords(), "lessons/first.md": `${first}${pictures}` };
    const { value } = await solveWith(changes);
    const found = await layoutProblems(value!, { date: "2026-11-20", siteAssets: new Map() });
    const roomless = found.filter(({ code }) => code === "no-room");
    expect(roomless.map(({ place }) => place.file)).toContain("content/floats/waggler.yaml");
    // In the column of a handout and in that of a page, which are not as wide.
    expect(roomless.length).toBeGreaterThan(1);
    expect(new Set(roomless.map((one) => JSON.stringify(one))).size).toBe(roomless.length);
    const { messages, paths } = await kept(changes);
    expect(messages.map(({ code }) => code)).toContain("no-room");
    for (const path of ["site/floats.html", "site/rigs/plain.html", "site/lessons/first.html"])
      expect(paths).toContain(path);
    expect(paths.some((path) => path.startsWith("handouts/first"))).toBe(true);
  });

  it("that has room is nothing to tell", async () => {
    const { value } = await solveWith({});
    expect(await layoutProblems(value!, { date: "2026-11-20", siteAssets: new Map() })).toEqual([]);
  });

  it("so is that of one file that a preview asks for", async () => {
    const { value } = await solveWith(longWords());
    const settings = { date: "2026-11-20", siteAssets: new Map<string, string>() };
    await expect(oneFile(value!, "site/floats.html", settings)).rejects.toThrow(ContentError);
  });
});

it.each([
  ["a title as long as one may be", "A title of words here ".repeat(5).slice(0, 99).trimEnd()],
  ["a title of one word as long as one may be", "x".repeat(100)],
])("%s finds room in every drawing, or is told", async (_, title) => {
  const first = contentWith()["lessons/first.md"]!;
  const pictures = [
    '::rig-drawing{rig=plain depth="1 m"}',
    "::float-drawing{float=waggler}",
    '::float-chart{floats="waggler waggler waggler waggler"}',
    "::float-states{rig=plain show=all}",
    '::pattern-chart{rigs="plain plain plain" depth="1 m"}',
  ];
  const { paths } = await kept({
    "lessons/first.md": `${first}\n${pictures.join("\n\n")}\n`,
    ...edited("floats/waggler.yaml", "Test waggler", title),
    ...edited("rigs/plain.md", "title: Plain rig", `title: ${title}`),
    ...edited("baits/grub.yaml", "title: grub", `title: ${title}`),
  });
  expect(paths).toContain("site/rigs/plain.html");
  expect(paths).toContain("site/floats.html");
});
