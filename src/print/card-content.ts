import { publicAddress } from "../../templates/pages/addresses.ts";
import { sitePaths } from "../../templates/pages/view.ts";
import type { Guide } from "../content/library.ts";
import type { DrawingKit } from "../drawing/kit.ts";
import type { SolvedDepth, SolvedRig } from "../solve/solved.ts";
import { lineShot, loadText, lockShot, metalText, unbroken } from "./load-text.ts";

/** A rig made up for one depth, as a card words it. */
export interface CardDepth {
  readonly depth: string;
  /** Float's lower eye, or stop knot, to hook. */
  readonly setFloatAt: string;
  /** Missing where no shot hold the float. */
  readonly lock?: string;
  readonly onLine: string;
  readonly tip: string;
}

/** Everything that a card can say of a rig, worded; a format takes what it has room for. */
export interface CardContent {
  readonly id: string;
  readonly title: string;
  readonly purpose: string;
  readonly float: string;
  readonly depths: readonly CardDepth[];
  readonly mainLine: string;
  readonly hookLength: string;
  readonly hook: string;
  readonly shot: string;
  readonly setDepth: string;
  readonly recordDepth: string;
  /** What the tip says of the load, and what to do about it. */
  readonly tipSays: string;
  readonly feed: string;
  readonly caution: string;
  readonly publisher: string;
  /** Page of the rig, for the QR code; missing without a site address. */
  readonly address?: string;
}

export function cardContent(solved: SolvedRig, guide: Guide, { words, figures }: DrawingKit): CardContent {
  const { rig } = solved;
  return {
    id: rig.id,
    title: rig.title,
    purpose: rig.purpose,
    float: rig.float.title,
    depths: solved.depths.map((depth) => ({
      depth: unbroken(figures.shortDepth(depth.depthMm)),
      setFloatAt: unbroken(figures.shortGap(depth.floatToHookMm)),
      ...(rig.float.heldByShot && { lock: loadText(lockShot(depth), words) }),
      onLine: loadText(lineShot(depth), words),
      tip: unbroken(figures.tip(depth.tipAsSetMm)),
    })),
    mainLine: words("card.main-line", { strength: unbroken(figures.strength(rig.mainLine.strengthG)) }),
    hookLength: words("card.hook-length", {
      strength: unbroken(figures.strength(rig.hookLine.strengthG)),
      length: unbroken(figures.shortGap(rig.hookLengthMm)),
    }),
    hook: unbroken(words("card.hook", { size: rig.hook.size })),
    shot: words("card.shot", { scale: rig.scaleTitle, metals: metalText(solved.depths, words) }),
    setDepth: words(`card.set-depth.${rig.water}`, { step: unbroken(figures.shortGap(50)) }),
    recordDepth: words("card.record-depth"),
    tipSays: words("card.tip-says"),
    feed: words("card.feed", {
      what: rig.feed.what,
      portion: unbroken(figures.volume(rig.feed.portionMl)),
      every: unbroken(figures.time(rig.feed.everyS)),
    }),
    caution: words("card.caution"),
    publisher: guide.publisher,
    ...(guide.siteAddress !== undefined && {
      address: publicAddress(sitePaths.rig(rig.id), guide.siteAddress),
    }),
  };
}

/** The depths that a small card carries: the shallowest, the deepest, and the one nearest the middle of the two. */
export function threeDepths<D extends Pick<SolvedDepth, "depthMm">>(depths: readonly D[]): readonly D[] {
  const rising = [...depths].sort((a, b) => a.depthMm - b.depthMm);
  if (rising.length <= 3) return rising;
  const first = rising[0]!;
  const last = rising[rising.length - 1]!;
  const middleMm = (first.depthMm + last.depthMm) / 2;
  const between = rising.slice(1, -1);
  const nearest = between.reduce((best, depth) =>
    Math.abs(depth.depthMm - middleMm) < Math.abs(best.depthMm - middleMm) ? depth : best,
  );
  return [first, nearest, last];
}
