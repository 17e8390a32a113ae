import { beforeAll, describe, expect, test } from "vitest";
import { cardFormats } from "../../../src/print/cards/card-formats.ts";
import { layOutCard } from "../../../src/print/cards/lay-out-card.ts";
import { cardsOfBooklet } from "../../../src/print/handout/rig-cards.ts";
import { sampleWaggler } from "../../support/sample-rig.ts";
import { rawPdf } from "../raw-pdf.ts";
import { nodesOf, plain, type ReadPdf, readPdf } from "../read-pdf.ts";
import { handoutsOf, sampleLesson, samplePress } from "./sample-lesson.ts";

const { id, title } = sampleWaggler.rig;
const press = samplePress();
const card = layOutCard(sampleWaggler, cardFormats["ID-1"], press.guide, press.kit, press.fonts);
const picture = {
  type: "picture",
  reference: { picture: "rig-drawing", rig: id, depthMm: 1500, variant: "set" },
} as const;

function lesson(name: string, order: number, markdown: string, drawn: boolean) {
  const made = sampleLesson(name, order, `Lesson ${name}`, markdown);
  if (drawn) made.body.children.push(picture);
  return made;
}

const toRig = `Try [this rig](../rigs/${id}.html).`;
const lessons = [
  lesson("both", 1, `${toRig} See [the other](neither.html).`, true),
  lesson("linked", 2, toRig, false),
  lesson("drawn", 3, "Look at this.", true),
  lesson("neither", 4, "Nothing here.\n\n[Out](https://example.org/) and [back](both.html#part).", false),
];

let files: Map<string, Uint8Array>;
let booklet: ReadPdf;
beforeAll(async () => {
  files = await handoutsOf(lessons, press, [], new Map([[id, { ...card, from: "" }]]));
  booklet = await readPdf(files.get("handouts/booklet.pdf")!);
}, 120_000);

/** The words of the two sides of the card, as they are read from the card alone. */
const caution = "Local rules first";

describe("a handout", () => {
  test.each(["a5", "a4"])(
    "in %s ends with the cards of the rigs that it leads to, and no other",
    async (size) => {
      const withCard = await Promise.all(
        lessons.map(async ({ id: name }) => {
          const { pages } = await readPdf(files.get(`handouts/${name}-${size}.pdf`)!);
          return pages.filter(({ text }) => plain(text).includes(caution)).length;
        }),
      );
      expect(withCard).toEqual([1, 1, 0, 0]);
    },
  );
});

describe("a handout that leads to the safety page", () => {
  const page = {
    ...sampleLesson("safety", 0, "Stay safe", "## If it happens\n\nRing. Then [look](lessons/careful.html)."),
    path: "pages/safety.md",
  };
  const careful = lesson(
    "careful",
    1,
    `Mind the [safety page](../safety.html#if-it-happens). ${toRig}`,
    false,
  );
  const other = lesson("other", 2, "Nothing here.", false);
  const made = handoutsOf([careful, other], press, [page], new Map([[id, { ...card, from: "" }]]));

  test.each(["a5", "a4"])(
    "in %s has it, then the cards, and says behind each link on which page",
    async (size) => {
      const { pages } = await readPdf((await made).get(`handouts/careful-${size}.pdf`)!);
      const told = pages.map(({ text, tree }) => plain(`${text} ${tree?.words ?? ""}`));
      expect(told).toHaveLength(3);
      expect(told[0]).toContain("safety page (p.2)");
      expect(told[0]).toContain("this rig (p.3)");
      expect(told[0]).toContain("1 of 3");
      expect(told[1]).toContain("Stay safe");
      expect(told[1]).toContain("2 of 3");
      expect(told[2]).toContain(caution);
      expect(told[2]!.split(" ")).toContain("3");
    },
  );

  test("has links to those pages", async () => {
    const { pages } = await rawPdf((await made).get("handouts/careful-a5.pdf")!);
    const targets = pages.flatMap(({ annotations }) => annotations.map(({ target }) => target));
    expect(targets).toEqual([pages[1]!.ref, pages[2]!.ref]);
  });

  test("has it where it comes to fold, too; no other has it, nor itself twice", async () => {
    const heads = async (name: string) => {
      const { pages } = await readPdf((await made).get(`handouts/${name}.pdf`)!);
      return pages.flatMap(({ tree }) => nodesOf(tree, "H1").map(({ words }) => plain(words)));
    };
    expect((await heads("careful-a5-to-fold")).filter((head) => head === "Stay safe")).toHaveLength(1);
    expect(await heads("other-a4")).not.toContain("Stay safe");
    expect((await heads("page-safety-a4")).filter((head) => head === "Stay safe")).toHaveLength(1);
  });
});

describe("the booklet", () => {
  const rows = () =>
    nodesOf(booklet.pages[1]!.tree, "TOCI").map(({ children }) =>
      plain(children.map((cell) => cell.words).join(" ")),
    );

  test("has every rig's card at its end, its page in the contents and in its corner", () => {
    const at = booklet.pages.findIndex(({ text }) => plain(text).includes(caution) && text.includes(title));
    expect(at).toBe(booklet.pages.length - 1);
    expect(rows().at(-1)).toMatch(new RegExp(`Rig cards ${at + 1}$`));
    expect(plain(booklet.pages[at]!.text).split(" ")).toContain(String(at + 1));
  });

  test("says behind each link the page that it leads to, and nothing behind links out", () => {
    const words = plain(booklet.pages.map(({ tree }) => tree?.words ?? "").join(" "));
    const heads = booklet.pages.map(({ tree }) =>
      nodesOf(tree, "H1")
        .map((head) => plain(head.words))
        .join(),
    );
    const pageOf = (head: string) => heads.indexOf(head) + 1;
    expect(words).toContain(`this rig (p.${booklet.pages.length})`);
    expect(words).toContain(`the other (p.${pageOf("Lesson neither")})`);
    expect(words).toContain(`back (p.${pageOf("Lesson both")})`);
    expect(words).toMatch(/Out and/);
    expect(words).not.toContain("000");
  });

  test("has links where the text has them, and nowhere else", () => {
    const page = booklet.pages.find(({ tree }) =>
      nodesOf(tree, "H1").some(({ words }) => words === "Lesson neither"),
    );
    expect(nodesOf(page!.tree, "Link").map(({ words }) => plain(words))).toEqual([
      "Out",
      expect.stringMatching(/^back \(p\.\d+\)$/),
    ]);
  });

  test("alone has page numbers behind links to other texts", async () => {
    const { pages } = await readPdf(files.get("handouts/both-a5.pdf")!);
    const told = plain(pages.map(({ tree }) => tree?.words ?? "").join(" "));
    expect(told).toMatch(/the other(?! ?\(p\.)/);
    expect(plain((await readPdf(files.get("handouts/neither-a5.pdf")!)).pages[0]!.text)).not.toContain("(p.");
  });

  test("tells the right pages where the line for the cards is what takes the contents to another page", async () => {
    const many = Array.from({ length: 30 }, (_, i) => lesson(`l${i}`, i + 1, "Short.", false));
    const made = await handoutsOf(many, press, [], new Map([[id, { ...card, from: "" }]]));
    const { pages } = await readPdf(made.get("handouts/booklet.pdf")!);
    const heads = pages.map(({ tree }) =>
      nodesOf(tree, "H1")
        .map((head) => plain(head.words))
        .join(),
    );
    expect(heads.indexOf("Lesson l0")).toBe(3);
    const told = nodesOf(pages[1]!.tree, "TOCI")[0]!.children.map((cell) => plain(cell.words));
    expect(told).toEqual(["Lesson l0", String(heads.indexOf("Lesson l0") + 1)]);
  });
});

test("a booklet has the cards of all rigs, and of very many those that its texts lead to", () => {
  const cardsOf = (count: number) =>
    new Map(Array.from({ length: count }, (_, i) => [`rig-${i}`, { ...card, from: String(i) }] as const));
  const texts = [
    { links: ["site/rigs/rig-7.html#notes", "site/rigs/gone.html"] },
    { links: ["site/rigs/rig-3.html"] },
  ];
  expect([...cardsOfBooklet(texts, cardsOf(400)).keys()]).toHaveLength(400);
  expect([...cardsOfBooklet(texts, cardsOf(401)).keys()]).toEqual(["rig-3", "rig-7"]);
});
