import { spotsWithoutRig } from "../checks/swims.ts";
import type { Answer } from "../core/finding.ts";
import { entry } from "../core/lists.ts";
import type { DrawingKit } from "../drawing/kit.ts";
import type { SpotRig } from "../model/choosing.ts";
import { digestOf, digestOnce } from "../model/digest.ts";
import { inMemory, type Keep, makeAnew } from "../model/kept.ts";
import type { Library } from "../model/library.ts";
import type { Message } from "../model/message.ts";
import type { Rig } from "../model/rig.ts";
import type { SolvedRig } from "../model/solved.ts";
import type { SwimEntry, SwimText } from "../model/swim.ts";
import type { SwimNotes } from "../model/swim-notes.ts";
import { type Tried, type Try, verdictOf } from "../solve/choosing/choose.ts";
import { chosenSpots } from "../solve/choosing/chosen-spots.ts";
import { withWater } from "../solve/in-water.ts";
import { solveRig } from "../solve/solve-rig.ts";
import { swimText } from "../words/swim-text.ts";
import type { KitOffPages } from "./kit-of.ts";

/** The rig for each spot of the swims, what is told of each swim, and spots for which the guide has no rig. */
export function solveSwims(
  library: Library,
  kit: KitOffPages,
  keep: Keep,
): {
  readonly spots: readonly SpotRig[];
  readonly texts: readonly SwimText[];
  readonly messages: readonly Message[];
} {
  const around = digestOf(kit.saidFrom, library.guide.rules, aroundSwims(library));
  const swims = library.swims.map((swim) => {
    const notes = library.notes.filter((one) => one.swim === swim.id);
    const from = digestOf(around, swim, notes);
    const { rigs, ...told } = keep("swim", from, () => tellSwim(swim, notes, library, kit, keep));
    return { text: { swim, ...told }, spots: rigs.map((one) => rigAtSpot(swim, one, keep)) };
  });
  const spots = swims.flatMap((swim) => swim.spots);
  return { spots, texts: swims.map(({ text }) => text), messages: spotsWithoutRig(spots) };
}

/** All that a swim is told from besides itself, rules and words: the rigs, and the rules by which they are chosen. */
function aroundSwims({ choosing, rigs, species, lines }: Library): unknown {
  const choosable = rigs.map(({ id, title, level, catches, rig }) => {
    return [id, title, level, catches, digestOnce(rig)];
  });
  const fish = species.map(({ title, also }) => [title, also]);
  return [choosing, choosable, fish, lines];
}

/** The best rig for a spot of a swim, by its place among them. */
interface KeptRig {
  readonly at: number;
  readonly rig: Rig | undefined;
}

function tellSwim(
  swim: SwimEntry,
  notes: readonly SwimNotes[],
  library: Library,
  kit: DrawingKit,
  keep: Keep,
): Omit<SwimText, "swim"> & { readonly rigs: readonly KeptRig[] } {
  // At a spot the same rigs are asked for by every learner and in every wind, at the next one none of them.
  const atHand = inMemory(library.rigs.length, makeAnew);
  const tryOut: Try = (rig) => atHand("verdict at a spot", whatChanges(rig), () => triedOnce(rig, keep));
  const spots = chosenSpots({ ...library, swims: [swim] }, tryOut);
  const told = (withRuledOut: boolean) => swimText(swim, spots, notes, library.guide, kit, { withRuledOut });
  const rigs = spots.map(({ spot, choice }) => {
    return { at: swim.spots.indexOf(spot), rig: choice.offered[0]?.made.rig };
  });
  return { rigs, onPage: told(true), onSheet: told(false) };
}

/** All in which the rig of a guide differs from itself at another spot. */
const whatChanges = ({ id, depthsMm, pacesMs, rodLengthMm }: Rig) =>
  JSON.stringify([id, depthsMm, pacesMs, rodLengthMm]);

const rigAtSpot = (swim: SwimEntry, { at, rig }: KeptRig, keep: Keep): SpotRig => ({
  swim,
  spot: entry(swim.spots, at),
  ...(rig && { rig, made: () => toDraw(madeUp(rig, keep)) }),
});

/** With how its line hangs in a stream, which a drawing shows; what else is told of a spot does without. */
function toDraw(made: SolvedRig): SolvedRig {
  if (made.rig.water === "still") return made;
  const inWater = withWater(made);
  return inWater.ok ? inWater.value : made;
}

/**
 * What comes of the sums of a rig at a spot. Many rigs are tried at each spot and only the best are made up: the sums of all
 * would take much room wherever they are held or kept.
 */
function triedOnce(rig: Rig, keep: Keep): Answer<Tried> {
  const { verdict, findings } = keep("verdict at a spot", JSON.stringify(rig), () => {
    const solved = solveRig(rig);
    return { verdict: solved.ok ? verdictOf(solved.value) : undefined, findings: solved.findings };
  });
  if (!verdict) return { ok: false, findings };
  const value = {
    verdict,
    get made() {
      return madeUp(rig, keep);
    },
  };
  return { ok: true, value, findings };
}

/** The sums of a rig that was offered at a spot. */
function madeUp(rig: Rig, keep: Keep): SolvedRig {
  const sums = keep("rig at a spot", JSON.stringify(rig), () => {
    const solved = solveRig(rig);
    if (!solved.ok) throw new RangeError(`${rig.id} cannot be made up`);
    // The rig itself is at hand.
    const { rig: _, ...sums } = solved.value;
    return sums;
  });
  return { ...sums, rig };
}
