import { describe, expect, test } from "vitest";
import { first, last } from "../../../src/core/lists.ts";
import { placeAt } from "../../../src/drawing/curve.ts";
import { drawKnot } from "../../../src/drawing/knots/draw-knot.ts";
import { laidSoFar, paintTying, tying } from "../../../src/drawing/knots/tying.ts";
import type { Item, PathItem } from "../../../src/drawing/model.ts";
import { drawFilms } from "../../../src/drawing/pictures.ts";
import { drawingFaults, flatItems } from "../../support/drawing-checks.ts";
import { shippedGuide } from "../../support/shipped-guide.ts";

const { library, kit, source } = shippedGuide;
const room = { widthMm: 80, textMm: 3.5 };

const filmOf = (knot: string) => drawFilms(source)({ picture: "film", film: "knot", knot }, room, kit);
const paths = (items: readonly Item[]) => items.filter((item): item is PathItem => item.kind === "path");
const withoutInk = (items: readonly Item[]) =>
  items.map((item) => JSON.stringify(item).replaceAll(/"ink":"(ink|accent)"/g, ""));
const xs = ({ steps }: PathItem) => steps.flatMap(([, ...numbers]) => numbers.filter((_, i) => i % 2 === 0));
const across = (items: readonly PathItem[]) =>
  Math.max(...items.flatMap(xs)) - Math.min(...items.flatMap(xs));
/** Length of path that is painted, as far as it can be told from its places. */
const painted = (items: readonly Item[]) => paths(items).flatMap(xs).length;

describe.each(library.knots)("$id tied", (knot) => {
  const box = { widthMm: room.widthMm, heightMm: (room.widthMm * knot.frame[1]) / knot.frame[0] };
  const steps = tying(knot, box);

  test("each step ends as the knot's own picture has it, but for the colours of its cords", () => {
    const drawn = drawKnot(knot, box, kit);
    for (const [i, step] of steps.entries())
      expect(withoutInk(paintTying(step, 1))).toEqual(withoutInk(drawn[i]!.items));
    const film = filmOf(knot.id);
    expect(film.moments.slice(0, steps.length).map(({ caption }) => caption)).toEqual(
      knot.steps.map(({ caption }) => caption),
    );
    expect(film.strip).toEqual(film.moments.map((_, i) => i));
  });

  test("more of it is there at every share of the way, and no frame of it fails", () => {
    for (const step of steps) {
      const seen = [0, 0.2, 0.4, 0.6, 0.8, 1].map((share) => painted(paintTying(step, share)));
      for (const [i, one] of seen.entries()) expect(one).toBeGreaterThanOrEqual(seen[i - 1] ?? 0);
      // One that has an end of its own goes its way, until it is pulled tight.
      const grows = step.fromMm.some((from, i) => from < step.strands[i]!.curve.length);
      expect(last(seen) > first(seen)).toBe(grows);
    }
  });

  test("a frame is as it is drawn by itself, whatever was drawn before, and keeps the marks that lie as they lay", () => {
    for (const [i, step] of steps.entries()) {
      const again = [0.9, 0.3, 1, 0.3].map((share) => ({ share, items: paintTying(step, share) }));
      for (const { share, items } of again) expect(items).toEqual(paintTying(tying(knot, box)[i]!, share));
      const [, before, , same] = again.map(({ items }) => items);
      // But for the end of a doubled line, which is bent anew in each frame.
      const anew = same!.filter((item, place) => item !== before![place]);
      expect(anew.length).toBeLessThanOrEqual(step.turnMm.some((turn) => turn !== undefined) ? 4 : 0);
    }
  });

  test("two cords have two colours, and patterns that differ without them", () => {
    for (const { strands } of steps) {
      if (strands.length < 2) continue;
      const [one, other] = strands;
      expect(one!.edge ?? "ink").not.toBe(other!.edge);
      expect(one!.pattern).not.toBe(other!.pattern);
    }
  });

  test("its last picture has it as large as it is in line", () => {
    const film = filmOf(knot.id);
    const end = last(film.moments);
    for (const { moving } of film.moments) {
      const drawing = { ...film, items: moving };
      expect(drawingFaults(drawing)).toEqual([]);
    }
    const holdsTackle = knot.steps.some(({ objects }) =>
      objects.some(({ kind }) => kind === "float" || kind === "shot"),
    );
    expect(film.moments.length).toBe(steps.length + (holdsTackle ? 0 : 1));
    if (holdsTackle) return;
    const right = knot.steps.findLastIndex(({ objects }) => !objects.some(({ kind }) => kind === "cross"));
    const large = paths(film.moments[right]!.moving).filter(({ stroke }) => stroke?.ink !== "paper");
    const cord = steps[right]!.strands[0]!;
    const small = paths(end.moving);
    const bar = small[knot.steps[right]!.strands.length]!;
    expect(flatItems(end.moving).some((item) => item.kind === "text" && item.text === "10 mm")).toBe(true);
    expect(across([bar])).toBeCloseTo(10, 6);
    // Its thickness is to its length as that of the cord in the large picture.
    const lineMm = Number(/line of ([\d.]+) mm/.exec(end.caption)![1]);
    const strandsOf = (items: readonly PathItem[], widthMm: number) =>
      items.filter(({ stroke }) => Math.abs((stroke?.widthMm ?? 0) - widthMm) < 1e-9);
    const drawnLarge = across(strandsOf(large, cord.widthMm));
    const drawnSmall = across(
      strandsOf(small.slice(0, knot.steps[right]!.strands.length), Math.max(0.35, lineMm)),
    );
    expect((drawnSmall / lineMm) * (cord.widthMm / drawnLarge)).toBeCloseTo(1, 1);
  });
});

test("a doubled line goes its way as one, its two halves ending beside each other; every other end goes alone", () => {
  const box = { widthMm: 80, heightMm: 60 };
  const doubled = library.knots.flatMap((knot) =>
    tying(knot, box).flatMap((step, i) =>
      step.turnMm.some((turn) => turn !== undefined) ? [{ knot, i, step }] : [],
    ),
  );
  expect(doubled.map(({ knot, i }) => `${knot.id} ${i + 1}`)).toEqual([
    "overhand-loop 2",
    "overhand-loop 3",
    "overhand-loop 4",
  ]);
  for (const { step } of doubled)
    for (const share of [0.2, 0.35, 0.5, 0.65, 0.8]) {
      const { curve, unlaid, widthMm } = laidSoFar(step.strands[0]!, step.fromMm[0]!, step.turnMm[0], share);
      const [a, b] = [placeAt(curve, unlaid!.from), placeAt(curve, unlaid!.to)];
      expect(Math.hypot(b.x - a.x, b.y - a.y), `${share}`).toBeLessThan(3 * widthMm);
      // The more is laid, the less of either half is left.
      const turn = step.turnMm[0]!;
      expect(unlaid!.from).toBeLessThan(turn);
      expect((turn - unlaid!.from) / (turn - step.fromMm[0]!)).toBeCloseTo(1 - share, 6);
    }
});

test("a turn has its number once it is laid", () => {
  const { frame, steps } = library.knots.find(({ id }) => id === "stop-knot")!;
  const winding = tying({ frame, steps }, { widthMm: 80, heightMm: 40 })[1]!;
  const counted = [0, 0.5, 0.8, 1].map(
    (share) =>
      flatItems(paintTying(winding, share)).filter((item) => item.kind === "text" && item.text !== "loop")
        .length,
  );
  expect(first(counted)).toBe(0);
  expect(last(counted)).toBe(5);
  expect(counted).toEqual(counted.toSorted((a, b) => a - b));
  expect(counted[2]).toBeGreaterThan(0);
  expect(counted[2]).toBeLessThan(5);
});
