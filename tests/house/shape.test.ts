import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { type Node, parseSync, Visitor } from "oxc-parser";
import { describe, expect, it } from "vitest";

const root = join(import.meta.dirname, "../..");

const files = ["src", "templates"].flatMap((folder) =>
  readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
    .map((path) => `${folder}/${path.replaceAll("\\", "/")}`)
    .filter((path) => /\.tsx?$/.test(path)),
);

const roomOf = (path: string) => path.split("/", path.startsWith("src/") ? 2 : 1).join("/");

/** Assertions that something is there, which the compiler takes on trust: the most that a room may have. */
const mostAssertions: Readonly<Record<string, number>> = {
  "src/drawing": 21,
  "src/core": 18,
  "src/layout": 16,
  "src/content": 14,
  "src/cli": 15,
  "src/print": 13,
  "src/words": 12,
  "src/browser": 12,
  "src/checks": 10,
  templates: 5,
  "src/site": 4,
  "src/solve": 4,
};

const mostLines = 60;

/** Functions that are longer, and why they read better whole. */
const long: Readonly<Record<string, string>> = {
  "src/build/data.ts depthData": "one object, a line a field",
  "src/content/link/rig-link.ts linkRig": "one object, each field with the check that it needs",
  "src/core/loading/divide.ts waysToDivide": "nested loops whose bounds depend on each other",
  "src/drawing/float/state-line.ts lineAndEnd": "a case for each way that a line lies",
  "src/drawing/scenes/back-shot.ts drawBackShot": "a picture from back to front",
  "src/drawing/scenes/disgorger.ts head": "a picture from back to front",
  "src/drawing/scenes/feather.ts drawFeather": "a picture from back to front",
  "src/drawing/scenes/fill-the-reel.ts drawFillTheReel": "a picture from back to front",
  "src/drawing/scenes/land-fish.ts drawLandFish": "a picture from back to front",
  "src/drawing/scenes/large-reel.ts largeReel": "a picture from back to front",
  "src/drawing/scenes/swim.ts drawSwim": "a picture from back to front",
  "src/drawing/scenes/whip.ts drawWhip": "a picture from back to front",
  "src/print/pdf/pdf-part.ts paintPart": "painters that share one page",
  "src/solve/solve-rig.ts solveDepth": "the sums of a depth in their order",
  "src/words/figures.ts figuresWith": "one object, a line a kind of figure",
  "templates/cards/card-front.tsx CardFront": "a card from top to bottom",
  "templates/pages/fit.tsx FitPart": "a page from top to bottom",
};

const assertions: Record<string, number> = {};
const lengthy: string[] = [];
for (const path of files) {
  const text = readFileSync(join(root, path), "utf8");
  const lines = (node: Node) => text.slice(node.start, node.end).split("\n").length;
  const measured = (node: Node, name: string) => {
    if (lines(node) > mostLines) lengthy.push(`${path} ${name}`);
  };
  new Visitor({
    TSNonNullExpression() {
      assertions[roomOf(path)] = (assertions[roomOf(path)] ?? 0) + 1;
    },
    FunctionDeclaration(node) {
      measured(node, node.id?.name ?? "");
    },
    FunctionExpression(node) {
      measured(node, node.id?.name ?? "");
    },
    ArrowFunctionExpression(node) {
      measured(node, "=>");
    },
  }).visit(parseSync(path, text).program);
}

describe("the sources", () => {
  it("are all read", () => {
    expect(files.length).toBeGreaterThan(300);
  });

  it("assert that something is there no oftener than a room may", () => {
    const over = Object.entries(assertions).filter(([room, count]) => count > (mostAssertions[room] ?? 0));
    expect(over).toEqual([]);
    expect(Object.values(mostAssertions).reduce((sum, count) => sum + count, 0)).toBeLessThan(150);
  });

  it(`have no function over ${mostLines} lines but those that read better whole`, () => {
    expect(lengthy.sort()).toEqual(Object.keys(long).sort());
  });
});
