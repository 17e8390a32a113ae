import type { Nodes } from "mdast";
import { visit } from "unist-util-visit";
import { describe, expect, it } from "vitest";
import { allShot } from "../../src/model/solved.ts";
import { shippedGuide as content, shippedMessages } from "../support/shipped-guide.ts";
import { bands } from "./trade-bands.ts";

/** Every rig at every depth that it is for, by name. */
const everyDepth = () =>
  content.rigs.flatMap((solved) =>
    solved.depths.map((depth) => ({ solved, depth, at: `${solved.rig.id} in ${depth.depthMm} mm` })),
  );

/** The words of a text, its headings too, one space apart. */
function wordsOf(body: Nodes): string {
  const pieces: string[] = [];
  visit(body, "text", ({ value }) => {
    pieces.push(value);
  });
  return pieces.join(" ").replace(/\s+/g, " ").trim();
}

const total = (figures: readonly number[]) => figures.reduce((sum, figure) => sum + figure, 0);

it("is read, solved and checked without a word", () => {
  expect(shippedMessages).toEqual([]);
});

describe("the sums of every rig at every depth", () => {
  it("leave out no depth", () => {
    for (const { rig, depths } of content.rigs) {
      expect(
        depths.map(({ depthMm }) => depthMm),
        rig.id,
      ).toEqual(rig.depthsMm);
    }
    expect(everyDepth().length).toBeGreaterThanOrEqual(3 * content.rigs.length);
  });

  it("add up: shot, spare pull, lock, draught and line", () => {
    for (const { solved, depth, at } of everyDepth()) {
      const shot = allShot(depth);
      expect(depth.massG, at).toBeCloseTo(total(shot.map(({ massG }) => massG)), 9);
      expect(depth.pullG, at).toBeCloseTo(total(shot.map(({ pullG }) => pullG)), 9);
      const spareG = solved.floatPullG - depth.pullG - solved.hookAndBaitPullG;
      expect(depth.sparePullG, at).toBeCloseTo(spareG, 9);
      const lock = depth.lockShot;
      expect(new Set(lock.map(({ role }) => role)).size, at).toBe(lock.length > 0 ? 1 : 0);
      expect(depth.lockShare, at).toBeCloseTo(total(lock.map(({ pullG }) => pullG)) / depth.pullG, 9);
      expect(lock.length > 0, at).toBe(solved.rig.float.heldByShot);
      expect(depth.draughtMm, at).toBeCloseTo(solved.floatLengthMm - depth.tipShowingMm, 6);
      expect(depth.draughtMm + depth.floatToHookMm, at).toBeCloseTo(depth.depthMm + depth.overdepthMm, 6);
    }
  });

  it("leave the float up, but for the lift rig whose anchor is meant to sink it", () => {
    for (const { solved, depth, at } of everyDepth()) {
      if (solved.rig.pattern.kind === "lift") expect(depth.sparePullG, at).toBeLessThan(0);
      else expect(depth.sparePullG, at).toBeGreaterThanOrEqual(-1e-9);
    }
  });

  it("set the shot between hook and float, a diameter apart, never heavier below", () => {
    for (const { depth, at } of everyDepth()) {
      const line = depth.lineShot;
      for (const [i, one] of line.entries()) {
        expect(one.fromHookMm, at).toBeGreaterThan(0);
        expect(one.fromHookMm, at).toBeLessThan(depth.floatToHookMm);
        const above = line[i + 1];
        if (!above) continue;
        const apartMm = above.fromHookMm - one.fromHookMm;
        expect(apartMm, at).toBeGreaterThanOrEqual(Math.max(one.diameterMm, above.diameterMm) - 1e-6);
        expect(above.massG, at).toBeGreaterThanOrEqual(one.massG);
      }
    }
  });

  // Tin may be used everywhere; some countries allow no lead at all, however small. Common practice, no source.
  it("are of tin to the smallest shot, and so is all that the tubs hold", () => {
    const used = everyDepth().flatMap(({ depth }) => allShot(depth));
    const held = content.library.tubs.flatMap(({ tub }) => tub);
    expect(used.length).toBeGreaterThan(400);
    expect(new Set([...used, ...held].map(({ metal }) => metal))).toEqual(new Set(["tin"]));
  });

  it("need the shot of the beginner's tub alone for the first rig and most others", () => {
    const { tub } = content.library.tubs.find(({ id }) => id === "beginner")!;
    const held = new Map(tub.map(({ size, count }) => [size, count]));
    const fromIt = content.rigs.filter(({ depths }) =>
      depths
        .map(allShot)
        .every((shot) =>
          shot.every(({ size }) => shot.filter((one) => one.size === size).length <= (held.get(size) ?? 0)),
        ),
    );
    expect(fromIt.map(({ rig }) => rig.id)).toContain("first-session");
    expect(fromIt.length).toBeGreaterThan(content.rigs.length / 2);
  });
});

describe("what the trade goes by", () => {
  it.each(bands.map((band) => [`${band.of}, ${band.basis}`, band] as const))(
    "%s: rigs keep to it or say why not",
    (_, { ranges, figure, outside }) => {
      const figures = everyDepth().flatMap(({ solved: { rig }, depth }) => {
        const value = figure(rig, depth);
        return value === undefined ? [] : [{ id: rig.id, value }];
      });
      expect(figures).not.toEqual([]);
      // Figures are read to two decimals.
      const usual = (value: number) =>
        ranges.some(([from, to]) => value >= from - 0.005 && value <= to + 0.005);
      const strays = new Set(figures.filter(({ value }) => !usual(value)).map(({ id }) => id));
      expect([...strays].sort()).toEqual(Object.keys(outside).sort());
      for (const { id, body } of content.library.rigs.filter(({ id }) => strays.has(id))) {
        expect(wordsOf(body).toLowerCase(), id).toContain(outside[id]!.toLowerCase());
      }
    },
  );
});

describe("the course", () => {
  it("has lessons of 400 to 900 words that end with what went in and what goes wrong", () => {
    expect(content.library.lessons.length).toBeGreaterThanOrEqual(20);
    for (const { id, body } of content.library.lessons) {
      const words = wordsOf(body).split(" ").length;
      expect(words, id).toBeGreaterThanOrEqual(400);
      expect(words, id).toBeLessThanOrEqual(900);
      const headings = body.children.filter(({ type }) => type === "heading").map(wordsOf);
      expect(headings, id).toEqual(expect.arrayContaining(["You can now", "Common mistakes"]));
    }
  });

  it("has rigs, fish, words and remedies enough to teach from", () => {
    const { rigs, species, glossary, troubles } = content.library;
    expect(rigs.length).toBeGreaterThanOrEqual(16);
    expect(species.length).toBeGreaterThanOrEqual(10);
    expect(glossary.length).toBeGreaterThanOrEqual(120);
    expect(troubles.length).toBeGreaterThanOrEqual(30);
  });
});
