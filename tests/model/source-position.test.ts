import { expect, it } from "vitest";
import { positionOf } from "../../src/model/source-position.ts";

it("gives the place of a node that was read, and throws for one that was made", () => {
  const position = { start: { line: 3, column: 9 }, end: { line: 3, column: 12 } };
  expect(positionOf({ position })).toBe(position);
  expect(() => positionOf({})).toThrow("the node stands in no file");
});
