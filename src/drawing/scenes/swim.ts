import { first, last } from "../../core/lists.ts";
import type { SolvedDepth, SolvedRig } from "../../model/solved.ts";
import { type Point, point, polygon, polyline, text, thinSoft } from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import { layLabel, leading, paintLabel, type Run, together } from "../labels/label-text.ts";
import type { Drawing, Item } from "../model.ts";
import { parts } from "../parts/parts.ts";
import { between, ground, groundDepthMm, heightAt } from "./ground.ts";
import { sceneTextMm } from "./scene-text.ts";
import { swimRig, tipHeightMm } from "./swim-rig.ts";

/** A swim cut through from the bank outwards. */
export interface Swim {
  readonly title: string;
  /** The bed, from the bank out; at least two points, distances rising. */
  readonly bed: readonly { readonly fromBankMm: number; readonly depthMm: number }[];
  /** Where the bed starts to drop over a ledge, one of the points of the bed. */
  readonly ledgeFromBankMm?: number;
}

/** A rig in its place in the swim, set for the depth there. */
export interface PlacedRig {
  readonly fromBankMm: number;
  readonly solved: SolvedRig;
  readonly depth: SolvedDepth;
}

/** Share of the width that the bank takes. */
const bankShare = 0.07;
const marginMm = 0.5;

/** Depth of a swim [mm] at a distance from the bank; the ends of the bed go on level. */
export function bedDepthMm({ bed }: Swim, fromBankMm: number): number {
  return heightAt(
    bed.map((p) => point(p.fromBankMm, p.depthMm)),
    fromBankMm,
  );
}

/**
 * Cross-section of a swim with rigs set at dead depth, off bottom or laid on. Depths are to scale, distances from the
 * bank to another; a gap under the hook or line on the bed is drawn large enough to see.
 */
export function drawSwim(swim: Swim, rigs: readonly PlacedRig[], box: Box, kit: DrawingKit): Drawing {
  const { words, figures, measure } = kit;
  const textMm = sceneTextMm(box);
  const farMm = last(swim.bed).fromBankMm;
  const bankMm = bankShare * box.widthMm;
  const across = (fromBankMm: number) => bankMm + (fromBankMm / farMm) * (box.widthMm - bankMm);
  const labels = rigs.map((rig) => {
    const atMm = across(rig.fromBankMm);
    const roomMm = labelRoomMm(
      rigs.map((other) => across(other.fromBankMm)),
      atMm,
      box.widthMm,
    );
    const lay = (run: Run) => layLabel([run], roomMm, textMm, measure);
    return {
      atMm,
      name: lay({ text: words(`drawing.scenes.swim.${settingOf(rig)}`), face: "bold" }),
      hook: lay({ text: hookPlace(rig, kit) }),
    };
  });
  const labelsMm = Math.max(0, ...labels.map(({ name, hook }) => name.heightMm + hook.heightMm));
  const tipsMm = Math.max(0, ...rigs.map(({ solved, depth }) => tipHeightMm(solved, depth)));
  const surfaceMm = labelsMm + 1.2 + tipsMm;
  const belowMm = groundDepthMm + textMm * leading + marginMm;
  const deepestMm = Math.max(...swim.bed.map(({ depthMm }) => depthMm));
  const lay = (roomMm: number) => {
    const scale = (box.heightMm - surfaceMm - roomMm) / deepestMm;
    return { scale, bed: swim.bed.map((p) => point(across(p.fromBankMm), surfaceMm + p.depthMm * scale)) };
  };
  const ledgeEndsMm = (ledgeMm(swim, lay(belowMm).bed, textMm)?.yMm ?? 0) + 0.3 * textMm;
  const { scale, bed } = lay(belowMm + Math.max(0, ledgeEndsMm - box.heightMm));
  return {
    ...box,
    title: words("drawing.scenes.swim.title", { swim: swim.title }),
    description: describe(swim, rigs, kit),
    items: [
      ...bank(bankMm, surfaceMm, first(bed)),
      ...ground(bed),
      ...parts.waterSurface.draw({ leftMm: bankMm, rightMm: box.widthMm, yMm: surfaceMm }),
      ...rigs.flatMap((rig) =>
        swimRig(rig.solved, rig.depth, { xMm: across(rig.fromBankMm), surfaceMm, bed, scale }),
      ),
      ...labels.flatMap(({ atMm, name, hook }) => {
        const half = Math.max(name.widthMm, hook.widthMm) / 2 + marginMm;
        const x = Math.min(box.widthMm - half, Math.max(half, atMm));
        return [
          ...paintLabel(name, x, name.heightMm / 2, measure, "middle"),
          ...paintLabel(hook, x, name.heightMm + hook.heightMm / 2, measure, "middle"),
        ];
      }),
      ...rigs.map((rig) => {
        const x = across(rig.fromBankMm);
        const deep = words("drawing.scenes.swim.deep", {
          depth: figures.shortDepth(bedDepthMm(swim, rig.fromBankMm)),
        });
        return depthText(deep, x, bed, textMm, measure(deep, textMm, "regular"));
      }),
      ...ledgeText(ledgeMm(swim, bed, textMm), bed, textMm, words("drawing.scenes.swim.ledge")),
    ],
  };
}

/** Width for a label over one of the rigs: not past half-way to the next, nor out of the picture. */
function labelRoomMm(rigsAtMm: readonly number[], atMm: number, widthMm: number): number {
  const apart = rigsAtMm.filter((other) => other !== atMm).map((other) => Math.abs(other - atMm));
  return Math.min(...apart, 2 * atMm, Math.max(2 * (widthMm - atMm), 18)) - 2;
}

function settingOf({ depth: { overdepthMm } }: PlacedRig): "dead-depth" | "off-bottom" | "laid-on" {
  if (overdepthMm === 0) return "dead-depth";
  return overdepthMm < 0 ? "off-bottom" : "laid-on";
}

function hookPlace(rig: PlacedRig, { words, figures }: DrawingKit): string {
  const gap = together(figures.shortGap(Math.abs(rig.depth.overdepthMm)));
  return words(`drawing.scenes.swim.${settingOf(rig)}-hook`, { gap });
}

/** The bank, a little above the water, hatched as ground is. */
function bank(widthMm: number, surfaceMm: number, edge: Point): Item[] {
  const top = surfaceMm - 2.2;
  const shore = [point(0, top), point(0.6 * widthMm, top), point(widthMm, surfaceMm), edge];
  return [
    polygon([...shore, point(0, edge.yMm)], "paper"),
    ...ground(shore.slice(0, 3)),
    polyline(shore.slice(2), { ink: "ink", widthMm: 0.6 }),
  ];
}

/** Slopes steeper than this, down for across, are not written under. */
const steep = 0.5;

/** How deep it is, under the bed; beside a drop it keeps to the ground. */
function depthText(words: string, xMm: number, bed: readonly Point[], textMm: number, widthMm: number): Item {
  const drop = bed.findIndex((p, i) => {
    const next = bed[i + 1];
    return next && next.xMm > xMm && next.yMm - p.yMm > steep * (next.xMm - p.xMm);
  });
  const endMm = drop < 0 ? Number.POSITIVE_INFINITY : bed[drop]!.xMm;
  const x = Math.min(xMm, endMm - widthMm / 2 - groundDepthMm);
  const under = between(bed, x - widthMm / 2, x + widthMm / 2 + groundDepthMm);
  const lowest = Math.max(...under.map(({ yMm }) => yMm));
  return text(point(x, underMm(lowest, textMm)), words, textMm, { anchor: "middle" });
}

/** Baseline of a line of text under the bed. */
const underMm = (bedMm: number, textMm: number) => bedMm + groundDepthMm + 0.85 * textMm;

/** Where the ledge is named: in the ground beside the drop, at its foot but clear of the depth of the shelf. */
function ledgeMm(
  { bed: points, ledgeFromBankMm }: Swim,
  bed: readonly Point[],
  textMm: number,
): Point | undefined {
  const index = points.findIndex(({ fromBankMm }) => fromBankMm === ledgeFromBankMm);
  const [edge, foot] = [bed[index], bed[index + 1]];
  if (!edge || !foot) return undefined;
  return point(edge.xMm - 1, Math.max(foot.yMm, underMm(edge.yMm, textMm) + leading * textMm));
}

/** The name of the ledge, with a leader to the drop where it stands beside it. */
function ledgeText(at: Point | undefined, bed: readonly Point[], textMm: number, words: string): Item[] {
  if (!at) return [];
  const name = text(at, words, textMm, { ink: "soft", anchor: "end" });
  const middleMm = at.yMm - 0.3 * textMm;
  const foot = bed.findIndex(({ xMm, yMm }) => xMm > at.xMm + 1 && yMm > middleMm);
  const [above, below] = [bed[foot - 1], bed[foot]];
  if (!above || !below || above.yMm > middleMm) return [name];
  const share = (middleMm - above.yMm) / (below.yMm - above.yMm);
  const dropMm = above.xMm + share * (below.xMm - above.xMm);
  return [name, polyline([point(at.xMm + 0.7, middleMm), point(dropMm - 0.3, middleMm)], thinSoft)];
}

function describe(swim: Swim, rigs: readonly PlacedRig[], kit: DrawingKit): string {
  const { words, figures } = kit;
  const told = [words("drawing.scenes.swim.cut", { swim: swim.title })];
  const index = swim.bed.findIndex(({ fromBankMm }) => fromBankMm === swim.ledgeFromBankMm);
  const [edge, foot] = [swim.bed[index], swim.bed[index + 1]];
  if (edge && foot) {
    told.push(
      words("drawing.scenes.swim.spoken-ledge", {
        distance: figures.shortDepth(edge.fromBankMm),
        shallow: figures.shortDepth(edge.depthMm),
        deep: figures.shortDepth(foot.depthMm),
      }),
    );
  }
  for (const rig of rigs) {
    told.push(
      words("drawing.scenes.swim.spoken-rig", {
        distance: figures.shortDepth(rig.fromBankMm),
        depth: figures.shortDepth(bedDepthMm(swim, rig.fromBankMm)),
        rig: rig.solved.rig.title,
        setting: words(`drawing.scenes.swim.${settingOf(rig)}`),
        hook: hookPlace(rig, kit).replaceAll("\u00a0", " "),
      }),
    );
  }
  return told.join(" ");
}
