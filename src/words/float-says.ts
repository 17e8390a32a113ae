import { isToldAsBefore } from "../core/depth/told-apart.ts";
import { shotNamed } from "../core/tackle/shot-groups.ts";
import type { Mm } from "../core/units.ts";
import type { GuideRow } from "../model/guide-row.ts";
import type { GuidedFlow, SolvedDepth } from "../model/solved.ts";
import { unbroken } from "./shot-text.ts";
import type { TableKit } from "./table-kit.ts";
import { keyOf } from "./words.ts";

/** What the float says of its depth, in the few lines of the guide that matter: too shallow, right, too deep. */
export function floatSays(depth: SolvedDepth, kit: TableKit): string[] {
  const start = depth.guideRows.findIndex(({ advice }) => advice === "start-here");
  const right = depth.guideRows[start];
  if (!right) return [];
  const shallower = depth.guideRows.slice(0, start).reverse();
  const deeper = depth.guideRows.slice(start + 1);
  return depth.guidedFlow
    ? runningSays(right, { shallower, deeper }, depth.guidedFlow, depth, kit)
    : stillSays(right, { shallower, deeper }, depth, kit);
}

/** The rows on either side of where it is set right, the nearest first. */
interface Beside {
  readonly shallower: readonly GuideRow[];
  readonly deeper: readonly GuideRow[];
}

function stillSays(right: GuideRow, beside: Beside, depth: SolvedDepth, kit: TableKit): string[] {
  const { words, figures } = kit;
  const shallower = tellingRow(beside.shallower, right, kit);
  const deeper = tellingRow(beside.deeper, right, kit);
  const by = (mm: Mm) => figures.besideDepth(Math.abs(mm));
  const [same] = beside.deeper.filter((row) => isToldAsBefore(row, right));
  const alone = stillText(right, right.hookOffBedMm, depth, kit);
  return [
    ...(shallower
      ? [
          words("told.says.too-shallow", {
            by: by(shallower.toMoveMm),
            says: stillText(shallower, shallower.toHookOffBedMm, depth, kit),
          }),
        ]
      : []),
    words("told.says.right", {
      says:
        same && same !== deeper
          ? words("told.says.or", {
              says: alone,
              shot: figures.shot(shotNamed(same.shotOnBed, depth.lineShot)),
            })
          : alone,
    }),
    ...(deeper
      ? [
          words("told.says.too-deep", {
            by: by(deeper.moveMm),
            says: stillText(deeper, deeper.hookOffBedMm, depth, kit),
          }),
        ]
      : []),
  ];
}

/** The nearest row whose float does something else; the nearest of all where none does. */
function tellingRow(rows: readonly GuideRow[], right: GuideRow, { figures }: TableKit): GuideRow | undefined {
  const seen = ({ state, tipShowingMm }: GuideRow) =>
    tipShowingMm === null ? state : figures.tip(tipShowingMm);
  return rows.find((row) => seen(row) !== seen(right)) ?? rows[0];
}

function stillText(row: GuideRow, hookOffBedMm: Mm, depth: SolvedDepth, kit: TableKit): string {
  const { state, tipShowingMm } = row;
  const onBed = shotOnBed(row, depth, kit);
  if (tipShowingMm === null) return [kit.words(`state.${keyOf(state)}`), ...onBed].join(", ");
  const below = onBed.length > 0 ? onBed : [baitText(hookOffBedMm, kit)];
  return [tipText(tipShowingMm, kit), ...below].join(", ");
}

/**
 * In running water all tips that show are alike, and a float that runs clean tells no height: as the line hangs in a bow, the
 * bait does not even rise by what the float is moved. What it does too deep tells.
 */
function runningSays(
  right: GuideRow,
  { shallower, deeper }: Beside,
  { heldBackShare }: GuidedFlow,
  depth: SolvedDepth,
  kit: TableKit,
): string[] {
  const { words, figures } = kit;
  const runs = ({ state }: GuideRow) => words(`told.run.${keyOf(state)}`);
  const tip = right.tipShowingMm === null ? [] : [tipText(right.tipShowingMm, kit)];
  const others = deeper.filter(({ state }) => state !== right.state);
  const firsts = others.filter(({ state }, at) => others.findIndex((row) => row.state === state) === at);
  return [
    words("told.says.held", { share: figures.share(heldBackShare) }),
    words("told.says.right", { says: [runs(right), ...tip, baitText(right.hookOffBedMm, kit)].join(", ") }),
    ...(shallower.length > 0 ? [words("told.says.shallower")] : []),
    ...firsts.map((row, at) =>
      words(at === 0 ? "told.says.too-deep" : "told.says.deeper-still", {
        by: figures.besideDepth(Math.abs(row.moveMm)),
        says: [runs(row), ...shotOnBed(row, depth, kit)].join(", "),
      }),
    ),
  ];
}

const tipText = (mm: Mm, { words, figures }: TableKit) =>
  unbroken(words("told.says.tip", { tip: figures.tip(mm) }));

function baitText(hookOffBedMm: Mm, { words, figures }: TableKit): string {
  const height = figures.besideDepth(hookOffBedMm);
  return words("told.says.bait", {
    place: hookOffBedMm > 0 ? words("told.run.off", { height }) : words("told.run.on"),
  });
}

/** Shot on the bed; none where there are none. */
function shotOnBed(row: GuideRow, { lineShot }: SolvedDepth, { words, figures }: TableKit): string[] {
  const shot = shotNamed(row.shotOnBed, lineShot);
  return shot.length > 0 ? [words("told.says.on-the-bed", { shot: figures.shot(shot) })] : [];
}
