import { bedDepth, bedOf, ledgesOf } from "../core/swim/bed.ts";
import type { SpotRig } from "../model/choosing.ts";
import { type Message, message } from "../model/message.ts";
import type { HazardKind, SwimEntry } from "../model/swim.ts";
import type { SwimNotes } from "../model/swim-notes.ts";
import type { Figures } from "../words/figures.ts";
import type { ContentCheck } from "./check.ts";

/** What is as deep, and as fast, asks for a word of caution; common practice, no source. */
const deepMm = 1200;
const fastMs = 0.5;

/** Swims that do not name a hazard which their figures show, and places of which the soundings know little. */
export const swimsAsFound: ContentCheck = ({ library, figures }) =>
  library.swims.flatMap((swim) => [
    ...untoldHazards(swim, figures),
    ...unseenLedges(swim, figures),
    ...unsureSpots(swim, figures),
    ...library.notes
      .filter((notes) => notes.swim === swim.id)
      .flatMap((notes) => otherDepths(swim, notes, figures)),
  ]);

function untoldHazards(swim: SwimEntry, figures: Figures): readonly Message[] {
  const deepest = Math.max(...swim.lines.flatMap(({ soundings }) => soundings.map((one) => one.depthMm)));
  const { paceMs = 0 } = swim;
  const shown: readonly (readonly [HazardKind, string])[] = [
    ...(deepest >= deepMm ? [["deep water", `it is ${figures.shortDepth(deepest)} deep`] as const] : []),
    ...(paceMs >= fastMs ? [["fast water", `it runs at ${figures.speed(paceMs)}`] as const] : []),
  ];
  return shown
    .filter(([kind]) => !swim.hazards.some((hazard) => hazard.kind === kind))
    .map(([hazard, found]) => message("swim-hazard-untold", swim.placeOf(["hazards"]), { found, hazard }));
}

/** Ledges that somebody wrote down and that the soundings do not show. */
function unseenLedges({ lines, placeOf }: SwimEntry, figures: Figures): readonly Message[] {
  return lines.flatMap(({ title, soundings, features }, line) => {
    const ledges = ledgesOf(bedOf(soundings));
    return features.flatMap(({ what, fromBankMm }, at) =>
      what === "ledge" && !ledges.some(({ fromMm, toMm }) => fromBankMm >= fromMm && fromBankMm <= toMm)
        ? message("swim-ledge-not-found", placeOf(["lines", line, "features", at, "from-bank"]), {
            found: figures.shortDepth(fromBankMm),
            line: title,
          })
        : [],
    );
  });
}

function unsureSpots({ spots, placeOf }: SwimEntry, figures: Figures): readonly Message[] {
  return spots.flatMap(({ title, line, fromBankMm }, at) => {
    const depth = bedDepth(bedOf(line.soundings), fromBankMm);
    return depth && !depth.isNear
      ? message("swim-spot-unsure", placeOf(["spots", at, "from-bank"]), {
          spot: title,
          nearest: figures.shortDepth(depth.nearestMm),
        })
      : [];
  });
}

/** Spots that no rig of the guide can be fished at. */
export function spotsWithoutRig(spots: readonly SpotRig[]): readonly Message[] {
  return spots.flatMap(({ swim, spot, rig }) => {
    if (rig) return [];
    const place = swim.placeOf(["spots", swim.spots.indexOf(spot)]);
    return [message("swim-spot-without-rig", place, { spot: spot.title })];
  });
}

/** A depth that differs by as much from what the soundings give is worth a second look; common practice, no source. */
const otherMm = 150;

/** Depths that were found where soundings and level say otherwise. */
function otherDepths(
  { spots }: SwimEntry,
  { depths, levelMm = 0, placeOf }: SwimNotes,
  figures: Figures,
): readonly Message[] {
  return depths.flatMap(({ spot: title, depthMm }, at) => {
    const spot = spots.find((one) => one.title === title);
    const plumbed = spot && bedDepth(bedOf(spot.line.soundings), spot.fromBankMm);
    if (!plumbed) return [];
    const [least, most] = [plumbed.shallowestMm + levelMm, plumbed.deepestMm + levelMm];
    if (depthMm >= least - otherMm && depthMm <= most + otherMm) return [];
    return [
      message("notes-depth-other", placeOf(["depths", at, "depth"]), {
        spot: title,
        found: figures.shortDepth(depthMm),
        plumbed: figures.shortDepth(plumbed.depthMm + levelMm),
      }),
    ];
  });
}
