import { expect, test } from "vitest";
import { inMemory } from "../../../src/model/kept.ts";
import { sheetFiles } from "../../../src/print/card-files.ts";
import { keptCards } from "../../../src/print/cards/kept-cards.ts";
import { sampleWaggler } from "../../support/sample-rig.ts";
import { samplePress } from "../handout/sample-lesson.ts";
import { readPdf } from "../read-pdf.ts";
import { sampleInput } from "../sample-print.ts";

const press = { ...samplePress(), parts: inMemory(100) };
const [rig] = sampleInput({}, [sampleWaggler]).rigs;
const [card] = keptCards(rig!, "2 AAA", press);

async function sheetsOf(count: number) {
  const files = [];
  for await (const file of sheetFiles(Array(count).fill(card), card!.format, press)) files.push(file);
  return files;
}

test("so many cards as are printed at once stand in one file, and those that are more in files of their own", async () => {
  const names = ["sheet", "sheet-short-edge", "sheet-fold"];
  const one = await sheetsOf(100);
  expect(one.map(({ path }) => path)).toEqual(names.map((name) => `cards/${name}.pdf`));
  expect(one[0]!.printable!.title).not.toContain("part");
  const two = await sheetsOf(101);
  expect(two.map(({ path }) => path)).toEqual([
    ...names.map((name) => `cards/${name}.pdf`),
    ...names.map((name) => `cards/part-2/${name}.pdf`),
  ]);
  expect(two[0]!.printable!.title).toContain("part 1 of 2");
  const { pages } = await readPdf(two[3]!.content as Uint8Array);
  // One card, its front and its back.
  expect(pages).toHaveLength(2);
});

test("every sheet of cards says what the signs on a card's edge stand for, on its backs or, to be folded, on its one side", async () => {
  for (const { path, content } of await sheetsOf(2)) {
    const { pages } = await readPdf(content as Uint8Array);
    const text = pages.map((page) => page.text).join(" ");
    for (const told of ["block for still water", "arrow for running water", "Ring: for a hole."])
      expect(text, path).toContain(told);
  }
});
