import { entry, rising } from "../core/lists.ts";
import type { Sink } from "../core/sink/sink-of-rig.ts";
import type { Mm } from "../core/units.ts";
import type { SolvedDepth, SolvedRig } from "../model/solved.ts";
import { cm, rounded } from "./data-figures.ts";

/** Where a rig's bait and shot are on their way down, and those of the same shot in the other pattern. */
function sinkingData({ rig, depths }: SolvedRig) {
  return {
    id: rig.id,
    depths: depths.flatMap((depth) => {
      const { inWater } = depth;
      if (!inWater) return [];
      const { sink, sister } = inWater;
      return {
        depthCm: cm(depth.depthMm),
        sink: sink.map((one) => onTheWay(one, depth.lineShot)),
        ...(sister && {
          sisterPattern: sister.arrangement,
          sisterSink: sister.sink.map((one) => onTheWay(one, sister.shot)),
        }),
      };
    }),
  };
}

/** Depth and distance from the landing at each moment, a row for each place along the line, from the hook up. */
function onTheWay(
  { landing, line }: Sink,
  shot: readonly Pick<SolvedDepth["lineShot"][number], "fromHookMm">[],
) {
  const { fromHookMm, moments } = line;
  const placesMm = rising([0, ...shot.map((one) => one.fromHookMm)]);
  const rows = placesMm.map((place) => fromHookMm.indexOf(place));
  const row = (values: (moment: (typeof moments)[number]) => readonly Mm[]) =>
    rows.map((at) => moments.map((moment) => rounded(entry(values(moment), at) / 10, 1)));
  return {
    landing,
    timesS: moments.map(({ timeS }) => rounded(timeS, 3)),
    fromHookCm: placesMm.map(cm),
    depthCm: row(({ depthMm }) => depthMm),
    asideCm: row(({ xMm }) => xMm),
  };
}

/** The text of a rig's `data/sinking/<id>.json`: apart from the rig's other data, which its cards carry. Figures of a row share a line. */
export function sinkingJson(solved: SolvedRig): string {
  const text = JSON.stringify(sinkingData(solved), null, 2).replace(
    /\[\n\s+(-?\d[^[\]{}"]*?)\n\s*\]/g,
    (_, row: string) => `[${row.replace(/\s+/g, " ")}]`,
  );
  return `${text}\n`;
}
