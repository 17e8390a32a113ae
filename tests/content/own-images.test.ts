import { PNG } from "pngjs";
import { describe, expect, it } from "vitest";
import { readImages } from "../../src/content/own-images.ts";
import { svgProblems } from "../../src/content/svg-problems.ts";
import type { Source } from "../../src/content/world.ts";
import { limits } from "../../src/model/limits.ts";
import type { Message } from "../../src/model/message.ts";

const png = PNG.sync.write({ width: 4, height: 3, data: Buffer.alloc(48) });

function source(path: string, content: Uint8Array | undefined, bytes = content?.length ?? 0): Source {
  return { path, file: `content/${path}`, text: "", bytes, ...(content && { content }) };
}

const read = (...sources: Source[]) => readImages(new Map(sources.map((one) => [one.path, one])));

const told = (messages: readonly Message[]) =>
  messages.map(({ code, place, values }) => [
    place.line === undefined ? "" : `${place.line}:${place.column}`,
    (values as { reason?: string }).reason ?? code,
  ]);

describe("the pictures of a guide's own", () => {
  it("are what lies in images/ by its name", () => {
    const { images, messages } = read(source("images/Pond.PNG", png), source("rigs/pond.md", undefined));
    expect(messages).toEqual([]);
    expect([...images]).toMatchObject([["Pond.PNG", { kind: "png", path: "content/images/Pond.PNG" }]]);
  });

  it.each([
    [
      "images/pond.png",
      new Uint8Array([1, 2, 3]),
      "the picture cannot be shown: no picture can be found in it",
    ],
    ["images/pond.jpg", png, "the picture cannot be shown: its name says jpeg, but it is png"],
    ["images/our pond.png", png, "the file's name has a space (U+0020) in it"],
  ])("refuses %s", (path, content, reason) => {
    const { images, messages } = read(source(path, content));
    expect(images.size).toBe(0);
    expect(told(messages)).toEqual([["", reason]]);
  });

  it("refuses what is too large, in bytes or in pixels, before it is opened", () => {
    const { messages } = read(source("images/pond.png", undefined, limits.imageBytes.most + 1));
    expect(messages).toMatchObject([{ code: "too-much", values: { limit: "imageBytes" } }]);
    const bomb = Uint8Array.from(png);
    new DataView(bomb.buffer).setUint32(16, 100_000);
    new DataView(bomb.buffer).setUint32(20, 100_000);
    expect(read(source("images/pond.png", bomb)).messages).toMatchObject([
      { code: "too-much", values: { limit: "imagePixels", found: 1e10 } },
    ]);
  });
});

/** Source of what runs or loads something: SVG 2, W3C, chapters 12 (embedded content), 15 (scripting) and 16 (linking). */
describe("a drawing", () => {
  const svg = (inside: string, attributes = "") =>
    `<svg xmlns="http://www.w3.org/2000/svg" ${attributes}>\n${inside}\n</svg>`;

  it("is fine with shapes, styles, uses and pictures within it", () => {
    const fine = `<style>.a { fill: url(#g) }</style><linearGradient id="g"/>
      <use href="#g" xmlns:xlink="http://www.w3.org/1999/xlink" xlink:href="#g"/>
      <image href="data:image/png;base64,AAAA"/><path style="fill:url('#g')" d="M0 0z"/>`;
    expect(svgProblems(svg(fine), "a.svg")).toEqual([]);
  });

  it.each([
    ["<script>alert(1)</script>", "2:1", "it has a <script>"],
    ["<g>\n <foreignObject/></g>", "3:2", "it has a <foreignObject>"],
    ['<path onclick="x()"/>', "2:1", '"onclick" runs a program in its <path>'],
    ['<a href="javascript:x()"/>', "2:1", "a link leads elsewhere in its <a>"],
    ['<image href="https://made-up.example/a.png"/>', "2:1", "a link leads elsewhere in its <image>"],
    ['<image href="data:image/svg+xml,x"/>', "2:1", "a link leads elsewhere in its <image>"],
    [
      '<path fill="url(https://made-up.example#a)"/>',
      "2:1",
      '"fill" loads something from elsewhere in its <path>',
    ],
    ["<style>@import 'x.css';</style>", "2:1", "its style loads something from elsewhere"],
    ["<style>a { fill: url(x.svg#a) }</style>", "2:1", "its style loads something from elsewhere"],
  ])("with %s is refused at its place", (inside, place, reason) => {
    expect(told(svgProblems(svg(inside), "a.svg"))).toEqual([
      [place, `the drawing cannot be shown: ${reason}`],
    ]);
  });

  it("that is none, or declares entities, is refused", () => {
    expect(told(svgProblems("<html/>", "a.svg"))[0]![1]).toContain("it is no SVG");
    expect(told(svgProblems("<svg><g></svg>", "a.svg"))[0]![1]).toContain("it is no SVG");
    const bomb = `<!DOCTYPE svg [<!ENTITY a "aaaa">]>${svg("&a;")}`;
    expect(told(svgProblems(bomb, "a.svg"))[0]![1]).toContain("it declares entities");
    expect(svgProblems(" ".repeat(limits.svgSigns.most + 1), "a.svg")).toMatchObject([{ code: "too-much" }]);
  });
});
