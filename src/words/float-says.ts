import { shotNamed } from "../core/tackle/shot-groups.ts";
import type { Mm } from "../core/units.ts";
import type { GuideRow } from "../model/guide-row.ts";
import type { SolvedDepth } from "../model/solved.ts";
import { unbroken } from "./shot-text.ts";
import type { TableKit } from "./table-kit.ts";
import { keyOf } from "./words.ts";

/** What the float says of its depth, in the few lines of the guide that matter: too shallow, right, too deep. */
export function floatSays(depth: SolvedDepth, kit: TableKit): string[] {
  const rows = depth.guideRows;
  const start = rows.findIndex(({ advice }) => advice === "start-here");
  const right = rows[start];
  if (!right) return [];
  const shallower = tellingRow(rows.slice(0, start).reverse(), right, kit);
  const deeper = tellingRow(rows.slice(start + 1), right, kit);
  const { words, figures } = kit;
  const by = (mm: Mm) => figures.shortGap(Math.abs(mm));
  const told = (row: GuideRow, hookOffBedMm: Mm) => rowText(row, hookOffBedMm, depth, kit);
  const { guidedFlow } = depth;
  return [
    // In running water the bait's height is as the float is held, which the drawing may show otherwise.
    ...(guidedFlow ? [words("told.says.held", { share: figures.share(guidedFlow.heldBackShare) })] : []),
    ...(shallower
      ? [
          words("told.says.too-shallow", {
            by: by(shallower.toMoveMm),
            says: told(shallower, shallower.toHookOffBedMm),
          }),
        ]
      : []),
    words("told.says.right", { says: told(right, right.hookOffBedMm) }),
    ...(deeper
      ? [words("told.says.too-deep", { by: by(deeper.moveMm), says: told(deeper, deeper.hookOffBedMm) })]
      : []),
  ];
}

/** The nearest row whose float does something else; the nearest of all where none does. */
function tellingRow(rows: readonly GuideRow[], right: GuideRow, { figures }: TableKit): GuideRow | undefined {
  const seen = ({ state, tipShowingMm }: GuideRow) =>
    tipShowingMm === null ? state : figures.tip(tipShowingMm);
  return rows.find((row) => seen(row) !== seen(right)) ?? rows[0];
}

function rowText(row: GuideRow, hookOffBedMm: Mm, depth: SolvedDepth, kit: TableKit): string {
  const { words, figures } = kit;
  const { state, tipShowingMm } = row;
  const shot = shotNamed(row.shotOnBed, depth.lineShot);
  const onBed = shot.length > 0 ? [words("told.says.on-the-bed", { shot: figures.shot(shot) })] : [];
  if (tipShowingMm === null) {
    return [words(depth.guidedFlow ? `told.run.${keyOf(state)}` : `state.${keyOf(state)}`), ...onBed].join(
      ", ",
    );
  }
  const place =
    hookOffBedMm > 0
      ? words("told.run.off", { height: figures.shortGap(hookOffBedMm) })
      : words("told.run.on");
  const tip = unbroken(words("told.says.tip", { tip: figures.tip(tipShowingMm) }));
  return [tip, ...(onBed.length > 0 ? onBed : [words("told.says.bait", { place })])].join(", ");
}
