import { fixedFloatLimitMm, recordDepth, slidingSetup } from "../core/depth/rod-reach.ts";
import type { SolvedDepth, SolvedRig } from "../model/solved.ts";
import { keyOf } from "../words/words.ts";
import type { SheetKit } from "./sheet-kit.ts";
import { labelled, section } from "./sheet-layout.ts";

/** Butt to keeper ring: what of a rod's length no depth is kept along [mm]. Common practice, no source. */
const handleMm = 600;

/** How the rig is set for one depth, whether the rod can fish it, and how the depth is kept for another day. */
export function setText(solved: SolvedRig, depth: SolvedDepth, kit: SheetKit): string {
  const { words, figures } = kit;
  const { rig } = solved;
  const gap = figures.gap(Math.abs(depth.overdepthMm));
  return section(
    words("sheet.set", { depth: figures.depth(depth.depthMm) }),
    labelled([
      [words("sheet.label.setting"), words(`sheet.setting.${keyOf(rig.setting)}`, { gap })],
      [
        words("sheet.label.float-to-hook"),
        words(rig.float.attachment === "sliding" ? "sheet.stop-to-hook" : "sheet.float-to-hook", {
          floatToHook: figures.gap(figures.settingMm(depth)),
          draught: figures.gap(depth.draughtMm),
        }),
      ],
      [
        words("sheet.label.load"),
        words(loadKey(depth), {
          mass: figures.mass(depth.massG),
          pull: figures.mass(depth.pullG),
          spare: figures.mass(Math.abs(depth.sparePullG)),
          share: figures.share(depth.lockShare),
        }),
      ],
      [words("sheet.label.tip"), figures.tip(depth.tipAsSetMm)],
      [words("sheet.label.rod"), reach(solved, depth, kit)],
      [words("sheet.label.record"), record(solved, depth, kit)],
    ]),
  );
}

/** A load that pulls more than the float carries rests on the bed in part, as a lift rig's does. */
function loadKey({ lockShare, tipShowingMm }: SolvedDepth) {
  if (tipShowingMm === 0) return "sheet.load-over";
  return lockShare > 0 ? "sheet.load-locked" : "sheet.load";
}

function reach({ rig }: SolvedRig, depth: SolvedDepth, { words, figures }: SheetKit): string {
  const rod = figures.depth(rig.rodLengthMm);
  if (depth.whip) {
    const { lineMm, tipToWaterMm, reachMm } = depth.whip;
    return words("sheet.whip", {
      whip: rod,
      line: figures.depth(lineMm),
      tipToWater: figures.depth(tipToWaterMm),
      reach: figures.depth(reachMm),
    });
  }
  if (rig.float.attachment !== "sliding") {
    return words("sheet.fixed-float", { rod, limit: figures.gap(fixedFloatLimitMm(rig.rodLengthMm)) });
  }
  const { stopKnotFromHookMm, stopKnots, loadMinG } = slidingSetup(depth.depthMm, depth.floatToHookMm);
  return words("sheet.sliding-float", {
    stopKnots,
    stopKnot: figures.gap(stopKnotFromHookMm),
    load: figures.mass(loadMinG),
  });
}

function record({ rig }: SolvedRig, depth: SolvedDepth, kit: SheetKit): string {
  const { words, figures, handSpanMm } = kit;
  const whip = rig.outfit === "whip";
  const ringToTipMm = whip ? rig.rodLengthMm : Math.max(rig.rodLengthMm - handleMm, 1);
  const kept = recordDepth(depth.floatToHookMm, ringToTipMm, handSpanMm ?? depth.floatToHookMm);
  if (!kept.ok) return words("sheet.record-none");
  const { rodLengths, markMm, handSpans, restMm } = kept.value;
  const mark = figures.gap(markMm);
  const onRod =
    rodLengths > 0
      ? words("sheet.record-far", { rodLengths, mark })
      : words(whip ? "sheet.record-whip" : "sheet.record", { mark });
  const spans =
    handSpanMm === undefined
      ? words("sheet.record-spans-unknown")
      : words("sheet.record-spans", { handSpans, rest: figures.gap(restMm) });
  return `${onRod} ${spans}`;
}
