import type { Library } from "../model/library.ts";
import { type Message, message } from "../model/message.ts";
import type { SolvedShelf } from "../model/shelf.ts";

/** What is weak in a shelf: packs of rigs that the guide leaves out, and shot that no pack takes for its metal. */
export function shelfMessages(solved: SolvedShelf, { rigs }: Library): readonly Message[] {
  const { packs, placeOf } = solved.shelf;
  const leftOut = packs.flatMap(({ rigId: rig }, at) =>
    rigs.some(({ id }) => id === rig)
      ? []
      : [message("shelf-rig-left-out", placeOf(["packs", at, "rig"]), { rig })],
  );
  return [...leftOut, ...unusedShot(solved)];
}

/** Shot of a size that the packs take in other metals alone. */
function unusedShot({ shelf, packs, others }: SolvedShelf): readonly Message[] {
  const takenBy = (of: SolvedShelf["packs"]) =>
    of.flatMap(({ needs }) => needs.flatMap(({ thing }) => (thing.kind === "shot" ? [thing] : [])));
  const [inPacks, inAll] = [takenBy(packs), takenBy([...packs, ...others])];
  const shot = shelf.stock.flatMap(({ thing }) => (thing.kind === "shot" ? [thing] : []));
  return shot.flatMap(({ size, metal }, at) => {
    const metals = inPacks.filter((one) => one.size === size).map((one) => one.metal);
    const isTaken = inAll.some((one) => one.size === size && one.metal === metal);
    if (isTaken || metals.length === 0) return [];
    const values = { size, metal, wanted: [...new Set(metals)] };
    return [message("shelf-shot-unused", shelf.placeOf(["shot", at, "metal"]), values)];
  });
}
