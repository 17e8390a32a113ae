import type { Root } from "mdast";
import remarkParse from "remark-parse";
import { unified } from "unified";
import { expect, it } from "vitest";
import { takeOwnPictures } from "../../../src/words/live/own-pictures.ts";

function taken(text: string) {
  const root: Root = unified().use(remarkParse).parse(text);
  const messages = takeOwnPictures(
    root,
    "a.md",
    new Map([
      ["pond.jpg", 1],
      ["bank.png", 1],
    ]),
  );
  return {
    kinds: root.children.map((node) => (node.type === "picture" ? node.reference : node.type)),
    told: messages.map(({ code, place }) => `${place.line}:${place.column} ${code}`),
  };
}

it("makes pictures of images on lines of their own, with their words and what stands below", () => {
  const { kinds, told } = taken(
    'Words.\n\n![The pond](../images/pond.jpg "In May")\n![The bank](images/bank.png)\n',
  );
  expect(told).toEqual([]);
  expect(kinds).toEqual([
    "paragraph",
    { picture: "image", image: "pond.jpg", alt: "The pond", caption: "In May" },
    { picture: "image", image: "bank.png", alt: "The bank" },
  ]);
});

it.each([
  ["A ![pond](../images/pond.jpg) here.", "1:3 image-in-sentence"],
  ["# A ![pond](../images/pond.jpg)", "1:5 image-in-sentence"],
  ["![pond][p]\n\n[p]: ../images/pond.jpg", "1:1 image-in-sentence"],
  ["![ ](../images/pond.jpg)", "1:1 no-alt-text"],
  ["![A pond](../images/pool.jpg)", "1:1 unknown-name"],
  ["![A pond](https://made-up.example/pond.jpg)", "1:1 image-not-usable"],
  ["![A pond](../rigs/pond.jpg)", "1:1 image-not-usable"],
])("tells what keeps %j from being shown", (text, message) => {
  expect(taken(text).told).toEqual([message]);
});
