import { fullTub, sameLoadFrom } from "../core/loading/alternatives.ts";
import { leadAllowed } from "../core/tackle/lead-rule.ts";
import type { Metal, Tub } from "../core/tackle/shot.ts";
import type { SolvedDepth, SolvedRig } from "../model/solved.ts";
import type { SheetKit } from "./sheet-kit.ts";
import { columns, section } from "./sheet-layout.ts";

/** Metals soft enough to be pinched on as split shot. Common practice, no source. */
const splitShotMetals: readonly Metal[] = ["lead", "tin", "bismuth", "tungsten"];

/**
 * The lock, or the whole load of a float that shot do not hold, from other tubs: another metal, another scale. Lead
 * that the rule forbids is left out.
 */
export function alternativesText(solved: SolvedRig, depth: SolvedDepth, kit: SheetKit): string {
  const { words, figures, scales } = kit;
  const { rig } = solved;
  const lock = depth.lockShot;
  const load = lock.length > 0 ? lock : depth.lineShot;
  const shops = splitShotMetals.flatMap((metal) => scales.map((scale) => ({ metal, scale })));
  const tubs = Object.fromEntries(
    shops.map(({ metal, scale }, at) => [at, allowed(fullTub(scale, metal), metal, solved)]),
  );
  const split = lock.length > 0 ? "halves" : "one group";
  const answers = sameLoadFrom(load, tubs, rig.conditions, split);
  const rows = shops.flatMap(({ metal, scale }, at) => {
    const mix = answers[at]!;
    if (!mix.ok) return [];
    const { shot, massG, sparePullG } = mix.value;
    const cells = [figures.shot(shot), figures.mass(massG), figures.mass(sparePullG)];
    return [[words(`metal.${metal}`), scale.title, ...cells]];
  });
  const head = (["metal", "scale", "shot", "mass", "short"] as const).map((cell) =>
    words(`sheet.other-shot.${cell}`),
  );
  const title = words(lock.length > 0 ? "sheet.other-lock" : "sheet.other-load", {
    depth: figures.depth(depth.depthMm),
  });
  return rows.length === 0 ? "" : section(title, columns({ head, rows }));
}

function allowed(tub: Tub, metal: Metal, { rig }: SolvedRig): Tub {
  return metal === "lead" ? tub.filter(({ massG }) => leadAllowed(massG, rig.leadRule)) : tub;
}
