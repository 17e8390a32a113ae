import type { Groundbait } from "../core/feed/groundbait.ts";
import { entry, last } from "../core/lists.ts";
import type { Sink } from "../core/sink/sink-of-rig.ts";
import type { Mm, S, Share } from "../core/units.ts";
import type { BallDown, FlowFigure, HoldBackMax, InWater, LiftAndPull } from "../model/in-water.ts";
import type { FeedTable } from "../solve/feed-in-water.ts";
import type { TableKit } from "./table-kit.ts";
import type { TextTable } from "./tables.ts";
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
    rows: sink.map(({ landing, thirdsS }) => [
      words(`page.in-water.${landing}`),
      ...wholeThirdsS(thirdsS).map((time) => figures.time(time)),
    ]),
  };
}

/** Whole seconds of the thirds and of all together, so that what is told adds up. */
function wholeThirdsS(thirdsS: Sink["thirdsS"]): readonly S[] {
  let passedS = 0;
  const endsS = thirdsS.map((time) => {
    passedS += time;
    return Math.round(passedS);
  });
  return [...endsS.map((end, at) => end - (endsS[at - 1] ?? 0)), last(endsS)];
}

/** What the bait, the setting and the feed do for each share held back, in one pace. */
export function flowTable(flow: readonly FlowFigure[], kit: TableKit): TextTable {
  const { words, figures } = kit;
  const height = figures.shortGap(flow[0]?.promisedOffBedMm ?? 0);
  return {
    head: [
      words("page.rig.float-does"),
      words("page.in-water.bait"),
      words("page.in-water.set", { height }),
      words("page.in-water.feed"),
      words("page.in-water.feed-meets"),
    ],
    rows: flow.map((figure) => [
      held(figure, kit),
      whereBait(figure, kit),
      howToSet(figure, kit),
      whereFeed(figure, kit),
      words("page.in-water.below-cast", {
        gap: figures.shortDepth(Math.max(0, thrown(figure.feed.belowCastMm))),
      }),
    ]),
  };
}

function held({ heldBackShare }: FlowFigure, { words, figures }: TableKit): string {
  if (heldBackShare === 0) return words("page.in-water.held-free");
  if (heldBackShare === 1) return words("page.in-water.held-stopped");
  return words("page.in-water.held-back", { share: figures.share(heldBackShare) });
}

function whereBait({ leadMm, offBedMm }: FlowFigure, { words, figures }: TableKit): string {
  const where = Math.abs(leadMm) < nowhereMm ? "below" : leadMm > 0 ? "leads" : "trails";
  const place = words(`page.in-water.${where}`, { gap: figures.shortGap(Math.abs(leadMm)) });
  return offBedMm > 0
    ? words("page.in-water.runs-off", { place, height: figures.shortGap(offBedMm) })
    : words("page.in-water.runs-on", { place });
}

/** Nobody sets a float to less than this [mm]. */
const setMm = 5;

function howToSet({ extraDepthMm }: FlowFigure, { words, figures }: TableKit): string {
  if (extraDepthMm === null) return words("page.in-water.not-kept");
  if (Math.abs(extraDepthMm) < setMm) return words("page.in-water.as-set");
  const gap = figures.shortGap(Math.abs(extraDepthMm));
  return words(`told.plumbing.${extraDepthMm > 0 ? "deeper" : "shallower"}`, { gap });
}

function whereFeed({ feed }: FlowFigure, { words, figures }: TableKit): string {
  const thrownAt = thrown(feed.upstreamOfCastMm);
  const where = thrownAt === 0 ? "at-float" : thrownAt > 0 ? "upstream" : "downstream";
  return words(`page.in-water.${where}`, { gap: figures.shortDepth(Math.abs(thrownAt)) });
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
    steps.flatMap((step, i) => (i > 0 && step.feltG !== entry(steps, i - 1).feltG ? [step.liftMm] : [])),
  );
  const from = Math.max(0, Math.ceil(Math.min(...changesMm) / liftStepMm) - 1);
  const to = Math.ceil(Math.max(...changesMm) / liftStepMm);
  const lines = Array.from({ length: Math.max(0, to - from + 1) }, (_, i) => (from + i) * liftStepMm);
  const felt = (atMm: Mm) => lift.map(({ steps }) => grams((steps[atMm / 10] ?? last(steps)).feltG));
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

/** How far upstream of the place where the fish are loose feed goes in, pace by depth. */
export function feedPlaceTable(feed: FeedTable, { words, figures }: TableKit): TextTable {
  return {
    head: [
      words("page.in-water.pace"),
      ...feed.depthsMm.map((mm) => words("page.rig.one-depth", { depth: figures.shortDepth(mm) })),
    ],
    rows: feed.pacesMs.map((paceMs, row) => [
      figures.pace(paceMs),
      ...entry(feed.upstreamOfSpotMm, row).map((mm) => figures.shortDepth(thrown(mm))),
    ]),
  };
}

/** What to mix for so many balls of groundbait, a row each. */
export function groundbaitTable(
  mixes: readonly Groundbait[],
  ballMm: Mm,
  { words, figures }: TableKit,
): TextTable {
  return {
    head: [
      words("table.balls", { size: figures.shortGap(ballMm) }),
      words("table.dry-mix"),
      words("table.held-back"),
      words("table.water"),
    ],
    rows: mixes.map(({ balls, dryLowG, dryHighG, heldBackG, waterLowMl, waterHighMl }) => [
      figures.number(balls, 0),
      figures.kitchenRange(dryLowG, dryHighG, "g"),
      figures.kitchenRange(heldBackG, heldBackG, "g"),
      figures.kitchenRange(waterLowMl, waterHighMl, "ml"),
    ]),
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
