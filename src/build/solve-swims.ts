import { spotsWithoutRig } from "../checks/swims.ts";
import type { Answer } from "../core/finding.ts";
import type { DrawingKit } from "../drawing/kit.ts";
import type { ChosenSpot } from "../model/choosing.ts";
import { inMemory, type Keep, makeAnew } from "../model/kept.ts";
import type { Library } from "../model/library.ts";
import type { Message } from "../model/message.ts";
import type { Rig } from "../model/rig.ts";
import type { SolvedRig } from "../model/solved.ts";
import type { SwimText } from "../model/swim.ts";
import type { Solve } from "../solve/choosing/choose.ts";
import { chosenSpots } from "../solve/choosing/chosen-spots.ts";
import { solveRig } from "../solve/solve-rig.ts";
import { swimText } from "../words/swim-text.ts";

/** Rigs for each spot of the swims, what is told of each swim, and spots for which the guide has no rig. */
export function solveSwims(
  library: Library,
  kit: DrawingKit,
  keep: Keep,
): {
  readonly spots: readonly ChosenSpot[];
  readonly texts: readonly SwimText[];
  readonly messages: readonly Message[];
} {
  // At a spot the same rigs are asked for by every learner and in every wind, at the next one none of them.
  const atHand = inMemory(library.rigs.length, makeAnew);
  const solve: Solve = (rig) => atHand("rig at a spot", whatChanges(rig), () => solvedOnce(rig, keep));
  const spots: ChosenSpot[] = [];
  for (const spot of chosenSpots(library, solve)) spots.push(withSumsLater(spot, keep));
  const texts = library.swims.map((swim) => {
    const own = spots.filter((one) => one.swim === swim);
    const notes = library.notes.filter((one) => one.swim === swim.id);
    const told = (withRuledOut: boolean) => swimText(swim, own, notes, library.guide, kit, { withRuledOut });
    return { swim, onPage: told(true), onSheet: told(false) };
  });
  return { spots, texts, messages: spotsWithoutRig(spots) };
}

/** All in which the rig of a guide differs from itself at another spot. */
const whatChanges = ({ id, depthsMm, pacesMs, rodLengthMm }: Rig) =>
  JSON.stringify([id, depthsMm, pacesMs, rodLengthMm]);

/** Only the best rigs are drawn: sums of all that are offered at all spots would be held for as long as the build takes. */
function withSumsLater({ choice, ...spot }: ChosenSpot, keep: Keep): ChosenSpot {
  const offered = choice.offered.map(({ made: { rig }, ...told }) => ({
    ...told,
    get made(): SolvedRig {
      const made = solvedOnce(rig, keep);
      // It was offered, so it can be made.
      if (!made.ok) throw new RangeError(`${rig.id} cannot be made up`);
      return made.value;
    },
  }));
  return { ...spot, choice: { ...choice, offered } };
}

/** The sums of a rig at a spot. */
function solvedOnce(rig: Rig, keep: Keep): Answer<SolvedRig> {
  const { value, findings } = keep("rig at a spot", JSON.stringify(rig), () => {
    const solved = solveRig(rig);
    if (!solved.ok) return { value: undefined, findings: solved.findings };
    // The rig itself is at hand.
    const { rig: _, ...sums } = solved.value;
    return { value: sums, findings: solved.findings };
  });
  return value ? { ok: true, value: { ...value, rig }, findings } : { ok: false, findings };
}
