import { movedPart } from "../../core/depth/setting.ts";
import { feelStepMm, raiseStepMm } from "../../core/flow/feel-for-bed.ts";
import { forbiddenLead } from "../../core/tackle/lead-rule.ts";
import type { DrawingKit } from "../../drawing/kit.ts";
import { publicAddress, sitePaths } from "../../model/addresses.ts";
import type { CardContent } from "../../model/card-content.ts";
import type { Guide } from "../../model/library.ts";
import { allShot, type SolvedDepth, type SolvedRig } from "../../model/solved.ts";
import { metalText, unbroken, unbrokenRanges } from "../../words/shot-text.ts";
import { keyOf } from "../../words/words.ts";

export function cardContent(solved: SolvedRig, guide: Guide, kit: DrawingKit): CardContent {
  const { words, figures } = kit;
  const { rig } = solved;
  const moved = movedPart(rig.float);
  const lead = leadWarning(solved, kit);
  return {
    id: rig.id,
    title: rig.title,
    purpose: rig.purpose,
    float: rig.float.title,
    moved,
    depths: solved.depths.map((depth) => ({
      depthMm: depth.depthMm,
      depth: unbroken(figures.shortDepth(depth.depthMm)),
      setAt: unbroken(figures.shortGap(depth.floatToHookMm)),
      ...(rig.float.heldByShot && { lock: figures.lock(depth.lock) }),
      line: figures.shot(depth.lineShot),
      places: unbrokenRanges(figures.shotPlaces(depth.lineShot)),
      tip: unbroken(figures.tip(depth.tipAsSetMm)),
    })),
    mainLine: mainLineText(solved, { words, figures }),
    hookLength: words("card.hook-length", {
      strength: unbroken(figures.strength(rig.hookLine.strengthG)),
      length: unbroken(figures.shortGap(rig.hookLengthMm)),
    }),
    hook: unbroken(words("card.hook", { size: rig.hook.size })),
    shot: words("card.shot", { scale: rig.scaleTitle, metals: metalText(solved.depths, words) }),
    setDepth: words(`card.set-depth.${rig.water}`, {
      lower: unbroken(figures.shortGap(feelStepMm)),
      raise: unbroken(figures.shortGap(raiseStepMm)),
      moved: words(`told.moved.${keyOf(moved)}`),
    }),
    recordDepth: words(`card.record-depth.${keyOf(moved)}`),
    tipSays: words(`card.tip-says.${solved.depths[0]!.tipSetBy}`),
    feed: words("card.feed", {
      what: rig.feed.what,
      portion: unbroken(figures.volume(rig.feed.portionMl)),
      every: unbroken(figures.time(rig.feed.everyS)),
    }),
    ...(lead && { leadWarning: lead }),
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

/** What the rule on lead forbids of any depth's shot, with the figures that decide. */
function leadWarning({ rig, depths }: SolvedRig, { words, figures }: DrawingKit): string | undefined {
  const { leadRule } = rig;
  const shot = forbiddenLead(depths.flatMap(allShot), leadRule).map(({ size, massG }) =>
    words("card.lead-size", { size, mass: figures.statedMass(massG) }),
  );
  if (shot.length === 0) return undefined;
  const upTo = figures.statedMass(leadRule.allowedUpToG);
  return words("card.lead", { place: leadRule.place, upTo, shot: shot.join(", ") });
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
