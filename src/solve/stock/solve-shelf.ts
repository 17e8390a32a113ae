import type { Answer } from "../../core/finding.ts";
import { answer } from "../../core/finding.ts";
import { known, paired } from "../../core/lists.ts";
import { packsFrom } from "../../core/session/shelf.ts";
import { kitFor } from "../../core/tackle/kit.ts";
import type { Shelf, SolvedPack, SolvedShelf } from "../../model/shelf.ts";
import type { SolvedRig } from "../../model/solved.ts";
import { rigNeeds } from "./rig-needs.ts";
import { inStock, priceIn } from "./stock-lines.ts";

/**
 * What can be made up from a shelf, and what to order; a pack of a rig that has no sums is left out.
 *
 * @param needsOf gives the same as what is usual, of whoever knows it already
 */
export function solveShelf(
  shelf: Shelf,
  rigs: readonly SolvedRig[],
  needsOf: typeof rigNeeds = rigNeeds,
): Answer<SolvedShelf> {
  const byId = new Map(rigs.map((solved) => [solved.rig.id, solved]));
  const told = shelf.packs.filter(({ rigId }) => byId.has(rigId));
  const rest = rigs
    .filter(({ rig }) => !told.some(({ rigId }) => rigId === rig.id))
    .map(({ rig }) => ({ rigId: rig.id, wanted: 0, ready: 0 }));
  const all = [...told, ...rest].map((pack) => {
    const solved = known(byId, pack.rigId);
    return {
      ...pack,
      solved,
      needs: needsOf(solved, shelf.pack),
      toMake: Math.max(0, pack.wanted - pack.ready),
    };
  });
  const { perPacket, stockOf } = inStock(shelf.stock);
  const found = packsFrom(
    all.map(({ rigId, needs, toMake }) => ({ id: rigId, needs, wanted: toMake })),
    stockOf,
  );
  if (!found.ok) return found;
  const wanted = all.map(({ needs, toMake }) =>
    needs.map((need) => ({ ...need, count: need.count * toMake })),
  );
  const order = kitFor(1, wanted, 0, perPacket, stockOf);
  if (!order.ok) return order;
  const packs = paired(all, found.value).map(
    ([{ solved, needs, toMake, ready }, { alone, inTurn, shortOf }]): SolvedPack => ({
      solved,
      needs,
      toMake,
      ready,
      alone,
      inTurn,
      shortOf,
    }),
  );
  const reorder = order.value
    .filter(({ count }) => count > 0)
    .map((line) => ({ ...line, ...priceIn(shelf.stock, line) }));
  // The sums of the rigs were held to be finite where they were done: to go through them all here would look them all up.
  const reckoned = answer({ reorder, packs: packs.map(({ solved: _, ...figures }) => figures) });
  if (!reckoned.ok) return reckoned;
  const value = {
    shelf,
    packs: packs.slice(0, told.length),
    others: packs.slice(told.length).filter(({ alone }) => alone > 0),
    reorder,
  };
  return { ...reckoned, value };
}
