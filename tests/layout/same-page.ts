import { expect } from "vitest";
import type { Item } from "../../src/drawing/model.ts";
import type { LaidOutPage } from "../../src/layout/page-of.ts";

/** Words and edges may lie so far apart [mm]: both round to hundredths, at other places. */
const toleranceMm = 0.02;

interface Mark {
  readonly what: string;
  readonly places: readonly number[];
}

/** Every line of text where it begins, and every shape with its points. */
function marks(items: readonly Item[], xMm = 0, yMm = 0): Mark[] {
  return items.flatMap((item): Mark[] => {
    if (item.kind === "group") return marks(item.items, xMm + item.xMm, yMm + item.yMm);
    if (item.kind === "text") {
      const { face, sizeMm, text } = item;
      return [{ what: `${face} ${sizeMm.toFixed(3)} ${text}`, places: [xMm + item.xMm, yMm + item.yMm] }];
    }
    if (item.kind !== "path") return [];
    const points = item.steps.flatMap(([, ...numbers]) =>
      numbers.map((n, i) => n + (i % 2 === 0 ? xMm : yMm)),
    );
    return [{ what: item.steps.map(([letter]) => letter).join(""), places: points }];
  });
}

/** Fails where one page has other words, lines, boxes or overflows than the other, or has them elsewhere. */
export function expectSamePage(ours: LaidOutPage, theirs: LaidOutPage, name = ""): void {
  const [own, other] = [marks(ours.items), marks(theirs.items)];
  expect(
    own.map(({ what }) => what),
    name,
  ).toEqual(other.map(({ what }) => what));
  own.forEach(({ what, places }, i) => {
    places.forEach((place, n) => {
      const gap = Math.abs(place - other[i]!.places[n]!);
      expect(gap, `${name} ${what} [${n}]: ${place} and ${other[i]!.places[n]}`).toBeLessThanOrEqual(
        toleranceMm,
      );
    });
  });
  expect(Math.abs(ours.heightMm - theirs.heightMm), name).toBeLessThanOrEqual(toleranceMm);
  const over = ({ overflows }: LaidOutPage) =>
    overflows.map(({ field, direction }) => `${field} ${direction}`);
  expect(over(ours), name).toEqual(over(theirs));
}
