import { isLine } from "../core/tackle/kit.ts";
import { type Metal, metals } from "../core/tackle/shot.ts";
import type { Guide } from "../model/library.ts";
import type { SolvedPack } from "../model/shelf.ts";
import type { ThingNeed } from "../model/stock.ts";
import { unbroken } from "./shot-text.ts";
import { amountText, severalText, thingText } from "./stock-text.ts";
import type { TableKit } from "./table-kit.ts";

/** What stands on the label of a made-up pack. */
export interface LabelText {
  readonly title: string;
  /** What it is for, and what is in it. */
  readonly lines: readonly string[];
  readonly caution: string;
  /** Who made it up, by which edition of the guide. */
  readonly foot: string;
}

export function labelText({ solved, needs }: SolvedPack, guide: Guide, kit: TableKit): LabelText {
  const { words, figures } = kit;
  const metalsIn = metals.filter((metal) => shotOf(metal, needs).length > 0);
  return {
    title: solved.rig.title,
    lines: [
      depthsLine(
        solved.depths.map(({ depthMm }) => depthMm),
        kit,
      ),
      ...needs.filter(({ kind }) => kind === "float").map(({ thing }) => thingText(thing, kit)),
      ...metalsIn.map((metal) => shotLine(metal, needs, kit)),
      ...needs
        .filter(({ kind }) => kind === "hook")
        .map((need) => several(need, thingText(need.thing, kit), kit)),
      ...needs.filter(isLine).map((need) =>
        words("label.length", {
          length: unbroken(amountText(need, need.count, kit)),
          thing: thingText(need.thing, kit),
        }),
      ),
    ],
    caution: words(metalsIn.includes("lead") ? "label.caution-lead" : "label.caution"),
    foot: words("label.foot", { publisher: guide.publisher, edition: figures.date(guide.edition) }),
  };
}

function depthsLine(depthsMm: readonly number[], { words, figures }: TableKit): string {
  const [from, to] = [Math.min(...depthsMm), Math.max(...depthsMm)].map((mm) =>
    unbroken(figures.shortDepth(mm)),
  );
  return words(from === to ? "label.for-depth" : "label.for-depths", { from: from ?? "", to: to ?? "" });
}

const several = ({ count }: ThingNeed, thing: string, { words }: TableKit) =>
  unbroken(severalText(thing, count, words));

const shotOf = (metal: Metal, needs: readonly ThingNeed[]) =>
  needs.flatMap((need) =>
    need.thing.kind === "shot" && need.thing.metal === metal ? [{ need, size: need.thing.size }] : [],
  );

function shotLine(metal: Metal, needs: readonly ThingNeed[], kit: TableKit): string {
  const shot = shotOf(metal, needs).map(({ need, size }) => several(need, size, kit));
  return kit.words("label.shot", { metal: capital(kit.words(`metal.${metal}`)), shot: shot.join(", ") });
}

const capital = (name: string) => name.charAt(0).toUpperCase() + name.slice(1);
