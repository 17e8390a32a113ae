import { describe, expect, test } from "vitest";
import { rigData } from "../../../src/build/data.ts";
import { sinkingJson } from "../../../src/build/data-sinking.ts";
import { entry, first, last } from "../../../src/core/lists.ts";
import type { Film } from "../../../src/drawing/film/film.ts";
import { drawFilm } from "../../../src/drawing/film/films.ts";
import { packFilm } from "../../../src/drawing/film/pack-film.ts";
import { readPoses } from "../../../src/drawing/film/poses.ts";
import { filmOfSides, namesOfWays } from "../../../src/drawing/film/sinking-film.ts";
import type { Item } from "../../../src/drawing/model.ts";
import { filmsOf } from "../../../src/model/films.ts";
import type { SolvedDepth, SolvedRig } from "../../../src/model/solved.ts";
import { sinkInWay } from "../../../src/solve/sink-in-way.ts";
import { drawingFaults } from "../../support/drawing-checks.ts";
import { shippedGuide } from "../../support/shipped-guide.ts";

const { rigs, kit } = shippedGuide;
const room = { widthMm: 80, textMm: 3.5 };

/** Where bait and shot are at one moment on the picture, read from what a page is sent. */
function framesOf(film: Film) {
  const { parts, poses } = packFilm(film.moments);
  const surfaces = film.still.filter(isWater).map(({ steps }) => steps.map(([, x, y]) => [x, y]));
  return {
    surfaceMm: Math.min(...surfaces.flat().flatMap(([, y]) => (y === undefined ? [] : [y]))),
    bedMm: Math.max(...surfaces.flat().flatMap(([, y]) => (y === undefined ? [] : [y]))),
    frames: poses.map((packed) => readPoses(packed).map((pose) => ({ pose, part: entry(parts, pose.part) }))),
  };
}

const isWater = (item: Item): item is Extract<Item, { kind: "path" }> =>
  item.kind === "path" && item.fill === "water";

type Frame = ReturnType<typeof framesOf>["frames"][number];

/** Each of the two rigs of a frame: where its float meets the surface, and its shot and bait from the top down. */
function sidesOf(frame: Frame) {
  const sides: { floatX: number; places: number[][] }[] = [];
  for (const { pose, part } of frame) {
    if (part.kind === "path" && part.stroke?.widthMm === 1.3 && part.stroke.ink === "ink")
      sides.push({ floatX: first(pose.numbers), places: [] });
    if (pose.kind === "group") last(sides).places.push([...pose.numbers]);
  }
  return sides;
}

interface OnTheWay {
  readonly timesS: readonly number[];
  readonly fromHookCm: readonly number[];
  readonly depthCm: readonly (readonly number[])[];
  readonly asideCm: readonly (readonly number[])[];
}

/** What the data say of a row at a time. */
function atTime({ timesS }: OnTheWay, row: readonly number[], timeS: number): number {
  const after = timesS.findIndex((one) => one >= timeS - 1e-3);
  if (after < 0) return last(row);
  if (after === 0) return first(row);
  const share = (timeS - timesS[after - 1]!) / (timesS[after]! - timesS[after - 1]!);
  return row[after - 1]! + share * (row[after]! - row[after - 1]!);
}

function published(solved: SolvedRig, depth: SolvedDepth): readonly OnTheWay[] {
  const content = sinkingJson({ ...solved, depths: [depth] });
  const [data] = JSON.parse(String(content)).depths as { sink: OnTheWay[]; sisterSink?: OnTheWay[] }[];
  if (!data!.sisterSink) return data!.sink;
  // Shot that are strung out are at the left with every rig.
  const { lift } = first(rigData({ ...solved, depths: [depth] }).depths) as unknown as {
    lift: { own: boolean; pattern: string }[];
  };
  const both = [data!.sink[0]!, data!.sisterSink[0]!];
  return lift.find(({ own }) => own)!.pattern === "strung out" ? both : both.toReversed();
}

/** What is told below each side of a moment that has ended there. */
const endsOf = (moving: readonly Item[]) =>
  moving.flatMap((item) =>
    item.kind === "text" && /^(down|hangs) after/.test(item.text) ? [item.text] : [],
  );

const filmed = rigs.filter((solved) => filmsOf(solved, first(solved.depths)).includes("sinking"));

test("all rigs but those that slide sink in a film", () => {
  const others = rigs.filter((solved) => !filmed.includes(solved)).map(({ rig }) => rig.float.attachment);
  expect(others).toEqual(["sliding"]);
});

describe.each(filmed)("$rig.id, sinking", (solved) => {
  test("every frame has bait and shot where the data say, at the times that they say", () => {
    for (const depth of solved.depths) {
      const film = drawFilm("sinking", solved, depth, room, kit);
      const { surfaceMm, bedMm, frames } = framesOf(film);
      const scale = (bedMm - surfaceMm) / (depth.depthMm / 10);
      const told = published(solved, depth);
      const landedX = sidesOf(first(frames)).map(({ floatX }) => floatX);
      for (const [i, frame] of frames.entries()) {
        const timeS = film.moments[i]!.timeS!;
        for (const [side, { places }] of sidesOf(frame).entries()) {
          const data = told[side]!;
          // The last place is the bait's, those before it are the shot's; the lock is not down the line.
          const drawn = places.toReversed();
          for (const [row, fromHookCm] of data.fromHookCm.entries()) {
            const wanted = [
              landedX[side]! + scale * atTime(data, data.asideCm[row]!, timeS),
              surfaceMm + scale * atTime(data, data.depthCm[row]!, timeS),
            ];
            const near = drawn.some(([x, y]) => Math.hypot(x! - wanted[0]!, y! - wanted[1]!) < 1);
            expect(near, `${depth.depthMm} mm, ${timeS} s, ${fromHookCm} cm up`).toBe(true);
          }
        }
      }
      const ends = told.map(({ timesS }) => last(timesS));
      const times = film.moments.map(({ timeS }) => timeS!);
      for (const endS of ends)
        expect(Math.min(...times.map((one) => Math.abs(one / endS - 1)))).toBeLessThan(0.01);
      expect(last(times) / Math.max(...ends)).toBeCloseTo(1, 2);
    }
  });

  test("its strip is clear, ends with both down, and says how much sooner by the seconds that it shows", () => {
    const depth = first(solved.depths);
    const film = drawFilm("sinking", solved, depth, room, kit);
    expect(film.strip.length).toBeGreaterThanOrEqual(3);
    expect(last(film.strip)).toBe(film.moments.length - 1);
    for (const place of film.strip) {
      const { moving } = entry(film.moments, place);
      const faults = drawingFaults({ ...film, items: [...film.still, ...moving] });
      expect(faults).toEqual([]);
    }
    const end = last(film.moments);
    const seconds = endsOf(end.moving).map((text) => Number(/(\d+) s$/.exec(text)![1]));
    const gain = Math.abs(seconds[0]! - seconds[1]!);
    expect(end.caption).toContain(gain === 0 ? "about the same time" : `there ${gain} s sooner`);
    const words = end.moving.flatMap((item) => (item.kind === "text" ? [item.text] : [])).join(" ");
    expect(words).toContain(gain === 0 ? `both there after ${seconds[0]} s` : `${gain} s sooner: `);
  });

  test("a bait that ends clear of the bed is told to hang there, and one on the bed to be down", () => {
    for (const depth of solved.depths) {
      const { moments } = drawFilm("sinking", solved, depth, room, kit);
      const { moving, caption } = last(moments);
      const shown = endsOf(moving);
      const { overdepthCm } = first(rigData({ ...solved, depths: [depth] }).depths);
      const said = overdepthCm < 0 ? /^hangs after/ : /^down after/;
      expect(shown.map((text) => said.test(text))).toEqual([true, true]);
      expect(caption.includes(`${-overdepthCm} cm off the bed`), caption).toBe(overdepthCm < 0);
    }
  });

  test("no clock of a picture says other than what is told beside it of a bait that is there", () => {
    for (const depth of solved.depths) {
      const film = drawFilm("sinking", solved, depth, room, kit);
      const ends = published(solved, depth).map(({ timesS }) => Math.round(last(timesS)));
      const clocks = film.moments.map(({ caption }) => Number(/^After ([\d.]+) s/.exec(caption)![1]));
      expect(clocks).toEqual(clocks.toSorted((a, b) => a - b));
      // From then on a page's own clock tells whole seconds as well.
      const soonestS = Math.min(...published(solved, depth).map(({ timesS }) => last(timesS)));
      expect(Math.abs(film.wholeFromS! - soonestS)).toBeLessThan(0.01);
      for (const [i, { moving, onPaper = [] }] of film.moments.entries()) {
        const there = endsOf(moving).length;
        if (there === 0) expect(clocks[i]).toBeLessThanOrEqual(Math.min(...ends));
        else expect(clocks[i]! % 1).toBe(0);
        // Of the pictures that stand side by side, none has a bait on its way at the time that is told of its end.
        if (there !== 1 || !film.strip.includes(i)) continue;
        const said = onPaper.flatMap((item) => (item.kind === "text" ? [item.text] : []));
        expect(said).toEqual([`after ${clocks[i]} s`]);
        expect(clocks[i]).toBeLessThan(Math.max(...ends));
      }
    }
  });

  test("only what moves is sent for each moment", () => {
    const { parts, poses } = packFilm(drawFilm("sinking", solved, first(solved.depths), room, kit).moments);
    expect(parts.length).toBeLessThan(20);
    expect(poses.join().length / poses.length).toBeLessThan(1250);
  });
});

test("where both are there at about the same time, the last caption says when and how far they were apart, as the caption of that time does", () => {
  const apart = /after ([\d.]+ s) the bait is (\S+ c?m) down ([^,]+), and (\S+ c?m) /;
  const told = filmed.flatMap((solved) => {
    const { moments } = drawFilm("sinking", solved, first(solved.depths), room, kit);
    const captions = moments.map(({ caption }) => caption.replaceAll("\u00a0", " "));
    const found = apart.exec(last(captions));
    return found ? [{ captions, found }] : [];
  });
  expect(told.length).toBeGreaterThan(0);
  for (const { captions, found } of told) {
    const [, time, one, name, other] = found;
    expect(last(captions)).toContain("at about the same time");
    const then = captions.find((caption) => caption.startsWith(`After ${time}:`));
    expect(then).toMatch(new RegExp(`${name}, the bait is ${one} down; .+, the bait is ${other} down`, "i"));
    expect(one).not.toBe(other);
  }
});

test("a longer fall has its times farther apart, not more of them", () => {
  const counts = filmed.map((solved) => drawFilm("sinking", solved, first(solved.depths), room, kit));
  for (const { moments } of counts) {
    expect(moments.length).toBeGreaterThan(12);
    expect(moments.length).toBeLessThanOrEqual(51);
  }
});

test.each(filmed)(
  "$rig.id: a heap is crossed out, drawn in loops, and told to tangle, and nothing else is",
  (solved) => {
    const depth = first(solved.depths);
    const film = drawFilm("sinking", solved, depth, room, kit);
    const names = film.still.flatMap((item) =>
      item.kind === "text" && item.face === "bold" ? [item.text] : [],
    );
    const isHeap = names.includes("in a heap");
    const rings = film.still.flatMap((item) =>
      item.kind === "circle" && item.fill === "paper"
        ? [item.stroke?.ink === "accent" ? "wrong" : "right"]
        : [],
    );
    expect(rings).toEqual(isHeap ? ["right", "wrong"] : []);
    expect(/tangle/.test(last(film.moments).caption)).toBe(isHeap);
    // In a heap all hangs below the float, and slack line alone is aside of it.
    const aside = entry(film.moments, first(film.strip)).moving.flatMap((item) => {
      if (item.kind !== "path" || item.stroke?.widthMm !== 0.5) return [];
      const xs = item.steps.flatMap(([, x]) => x ?? []);
      return [Math.max(...xs) - Math.min(...xs)];
    });
    if (isHeap) expect(Math.max(...aside.slice(2))).toBeGreaterThan(1.5);
  },
);

test.each(filmed)(
  "$rig.id: over each side every shot is seen, and one of a bulk closer to the next than strung out",
  (solved) => {
    for (const depth of solved.depths) {
      const { still, title } = drawFilm("sinking", solved, depth, room, kit);
      const names = still.flatMap((item) => (item.kind === "text" && item.face === "bold" ? [item] : []));
      if (names.some(({ text }) => text === "in a heap")) continue;
      const shot = still.flatMap((item) =>
        item.kind === "circle" && item.fill === "ink" && item.cxMm > names[0]!.xMm ? [item] : [],
      );
      const [left, right] = [0, 1].map((side) =>
        shot.filter(({ cxMm }) => cxMm >= names[1]!.xMm === (side === 1)).toSorted((a, b) => a.cxMm - b.cxMm),
      );
      for (const row of [left!, right!]) {
        expect(row.length, title).toBeGreaterThan(0);
        for (const [i, one] of row.slice(1).entries())
          expect(one.cxMm - row[i]!.cxMm).toBeGreaterThan(0.9 * (one.radiusMm + row[i]!.radiusMm));
      }
      // What hangs in a bulk is shorter than the same strung out.
      const gapsOf = (row: typeof shot) =>
        row.slice(1).map((one, i) => one.cxMm - row[i]!.cxMm - one.radiusMm - row[i]!.radiusMm);
      expect(Math.min(...gapsOf(right!)), title).toBeLessThan(Math.min(...gapsOf(left!)));
    }
  },
);

test("each zone has its fish in the middle of it, on no line between two", () => {
  for (const one of [room, { widthMm: 76.8, textMm: 4.2 }, { widthMm: 70.4, textMm: 3.9 }])
    for (const solved of filmed) {
      const { still } = drawFilm("sinking", solved, first(solved.depths), one, kit);
      const fishes = still.flatMap((item) =>
        item.kind === "path" && item.fill === "paper" && item.steps.at(-1)?.[0] === "Z"
          ? [item.steps.flatMap((step) => (step[0] === "Z" ? [] : [step.at(-1) as number]))]
          : [],
      );
      expect(fishes.length).toBe(3);
      const dashed = still.flatMap((item) =>
        item.kind === "path" && item.stroke?.dashMm ? [item.steps[0]![2] as number] : [],
      );
      for (const ys of fishes)
        for (const y of dashed) expect(Math.min(...ys) < y && y < Math.max(...ys)).toBe(false);
    }
});

describe("two ways of a reader's own", () => {
  const straightBulk = { arrangement: "bulk", landing: "straight" } as const;
  const heapBulk = { arrangement: "bulk", landing: "heap" } as const;
  const heapStrung = { arrangement: "strung out", landing: "heap" } as const;
  const [solved] = filmed.filter(({ rig }) => rig.id === "straight-waggler-bulk");
  const depth = last(solved!.depths);

  test("are called by how their shot hang, and by how they land where that is not straight or tells them apart", () => {
    expect(namesOfWays([straightBulk, heapBulk], kit)).toEqual(["laid out straight", "in a heap"]);
    expect(namesOfWays([heapBulk, heapStrung], kit)).toEqual([
      "in a bulk, in a heap",
      "strung out, in a heap",
    ]);
    expect(namesOfWays([straightBulk, { ...heapStrung, landing: "straight" }], kit)).toEqual([
      "in a bulk",
      "strung out",
    ]);
    expect(namesOfWays([{ landing: "straight" }, { landing: "heap" }], kit)).toEqual([
      "laid out straight",
      "in a heap",
    ]);
  });

  test("are drawn clearly on a phone, each with its own time to the bed, and the sooner one is told", () => {
    for (const ways of [
      [heapBulk, { ...heapStrung, landing: "straight" }],
      [heapBulk, { ...heapBulk, arrangement: "spread bulk" }],
    ] as const) {
      const names = namesOfWays(ways, kit);
      const sides = ways.map((way, i) => {
        const sunk = sinkInWay(solved!, depth, way);
        if (!sunk.ok || !sunk.value) throw new Error("the rig has no such way");
        return { name: entry(names, i), shot: sunk.value.shot, sink: sunk.value.sink };
      });
      const film = filmOfSides(sides, solved!, depth, room, kit);
      for (const place of film.strip) {
        const { moving } = entry(film.moments, place);
        expect(drawingFaults({ ...film, items: [...film.still, ...moving] })).toEqual([]);
      }
      const ends = sides.map(({ sink }) => last(sink.line.moments).timeS);
      const soonest = entry(names, ends.indexOf(Math.min(...ends)));
      const gainS = Math.abs(Math.round(ends[0]!) - Math.round(ends[1]!));
      expect(last(film.moments).caption).toContain(gainS === 0 ? "about the same time" : `sooner ${soonest}`);
      const words = `${film.title} ${film.description}`;
      for (const name of names) expect(words).toContain(name);
    }
  });
});

test("on paper the depth of the water stands beside the bed, off the row of the times", () => {
  for (const { rig, depth } of rigs.flatMap((rig) => ({ rig, depth: first(rig.depths) }))) {
    if (!filmsOf(rig, depth).includes("sinking")) continue;
    const film = drawFilm("sinking", rig, depth, room, kit);
    const { onPaper = [] } = entry(film.moments, first(film.strip));
    const rows = onPaper.flatMap((item) => (item.kind === "text" ? [item] : []));
    expect(rows.map(({ text }) => /^after [\d.]+ s$/.test(text))).toEqual([true, true]);
    const [deep] = film.still.flatMap((item) =>
      item.kind === "text" && item.anchor === "end" ? [item] : [],
    );
    expect(first(rows).yMm - deep!.yMm).toBeGreaterThan(room.textMm);
  }
});
