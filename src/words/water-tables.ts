import type { Mm, Share } from "../core/units.ts";
import type { BallDown, FlowFigure, HoldBackMax, InWater, LiftAndPull } from "../model/in-water.ts";
import type { FeedTable } from "../solve/feed-in-water.ts";
import type { TableKit, TextTable } from "./tables.ts";
import { keyOf } from "./words.ts";

/** Less than a beginner can see from the bank. */
const nowhereMm = 50;
/** Nobody throws feed, or sees where it goes in, to less than this [mm]. */
const thrownMm = 500;

const thrown = (mm: number): number => Math.round(mm / thrownMm) * thrownMm;

/** How long the bait takes through each third of the depth, for each way of landing. */
export function sinkTable(sink: InWater["sink"], { words, figures }: TableKit): TextTable {
  const head = ["landing", "upper", "middle", "lower", "in-all"] as const;
  return {
    head: head.map((key) => words(`page.in-water.${key}`)),
    rows: sink.map(({ landing, thirdsS, tenthsS }) => [
      words(`page.in-water.${landing}`),
      ...[...thirdsS, tenthsS.at(-1)!].map((time) => figures.time(time)),
    ]),
  };
}

/** What the bait, the setting and the feed do for each share held back, in one pace. */
export function flowTable(flow: readonly FlowFigure[], kit: TableKit): TextTable {
  const { words, figures } = kit;
  const head = ["held", "bait", "set-deeper", "feed"] as const;
  return {
    head: head.map((key) => words(`page.in-water.${key}`)),
    rows: flow.map((figure) => [
      words(`page.in-water.held-${heldBack(figure)}`),
      whereBait(figure, kit),
      figure.extraDepthMm === null
        ? words("page.in-water.not-at-all")
        : figures.shortGap(Math.max(0, figure.extraDepthMm)),
      whereFeed(figure.feedUpstreamMm, kit),
    ]),
  };
}

function heldBack({ heldBackShare }: FlowFigure): "free" | "half" | "stopped" {
  if (heldBackShare === 0) return "free";
  return heldBackShare === 1 ? "stopped" : "half";
}

function whereBait({ leadMm }: FlowFigure, { words, figures }: TableKit): string {
  if (Math.abs(leadMm) < nowhereMm) return words("page.in-water.below");
  return words(`page.in-water.${leadMm > 0 ? "leads" : "trails"}`, {
    gap: figures.shortGap(Math.abs(leadMm)),
  });
}

function whereFeed(upstreamMm: Mm, { words, figures }: TableKit): string {
  if (thrown(upstreamMm) === 0) return words("page.in-water.at-float");
  const gap = figures.shortDepth(Math.abs(thrown(upstreamMm)));
  return words(`page.in-water.${upstreamMm > 0 ? "upstream" : "downstream"}`, { gap });
}

/** Between the lines of the table of lift and pull [mm]. */
const liftStepMm = 200;

/**
 * Grams that a fish feels as it rises with the bait, a column for each way of hanging the same shot: from the line
 * before the first shot comes on to the one after the last.
 *
 * @param markOwn whether to say which of them is the rig's, where the table stands beside it
 */
export function liftTable(
  lift: readonly LiftAndPull[],
  { words, figures }: TableKit,
  markOwn: boolean,
): TextTable {
  const grams = (g: number) => figures.mass(Math.max(0, g));
  const changesMm = lift.flatMap(({ steps }) =>
    steps.flatMap((step, i) => (i > 0 && step.feltG !== steps[i - 1]!.feltG ? [step.liftMm] : [])),
  );
  const first = Math.max(0, Math.ceil(Math.min(...changesMm) / liftStepMm) - 1);
  const last = Math.ceil(Math.max(...changesMm) / liftStepMm);
  const lines = Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => (first + i) * liftStepMm);
  const felt = (atMm: Mm) => lift.map(({ steps }) => grams((steps[atMm / 10] ?? steps.at(-1)!).feltG));
  return {
    head: [
      words("page.in-water.lift.risen"),
      ...lift.map(({ arrangement, own }) =>
        own && markOwn
          ? words("page.in-water.lift.own", { pattern: words(`page.in-water.lift.${keyOf(arrangement)}`) })
          : words(`page.in-water.lift.${keyOf(arrangement)}`),
      ),
    ],
    rows: [
      ...lines.map((atMm) => [figures.shortGap(atMm), ...felt(atMm)]),
      [words("page.in-water.lift.hardest"), ...lift.map(({ hardestStepG }) => grams(hardestStepG))],
    ],
  };
}

/** Share by which a float may be held back in each pace, at its foot alone and at top and bottom. */
export function holdBackTable(shares: readonly HoldBackMax[], { words, figures }: TableKit): TextTable {
  const stands = (share: Share) =>
    share === 1
      ? words("page.in-water.may-be-stopped")
      : words("page.in-water.goes-under", { share: figures.share(share) });
  return {
    head: (["pace", "bottom-only", "top-and-bottom"] as const).map((key) => words(`page.in-water.${key}`)),
    rows: shares.map(({ paceMs, bottomOnlyShare, topAndBottomShare }) => [
      figures.pace(paceMs),
      stands(bottomOnlyShare),
      stands(topAndBottomShare),
    ]),
  };
}

/** Where loose feed goes in, pace by depth: upstream of its spot, or seen from where the float is put in. */
export function feedPlaceTable(feed: FeedTable, from: "spot" | "start", kit: TableKit): TextTable {
  const { words, figures } = kit;
  const placesMm = from === "spot" ? feed.upstreamOfSpotMm : feed.upstreamOfStartMm;
  const place = (mm: number) => {
    if (from === "spot") return figures.shortDepth(thrown(mm));
    const gap = figures.shortDepth(Math.abs(thrown(mm)));
    return words(`page.in-water.${mm > 0 ? "up" : "down"}`, { gap });
  };
  return {
    head: [
      words("page.in-water.pace"),
      ...feed.depthsMm.map((mm) => words("page.in-water.in-depth", { depth: figures.shortDepth(mm) })),
    ],
    rows: feed.pacesMs.map((paceMs, row) => [figures.pace(paceMs), ...placesMm[row]!.map(place)]),
  };
}

/** How long a ball of groundbait falls and how far it drifts, a row a depth. */
export function ballTable(
  balls: readonly { readonly depthMm: Mm; readonly ball: BallDown }[],
  { words, figures }: TableKit,
): TextTable {
  const paces = balls[0]?.ball.drifts ?? [];
  return {
    head: [
      words("table.depth"),
      words("page.in-water.ball-time"),
      ...paces.map(({ paceMs }) => words("page.in-water.ball-drift", { pace: figures.pace(paceMs) })),
    ],
    rows: balls.map(({ depthMm, ball }) => [
      figures.shortDepth(depthMm),
      figures.time(ball.timeS),
      ...ball.drifts.map(({ driftMm }) => figures.shortDepth(Math.round(driftMm / 100) * 100)),
    ]),
  };
}
