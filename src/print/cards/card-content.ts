import { plumbStepMm } from "../../core/depth/plumbing.ts";
import { movedPart } from "../../core/depth/setting.ts";
import type { Finding } from "../../core/finding.ts";
import { feelStepMm, firstDip, raiseFurtherMm, raiseStepMm } from "../../core/flow/feel-for-bed.ts";
import { entry, first, last, neighbours } from "../../core/lists.ts";
import { forbiddenLead } from "../../core/tackle/lead-rule.ts";
import { groupShot } from "../../core/tackle/shot-groups.ts";
import type { DrawingKit } from "../../drawing/kit.ts";
import { publicAddress, sitePaths } from "../../model/addresses.ts";
import type { CardContent, CardDepth, CardNotes } from "../../model/card-content.ts";
import { linesToFindUs } from "../../model/find-us.ts";
import type { Guide } from "../../model/library.ts";
import type { Rig } from "../../model/rig.ts";
import { allShot, type SolvedDepth, type SolvedRig } from "../../model/solved.ts";
import { floatSays } from "../../words/float-says.ts";
import { reasonText } from "../../words/reason.ts";
import { rigTexts } from "../../words/rig-texts.ts";
import { metalText, unbroken, withUnit } from "../../words/shot-text.ts";
import { keyOf } from "../../words/words.ts";

/** Everything that can be said of a rig on a card, from the same statements as its page and data. */
export function cardContent(
  solved: SolvedRig,
  guide: Guide,
  kit: DrawingKit,
  notes: CardNotes = {},
): CardContent {
  const { words, figures } = kit;
  const { rig } = solved;
  const moved = movedPart(rig.float);
  const lead = leadWarning(solved, kit);
  const depths = solved.depths.map((depth) => cardDepth(solved, depth, kit));
  const drawn = drawnOf(solved.depths);
  const rule = ruleForDepths(solved, kit);
  const tip = tipOfAll(depths);
  const says = floatSays(drawn, kit);
  const [change] = notes.changeFirst ?? [];
  return {
    id: rig.id,
    title: rig.title,
    water: rig.water,
    ...(notes.level !== undefined && { level: notes.level }),
    float:
      notes.marking === undefined
        ? rig.float.title
        : words("card.float", { float: rig.float.title, marking: unbroken(notes.marking) }),
    tackle: tackleText(solved, kit),
    moved,
    depths,
    drawn: entry(depths, solved.depths.indexOf(drawn)),
    settingFor: words("card.setting-for", {
      what: unbroken(words(`told.measured-from.${keyOf(moved)}`)),
      depth: unbroken(figures.shortDepth(drawn.depthMm)),
    }),
    ...(rule && { [rule.for]: rule.said }),
    ...(tip !== undefined && { tipShowing: words("card.tip-showing", { tip }) }),
    tipInSays: tip !== undefined && says.some((said) => unbroken(said).includes(tip)),
    metal: words("card.metals", { metals: metalText(solved.depths, words) }),
    shotSizes: new Set(solved.depths.flatMap(allShot).map(({ size }) => size)).size,
    placesFrom: placesFrom(solved, kit),
    ruler: words("card.ruler"),
    madeUp: madeUp(solved, drawn, kit),
    floatSays: says.map(withUnit),
    findings: findingsTold(solved, kit),
    ...(change !== undefined && {
      changeFirst: words("card.change-first", { change: withUnit(change) }),
    }),
    setDepth: setDepth(rig, drawn, kit),
    isUpInWater: rig.water === "still" && rig.overdepthMm < 0,
    recordDepth: words(`card.record-depth.${keyOf(moved)}`),
    signs: signsOf(rig, notes, kit),
    tipSays: words(`card.tip-says.${first(solved.depths).tipSetBy}`, { tip: tip ?? words("card.that-tip") }),
    feed: feedText(rig, kit),
    ...(lead && { leadWarning: lead }),
    caution: words("card.caution"),
    publisher: words("card.own-line", { publisher: guide.publisher }),
    ...(guide.visit && { findUs: linesToFindUs(guide).join("; ") }),
    ...addressOf(rig, guide),
  };
}

/** The page that a card's code opens; nothing of a guide without an address. */
const addressOf = ({ id }: Rig, { siteAddress }: Guide): Pick<CardContent, "address"> =>
  siteAddress === undefined ? {} : { address: publicAddress(sitePaths.rig(id), siteAddress) };

/** What the tab on its edge stands for, which a rig without a level has not, and the ring in its corner. */
const signsOf = ({ water }: Rig, { level }: CardNotes, { words }: DrawingKit): string[] => [
  ...(level === undefined ? [] : [words(`card.signs.${water}`)]),
  words("card.signs.ring"),
];

/** How the depth is found, and how far from there a hook is then set that is not to stay just there. */
function setDepth({ water, float, overdepthMm }: Rig, depth: SolvedDepth, kit: DrawingKit): string {
  const { words, figures } = kit;
  const { thenSet } = rigTexts(kit);
  if (water === "flowing") {
    const lower = unbroken(figures.shortGap(feelStepMm));
    const raise = unbroken(figures.shortGap(raiseStepMm));
    const tooDeepMm = Math.abs(firstDip(depth.depthGuide)?.moveMm ?? 0);
    return `${words("card.set-depth.feel", { lower, raise })} ${thenSet(-raiseFurtherMm(tooDeepMm))}`;
  }
  // A float that sinks until some of its shot lie on the bed is found to stand right too deep with them on the line.
  const found = words(`card.set-depth.${depth.tipSetBy === "depth" ? "plummet-alone" : "plummet"}`, {
    moved: words(`told.moved.${keyOf(movedPart(float))}`),
    step: unbroken(figures.shortGap(plumbStepMm)),
  });
  // The tip that is looked for is the one as fished, which shows less of the float below it than all shot hung clear would.
  return `${found} ${thenSet(overdepthMm + depth.tipShowingMm - depth.tipAsSetMm)}`;
}

function feedText({ feed }: Rig, { words, figures }: DrawingKit): string {
  return words("card.feed", {
    what: feed.what,
    portion: unbroken(figures.volume(feed.portionMl)),
    every: unbroken(figures.time(feed.everyS)),
  });
}

function cardDepth({ rig }: SolvedRig, depth: SolvedDepth, { figures }: DrawingKit): CardDepth {
  return {
    depthMm: depth.depthMm,
    depth: withUnit(figures.shortDepth(depth.depthMm)),
    setAt: withUnit(figures.besideDepth(figures.settingMm(depth))),
    ...(rig.float.heldByShot && { lock: figures.lock(depth.lock) }),
    places: figures.shotPlaces(depth.lineShot),
    tip: unbroken(figures.tip(depth.tipAsSetMm)),
  };
}

/** The tip that shows in all depths; missing where they differ. */
function tipOfAll(depths: readonly CardDepth[]): string | undefined {
  const { tip } = first(depths);
  return depths.every((depth) => depth.tip === tip) ? tip : undefined;
}

/** Where places are measured from, and which end of a bulk is up where its shot are not alike. */
function placesFrom({ depths }: SolvedRig, { words }: DrawingKit): string {
  const bulks = depths
    .flatMap(({ lineShot }) => groupShot(lineShot))
    .filter(({ kind, shots }) => kind === "together" && new Set(shots.map(({ size }) => size)).size > 1);
  const heavyUp = bulks.every(({ shots }) =>
    neighbours(shots).every(([lower, upper]) => lower.massG <= upper.massG),
  );
  const from = words("card.places-from");
  return bulks.length > 0 && heavyUp ? `${from} ${words("card.heaviest-up")}` : from;
}

/**
 * Which shot of a bulk is at its place, how a range of shot is spaced, how the float is held and from where it is measured,
 * and how to tell by which share it is slowed.
 */
function madeUp(
  { rig, depths }: SolvedRig,
  { guidedFlow }: SolvedDepth,
  { words, figures }: DrawingKit,
): readonly string[] {
  const held = floatHeld(rig);
  const kinds = new Set(depths.flatMap(({ lineShot }) => groupShot(lineShot)).map(({ kind }) => kind));
  return [
    ...(kinds.has("together") ? [words("card.bulk-place")] : []),
    ...(kinds.has("run") ? [words("card.evenly")] : []),
    ...(held ? [words(`card.float-from.${held}`)] : []),
    ...(guidedFlow
      ? [
          words("card.held-back", {
            share: unbroken(figures.share(guidedFlow.heldBackShare)),
            steps: figures.number(10 * (1 - guidedFlow.heldBackShare), 1),
          }),
        ]
      : []),
  ];
}

/** What holds a float in its place, which is told from its lower end; none holds one that slides up to a knot. */
function floatHeld({ float }: Rig) {
  if (float.attachment === "sliding") return undefined;
  if (float.attachment === "top and bottom") return "two-rubbers";
  return float.heldByShot ? "shot" : "bottom-rubber";
}

/** Hook and bait, main line, hook length; a whip has just so much line. */
function tackleText({ rig, depths }: SolvedRig, { words, figures }: DrawingKit): string {
  const strength = unbroken(figures.strength(rig.mainLine.strengthG));
  const whip = depths[0]?.whip;
  const lengthOf = (mm: number) => unbroken(figures.shortDepth(mm));
  return words("card.tackle", {
    hook: unbroken(words("card.hook", { size: rig.hook.size })),
    bait: withUnit(figures.inSentence(rig.bait.title)),
    line: whip
      ? words("card.whip-line", { strength, whip: lengthOf(rig.rodLengthMm), line: lengthOf(whip.lineMm) })
      : unbroken(words("card.main-line", { strength })),
    hookLength: words("card.hook-length", {
      strength: unbroken(figures.strength(rig.hookLine.strengthG)),
      length: unbroken(figures.shortGap(rig.hookLengthMm)),
    }),
  });
}

/**
 * `Depth less 16 cm`, where that makes the rig up for any depth: with the same shot in the same places or, where these move, for
 * those between the told ones with the shot of the next shallower one, which weigh as much and have room below the float.
 */
function ruleForDepths({ depths }: SolvedRig, { words, figures }: DrawingKit) {
  const differ = (tell: (depth: SolvedDepth) => string) => new Set(depths.map(tell)).size > 1;
  const more = (depth: SolvedDepth) => figures.moreThanDepthMm(depth);
  const tip = (depth: SolvedDepth) => figures.tip(depth.tipAsSetMm);
  if (depths.length < 2 || differ((depth) => more(depth).toFixed()) || differ(tip)) return undefined;
  const moves = differ((depth) => `${figures.shotPlaces(depth.lineShot)}; ${figures.lock(depth.lock)}`);
  // A whip has no more line than it is told for.
  const between = moves || first(depths).whip !== undefined;
  const moreMm = more(first(depths));
  const sign = moreMm > 0 ? "more" : "less";
  const gap = unbroken(figures.besideDepth(Math.abs(moreMm)));
  if (between) return { for: "depthBetween", said: words(`card.depth-between.${sign}`, { gap }) } as const;
  // In water that is shallower than any told the same shot may have no room below the float.
  const leastMm = Math.min(...depths.map(({ depthMm }) => depthMm));
  const from = unbroken(figures.shortDepth(leastMm));
  return { for: "otherDepth", said: words(`card.other-depth.${sign}`, { from, gap }) } as const;
}

const ofLead: readonly Finding["code"][] = ["lead-not-allowed", "lead-rule-unread"];

/** What was found of the rig in any of its depths; what the rule on lead forbids is told with all its figures. */
function findingsTold({ depths }: SolvedRig, { words, figures }: DrawingKit): readonly string[] {
  const found = depths.flatMap(({ findings }) => findings).filter(({ code }) => !ofLead.includes(code));
  return [...new Set(found.map((finding) => reasonText(finding, words, figures)))];
}

/** What the rule on lead forbids of any depth's shot, with the figures that decide. */
function leadWarning({ rig, depths }: SolvedRig, { words, figures }: DrawingKit): string | undefined {
  const { leadRule } = rig;
  const shot = forbiddenLead(depths.flatMap(allShot), leadRule).map(({ size, massG }) =>
    words("card.lead-size", { size, mass: figures.statedMass(massG) }),
  );
  if (shot.length === 0) return undefined;
  const upTo = figures.statedMass(leadRule.allowedUpToG);
  const said = leadRule.checked === undefined ? "card.lead-unread" : "card.lead";
  return words(said, { place: leadRule.place, upTo, shot: shot.join(", ") });
}

/** The depths that a small card carries: the shallowest, the deepest, and the one nearest the middle of the two. */
export function threeDepths<D extends Pick<SolvedDepth, "depthMm">>(depths: readonly D[]): readonly D[] {
  const rising = [...depths].sort((a, b) => a.depthMm - b.depthMm);
  if (rising.length <= 3) return rising;
  const shallowest = first(rising);
  const deepest = last(rising);
  const middleMm = (shallowest.depthMm + deepest.depthMm) / 2;
  const between = rising.slice(1, -1);
  const nearest = between.reduce((best, depth) =>
    Math.abs(depth.depthMm - middleMm) < Math.abs(best.depthMm - middleMm) ? depth : best,
  );
  return [shallowest, nearest, deepest];
}

/** The depth that the front draws: the middle one of those that a small card carries. */
export function drawnOf<D extends Pick<SolvedDepth, "depthMm">>(depths: readonly D[]): D {
  const three = threeDepths(depths);
  return entry(three, Math.floor((three.length - 1) / 2));
}
