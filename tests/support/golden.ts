import { readdirSync, statSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";

const root = "tests/golden";
const mostBytes = 20 * 1024;

/**
 * Holds what is told of drawings against text files of `tests/golden`, one a case; a file without a case fails, and one too large to
 * be read. Files of the folder that other tests hold are named.
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
    const files = readdirSync(join(root, folder), { withFileTypes: true }).filter((entry) => entry.isFile());
    const expected = [...Object.keys(cases).map((name) => `${name}.txt`), ...heldElsewhere];
    expect(files.map((entry) => entry.name).sort()).toEqual(expected.sort());
    for (const { name } of files)
      expect(statSync(join(root, folder, name)).size).toBeLessThanOrEqual(mostBytes);
  });
}
