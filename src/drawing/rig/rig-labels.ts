import { movedPart } from "../../core/depth/setting.ts";
import { first, last, neighbours } from "../../core/lists.ts";
import { groupShot, mergeGroups, type ShotGroup } from "../../core/tackle/shot-groups.ts";
import type { WaterKind } from "../../core/water/water.ts";
import type { SolvedDepth, SolvedRig } from "../../model/solved.ts";
import { keyOf } from "../../words/words.ts";
import type { DrawingKit } from "../kit.ts";
import { type Run, together } from "../labels/label-text.ts";
import { drawnHang, drawnLyingMm } from "./current-shape.ts";
import { heldTexts } from "./rig-words.ts";

/** What a label is about; `rank` says which goes first where room is short (none: never). */
export interface RigLabel {
  readonly about: "hook" | "shot" | "loop" | "eye" | "draught" | "clearance";
  readonly runs: readonly Run[];
  /** The same with its distance but without what can be read elsewhere, where room is short. */
  readonly brief?: readonly Run[];
  /** The stretch of line it belongs to [mm from the hook]. */
  readonly fromHookMm: number;
  readonly toHookMm: number;
  readonly rank?: number;
  readonly group?: ShotGroup;
}

export type LabelChoice = "full" | "distances" | "none";

/**
 * What labels may give up where room is short: nothing; what can be read elsewhere; labels of their own for neighbouring
 * shot of one size, too; or such for unlike ones.
 */
export type SharedLabels = "none" | "brief" | "alike" | "any";

/** A shot this close above the loop needs no second label for the loop. */
const atLoopMm = 20;

/** Labels of a rig below the surface, from the hook up. */
export function rigLabels(
  solved: SolvedRig,
  depth: SolvedDepth,
  choice: LabelChoice,
  kit: DrawingKit,
): RigLabel[] {
  if (choice === "none") return [];
  const { rig } = solved;
  const { words, figures } = kit;
  const { floatToHookMm, overdepthMm } = depth;
  const groups = groupShot(depth.lineShot, drawnLyingMm(rig.water, depth));
  const labels: RigLabel[] = groups.map((group) => groupLabel(group, rig.hookLengthMm, kit));
  const setting = figures.besideDepth(figures.settingMm(depth));
  const held = distanceFirst(setting, words(`drawing.rig.held.${keyOf(movedPart(rig.float))}`));
  const slides = distanceFirst(setting, words("drawing.rig.slides"));
  const locked = words("drawing.rig.float-locked", { shot: figures.lock(depth.lock) });
  labels.push({
    about: "eye",
    fromHookMm: floatToHookMm,
    toHookMm: floatToHookMm,
    ...(depth.lockShot.length > 0
      ? { runs: distanceFirst(setting, locked), brief: held }
      : movedPart(rig.float) === "stop knot" && choice === "full"
        ? { runs: slides, brief: held }
        : { runs: held }),
  });
  if (overdepthMm < 0)
    labels.push({
      about: "clearance",
      fromHookMm: -1,
      toHookMm: -1,
      ...clearanceRuns(rig.water, depth, choice, kit),
    });
  if (choice === "distances")
    labels.push({
      about: "hook",
      fromHookMm: 0,
      toHookMm: 0,
      runs: distanceFirst("0", words("drawing.rig.from-here")),
    });
  if (choice === "full") labels.push(...fullLabels(rig, depth, floatToHookMm, groups, kit));
  return labels.sort((a, b) => a.fromHookMm - b.fromHookMm);
}

/**
 * How far the bait is off the bed; with how deep that is in still water, as the figure at the float tells the line alone,
 * and in running water with how far it hangs from under the float. A small card has how the float is held here, as the row
 * of the flow has no room for it beside the hole for a string.
 */
function clearanceRuns(
  water: WaterKind,
  depth: SolvedDepth,
  choice: LabelChoice,
  kit: DrawingKit,
): Pick<RigLabel, "runs" | "brief"> {
  const { words, figures } = kit;
  const off = words("figures.off-the-bed", { gap: together(figures.besideDepth(-depth.overdepthMm)) });
  const runs = (text: string) => [{ text: withoutLoneEnd(text) }];
  const hang = drawnHang(depth);
  if (choice === "distances" && hang) {
    const told = heldTexts(hang, kit).map((held) => runs(words("drawing.rig.held-off", { held, off })));
    return { runs: first(told.slice(-2)), brief: last(told) };
  }
  if (choice !== "full" || (water === "flowing" && !hang)) return { runs: runs(off) };
  const whole = hang
    ? words(hang.leadMm >= 0 ? "drawing.rig.ahead" : "drawing.rig.behind", {
        off,
        gap: together(figures.shortGap(Math.abs(hang.leadMm))),
      })
    : words("drawing.rig.deep", {
        off,
        deep: together(figures.besideDepth(depth.depthMm + depth.overdepthMm)),
      });
  return { runs: runs(whole), brief: runs(off) };
}

function fullLabels(
  rig: SolvedRig["rig"],
  depth: SolvedDepth,
  floatToHookMm: number,
  groups: readonly ShotGroup[],
  { words, figures }: DrawingKit,
): RigLabel[] {
  const hook = words("drawing.rig.hook", { size: rig.hook.size, bait: figures.inSentence(rig.bait.title) });
  const draught = words("drawing.rig.draught", { length: together(figures.shortGap(depth.draughtMm)) });
  const labels: RigLabel[] = [
    { about: "hook", fromHookMm: 0, toHookMm: 0, runs: distanceFirst("0", hook), rank: 1 },
    {
      about: "draught",
      fromHookMm: floatToHookMm + 1,
      toHookMm: floatToHookMm + 1,
      runs: [{ text: draught, ink: "soft" }],
      rank: 3,
    },
  ];
  if (!groups.some((group) => isAtLoop(group, rig.hookLengthMm)))
    labels.push({
      about: "loop",
      fromHookMm: rig.hookLengthMm,
      toHookMm: rig.hookLengthMm,
      runs: distanceFirst(figures.shortGap(rig.hookLengthMm), words("drawing.rig.loop")),
      rank: 2,
    });
  return labels;
}

function isAtLoop(group: ShotGroup, hookLengthMm: number): boolean {
  const above = first(group.shots).fromHookMm - hookLengthMm;
  return group.kind === "single" && above >= 0 && above < atLoopMm;
}

function groupLabel(group: ShotGroup, hookLengthMm: number, kit: DrawingKit): RigLabel {
  const { words, figures } = kit;
  const fromHookMm = first(group.shots).fromHookMm;
  const toHookMm = last(group.shots).fromHookMm;
  const shot = figures.shot(group.shots);
  const spread = group.kind === "run" || group.kind === "mixed";
  const distance = spread ? figures.shortGaps(fromHookMm, toHookMm) : figures.shortGap(fromHookMm);
  const label = { about: "shot", fromHookMm, toHookMm, group } as const;
  const brief = distanceFirst(distance, shot);
  // The gap itself, rounded, would not add up to the range beside it.
  if (group.kind === "run")
    return { ...label, runs: distanceFirst(distance, words("drawing.rig.run", { shot })), brief };
  return isAtLoop(group, hookLengthMm)
    ? { ...label, runs: distanceFirst(distance, words("drawing.rig.at-loop", { shot })), brief }
    : { ...label, runs: brief };
}

/** The last word of a label joined to the one before it, so that it does not stand alone in a line. */
const withoutLoneEnd = (text: string): string => text.replace(/ (?=[^ ]+$)/, "\u00a0");

function distanceFirst(distance: string, what: string): Run[] {
  return [{ text: together(distance), face: "bold" }, { text: withoutLoneEnd(what) }];
}

/**
 * The same labels with less to say: first those that can be spared, by rank, then brief ones, from the hook up, then
 * neighbouring shot under one label: all of one size before two that are unlike.
 * Undefined where nothing is left to give up.
 */
export function fewerLabels(
  labels: readonly RigLabel[],
  hookLengthMm: number,
  shared: SharedLabels,
  kit: DrawingKit,
): RigLabel[] | undefined {
  if (shared === "none") return undefined;
  // What the figures of the picture tell as well goes before any label does.
  const clearance = labels.findIndex(({ about, brief }) => about === "clearance" && brief !== undefined);
  if (clearance >= 0) return labels.map((label, at) => (at === clearance ? inBrief(label) : label));
  const worst = Math.max(...labels.map((label) => label.rank ?? 0));
  if (worst > 0) return labels.filter((label) => label.rank !== worst);
  const wordy = labels.findIndex(({ brief }) => brief !== undefined);
  if (wordy >= 0) return labels.map((label, at) => (at === wordy ? inBrief(label) : label));
  if (shared === "brief") return undefined;
  const alike = narrowestPair(labels, ofOneSize);
  const at = alike ?? (shared === "any" ? narrowestPair(labels, () => true) : undefined);
  if (at === undefined) return undefined;
  const [from, to] = alike === undefined ? [at, at + 2] : neighboursAlike(labels, at);
  const group = labels
    .slice(from, to)
    .flatMap((label) => label.group ?? [])
    .reduce(mergeGroups);
  return [...labels.slice(0, from), inBrief(groupLabel(group, hookLengthMm, kit)), ...labels.slice(to)];
}

/** From which label to before which all are of shot of one size: cards tell neighbours alike together, or each by itself. */
function neighboursAlike(labels: readonly RigLabel[], at: number): readonly [number, number] {
  const size = labels[at]?.group?.shots[0]?.size;
  const isAlike = (label: RigLabel | undefined) => label?.group?.shots.every((shot) => shot.size === size);
  let [from, to] = [at, at + 1];
  while (isAlike(labels[from - 1])) from -= 1;
  while (isAlike(labels[to])) to += 1;
  return [from, to];
}

function inBrief({ brief, ...label }: RigLabel): RigLabel {
  return { ...label, runs: brief ?? label.runs };
}

/** Where the two neighbouring shot labels are that may share one and together span the least line. */
function narrowestPair(labels: readonly RigLabel[], mayShare: (shots: ShotGroup["shots"]) => boolean) {
  let best: { at: number; spanMm: number } | undefined;
  for (const [at, [lower, upper]] of neighbours(labels).entries()) {
    if (!lower.group || !upper.group || !mayShare([...lower.group.shots, ...upper.group.shots])) continue;
    const spanMm = upper.toHookMm - lower.fromHookMm;
    if (!best || spanMm < best.spanMm) best = { at, spanMm };
  }
  return best?.at;
}

const ofOneSize = (shots: ShotGroup["shots"]) => new Set(shots.map(({ size }) => size)).size === 1;
