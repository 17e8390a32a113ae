import { digestOf, digestOnce } from "../model/digest.ts";
import { type Keep, makeAnew } from "../model/kept.ts";
import type { Staged } from "../model/message.ts";
import type { Shelf, SolvedShelf } from "../model/shelf.ts";
import type { SolvedRig } from "../model/solved.ts";
import { rigNeeds } from "../solve/stock/rig-needs.ts";
import { solveShelf } from "../solve/stock/solve-shelf.ts";
import { findingMessage } from "../words/reason.ts";
import type { TableKit } from "../words/table-kit.ts";

/** What can be made up from each shelf; what stands against it is told at its packs. */
export function solveShelves(
  shelves: readonly Shelf[],
  rigs: readonly SolvedRig[],
  { words, figures }: TableKit,
  keep: Keep = makeAnew,
): Staged<readonly SolvedShelf[]> {
  const needsOf: typeof rigNeeds = (solved, making) =>
    keep("needs of rig", digestOf(digestOnce(solved.rig), making), () => rigNeeds(solved, making));
  const solved = shelves.map((shelf) => ({ shelf, answer: solveShelf(shelf, rigs, needsOf) }));
  return {
    value: solved.flatMap(({ answer }) => (answer.ok ? [answer.value] : [])),
    messages: solved.flatMap(({ shelf, answer }) =>
      answer.findings.map((finding) => findingMessage(finding, shelf.placeOf(["packs"]), words, figures)),
    ),
  };
}
