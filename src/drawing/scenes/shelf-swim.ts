import { moveFloat, setTo } from "../../core/float/moved-float.ts";
import { first, last } from "../../core/lists.ts";
import type { SolvedRig } from "../../model/solved.ts";
import type { DrawingKit } from "../kit.ts";
import type { PlacedRig, Swim } from "./swim.ts";

/** Distances from the bank [mm] that keep the rigs apart in the picture. */
const shelfEndsMm = 4500;
const dropEndsMm = 5700;
const farMm = 14000;
const placesMm = { shelf: 3000, near: 7800, far: 11600 };

/** Hook above the bed for the rig off bottom [mm]; common practice, no source. */
const offBottomMm = 100;

/**
 * A swim made for a rig: a shelf as deep as the shallowest water the rig is for, a ledge, and the deepest beyond it.
 * The rig stands there at dead depth, off bottom, and laid on as far as its lowest shot needs to rest on the bed.
 */
export function shelfSwim(
  solved: SolvedRig,
  { words }: DrawingKit,
): { swim: Swim; rigs: readonly PlacedRig[] } {
  const shallow = first(solved.depths);
  const deep = last(solved.depths);
  const shelfMm = shallow === deep ? 0.55 * deep.depthMm : shallow.depthMm;
  const swim: Swim = {
    title: words("drawing.scenes.swim.shelf"),
    bed: [
      { fromBankMm: 0, depthMm: 0.45 * shelfMm },
      { fromBankMm: 1600, depthMm: shelfMm },
      { fromBankMm: shelfEndsMm, depthMm: shelfMm },
      { fromBankMm: dropEndsMm, depthMm: deep.depthMm },
      { fromBankMm: farMm, depthMm: deep.depthMm },
    ],
    ledgeFromBankMm: shelfEndsMm,
  };
  const rigs = [
    { fromBankMm: placesMm.near, solved, depth: setTo(deep, -offBottomMm) },
    { fromBankMm: placesMm.far, solved, depth: moveFloat(setTo(deep, 0), solved.rig.water, "over depth") },
  ];
  if (shallow === deep) return { swim, rigs };
  return { swim, rigs: [{ fromBankMm: placesMm.shelf, solved, depth: setTo(shallow, 0) }, ...rigs] };
}
