import { expect, it } from "vitest";
import { knotMessages } from "../../src/checks/knots.ts";
import type { KnotEntry } from "../../src/model/library.ts";
import { drawingKit } from "../support/drawing-kit.ts";

const crossed: KnotEntry = {
  id: "crossed",
  title: "Crossed lines",
  joins: "nothing",
  frame: [40, 20],
  steps: [
    {
      caption: "Cross them.",
      strands: [
        {
          name: "line",
          pattern: "line",
          path: [
            [2, 8],
            [38, 8],
          ],
        },
        {
          name: "cord",
          pattern: "cord",
          path: [
            [20, 2],
            [20, 18],
          ],
        },
      ],
      objects: [],
      arrows: [],
      labels: [],
    },
  ],
  placeOf: (path) => ({ file: "content/knots/crossed.yaml", line: Number(path[1]) + 6, column: 5 }),
};

it("says at its step that a knot's crossing is not declared", () => {
  expect(knotMessages({ knots: [crossed], lent: new Map() }, drawingKit.words)).toEqual([
    {
      severity: "error",
      place: { file: "content/knots/crossed.yaml", line: 6, column: 5 },
      code: "knot-crossing",
      values: {
        reason:
          "Step 1: the line crosses at 20, 8 and nothing says which strand is on top. Give one of them a height there.",
      },
    },
  ]);
});
