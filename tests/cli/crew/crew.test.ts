import { describe, expect, it, onTestFinished } from "vitest";
import { UsageError } from "../../../src/cli/command.ts";
import { startCrew, usualWorkers, workersFor } from "../../../src/cli/crew/crew.ts";
import { storeInMemory } from "../../../src/cli/crew/shared-store.ts";
import { noStore } from "../../../src/model/kept.ts";

describe("how many are at work on a build", () => {
  it("is what was asked for", () => {
    expect([1, "2", 8, "64"].map(workersFor)).toEqual([1, 2, 8, 64]);
  });

  it("is what DOTDOWN_WORKERS says where the command does not", () => {
    onTestFinished(() => {
      delete process.env.DOTDOWN_WORKERS;
    });
    process.env.DOTDOWN_WORKERS = "7";
    expect(workersFor()).toBe(7);
    expect(workersFor("3")).toBe(3);
    process.env.DOTDOWN_WORKERS = "";
    expect(workersFor()).toBeUndefined();
  });

  it("is two where nobody asks, but one on one processor, or for a guide of more than 1,250 files", () => {
    expect(usualWorkers(164, 1)).toBe(1);
    expect(usualWorkers(164, 2)).toBe(2);
    expect(usualWorkers(1250, 8)).toBe(2);
    expect(usualWorkers(1251, 8)).toBe(1);
  });

  it.each(["0", "65", "two", "-1", "1.5", ""])("is refused where it is '%s'", (asked) => {
    expect(() => workersFor(asked)).toThrow(UsageError);
    expect(() => workersFor(asked)).toThrow("write a number from 1 to 64");
  });
});

it("a build of few rigs, or alone, or of a tool that is run from its sources, has its own store and nobody beside it", async () => {
  const store = storeInMemory();
  const source = { path: "", file: "", text: "", bytes: 0 };
  const sources = new Map(Array.from({ length: 20 }, (_, i) => [`rigs/${i}.md`, source]));
  const crew = startCrew({ sources, parts: undefined }, { shelf: store, disk: noStore }, 2);
  expect(crew.store).toBe(store);
  await crew.end();
});
