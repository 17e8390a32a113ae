import { PassThrough } from "node:stream";
import { expect, it } from "vitest";
import { askingOn } from "../../src/cli/asking.ts";
import { UsageError } from "../../src/cli/command.ts";

it("takes lines that were typed ahead as the answers to what is asked next, and says where there are no more", async () => {
  const input = new PassThrough();
  const output = new PassThrough();
  const asking = askingOn(input, output);
  input.end("Mine\nUs\n");
  expect(await asking.ask("Name? ")).toBe("Mine");
  expect(await asking.ask("Who? ")).toBe("Us");
  await expect(asking.ask("Water? ")).rejects.toThrow(UsageError);
  expect(String(output.read())).toContain("Who? ");
  asking.close();
});
