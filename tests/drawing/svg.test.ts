import { expect, test } from "vitest";
import { measureText } from "../../src/drawing/labels/font-metrics.ts";
import type { Drawing } from "../../src/drawing/model.ts";
import { drawingToSvg } from "../../src/drawing/svg.ts";

const drawing: Drawing = {
  widthMm: 20,
  heightMm: 10,
  title: "Ledge & hook",
  description: 'Under 1 m < "deep"',
  items: [
    {
      kind: "path",
      steps: [["M", 0, 0], ["L", 1.23456, -0.001], ["C", 1, 2, 3, 4, 5, 6], ["Z"]],
      fill: "water",
      stroke: { ink: "ink", widthMm: 0.35, dashMm: [1.6, 0.8], cap: "round" },
    },
    {
      kind: "group",
      xMm: 2,
      yMm: 0,
      artifact: true,
      items: [{ kind: "circle", cxMm: 1, cyMm: 1, radiusMm: 0.5, fill: "accent" }],
    },
    {
      kind: "text",
      xMm: 3,
      yMm: 4,
      text: "30 cm <b>",
      sizeMm: 3.175,
      face: "bold",
      ink: "soft",
      anchor: "end",
    },
  ],
};

test("a drawing becomes SVG with its title, description and real text", async () => {
  const svg = drawingToSvg(drawing, { idPrefix: "rig", theme: "light" });
  await expect(svg).toMatchFileSnapshot("../golden/drawing/painter.svg");
});

test("left to the page, colours are custom properties and nothing needs a style", () => {
  const svg = drawingToSvg(drawing, { idPrefix: "rig" });
  expect(svg).toContain('fill="var(--drawing-water)"');
  expect(svg).not.toMatch(/style|<script| on\w+=/);
});

test("a page has the same path from place to place, and says once that nothing is filled", () => {
  const svg = drawingToSvg(drawing, { idPrefix: "rig" });
  // 1.23456 and -0.001 are 1.23 and 0 in hundredths; the curve goes on from there.
  expect(svg).toContain('d="m0 0l1.23 0c-.23 2 1.77 4 3.77 6z"');
  expect(svg).toMatch(/<svg[^>]*? fill="none">/s);
  expect(svg.match(/fill="none"/g)).toHaveLength(1);
});

test("on a page a text keeps its width whatever font it is shown in", () => {
  const [, width] = /textLength="([\d.]+)"/.exec(drawingToSvg(drawing, { idPrefix: "rig" })) ?? [];
  expect(Number(width)).toBeCloseTo(measureText("30 cm <b>", 3.175, "bold"), 2);
});

test("two drawings in one page share no id", () => {
  const ids = (prefix: string) =>
    [...drawingToSvg(drawing, { idPrefix: prefix }).matchAll(/ id="([^"]+)"/g)].map((match) => match[1]);
  expect(ids("a")).toEqual(["a-1", "a-2"]);
  expect(ids("b").some((id) => ids("a").includes(id))).toBe(false);
});

test("a name with signs of markup stays within its id", () => {
  const hostile = '"><img src=x onerror=alert(1)>&';
  expect(drawingToSvg(drawing, { idPrefix: hostile })).toContain(
    'aria-labelledby="&quot;&gt;&lt;img src=x onerror=alert(1)&gt;&amp;-1"',
  );
  expect(drawingToSvg(drawing, { idPrefix: hostile })).not.toContain("<img");
});
