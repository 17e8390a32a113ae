import { groundbaitBallMm } from "../core/feed/groundbait.ts";
import { entry, last } from "../core/lists.ts";
import { landingsOf } from "../core/sink/sink-of-rig.ts";
import type { Ms } from "../core/units.ts";
import type { InWater } from "../model/in-water.ts";
import type { Rig } from "../model/rig.ts";
import type { SolvedDepth, SolvedRig } from "../model/solved.ts";
import { feedTable } from "../solve/feed-in-water.ts";
import { fishRiseMs, knockMm } from "../solve/lift-and-pull.ts";
import { bulkGains } from "../solve/sister-verdict.ts";
import { mayLiftMm } from "../solve/too-light.ts";
import type { TableKit } from "./table-kit.ts";
import type { TextTable } from "./tables.ts";
import { feedPlaceTable, flowTable, liftTable, sinkTable } from "./water-tables.ts";
import { whyBait } from "./why-bait.ts";
import { keyOf } from "./words.ts";

/** A table with its caption and what is to be said below it. */
export interface TextPart {
  readonly caption: string;
  readonly table: TextTable;
  readonly notes: readonly string[];
}

/** How a rig sinks, how its bite feels and how it hangs in each of its paces, as text for page and sheet alike. */
export interface WaterText {
  readonly sink: TextPart;
  readonly lift?: TextPart;
  /** One for each pace. */
  readonly flow: readonly TextPart[];
}

/** Why the bait is behind the float in some lines of the table and ahead of it in others. */
function whyNote({ flow }: InWater, kit: TableKit): string[] {
  const leads = flow.map(({ leadMm }) => leadMm);
  const [behind, ahead] = [whyBait(Math.min(...leads), kit), whyBait(Math.max(...leads), kit)];
  if (behind === undefined || ahead === undefined || behind === ahead) return [];
  return [kit.words("page.in-water.why", { behind, ahead })];
}

/** @returns none where the water's part was not reckoned */
export function waterText(
  { rig }: SolvedRig,
  { inWater }: SolvedDepth,
  kit: TableKit,
): WaterText | undefined {
  if (!inWater) return undefined;
  const { words, figures } = kit;
  const paces = [...new Set(inWater.flow.map(({ paceMs }) => paceMs))];
  const flow = paces.map((paceMs, i) => ({
    caption: words("page.in-water.flow-caption", { pace: figures.pace(paceMs) }),
    table: flowTable(
      inWater.flow.filter((figure) => figure.paceMs === paceMs),
      kit,
    ),
    notes: [
      ...holdBackNote(inWater, paceMs, kit),
      ...neededNote(inWater, paceMs, kit),
      ...(i === 0 ? whyNote(inWater, kit) : []),
      ...(i === paces.length - 1 ? tooLightNote(inWater, kit) : []),
    ],
  }));
  const lift = inWater.lift.length > 1 && {
    caption: words("page.in-water.lift.caption"),
    table: liftTable(inWater.lift, kit, true),
    notes: [
      words("page.in-water.lift.note", {
        rise: figures.shortGap(1000 * fishRiseMs),
        knock: figures.shortGap(knockMm),
      }),
    ],
  };
  const assumed = words("page.in-water.assumed", {
    area: figures.area(inWater.assumed.floatDragAreaCm2),
    mass: figures.mass(inWater.assumed.floatMassG),
    fall: figures.shortGap(1000 * inWater.assumed.feedFallMs),
    main: figures.diameter(rig.mainLine.diameterMm),
    hook: figures.diameter(rig.hookLine.diameterMm),
    bait: rig.bait.title,
    temperature: figures.temperature(rig.conditions.tempC),
  });
  return {
    sink: {
      caption: words("page.in-water.sink-caption"),
      table: sinkTable(inWater.sink, kit),
      notes: [...landingNotes(rig, kit), ...sisterNotes(inWater, kit), ...feedNotes(inWater, kit), assumed],
    },
    ...(lift && { lift }),
    flow,
  };
}

/** Where loose feed goes in at each depth and pace of the rig; nothing in still water. */
export function feedText({ rig, depths }: SolvedRig, kit: TableKit): readonly TextPart[] {
  const { words } = kit;
  const fallMs = depths[0]?.inWater?.assumed.feedFallMs;
  if (rig.pacesMs.length === 0 || fallMs === undefined) return [];
  const feed = feedTable(
    fallMs,
    rig.pacesMs,
    depths.map(({ depthMm }) => depthMm),
  );
  if (!feed.ok) return [];
  return [
    {
      caption: words("page.in-water.feed-spot"),
      table: feedPlaceTable(feed.value, kit),
      notes: [words("page.in-water.feed-note", { fall: kit.figures.shortGap(1000 * fallMs) })],
    },
  ];
}

/** Why a sliding float has but one way to land. */
function landingNotes({ float }: Rig, { words }: TableKit): string[] {
  return landingsOf(float).includes("straight") ? [] : [words("page.in-water.runs-through-eye")];
}

/** What the same shot would do in the other pattern, and whether a bulk is worth it here. */
function sisterNotes({ sink, sister }: InWater, { words, figures }: TableKit): string[] {
  if (!sister) return [];
  const timeOf = (landing: number) => figures.time(last(entry(sister.sink, landing).tenthsS));
  return [
    words(`page.in-water.sister.${keyOf(sister.arrangement)}`, { straight: timeOf(0), heap: timeOf(1) }),
    words(`page.in-water.bulk-gains.${bulkGains(sink, sister)}`),
  ];
}

/** Whether the bait falls through the feed or under it, and how a ball of groundbait gets down. */
function feedNotes({ againstFeed, ball }: InWater, { words, figures }: TableKit): string[] {
  const against = againstFeed?.thirds.map((how) => words(`page.in-water.against.${keyOf(how)}`));
  const [upper, middle, lower] = against ?? [];
  const alike = new Set(against).size === 1;
  return [
    ...(upper && middle && lower
      ? [words(`page.in-water.against.${alike ? "all" : "thirds"}`, { upper, middle, lower })]
      : []),
    words("page.in-water.ball", {
      size: figures.small(groundbaitBallMm),
      time: figures.time(ball.timeS),
      drift: ball.drifts
        .map(({ paceMs, driftMm }) =>
          words("page.in-water.ball-drifts", {
            pace: figures.pace(paceMs),
            drift: figures.shortDepth(Math.round(driftMm / 100) * 100),
          }),
        )
        .join(""),
    }),
  ];
}

function holdBackNote({ holdBackMax }: InWater, paceMs: Ms, { words, figures }: TableKit): string[] {
  const most = holdBackMax.find((one) => one.paceMs === paceMs);
  if (!most) return [];
  const stands = most.bottomOnlyShare === 1 ? "either" : "bottom-only";
  return [words(`page.in-water.hold-back.${stands}`, { share: figures.share(most.bottomOnlyShare) })];
}

function neededNote({ tooLight }: InWater, paceMs: Ms, { words, figures }: TableKit): string[] {
  const needed = tooLight?.needed.find((one) => one.paceMs === paceMs);
  if (!needed || needed.loadShare === 1) return [];
  const lift = figures.shortGap(mayLiftMm);
  if (needed.loadShare === null) return [words("page.in-water.load-none", { lift })];
  return [words("page.in-water.load-needed", { times: figures.number(needed.loadShare, 1), lift })];
}

function tooLightNote({ tooLight }: InWater, { words, figures }: TableKit): string[] {
  if (!tooLight) return [];
  const lift = figures.shortGap(mayLiftMm);
  if (tooLight.paceMs === null) return [words("page.in-water.never-too-light", { lift })];
  return [words("page.in-water.too-light", { lift, pace: figures.pace(tooLight.paceMs) })];
}
