import { digestOnce } from "../model/digest.ts";
import { type Keep, makeAnew } from "../model/kept.ts";
import { message } from "../model/message.ts";
import type { SolvedRig } from "../model/solved.ts";
import type { Figures } from "../words/figures.ts";
import { type BedClaim, bedClaims } from "./bed-claims.ts";
import { sentencesOf } from "./blocks.ts";
import type { ContentCheck } from "./check.ts";
import { ownTexts } from "./own-texts.ts";

/**
 * What a rig's own file says of where its bait is, against where its setting puts it; in running water against where
 * the stream does.
 */
export const baitInNote: ContentCheck = ({ library, rigs, figures, keep = makeAnew }) => {
  const withSums = new Map(rigs.map((one) => [one.rig.id, one]));
  return library.rigs.flatMap((entry) => {
    const solved = withSums.get(entry.id);
    if (!solved) return [];
    return ownTexts(entry).flatMap((own) =>
      sentencesOf(own).flatMap(({ at, text }) =>
        bedClaims(text).flatMap(({ at: within, said, claim }) => {
          const is =
            solved.rig.water === "flowing"
              ? inStream(claim, heightsInStream(solved, keep), figures)
              : inStillWater(claim, solved, figures);
          const told = { said: said.replace(/\s+/g, " "), is: is ?? "" };
          return is === undefined ? [] : [message("bait-in-note", own.placeAt(at + within), told)];
        }),
      ),
    );
  });
};

/** Lengths that are the same by eye [mm], and shares of a depth. */
const sameMm = 5;
const sameShare = 0.1;

/** How the rig is set instead of what is said of it. That it is off the bed names a setting, which is held elsewhere. */
function inStillWater(claim: BedClaim, { rig }: SolvedRig, figures: Figures): string | undefined {
  const { overdepthMm, depthsMm } = rig;
  const isSo =
    claim.kind === "way down"
      ? depthsMm
          .filter((mm) => Math.abs(mm - (claim.depthMm ?? mm)) < 1)
          .every((mm) => Math.abs(1 + overdepthMm / mm - claim.share) <= sameShare)
      : claim.kind !== "on the bed" || overdepthMm >= 0;
  return isSo ? undefined : `is set ${figures.hookSet(overdepthMm, overdepthMm)}`;
}

/** How far the bait rides off the bed of a stream, held back or not [mm]. */
interface HeightInStream {
  readonly heldBackShare: number;
  readonly mm: number;
}

/** At all depths and paces of a rig; it follows from the rig. */
const heightsInStream = (solved: SolvedRig, keep: Keep): readonly HeightInStream[] =>
  keep("heights in a stream", digestOnce(solved.rig), () =>
    solved.depths.flatMap(({ depthMm, inWater }) =>
      (inWater?.flow ?? []).map(({ heldBackShare, hookDepthMm }) => ({
        heldBackShare,
        mm: depthMm - hookDepthMm,
      })),
    ),
  );

/** Where the stream puts the bait instead. What is said may be so at one pace or share held back: once is enough. */
function inStream(claim: BedClaim, all: readonly HeightInStream[], figures: Figures): string | undefined {
  const free = "free" in claim && claim.free;
  const heights = all.filter(({ heldBackShare }) => !free || heldBackShare === 0).map(({ mm }) => mm);
  if (heights.length === 0 || claim.kind === "way down") return undefined;
  const [least, most] = [Math.min(...heights), Math.max(...heights)];
  const isSo =
    claim.kind === "above the bed"
      ? claim.mm >= least - sameMm && claim.mm <= most + sameMm
      : claim.kind === "on the bed"
        ? least <= sameMm
        : most > sameMm;
  return isSo
    ? undefined
    : `has its bait ${figures.shortGap(least)} to ${figures.shortGap(most)} off the bed`;
}
