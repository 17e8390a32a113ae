import fc from "fast-check";
import { expect, test } from "vitest";
import { type Pack, packsFrom } from "../../../src/core/session/shelf.ts";
import { type KitNeed, kitKey } from "../../../src/core/tackle/kit.ts";

const shot = (count: number): KitNeed => ({ kind: "shot", name: "No 8", count });
const float = (name: string): KitNeed => ({ kind: "float", name, count: 1 });
const waggler: Pack = { id: "waggler", needs: [float("waggler"), shot(7)], wanted: 4 };
const stick: Pack = { id: "stick", needs: [float("stick"), shot(10)], wanted: 3 };

const onShelf =
  (stock: Readonly<Record<string, number>>) =>
  ({ name }: KitNeed) =>
    stock[name] ?? 0;

function made(packs: readonly Pack[], stock: Readonly<Record<string, number>>) {
  const found = packsFrom(packs, onShelf(stock));
  if (!found.ok) throw new Error("no packs");
  return found.value;
}

// By hand: 45 shot are six packs of 7, of which the floats allow five; four of them leave 17 shot, one pack of 10.
test("a shelf gives as many packs as the thing it has fewest of", () => {
  const [first, second] = made([waggler, stick], { waggler: 5, stick: 9, "No 8": 45 });
  expect(first).toMatchObject({ alone: 5, inTurn: 4, shortOf: [{ name: "waggler" }] });
  expect(second).toMatchObject({ alone: 4, inTurn: 1, shortOf: [{ name: "No 8" }] });
});

test("what is not there makes no pack, and a pack of nothing is none", () => {
  expect(made([waggler], { "No 8": 100 })[0]).toMatchObject({ alone: 0, inTurn: 0 });
  expect(packsFrom([{ ...waggler, needs: [] }], () => 5).ok).toBe(false);
});

test("no shot goes into two packs, and one more of any kind would want more than there is", () => {
  const packs = fc.array(fc.record({ shot: fc.integer({ min: 1, max: 12 }), wanted: fc.nat(6) }), {
    maxLength: 5,
  });
  fc.assert(
    fc.property(packs, fc.nat(80), fc.nat(6), (some, stock, floats) => {
      const list = some.map(({ shot: count, wanted }, at) => ({
        id: String(at),
        needs: [float("one"), shot(count)],
        wanted,
      }));
      const shelf = { one: floats, "No 8": stock };
      const found = made(list, shelf);
      const used = new Map<string, number>();
      for (const [at, { inTurn, alone, wanted }] of found.entries()) {
        const { needs } = list[at]!;
        for (const need of needs) {
          expect(alone * need.count).toBeLessThanOrEqual(onShelf(shelf)(need));
          used.set(kitKey(need), (used.get(kitKey(need)) ?? 0) + inTurn * need.count);
        }
        const left = (need: KitNeed) => onShelf(shelf)(need) - (used.get(kitKey(need)) ?? 0);
        if (inTurn < wanted) expect(needs.some((need) => left(need) < need.count)).toBe(true);
      }
      for (const need of [float("one"), shot(1)]) {
        expect(used.get(kitKey(need)) ?? 0).toBeLessThanOrEqual(onShelf(shelf)(need));
      }
    }),
    { seed: 20 },
  );
});
