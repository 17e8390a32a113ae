import { lengthMm } from "../../core/float/float.ts";
import { last } from "../../core/lists.ts";
import type { SolvedDepth, SolvedRig } from "../../model/solved.ts";
import { whyBait } from "../../words/why-bait.ts";
import { keyOf } from "../../words/words.ts";
import { point, polyline, text, thinSoft } from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import { layLabel, leading, paintLabel, type Run, together } from "../labels/label-text.ts";
import type { Item } from "../model.ts";
import { bedThicknessMm } from "../parts/bed.ts";
import { parts } from "../parts/parts.ts";
import { drawnHang, lineShape, upright } from "./current-shape.ts";
import type { LabelChoice } from "./rig-labels.ts";
import { type UntruePart, untrueParts } from "./rig-places.ts";
import type { RigPlan } from "./rig-plan.ts";
import { heldTexts, tipOther, tipTexts } from "./rig-words.ts";

/** Between the bed's hatching and the words below it [mm]. */
export const belowBedMm = 0.6;

/** So many kinds of length out of scale, and the picture is none to take any length from. */
const fewestUntold = 2;

/** What the row below the bed says. */
interface FootWords {
  /** How deep it is. */
  readonly bed: string;
  /** The same with how the hook is set, where that is at the bed or over depth. */
  readonly set: string;
  /** All of it: first what there is to be done, and at last what is not to scale. */
  readonly whole: readonly Run[];
}

/**
 * What is said below the bed: in still water how far over depth the hook is to be set, how much of that lies on the bed and
 * how much a float takes up that stands higher for it; how deep the bed is; that a hook touches it; or that a line in running
 * water is longer than the depth, as it slants. Where hardly a length is to scale, none is named.
 */
export function footWords(
  { rig: { water } }: SolvedRig,
  depth: SolvedDepth,
  untrue: readonly UntruePart[],
  kit: DrawingKit,
): FootWords {
  const { words, figures } = kit;
  const bed = words("drawing.rig.bed", { depth: figures.shortDepth(depth.depthMm) });
  const { overdepthMm } = depth;
  const over = figures.besideDepth(overdepthMm);
  const place = words("figures.over-depth", { gap: over });
  const isOver = water === "still" && overdepthMm > 0;
  const isTouching = water === "still" && overdepthMm === 0;
  const touched = isTouching ? words("drawing.rig.bed-touched", { bed }) : bed;
  const slants = lineShape(depth) !== upright;
  const told = slants ? words("drawing.rig.bed-slant", { bed: together(bed) }) : touched;
  const parts =
    untrue.length >= fewestUntold
      ? words("drawing.rig.not-to-scale.figures")
      : [
          words("drawing.rig.not-to-scale.always"),
          ...untrue.map((part) => words(`drawing.rig.not-to-scale.${keyOf(part)}`)),
        ].join(", ");
  const rest = words("drawing.rig.not-to-scale.bed", { bed: told, parts });
  const soft = (text: string): Run => ({ text, ink: "soft" });
  const hang = water === "flowing" ? drawnHang(depth) : undefined;
  const why = hang && whyBait(hang.leadMm, kit);
  if (!isOver)
    return {
      bed,
      set: touched,
      whole: [...(why === undefined ? [] : [soft(words("drawing.rig.bait-why", { why }))]), soft(rest)],
    };
  // A float that stands higher with shot on the bed takes up some of that.
  const lyingMm = figures.lyingMm(depth);
  const lying = figures.besideDepth(lyingMm);
  const rises = lyingMm > 0 && lyingMm < overdepthMm && lying !== over;
  const shared = words("drawing.rig.set-lying", {
    lying: together(lying),
    rise: together(figures.besideDepth(overdepthMm - lyingMm)),
  });
  const other = tipOther(depth, kit);
  return {
    bed,
    set: words("drawing.rig.bed-set", { bed, place }),
    whole: [
      {
        text: words(`drawing.rig.${rises ? "hook-set-lying" : "hook-set"}`, { place: together(place) }),
        face: "bold",
      },
      ...(rises ? [soft(shared)] : []),
      ...(other === undefined ? [] : [soft(words("drawing.rig.tip-same", { other }))]),
      soft(rest),
    ],
  };
}

/** Room for the words below the bed: all that may be out of scale is named where there is room for words. */
export function footHeightMm(
  whole: readonly Run[],
  widthMm: number,
  { labels, textMm }: { readonly labels: LabelChoice; readonly textMm: number },
  { measure }: DrawingKit,
): number {
  if (labels === "none") return 0;
  if (labels === "distances") return leading * textMm;
  return layLabel(whole, widthMm - 1, textMm, measure).heightMm;
}

function footItems(
  { box, bedMm, untrue }: RigPlan,
  rig: SolvedRig,
  depth: SolvedDepth,
  choice: LabelChoice,
  textMm: number,
  kit: DrawingKit,
): Item[] {
  const { words, measure } = kit;
  const named = untrueParts.filter((part) => untrue.has(part));
  const { bed, set, whole } = footWords(rig, depth, named, kit);
  const underBedMm = bedMm + bedThicknessMm + belowBedMm;
  if (choice === "full") {
    const label = layLabel(whole, box.widthMm - 1, textMm, measure);
    return paintLabel(label, 0.5, underBedMm + label.heightMm / 2, measure);
  }
  const baseMm = box.heightMm - 0.28 * textMm;
  const all = words("drawing.rig.not-to-scale.all");
  const hasRoom = (...said: readonly string[]) =>
    said.reduce((mm, one) => mm + textMm + measure(one, textMm, "regular"), 1 - textMm) <= box.widthMm;
  const told = hasRoom(set, all) || (hasRoom(set) && !hasRoom(bed, all)) ? set : bed;
  return [
    text(point(0.5, baseMm), told, textMm, { ink: "soft" }),
    ...(hasRoom(told, all)
      ? [text(point(box.widthMm - 0.5, baseMm), all, textMm, { ink: "soft", anchor: "end" as const })]
      : []),
  ];
}

/** What stands above the surface and below the bed. */
export function captions(
  plan: RigPlan,
  rig: SolvedRig,
  depth: SolvedDepth,
  choice: LabelChoice,
  textMm: number,
  kit: DrawingKit,
): Item[] {
  const rowMm = textMm * leading;
  const items = footItems(plan, rig, depth, choice, textMm, kit);
  const flowing = rig.rig.water === "flowing";
  if (flowing) items.push(...flowRow(plan, depth, choice, textMm, kit));
  if (choice === "full") {
    const baseline = (flowing ? rowMm : 0) + 0.85 * textMm;
    const left = plan.floatAt.xMm + 5;
    const roomMm = plan.box.widthMm - 0.5 - left;
    const told = tipTexts(rig, depth, "drawing.rig.tip", kit);
    const tip = firstWithRoom(told, roomMm, textMm, kit) ?? last(told);
    const tipTop = plan.floatAt.yMm - lengthMm(plan.float) * plan.floatLengthScale;
    const leader = [point(left - 0.6, baseline - 0.3 * textMm), point(plan.floatAt.xMm + 0.8, tipTop - 0.3)];
    items.push(polyline(leader, thinSoft), text(point(left, baseline), tip, textMm, { ink: "soft" }));
  }
  return items;
}

/** The first of several wordings, the longest first, that has room in a line. */
const firstWithRoom = (
  said: readonly string[],
  roomMm: number,
  textMm: number,
  { measure }: DrawingKit,
): string | undefined => said.find((one) => measure(one, textMm, "regular") <= roomMm);

/** Where the stream runs, and but for a small card how the float goes in it, in as many words as there is room for. */
function flowRow(
  { box, floatAt }: RigPlan,
  depth: SolvedDepth,
  choice: LabelChoice,
  textMm: number,
  kit: DrawingKit,
): Item[] {
  const { words, measure } = kit;
  const flow = words("drawing.drift.flow");
  const hang = choice === "full" ? drawnHang(depth) : undefined;
  const arrowMm = { gap: 1.2, length: 9 };
  const widthMm = (said: string) => measure(said, textMm, "regular");
  const flowMm = widthMm(flow) + arrowMm.gap + arrowMm.length;
  const besideMm = (said: string) => textMm + widthMm(said);
  const roomMm = box.widthMm - 1 - flowMm - textMm;
  const held = hang && firstWithRoom(heldTexts(hang, kit), roomMm, textMm, kit);
  const left = Math.min(floatAt.xMm + 5, box.widthMm - 0.5 - flowMm - (held ? besideMm(held) : 0));
  const baseMm = 0.85 * textMm;
  return [
    text(point(left, baseMm), flow, textMm, { ink: "soft" }),
    ...parts.flowArrow.draw({
      from: point(left + widthMm(flow) + arrowMm.gap, 0.55 * textMm),
      lengthMm: arrowMm.length,
    }),
    ...(held ? [text(point(left + flowMm + textMm, baseMm), held, textMm, { ink: "soft" })] : []),
  ];
}
