import { describe, expect, it } from "vitest";
import { asTheyStand, madeInOrder, orderOf } from "../../src/model/in-order.ts";

const things = Array.from({ length: 24 }, (_, i) => i);

describe("an order for one of several who share a piece of work", () => {
  it.each([1, 2, 3, 4, 8, 40])("has everything once, for each of %i", (parties) => {
    for (let party = 0; party < parties; party++)
      expect([...orderOf(party, parties)(things)].sort((a, b) => a - b)).toEqual(things);
    expect(orderOf(0, parties)(things)).toEqual(asTheyStand(things));
    expect(orderOf(parties - 1, parties)([])).toEqual([]);
  });

  it.each([2, 4, 8])("lets %i who are as quick as each other do it with nothing done twice", (parties) => {
    const orders = Array.from({ length: parties }, (_, party) => orderOf(party, parties)(things));
    const done = new Set<number>();
    let rounds = 0;
    while (done.size < things.length) {
      const taken = orders.map((order) => order.find((one) => !done.has(one))!);
      expect(new Set(taken).size).toBe(parties);
      for (const one of taken) done.add(one);
      rounds++;
    }
    expect(rounds).toBe(things.length / parties);
  });

  it("lets two meet where they meet, though one is three times as quick", () => {
    const [up, down] = [orderOf(0, 2)(things), orderOf(1, 2)(things)];
    const done = new Map<number, string>();
    const take = (order: readonly number[], who: string) => {
      const next = order.find((one) => !done.has(one));
      if (next !== undefined) done.set(next, who);
    };
    while (done.size < things.length)
      for (const who of ["up", "down", "down", "down"]) take(who === "up" ? up : down, who);
    expect(things.map((one) => done.get(one))).toEqual(things.map((one) => (one < 6 ? "up" : "down")));
  });
});

it("what is made in another order stands in the order of what it is made from", () => {
  const taken: number[] = [];
  const made = madeInOrder(orderOf(1, 2), things, (one) => {
    taken.push(one);
    return `${one}`;
  });
  expect(taken).toEqual([...things].reverse());
  expect(made).toEqual(things.map(String));
});
