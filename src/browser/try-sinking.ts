import { pictureRoom } from "../../templates/pages/rig-picture.ts";
import { entry } from "../core/lists.ts";
import { landingsOf } from "../core/sink/sink-of-rig.ts";
import { filmOfSides, namesOfWays } from "../drawing/film/sinking-film.ts";
import type { DrawingKit } from "../drawing/kit.ts";
import type { SolvedDepth, SolvedRig } from "../model/solved.ts";
import { sameShot } from "../solve/same-shot.ts";
import type { WayToSink } from "../solve/sink-in-way.ts";
import { keyOf } from "../words/words.ts";
import type { Beside } from "./beside.ts";
import { anotherTask } from "./give-way.ts";
import type { ShowFilm } from "./show-film.ts";

/**
 * Lets a reader choose two ways in which the same shot sink, and shows them beside each other: at first the rig's own way
 * and the one that is farthest from it.
 */
export function waysChooser(sums: Beside, showFilm: ShowFilm) {
  return (part: HTMLElement, solved: SolvedRig, depth: SolvedDepth, kit: DrawingKit): void => {
    const hung = sameShot(solved.rig, depth);
    const landings = landingsOf(solved.rig.float);
    const sides = [...part.querySelectorAll("fieldset")];
    const own = hung.find((one) => one.own)?.arrangement;
    const other = hung.find(({ arrangement }) => arrangement === depth.inWater?.sister?.arrangement);
    const begin = [
      { arrangement: own, landing: landings[0] },
      other
        ? { arrangement: other.arrangement, landing: landings[0] }
        : { arrangement: own, landing: landings.at(-1) },
    ];
    for (const [i, side] of sides.entries()) {
      const { arrangement, landing } = entry(begin, i);
      fill(
        side,
        "arrangement",
        hung.map((one) => one.arrangement),
        arrangement,
        kit,
      );
      fill(side, "landing", landings, landing, kit);
    }
    const show = () => {
      const ways = sides.map(wayIn) as [WayToSink, WayToSink];
      sums.ask("sinkInWays", { rig: solved.rig, ways }, async (sunk, { isLast }) => {
        await anotherTask();
        if (!sunk || !isLast) return;
        const names = namesOfWays(ways, kit);
        const falling = sunk.map(({ shot, sink }, i) => ({ name: entry(names, i), shot, sink }));
        await showFilm(part, filmOfSides(falling, solved, depth, pictureRoom, kit), kit);
      });
    };
    for (const side of sides) side.onchange = show;
    show();
  };
}

const selectIn = (side: Element, name: string) =>
  side.querySelector(`select[name=${name}]`) as HTMLSelectElement;

/** Puts in what there is to choose from; what the reader chose stays where it is among it. */
function fill(
  side: Element,
  name: keyof WayToSink,
  choices: readonly NonNullable<WayToSink[keyof WayToSink]>[],
  begin: string | undefined,
  { words }: DrawingKit,
): void {
  const select = selectIn(side, name);
  select.hidden = choices.length < 2;
  const known = [...select.options].map(({ value }) => value);
  if (known.join() === choices.join()) return;
  select.replaceChildren(
    ...choices.map((choice) => new Option(words(`drawing.film.way.${keyOf(choice)}`), choice)),
  );
  select.value = begin ?? "";
}

function wayIn(side: Element): WayToSink {
  const [arrangement, landing] = (["arrangement", "landing"] as const).map(
    (name) => selectIn(side, name).value,
  );
  return { ...(arrangement && { arrangement }), landing } as WayToSink;
}
