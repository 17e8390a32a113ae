import { describe, expect, it } from "vitest";
import { outputFiles, solveContent } from "../../src/build/build.ts";
import { ContentError } from "../../src/build/content-error.ts";
import type { Message } from "../../src/model/message.ts";
import { contentWith, edited, worldOf } from "../support/smallest-content.ts";

/** What the build says of the smallest content with these changes, as it lays everything out. */
async function told(changes: Readonly<Record<string, string>>): Promise<string> {
  const { value } = await solveContent(worldOf(contentWith(changes)), ["content"]);
  const files = outputFiles(value!, { date: "2026-11-20", siteAssets: new Map() });
  try {
    for await (const _ of files);
    return "";
  } catch (error) {
    expect(error).toBeInstanceOf(ContentError);
    return (error as Error).message;
  }
}

it("a word too long for the column of a handout is told with its file and line", async () => {
  const long = `Some words.\n\n${"x".repeat(150)}`;
  const said = await told(edited("lessons/first.md", "Some words about", `${long}\n\nSome words about`));
  expect(said).toMatch(
    /^content\/lessons\/first\.md\n {3}12:1 {2}error {4}first, A5 .*handout: .*too wide {2}\[does-not-fit\]\n/,
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
  async function kept(changes: Readonly<Record<string, string>>) {
    const { value } = await solveContent(worldOf(contentWith(changes)), ["content"]);
    const messages: Message[] = [];
    const tell = (found: readonly Message[]) => messages.push(...found);
    const settings = { date: "2026-11-20", siteAssets: new Map(), keepGoing: true, tell };
    const paths: string[] = [];
    for await (const { path } of outputFiles(value!, settings)) paths.push(path);
    return { messages, paths };
  }

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
    const { messages, paths } = await kept({});
    expect(messages).toEqual([]);
    expect(paths).toContain("cards/plain.pdf");
  });
});
