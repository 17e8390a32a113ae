import { fullTub, sameLoadFrom } from "../core/loading/alternatives.ts";
import { leadAllowed } from "../core/tackle/lead-rule.ts";
import type { Metal } from "../core/tackle/shot.ts";
import type { SolvedDepth, SolvedRig } from "../model/solved.ts";
import { pinchedTogether } from "../solve/pinched-together.ts";
import type { SheetKit } from "./sheet-kit.ts";
import { columns, section } from "./sheet-layout.ts";

/** Metals soft enough to be pinched on as split shot. Common practice, no source. */
const splitShotMetals: readonly Metal[] = ["lead", "tin", "bismuth", "tungsten"];

/** What is pinched on together from other tubs: another metal, another scale. Lead that the rule forbids is left out. */
export function alternativesText({ rig }: SolvedRig, depth: SolvedDepth, kit: SheetKit): string {
  const { words, figures, scales } = kit;
  const together = pinchedTogether(depth);
  if (together === undefined) return "";
  const shops = splitShotMetals.flatMap((metal) =>
    scales.map((scale) => {
      const tub = fullTub(scale, metal);
      const allowed = metal === "lead" ? tub.filter(({ massG }) => leadAllowed(massG, rig.leadRule)) : tub;
      return { metal, scale, tub: allowed };
    }),
  );
  const split = together.of === "lock" ? "halves" : "one group";
  const others = sameLoadFrom(together.shot, shops, rig.conditions, split);
  if (others.length === 0) return "";
  return section(
    words(`sheet.other-shot.title.${together.of}`, { depth: figures.depth(depth.depthMm) }),
    columns({
      head: (["metal", "scale", "shot", "mass", "short"] as const).map((cell) =>
        words(`sheet.other-shot.${cell}`),
      ),
      rows: others.map(({ metal, scale, mix: { shot, massG, sparePullG } }) => [
        words(`metal.${metal}`),
        scale.title,
        figures.shot(shot),
        figures.mass(massG),
        figures.mass(sparePullG),
      ]),
    }),
  );
}
