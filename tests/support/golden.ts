import { readdirSync, statSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";

const root = "tests/golden";
const mostBytes = 20 * 1024;

/**
 * Holds what is told of drawings against text files of `tests/golden`, one a case; a file without a case fails, and one too large to
 * be read. What else is in the folder, and held by other tests, is named.
 */
export function holdAgainstGoldens(
  folder: string,
  cases: Readonly<Record<string, () => string>>,
  heldElsewhere: readonly string[] = [],
): void {
  test.each(Object.entries(cases))("%s is as it was looked at", async (name, told) => {
    await expect(told()).toMatchFileSnapshot(join(process.cwd(), root, folder, `${name}.txt`));
  });

  test("every golden file has a case and is small", () => {
    const own = Object.keys(cases).map((name) => `${name}.txt`);
    expect(readdirSync(join(root, folder)).sort()).toEqual([...own, ...heldElsewhere].sort());
    for (const name of own) expect(statSync(join(root, folder, name)).size).toBeLessThanOrEqual(mostBytes);
  });
}
