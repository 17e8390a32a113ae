import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type KitNeed, kitFor } from "../../../src/core/tackle/kit.ts";

const waggler: KitNeed[] = [
  { kind: "shot", name: "No 8, lead", count: 3 },
  { kind: "hook", name: "hook 18", count: 1 },
  { kind: "float", name: "Straight waggler", count: 1 },
];
const lift: KitNeed[] = [
  { kind: "shot", name: "No 8, lead", count: 2 },
  { kind: "hook", name: "hook 14", count: 1 },
];
const perPacket = ({ kind }: KitNeed) =>
  ({ float: 1, shot: 50, hook: 10, "hook length": 10, line: 100 })[kind];

describe("kit for a session", () => {
  // Eight learners, half as much again: No 8 (3 + 2) · 8 · 1.5 = 60, two packets of 50; hooks 8 · 1.5 = 12 of each
  // size, two packets of ten; floats 12, singly.
  it("is learners times rigs with spares, in whole packets", () => {
    const kit = kitFor(8, [waggler, lift], 0.5, perPacket);
    expect(
      kit.ok && kit.value.map(({ name, count, packets, bought }) => [name, count, packets, bought]),
    ).toEqual([
      ["Straight waggler", 12, 12, 12],
      ["No 8, lead", 60, 2, 100],
      ["hook 18", 12, 2, 20],
      ["hook 14", 12, 2, 20],
    ]);
  });

  it("does not buy one more for a rounding error", () => {
    // 10 · 1.1 is 11.000000000000002 in binary.
    const kit = kitFor(10, [[{ kind: "hook", name: "hook 18", count: 1 }]], 0.1, () => 1);
    expect(kit.ok && kit.value[0]!.count).toBe(11);
  });

  // By hand: 60 No 8 less 25 in the box are 35, one packet of 50; of 12 hooks 18 there are 14.
  it("takes what is in the box off once, though two rigs use it", () => {
    const inBox = ({ name }: KitNeed) => ({ "No 8, lead": 25, "hook 18": 14, "hook 14": 2 })[name] ?? 0;
    const kit = kitFor(8, [waggler, lift], 0.5, perPacket, inBox);
    expect(
      kit.ok && kit.value.map(({ name, inStock, packets, bought }) => [name, inStock, packets, bought]),
    ).toEqual([
      ["Straight waggler", 0, 12, 12],
      ["No 8, lead", 25, 1, 50],
      ["hook 18", 14, 0, 0],
      ["hook 14", 2, 1, 10],
    ]);
  });

  it("never buys too few, nor a packet too many, whatever is in the box", () => {
    const some = fc.record({
      learners: fc.integer({ min: 1, max: 20 }),
      rigs: fc.array(fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 1, maxLength: 4 }), {
        minLength: 1,
      }),
      spares: fc.integer({ min: 0, max: 100 }),
      packet: fc.integer({ min: 1, max: 60 }),
      inBox: fc.integer({ min: 0, max: 200 }),
    });
    fc.assert(
      fc.property(some, ({ learners, rigs, spares, packet, inBox }) => {
        const needs = rigs.map((counts) =>
          counts.map((count, size): KitNeed => ({ kind: "shot", name: `No ${size}`, count })),
        );
        const kit = kitFor(
          learners,
          needs,
          spares / 100,
          () => packet,
          () => inBox,
        );
        if (!kit.ok) throw new Error("no kit");
        for (const { name, inStock, packets, bought } of kit.value) {
          const each = needs.flat().filter((need) => need.name === name);
          const hundredths = each.reduce((sum, { count }) => sum + count, 0) * learners * (100 + spares);
          const needed = Math.ceil(hundredths / 100);
          expect(bought).toBe(packets * packet);
          expect(inStock).toBe(inBox);
          expect(bought + Math.min(inBox, needed)).toBeGreaterThanOrEqual(needed);
          if (packets > 0) expect(bought - packet + inBox).toBeLessThan(needed);
        }
      }),
      { seed: 20 },
    );
  });

  it("wants learners, spares, counts and packets that can be", () => {
    const code = (...of: Parameters<typeof kitFor>) => kitFor(...of).findings[0]?.code;
    expect(code(0, [waggler], 0.5, perPacket)).toBe("kit-learners");
    expect(code(1.5, [waggler], 0.5, perPacket)).toBe("kit-learners");
    expect(code(8, [waggler], -1, perPacket)).toBe("kit-spares");
    expect(code(8, [[{ kind: "hook", name: "hook", count: -1 }]], 0.5, perPacket)).toBe("kit-count");
    expect(code(8, [waggler], 0.5, () => 0)).toBe("kit-packet");
  });
});
