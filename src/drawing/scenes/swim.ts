import { first, last } from "../../core/lists.ts";
import type { SolvedDepth, SolvedRig } from "../../model/solved.ts";
import { type Point, point, polygon, polyline, text, thinSoft } from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import { layLabel, leading, paintLabel, type Run, together } from "../labels/label-text.ts";
import type { Drawing, Item } from "../model.ts";
import { parts } from "../parts/parts.ts";
import { strandStrokes } from "../strands.ts";
import { angler, hipsShare } from "./angler.ts";
import { between, ground, groundDepthMm, heightAt } from "./ground.ts";
import { pointAlong } from "./path.ts";
import { rod } from "./rod.ts";
import { sceneTextMm } from "./scene-text.ts";
import { floatFoot, swimRig, tipHeightMm } from "./swim-rig.ts";

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
const bankShare = 0.15;
/** Height of the angler as a share of the picture's width, and room over the water for the rod. */
const tallShare = 0.17;
const rodRoomMm = 3;
const marginMm = 0.5;
const bankAboveMm = 2.2;

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
  const surfaceMm = Math.max(labelsMm + rodRoomMm + tipsMm, anglerMm(box) + bankAboveMm + 0.5);
  const note = layLabel(
    [{ text: words("drawing.scenes.swim.scale"), ink: "soft" }],
    box.widthMm - 2 * marginMm,
    textMm,
    measure,
  );
  const belowMm = groundDepthMm + textMm * leading + 2 * marginMm + note.heightMm;
  const deepestMm = Math.max(...swim.bed.map(({ depthMm }) => depthMm));
  const lay = (roomMm: number) => {
    const scale = (box.heightMm - surfaceMm - roomMm) / deepestMm;
    return { scale, bed: swim.bed.map((p) => point(across(p.fromBankMm), surfaceMm + p.depthMm * scale)) };
  };
  const ledgeEndsMm =
    (ledgeMm(swim, lay(belowMm).bed, textMm)?.yMm ?? 0) + 0.3 * textMm + note.heightMm + marginMm;
  const { scale, bed } = lay(belowMm + Math.max(0, ledgeEndsMm - box.heightMm));
  /** How deep it is below a rig; on the shelf with its name, where the shelf has the room. */
  const depthBelow = (rig: PlacedRig): Item => {
    const x = across(rig.fromBankMm);
    const depth = figures.shortDepth(bedDepthMm(swim, rig.fromBankMm));
    const edge = swim.ledgeFromBankMm ?? 0;
    const named = words("drawing.scenes.swim.shelf-deep", { depth });
    const half = measure(named, textMm, "regular") / 2;
    const left = Math.min(x, across(edge) - half - groundDepthMm);
    const floor = between(bed, left - half, Math.min(across(edge), left + half + groundDepthMm));
    const floorMm = Math.max(...floor.map(({ yMm }) => yMm));
    if (rig.fromBankMm < edge && left > half + marginMm)
      return text(point(left, underMm(floorMm, textMm)), named, textMm, { anchor: "middle" });
    const said = words("drawing.scenes.swim.deep", { depth });
    const roomMm = labelRoomMm(
      rigs.map((other) => across(other.fromBankMm)),
      x,
      box.widthMm,
    );
    const deep = measure(said, textMm, "regular") > roomMm ? depth : said;
    return depthText(deep, x, bed, textMm, measure(deep, textMm, "regular"));
  };
  return {
    ...box,
    title: words("drawing.scenes.swim.title", { swim: swim.title }),
    description: describe(swim, rigs, kit),
    items: [
      polygon([point(bankMm, surfaceMm), ...bed, point(box.widthMm, surfaceMm)], "water"),
      ...bank(bankMm, surfaceMm, first(bed)),
      ...ground(bed),
      ...parts.waterSurface.draw({ leftMm: bankMm, rightMm: box.widthMm, yMm: surfaceMm }),
      ...anglerAndLine(rigs, across, surfaceMm, box),
      ...rigs.flatMap((rig) =>
        swimRig(rig.solved, rig.depth, {
          xMm: across(rig.fromBankMm),
          surfaceMm,
          bed,
          scale,
          isOnRod: rig === nearestOf(rigs),
        }),
      ),
      ...labels.flatMap(({ atMm, name, hook }) => {
        const half = Math.max(name.widthMm, hook.widthMm) / 2 + marginMm;
        const x = Math.min(box.widthMm - half, Math.max(half, atMm));
        return [
          ...paintLabel(name, x, name.heightMm / 2, measure, "middle"),
          ...paintLabel(hook, x, name.heightMm + hook.heightMm / 2, measure, "middle"),
        ];
      }),
      ...rigs.map((rig) => depthBelow(rig)),
      ...paintLabel(note, marginMm, box.heightMm - note.heightMm / 2, measure),
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

/** Head of somebody who sits, above the ground. */
const anglerMm = ({ widthMm }: Box) => (hipsShare.sits + 0.52) * tallShare * widthMm;

/** The rig that the angler in the picture fishes. */
function nearestOf(rigs: readonly PlacedRig[]): PlacedRig | undefined {
  return rigs.toSorted((a, b) => a.fromBankMm - b.fromBankMm)[0];
}

/** Somebody on the bank whose line runs to the nearest of the floats. */
function anglerAndLine(
  rigs: readonly PlacedRig[],
  across: (fromBankMm: number) => number,
  surfaceMm: number,
  { widthMm }: Box,
): Item[] {
  const tall = tallShare * widthMm;
  const hips = point(0.3 * bankShare * widthMm, surfaceMm - bankAboveMm - hipsShare.sits * tall);
  const nearest = nearestOf(rigs);
  const floatX = nearest ? across(nearest.fromBankMm) : widthMm / 3;
  const butt = point(hips.xMm + 0.25 * tall, hips.yMm - 0.02 * tall);
  const tip = point(butt.xMm + 0.72 * (floatX - butt.xMm), surfaceMm - 1.4);
  const foot = nearest && floatFoot(nearest.solved, nearest.depth, { xMm: floatX, surfaceMm });
  const line: Item[] = foot
    ? [
        {
          kind: "path",
          steps: [
            ["M", tip.xMm, tip.yMm],
            [
              "C",
              tip.xMm + 0.3 * (foot.xMm - tip.xMm),
              foot.yMm + 2,
              foot.xMm - 1.5,
              foot.yMm + 1.5,
              foot.xMm,
              foot.yMm,
            ],
          ],
          stroke: strandStrokes["main line"],
        },
      ]
    : [];
  return [
    ...rod(butt, tip, { reel: true }),
    ...line,
    ...angler({ hips, heightMm: tall, hands: pointAlong([butt, tip], 0.1 * tall), sits: true }),
  ];
}

/** The bank, a little above the water, hatched as ground is. */
function bank(widthMm: number, surfaceMm: number, edge: Point): Item[] {
  const top = surfaceMm - bankAboveMm;
  const shore = [point(0, top), point(0.75 * widthMm, top), point(widthMm, surfaceMm), edge];
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
        setting: words(`drawing.scenes.swim.${settingOf(rig)}`),
        hook: hookPlace(rig, kit).replaceAll("\u00a0", " "),
      }),
    );
  }
  return told.join(" ");
}
