import { known } from "../core/lists.ts";

/** Takes things in an order that the work suits; what comes of it stands in theirs. */
export type InOrder = <T>(things: readonly T[]) => readonly T[];

export const asTheyStand: InOrder = (things) => things;

/**
 * The order in which one of several who share a piece of work takes it up, each thing passed over that another has done:
 * every second one begins at its share and goes on upwards, those between come from the end of theirs and go down. So
 * two meet once, in the middle, whoever is quicker, and who is done goes on with what is left to the others.
 *
 * @param party from 0
 * @param parties how many share the work
 */
export function orderOf(party: number, parties: number): InOrder {
  const isUp = party % 2 === 0;
  return (things) => {
    const from = Math.round((things.length * (isUp ? party : party + 1)) / parties);
    const turned = [...things.slice(from), ...things.slice(0, from)];
    return isUp ? turned : turned.reverse();
  };
}

/** What is made of each thing, in their order, whatever the order in which they are taken. */
export function madeInOrder<T, U>(
  inOrder: InOrder,
  things: readonly T[],
  make: (thing: T) => U,
): readonly U[] {
  const made = new Map(inOrder(things).map((thing) => [thing, make(thing)]));
  return things.map((thing) => known(made, thing));
}
