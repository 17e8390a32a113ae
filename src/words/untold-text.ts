import type { GuideReading } from "../core/depth/guide-step.ts";
import { untoldFrom, untoldLess, untoldStates } from "../core/depth/told-apart.ts";
import { shotNamed } from "../core/tackle/shot-groups.ts";
import type { SolvedDepth } from "../model/solved.ts";
import type { TableKit } from "./table-kit.ts";

/** A depth as far as goes what its tip cannot tell. */
type Guided = Pick<SolvedDepth, "depthGuide" | "guidedFlow" | "lineShot">;

/** Which two states of the rig have one tip, a sentence for each two; none in running water, where nothing is read off it. */
export function untoldTexts(depth: Guided, kit: TableKit): string[] {
  const states = depth.guidedFlow ? [] : untoldStates(depth.depthGuide);
  return states.map(({ less, more }) =>
    kit.words("told.untold.says", {
      tip: kit.figures.tip(more.tipShowingMm!),
      less: lyingText(less, depth, kit),
      more: lyingText(more, depth, kit),
    }),
  );
}

/** With what else on the bed the tip of a line of the guide is told alike, or with what less; none where it tells. */
export function untoldOther(
  one: GuideReading,
  depth: Guided,
  kit: TableKit,
  other: "less or more" | "less" = "less or more",
): string | undefined {
  const find = other === "less" ? untoldLess : untoldFrom;
  const found = depth.guidedFlow ? undefined : find(one, depth.depthGuide);
  return found && lyingText(found, depth, kit);
}

function lyingText({ state, shotOnBed }: GuideReading, { lineShot }: Guided, kit: TableKit): string {
  if (state === "hangs") return kit.words("told.untold.hangs");
  if (shotOnBed.length === 0) return kit.words("told.untold.bait");
  return kit.words("told.says.on-the-bed", { shot: kit.figures.shot(shotNamed(shotOnBed, lineShot)) });
}
