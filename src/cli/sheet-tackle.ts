import type { ChainPart } from "../core/tackle/knots.ts";
import { allShot, type SolvedRig } from "../model/solved.ts";
import { keyOf } from "../words/words.ts";
import type { SheetKit } from "./sheet-kit.ts";
import { labelled, section } from "./sheet-layout.ts";

/** What the rig is made of, which part of its line breaks first, and what its feed comes to. */
export function tackleText(solved: SolvedRig, kit: SheetKit): string {
  const { words, figures } = kit;
  const { rig, floatPullG } = solved;
  const { float } = rig;
  const metals = [...new Set(solved.depths.flatMap((depth) => allShot(depth).map(({ metal }) => metal)))];
  return section(
    words("sheet.tackle"),
    labelled([
      [
        words("sheet.label.float"),
        words("sheet.float", {
          float: float.title,
          capacity: figures.mass(float.capacityG),
          metal: words(`metal.${float.capacityMetal}`),
          basis: words(`capacity-basis.${float.capacityBasis}`),
          pull: figures.mass(floatPullG),
        }),
      ],
      [
        words("sheet.label.line"),
        words("sheet.line", {
          main: figures.strength(rig.mainLine.strengthG),
          hookLine: figures.strength(rig.hookLine.strengthG),
          length: figures.gap(rig.hookLengthMm),
        }),
      ],
      [words("sheet.label.breaks-first"), breaksFirst(solved, kit)],
      [
        words("sheet.label.hook"),
        words("sheet.hook", {
          hook: rig.hook.size,
          bait: rig.bait.title,
          pull: figures.mass(solved.hookAndBaitPullG),
        }),
      ],
      [
        words("sheet.label.shot"),
        words("sheet.scale", {
          scale: rig.scaleTitle,
          metals: metals.map((metal) => words(`metal.${metal}`)).join(", "),
          temperature: figures.temperature(rig.conditions.tempC),
        }),
      ],
      [words("sheet.label.feed"), feed(solved, kit)],
    ]),
  );
}

function breaksFirst({ lineChain: { breaksFirst, marginMiddleG } }: SolvedRig, kit: SheetKit): string {
  const { words, figures } = kit;
  const margin = { margin: figures.strength(Math.abs(marginMiddleG)) };
  return words("sheet.breaks-first", {
    part: partName(breaksFirst, kit),
    low: figures.strength(breaksFirst.lowG),
    high: figures.strength(breaksFirst.highG),
    margin: words(marginMiddleG > 0 ? "sheet.main-line-stronger" : "sheet.main-line-weaker", margin),
  });
}

function partName({ part, knot }: ChainPart, { words }: SheetKit): string {
  if (!knot) return words(`sheet.part.${keyOf(part)}`);
  return words("sheet.part-at", {
    part: words(`sheet.part.${keyOf(part)}`),
    where: words(`sheet.knot-at.${keyOf(knot.where)}`),
    knot: knot.knot.title,
  });
}

function feed({ rig, sessionFeed }: SolvedRig, { words, figures }: SheetKit): string {
  return words("sheet.feed", {
    portion: figures.volume(rig.feed.portionMl),
    what: rig.feed.what,
    every: figures.time(rig.feed.everyS),
    session: figures.time(rig.feed.forS),
    volume: figures.volume(sessionFeed.volumeMl),
  });
}
