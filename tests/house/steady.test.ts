import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";

const root = join(import.meta.dirname, "..");

/** Quick tests and what they share; slow ones may measure, and stop builds at random moments. */
const files = readdirSync(root, { recursive: true, encoding: "utf8" })
  .map((path) => path.replaceAll("\\", "/"))
  .filter((path) => /\.(?:tsx?|mjs)$/.test(path) && !/^bench\/|\.slow\.test\./.test(path))
  .map((path) => ({ path, text: readFileSync(join(root, path), "utf8") }));

/** Where a text holds a pattern, as `path: line`. */
const matching = (pattern: RegExp) =>
  files.flatMap(({ path, text }) =>
    text.split("\n").flatMap((line) => (pattern.test(line) ? [`${path}: ${line.trim()}`] : [])),
  );

it("a quick test waits for the thing itself, never for a time that may be too short", () => {
  // A wait within a loop that asks for the thing is one for the thing.
  const sleeps =
    /^(?!.*\bwhile \().*(?:\b(?:setTimeout|waitForTimeout)\(|["']node:timers(?:\/promises)?["'])/;
  const allowed = [
    // Gives other work its turn, for no time at all.
    'cli/output/claim.test.ts: import { setImmediate as turn } from "node:timers/promises";',
    // Between tries to start a browser that another test unpacks.
    'support/browser.ts: import { setTimeout as wait } from "node:timers/promises";',
  ];
  const isThis = (line: string) => line.startsWith("house/steady.test.ts");
  expect(
    matching(sleeps)
      .filter((line) => !isThis(line))
      .sort(),
  ).toEqual(allowed);
});

it("a quick test draws the same numbers each time", () => {
  expect(matching(/\bMath\.random\(|\brandomUUID\(|\brandomBytes\(/)).toEqual([]);
  const unseeded = files.flatMap(({ path, text }) => {
    if (/\bfc\.configureGlobal\(\{[^}]*\bseed:/.test(text)) return [];
    return [...text.matchAll(/\bfc\.(?:assert|check|sample)\(/g)].flatMap(({ index }) =>
      /\bseed\b/.test(argumentsAt(text, text.indexOf("(", index))) ? [] : [path],
    );
  });
  expect(unseeded).toEqual([]);
});

/** What stands between a bracket and its counterpart; quotes with single brackets in them are none of fast-check's. */
function argumentsAt(text: string, from: number): string {
  let open = 0;
  for (let at = from; at < text.length; at++) {
    if (text[at] === "(") open += 1;
    if (text[at] === ")") open -= 1;
    if (open === 0) return text.slice(from, at);
  }
  return text.slice(from);
}
