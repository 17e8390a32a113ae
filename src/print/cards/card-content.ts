import type { DrawingKit } from "../../drawing/kit.ts";
import { publicAddress, sitePaths } from "../../model/addresses.ts";
import type { CardContent } from "../../model/card-content.ts";
import type { Guide } from "../../model/library.ts";
import type { SolvedDepth, SolvedRig } from "../../model/solved.ts";
import { metalText, unbroken } from "../../words/shot-text.ts";

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
      ...(rig.float.heldByShot && { lock: figures.shot(depth.lockShot) }),
      onLine: figures.shot(depth.lineShot),
      tip: unbroken(figures.tip(depth.tipAsSetMm)),
    })),
    mainLine: mainLineText(solved, { words, figures }),
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

/** The main line; a whip has just so much of it. */
function mainLineText(
  { rig, depths }: SolvedRig,
  { words, figures }: Pick<DrawingKit, "words" | "figures">,
): string {
  const strength = unbroken(figures.strength(rig.mainLine.strengthG));
  const whip = depths[0]?.whip;
  if (!whip) return words("card.main-line", { strength });
  const [length, line] = [rig.rodLengthMm, whip.lineMm].map((mm) => unbroken(figures.shortDepth(mm)));
  return words("card.whip-line", { strength, whip: length!, line: line! });
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
