import { readdirSync, readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { describe, expect, it } from "vitest";
import { casesOf, solveCase, withMessages } from "./cases.ts";

const collections = readdirSync(import.meta.dirname)
  .filter((name) => name.endsWith(".txt"))
  .map((name) => join(import.meta.dirname, name));

const cases = collections.flatMap((file) => casesOf(readFileSync(file, "utf8")));

describe("each mistake that somebody made has its message at the spot, and no other", () => {
  it.each(collections.map((file) => [basename(file), file]))("%s", async (_, file) => {
    const collection = readFileSync(file, "utf8");
    const intro = collection.slice(0, collection.indexOf("== "));
    const told: string[] = [];
    const unreasoned: string[] = [];
    for (const one of casesOf(collection)) {
      // `-u` writes what is said; whoever reads the difference judges it.
      const { messages } = await solveCase(one);
      told.push(withMessages(one, messages));
      if ((messages.length === 0) !== (one.silence !== undefined)) unreasoned.push(one.title);
    }
    expect.soft(unreasoned, "said nothing without a reason, or with one and said something").toEqual([]);
    await expect(`${intro}${told.join("\n")}`).toMatchFileSnapshot(file);
  });

  it("the table of them counts each once: those with an error, a warning alone, and nothing said for a reason", async () => {
    await expect(tableOfMistakes()).toMatchFileSnapshot("../../../docs/mistakes.md");
  });

  it("there are more than the 222 that were tried first, each once", () => {
    expect(cases.length).toBeGreaterThan(222);
    expect(new Set(cases.map(({ title }) => title)).size).toBe(cases.length);
  });
});

/** What was tried, by where the mistake is, and how it is met; then what is passed over and why. */
function tableOfMistakes(): string {
  const rows = collections.map((file) => {
    const [intro = "", ...texts] = readFileSync(file, "utf8").split(/^== /m);
    const silent = texts.filter((text) => /^= /m.test(text)).length;
    const errors = texts.filter((text) => /\^ error: |^@ .*error: /m.test(text)).length;
    return { where: intro.replace(/^# /, "").trim(), all: texts.length, errors, silent };
  });
  const sum = (of: (row: (typeof rows)[number]) => number) => rows.reduce((all, row) => all + of(row), 0);
  const line = (cells: readonly (string | number)[]) => `| ${cells.join(" | ")} |`;
  const passedOver = cases.flatMap(({ title, silence }) => (silence ? [line([title, silence])] : []));
  return `${[
    "# Mistakes that were tried",
    "",
    "Each is a small change of a guide without a fault, with the messages that it gets beside it, in `tests/checks/mistakes`. A test",
    "makes every one of them and holds each message to its words and its spot; it writes this table, too.",
    "",
    line(["where", "mistakes", "told as an error", "told as a warning", "nothing to tell"]),
    line(["---", "---", "---", "---", "---"]),
    ...rows.map(({ where, all, errors, silent }) =>
      line([where, all, errors, all - errors - silent, silent]),
    ),
    line([
      "in all",
      sum(({ all }) => all),
      sum(({ errors }) => errors),
      sum(({ all, errors, silent }) => all - errors - silent),
      sum(({ silent }) => silent),
    ]),
    "",
    "What there is nothing to tell of, and why:",
    "",
    line(["tried", "why it is right"]),
    line(["---", "---"]),
    ...passedOver,
  ].join("\n")}\n`;
}
