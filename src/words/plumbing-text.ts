import type { PlumbingStep } from "../core/depth/plumbing.ts";
import type { Plumbing } from "../model/solved.ts";
import type { TableKit } from "./table-kit.ts";
import { keyOf } from "./words.ts";

/** Finding a depth with a plummet, in words. */
export interface PlumbingText {
  readonly plummet: string;
  readonly tries: readonly { readonly set: string; readonly says: string; readonly next: string }[];
}

export function plumbingText(
  { plummet, plummetNeededG, kept, steps }: Plumbing,
  kit: TableKit,
): PlumbingText {
  const { words, figures } = kit;
  const left =
    kept.below.length === 0
      ? words("told.plumbing.bare")
      : words("told.plumbing.kept", { lock: figures.lock(kept) });
  return {
    plummet: plummet
      ? words("told.plumbing.plummet", {
          mass: figures.mass(plummet.massG),
          metal: words(`metal.${plummet.metal}`),
          left,
        })
      : words("told.plumbing.no-plummet", { mass: figures.mass(plummetNeededG), left }),
    tries: steps.map((step) => ({
      set: figures.shortDepth(step.settingMm),
      says: plumbedSays(step, kit),
      next:
        step.moveMm === 0
          ? words("told.plumbing.done")
          : words(`told.plumbing.${wayOf(step)}`, { gap: figures.shortGap(Math.abs(step.moveMm)) }),
    })),
  };
}

/** What the float does at a try, and what that says of the setting: `goes under: set too shallow`. */
export function plumbedSays({ sign, moveMm }: PlumbingStep, { words }: TableKit): string {
  const setting = moveMm === 0 ? "right" : moveMm > 0 ? "too-shallow" : "too-deep";
  return words("told.plumbing.says", {
    sign: words(`told.plumbing.sign.${keyOf(sign)}`),
    setting: words(`told.plumbing.setting.${setting}`),
  });
}

/** Whether the hook is to go deeper or shallower, and so what holds the float up or down the line. */
export const wayOf = ({ moveMm }: Pick<PlumbingStep, "moveMm">) => (moveMm > 0 ? "deeper" : "shallower");
