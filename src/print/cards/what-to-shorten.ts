import type { CardNotes } from "../../model/card-content.ts";
import type { SolvedRig } from "../../model/solved.ts";
import type { Shortened } from "../does-not-fit.ts";
import type { FinishedCard } from "./lay-out-card.ts";

/** Lays the card of a rig out that does not fit, with some text of it in place of its own. */
export type LayOutAs = (solved: SolvedRig, notes: CardNotes) => FinishedCard;

const short = "–";

export const fits = ({ front, back }: FinishedCard): boolean =>
  front.overflows.length + back.overflows.length === 0;

/** The first text that, were it short, would let a card fit; the rig's shot where no text would. */
export function whatToShorten(solved: SolvedRig, notes: CardNotes, layOut: LayOutAs): Shortened {
  const { rig } = solved;
  const withRig = (changed: Partial<SolvedRig["rig"]>): SolvedRig => ({
    ...solved,
    rig: { ...rig, ...changed },
  });
  const tries: readonly [Shortened, SolvedRig, CardNotes][] = [
    ["title", withRig({ title: short }), notes],
    ["change-first", solved, { ...notes, changeFirst: [short] }],
    ["float", withRig({ float: { ...rig.float, title: short } }), notes],
    ["bait", withRig({ bait: { ...rig.bait, title: short } }), notes],
  ];
  const cure = tries.find(([, changed, as]) => fits(layOut(changed, as)));
  return cure?.[0] ?? "shot";
}
