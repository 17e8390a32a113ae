import { spotsWithoutRig } from "../checks/swims.ts";
import type { Answer } from "../core/finding.ts";
import { entry } from "../core/lists.ts";
import type { DrawingKit } from "../drawing/kit.ts";
import type { ChosenSpot, SpotRig } from "../model/choosing.ts";
import { digestOf, digestOnce } from "../model/digest.ts";
import { inMemory, type Keep, makeAnew } from "../model/kept.ts";
import type { Library } from "../model/library.ts";
import type { Message } from "../model/message.ts";
import type { Rig } from "../model/rig.ts";
import type { SolvedRig } from "../model/solved.ts";
import type { SwimEntry, SwimText } from "../model/swim.ts";
import type { SwimNotes } from "../model/swim-notes.ts";
import type { Solve } from "../solve/choosing/choose.ts";
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
  const around = digestOf(kit.saidFrom, aroundSwims(library));
  const swims = library.swims.map((swim) => {
    const notes = library.notes.filter((one) => one.swim === swim.id);
    const from = digestOf(around, swim, notes);
    const { rigs, ...told } = keep("swim", from, () => tellSwim(swim, notes, library, kit, keep));
    return { text: { swim, ...told }, spots: rigs.map((one) => rigAtSpot(swim, one, keep)) };
  });
  const spots = swims.flatMap((swim) => swim.spots);
  return { spots, texts: swims.map(({ text }) => text), messages: spotsWithoutRig(spots) };
}

/** All that a swim is told from besides itself, guide and words: the rigs, and the rules by which they are chosen. */
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
  const solve: Solve = (rig) => atHand("rig at a spot", whatChanges(rig), () => solvedOnce(rig, keep));
  const spots: ChosenSpot[] = [];
  for (const spot of chosenSpots({ ...library, swims: [swim] }, solve)) spots.push(withSumsLater(spot, keep));
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

/** Only the best rigs are drawn: sums of all that are offered at all spots would be held for as long as the build takes. */
function withSumsLater({ choice, ...spot }: ChosenSpot, keep: Keep): ChosenSpot {
  const offered = choice.offered.map(({ made: { rig }, ...told }) => ({
    ...told,
    get made(): SolvedRig {
      return madeUp(rig, keep);
    },
  }));
  return { ...spot, choice: { ...choice, offered } };
}

/** The sums of a rig that was offered, so that it can be made. */
function madeUp(rig: Rig, keep: Keep): SolvedRig {
  const made = solvedOnce(rig, keep);
  if (!made.ok) throw new RangeError(`${rig.id} cannot be made up`);
  return made.value;
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
