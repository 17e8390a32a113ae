import { expect, it } from "vitest";
import { outputFiles, solveContent } from "../../src/build/build.ts";
import { ContentError } from "../../src/build/content-error.ts";
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
  expect(said).toMatch(/1 error, 0 warnings$/);
});

it("a title too long for a card is told with its file and line", async () => {
  const said = await told(edited("rigs/plain.md", "title: Plain rig", `title: ${"Plain rigs ".repeat(30)}`));
  expect(said).toMatch(/^content\/rigs\/plain\.md\n {4}2:1 {2}error {4}plain, ID-1 card, back: .* too tall/);
});
