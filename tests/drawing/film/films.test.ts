import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { rigData } from "../../../src/build/data.ts";
import { entry, first, last } from "../../../src/core/lists.ts";
import { type Film, type Moment, stripOf } from "../../../src/drawing/film/film.ts";
import { drawFilm } from "../../../src/drawing/film/films.ts";
import { packFilm } from "../../../src/drawing/film/pack-film.ts";
import { type Pose, readPoses } from "../../../src/drawing/film/poses.ts";
import type { Item, TextItem } from "../../../src/drawing/model.ts";
import { type FilmName, filmsOf } from "../../../src/model/films.ts";
import type { SolvedDepth, SolvedRig } from "../../../src/model/solved.ts";
import { makeFigures } from "../../../src/words/figures.ts";
import { makeWords } from "../../../src/words/words.ts";
import { drawingFaults } from "../../support/drawing-checks.ts";
import { shippedGuide } from "../../support/shipped-guide.ts";

const { rigs, kit } = shippedGuide;
const room = { widthMm: 80, textMm: 3.5 };
const germanWords = makeWords(parse(readFileSync("content/words/de.yaml", "utf8")), "de");
const germanKit = { ...kit, words: germanWords, figures: makeFigures("metric", germanWords, "de") };

/** A film as a page is sent it: its frames read back from their text. */
function read(film: Film) {
  const { parts, poses } = packFilm(film.moments);
  return poses.map((packed) => readPoses(packed).map((pose) => ({ pose, part: entry(parts, pose.part) })));
}

type Frame = ReturnType<typeof read>[number];

/** Where a line of the scale of the tip stands, by its figure, and how much paper a millimetre has there. */
function tipScale({ still }: Film) {
  const figures = still.filter(
    (item): item is TextItem => item.kind === "text" && /^\d+$/.test(item.text) && item.anchor === "end",
  );
  const [none, next] = [figures[0]!, figures[1]!];
  return {
    zeroY: none.yMm - 0.35 * room.textMm,
    perMm: (none.yMm - next.yMm) / Number(next.text),
    leftMm: none.xMm,
  };
}

const ys = ({ numbers }: Pose) => numbers.filter((_, i) => i % 2 === 1);
const xs = ({ numbers }: Pose) => numbers.filter((_, i) => i % 2 === 0);

/** The tip above the water as the panel shows it [mm]; null where it is under. */
function tipShown(film: Film, frame: Frame): number | null {
  const { zeroY, perMm, leftMm } = tipScale(film);
  const outline = frame.find(
    ({ pose, part }) => part.kind === "path" && part.fill === "paper" && Math.min(...xs(pose)) > leftMm,
  )!;
  const tip = (zeroY - Math.min(...ys(outline.pose))) / perMm;
  return tip < 0 ? null : tip;
}

/** Whether the tip of a panel stands upright out of the water: its top is level, and no word says that it is under. */
function standsOut(film: Film, frame: Frame): boolean {
  const { zeroY, leftMm } = tipScale(film);
  const { pose } = frame.find(
    ({ pose, part }) => part.kind === "path" && part.fill === "paper" && Math.min(...xs(pose)) > leftMm,
  )!;
  const highest = Math.min(...ys(pose));
  const isTall = Math.max(...ys(pose)) - highest > 0.5 * (Math.max(...xs(pose)) - Math.min(...xs(pose)));
  return isTall && highest < zeroY + 0.1 && ys(pose).filter((y) => y - highest < 0.05).length > 1;
}

const said = ({ moving }: Pick<Moment, "moving">) =>
  moving.flatMap((item) => (item.kind === "text" ? [item.text] : []));

/** Where the scale has the tip that is right beside every tip that stands, and beside no other, by its dashes that begin at the scale [mm]. */
function rightMm(film: Film): number {
  for (const [i, frame] of read(film).entries()) {
    const isTold = said(film.moments[i]!).includes("right");
    expect(isTold, film.moments[i]!.caption).toBe(standsOut(film, frame));
  }
  return first(dashesMm(film, last(film.moments.filter((one) => said(one).includes("right")))));
}

/** Where dashes stand beside the scale of a tip [mm]. */
function dashesMm(film: Film, { moving }: Moment): number[] {
  const { zeroY, perMm, leftMm } = tipScale(film);
  return moving.flatMap((item) => {
    if (item.kind !== "path" || !item.stroke?.dashMm || item.stroke.ink !== "accent") return [];
    const [[, x, y]] = item.steps as [[string, number, number]];
    return x > leftMm && y < zeroY ? [(zeroY - y) / perMm] : [];
  });
}

/** A tip is told to the nearest 5 mm, and drawn as it is told: to the tenth of a millimetre of paper that a page is sent. */
const toldMm = (tipMm: number) => 5 * Math.round(tipMm / 5);
const withinMm = (film: Film) => 0.15 / tipScale(film).perMm;

const groups = (frame: Frame, isIt: (inner: readonly Item[]) => boolean) =>
  frame.flatMap(({ pose, part }) =>
    part.kind === "group" && isIt(part.items) ? [{ x: pose.numbers[0]!, y: pose.numbers[1]! }] : [],
  );
const isShot = (items: readonly Item[]) =>
  items.some((item) => item.kind === "circle" && item.fill === "ink");
const isRing = (items: readonly Item[]) =>
  items.some((item) => item.kind === "circle" && item.stroke?.ink === "accent" && !item.fill);
const isHook = (items: readonly Item[]) =>
  items.some((item) => item.kind === "path" && item.stroke?.ink === "accent");
const isBait = (items: readonly Item[]) =>
  items.some((item) => item.kind === "circle" && item.fill === "accent");

/** Where a hook begins, across, from the end of its line. */
function hookFromMm(frame: Frame): number {
  const places = frame.flatMap(({ part }) =>
    part.kind === "group" && isHook(part.items)
      ? part.items.flatMap((item) => (item.kind === "path" ? item.steps.map(([, x]) => x ?? 0) : []))
      : [],
  );
  return Math.min(...places);
}

/** Top and foot of what is drawn as water. */
function waterOf({ still }: Film) {
  const water = still.flatMap((item) =>
    item.kind === "path" && item.fill === "water"
      ? [item.steps.flatMap(([, , y]) => (y === undefined ? [] : [y]))]
      : [],
  );
  return { topMm: Math.min(...first(water)), footMm: Math.max(...first(water)) };
}

function withFilm(
  name: FilmName,
): { rig: SolvedRig; depth: SolvedDepth; data: ReturnType<typeof rigData>["depths"][number] }[] {
  return rigs.flatMap((rig) =>
    rig.depths.flatMap((depth) =>
      filmsOf(rig, depth).includes(name)
        ? [{ rig, depth, data: first(rigData({ ...rig, depths: [depth] }).depths) }]
        : [],
    ),
  );
}

/** On a phone, and in the columns of a half sheet and of a whole one. */
const rooms = [room, { widthMm: 76.8, textMm: 4.2 }, { widthMm: 70.4, textMm: 3.9 }];
/** 7.5 pt. */
const leastTextMm = 2.65;

describe.each(rigs)("$rig.id in films", (rig) => {
  test("every film's strip is clear, ends with its end, and its words are short", () => {
    const depth = first(rig.depths);
    for (const name of filmsOf(rig, depth)) {
      const films = rooms.map((one) => drawFilm(name, rig, depth, one, kit));
      const german = drawFilm(name, rig, depth, entry(rooms, rigs.indexOf(rig) % rooms.length), germanKit);
      for (const { widthMm, drawing, caption } of [...films, german].flatMap((one) =>
        stripOf(one, kit).map((moment) => ({ ...moment, widthMm: one.widthMm })),
      )) {
        expect(drawingFaults(drawing), `${name}, ${widthMm} mm: ${caption}`).toEqual([]);
        const sizes = drawing.items.flatMap((item) => (item.kind === "text" ? [item.sizeMm] : []));
        expect(Math.min(...sizes)).toBeGreaterThan(leastTextMm);
      }
      const film = first(films);
      for (const { drawing, caption } of stripOf(film, kit)) {
        expect(drawing.description.split(" ").length, name).toBeLessThanOrEqual(60);
        expect(drawing.description).not.toContain(caption);
      }
      expect(last(film.strip), name).toBe(film.moments.length - 1);
      expect(new Set(film.strip).size).toBe(film.strip.length);
    }
  });
});

interface Place {
  readonly x: number;
  readonly y: number;
}

/** How far a place is from a line through places. */
function besideMm({ x, y }: Place, line: readonly Place[]): number {
  const gaps = line.slice(1).map((to, i) => {
    const from = line[i]!;
    const [dx, dy] = [to.x - from.x, to.y - from.y];
    const along = ((x - from.x) * dx + (y - from.y) * dy) / (dx * dx + dy * dy);
    const share = Math.min(1, Math.max(0, along));
    return Math.hypot(x - from.x - share * dx, y - from.y - share * dy);
  });
  return Math.min(...gaps);
}

/** Two dots nearer than this are seen as one [mm of the picture]; common practice, no source. */
const seenApartMm = 0.7;

describe("the float settling", () => {
  test.each(withFilm("settling"))(
    "$rig.rig.id, $depth.depthMm mm: ends at the data's tip, and one too many beyond it",
    ({ rig, depth, data }) => {
      const film = drawFilm("settling", rig, depth, room, kit);
      const frames = read(film);
      const right = tipShown(film, entry(frames, frames.length - 2))!;
      expect(Math.abs(right - toldMm(data.tipShowingMm))).toBeLessThan(withinMm(film));
      const tooMany = /^One (.*) too many/.exec(last(film.moments).caption)![1];
      const { oneMoreMm } = data.shotEffects.find(({ size }) => size === tooMany)!;
      const under = tipShown(film, last(frames));
      if (oneMoreMm === null) expect(under).toBeNull();
      else expect(Math.abs((under ?? 0) - toldMm(oneMoreMm))).toBeLessThan(withinMm(film));
      // A picture of a tip says by itself that less of it shows than should.
      expect(said(last(film.moments))).toContain(oneMoreMm === null ? "under" : "one too many: too low");
      expect(toldMm(oneMoreMm ?? 0)).toBeLessThan(toldMm(data.tipShowingMm));
      expect(Math.abs(rightMm(film) - right)).toBeLessThan(withinMm(film));
      // Each shot is on from the frame on whose words it is.
      const counts = frames.map((frame) => groups(frame, isShot).length);
      expect(counts).toEqual([
        ...Array.from({ length: data.shot.length + 1 }, (_, i) => i),
        data.shot.length,
        data.shot.length + 1,
      ]);
      for (const [i, frame] of frames.entries())
        expect(said(film.moments[i]!).includes("newest shot")).toBe(groups(frame, isRing).length > 0);
      // None is where a float that slides would be stopped by it.
      const eyeY = waterOf(film).topMm;
      const [more] = groups(last(frames), isRing);
      if (rig.rig.float.attachment === "sliding") {
        const others = groups(last(frames), isShot).filter(
          (one) => Math.hypot(one.x - more!.x, one.y - more!.y) > 0.1,
        );
        expect(more!.x, "on the line below it").toBeCloseTo(others[0]!.x, 1);
        expect(Math.min(...others.map(({ y }) => Math.abs(y - more!.y)))).toBeLessThan(3);
        expect(more!.y).toBeGreaterThan(eyeY + 5);
      }
      // They are pinched on the line, on either side of the eye, and nowhere beside it.
      for (const frame of frames) {
        const { numbers } = frame.find(
          ({ part }) => part.kind === "path" && part.stroke?.widthMm === 0.5,
        )!.pose;
        const line = numbers.flatMap((x, at) => (at % 2 === 0 ? [{ x, y: numbers[at + 1]! }] : []));
        const shown = groups(frame, isShot);
        for (const shot of shown) expect(besideMm(shot, line)).toBeLessThan(0.3);
        // None is hidden by another, in a bulk either.
        const apart = shown.flatMap((a, i) =>
          shown.slice(i + 1).map((b) => Math.hypot(a.x - b.x, a.y - b.y)),
        );
        expect(Math.min(...apart, seenApartMm)).toBe(seenApartMm);
      }
    },
  );
});

describe("the depth guide moving", () => {
  test.each(withFilm("depth"))(
    "$rig.rig.id, $depth.depthMm mm: hook, shot on the bed and tip are those of the data at every line",
    ({ rig, depth, data }) => {
      const film = drawFilm("depth", rig, depth, room, kit);
      const frames = read(film);
      expect(frames.length).toBe(data.depthGuide.length);
      const { footMm } = waterOf(film);
      const bars = film.still.flatMap((item) =>
        item.kind === "path" && item.steps.length === 2 && item.steps.every(([, x]) => x === 2)
          ? [item.steps.map(([, , y]) => y!)]
          : [],
      );
      const perCm = Math.abs(bars[0]![1]! - bars[0]![0]!) / 10;
      for (const [i, step] of data.depthGuide.entries()) {
        const frame = entry(frames, i);
        const hook = first(groups(frame, isHook));
        expect(Math.abs(footMm - hook.y - step.hookOffBedCm * perCm), `line ${i}`).toBeLessThan(1);
        const shot = groups(frame, isShot).map(({ y }) => footMm - y);
        const onBed = shot.filter((upMm) => upMm < 1).length;
        expect(onBed, `line ${i}`).toBeGreaterThanOrEqual(step.shotOnBed.length);
        // Rings do not run into one another: what is too close for its own has one with the rest, and their number.
        const rings = groups(frame, isRing);
        const counts = said(film.moments[i]!).flatMap((words) => /^(\d+) shot$/.exec(words)?.[1] ?? []);
        const numbers = counts.map(Number);
        expect(rings.length + numbers.reduce((a, b) => a + b, 0), `line ${i}`).toBe(step.shotOnBed.length);
        for (const [at, { x }] of rings.entries())
          for (const other of rings.slice(at + 1)) expect(Math.abs(other.x - x)).toBeGreaterThan(2.9);
        // A float that stands higher has so much less line to let lie on the bed.
        const risenCm = step.tipShowingMm === null ? 0 : (step.tipShowingMm - data.tipShowingMm) / 10;
        const lyingCm = Math.max(0, step.overdepthCm - risenCm);
        const line = data.shot.filter(({ role }) => role !== "lock");
        // All is measured from the bend of the hook, along the bed as above it, and its shank ends below the lowest shot,
        // where there is room for a hook that is seen.
        const alongMm = hook.x - first(groups(entry(frames, 0), isHook)).x;
        expect(Math.abs(alongMm - lyingCm * perCm), `line ${i}`).toBeLessThan(1);
        expect(hookFromMm(frame), `line ${i}`).toBeGreaterThan(
          -Math.max(2.7, first(line).fromHookCm * perCm),
        );
        for (const [at, upMm] of shot.entries()) {
          const up = Math.max(0, line[at]!.fromHookCm - lyingCm + step.hookOffBedCm);
          expect(Math.abs(upMm - up * perCm), `line ${i}, shot ${at}`).toBeLessThan(1);
        }
        expect(said(film.moments[i]!).includes("start here"), `line ${i}`).toBe(step.advice === "start-here");
        // What its rings stand for is said.
        expect(said(film.moments[i]!).includes("shot on the bed"), `line ${i}`).toBe(
          step.shotOnBed.length > 0,
        );
        // Dashes stand where the tip is as the rig hangs clear, beside every tip that stands.
        const clearMm = first(data.depthGuide).tipShowingMm;
        const isStanding = !step.floatLiesFlat && step.tipShowingMm !== null;
        const dashes = dashesMm(film, entry(film.moments, i));
        expect(dashes.length > 0, `line ${i}`).toBe(isStanding && clearMm !== null);
        for (const one of dashes) expect(Math.abs(one - toldMm(clearMm!))).toBeLessThan(withinMm(film));
        if (step.floatLiesFlat) continue;
        const tip = tipShown(film, frame);
        if (step.tipShowingMm === null) expect(tip).toBeNull();
        else expect(Math.abs(tip! - toldMm(step.tipShowingMm))).toBeLessThan(withinMm(film));
      }
    },
  );
});

describe("a cast", () => {
  const rig = shippedGuide.rigs[0]!;
  const { moments } = drawFilm("cast", rig, first(rig.depths), room, kit);

  test("says of the finger what it does, step by step, and the bail is shut once it rests", () => {
    const told = moments.map((one) => said(one).filter((words) => /^(finger|bail)/.test(words)));
    expect(told.map(([finger]) => finger)).toEqual([
      "finger holds the line",
      "finger holds the line",
      "finger off the line",
      "finger off the line",
      "finger on the rim",
      "finger stops the line",
      "finger back on the rod",
    ]);
    expect(told.map(([, bail]) => bail)).toEqual([...Array(6).fill("bail arm open"), "bail arm shut"]);
  });

  test("a float that hangs from the rod hides no shot of its rig", () => {
    for (const one of rigs.filter(({ rig }) => rig.float.attachment !== "top and bottom")) {
      const frame = first(read(drawFilm("cast", one, first(one.depths), room, kit)));
      const shots = groups(frame, isShot).filter(({ y }) => y < 40);
      const outline = frame.flatMap(({ pose, part }) =>
        part.kind === "path" && part.fill === "paper" && Math.max(...ys(pose)) < 40
          ? [xs(pose).map((x, i) => ({ x, y: ys(pose)[i]! }))]
          : [],
      );
      for (const shot of shots)
        for (const line of outline) expect(besideMm(shot, line), one.rig.id).toBeGreaterThan(0.3);
    }
  });

  test("the head is turned back where the words say to look behind, and nowhere else", () => {
    // The cap, whose peak is over the face: dark, with light round it.
    const leftMm = moments.map(({ moving }) => {
      const cap = moving.find(
        (item) => item.kind === "path" && item.fill === "ink" && item.stroke?.ink === "paper",
      );
      return Math.min(...(cap?.kind === "path" ? cap.steps.flatMap(([, x]) => x ?? []) : []));
    });
    const looksBack = leftMm.map((one) => one < Math.max(...leftMm) - 1);
    expect(looksBack).toEqual(moments.map(({ caption }) => caption.startsWith("Look behind")));
  });
});

test("each picture of a shot that is pinched on says by itself what is done", () => {
  const { moments } = drawFilm("pinch", rigs[0]!, first(rigs[0]!.depths), room, kit);
  const heads = moments.map((one) => said(one).join());
  expect(heads).toEqual([
    "slit open",
    "line in the slit",
    "squeeze gently",
    "never with teeth",
    "wet it, then push",
  ]);
});

describe("plumbing", () => {
  test.each(withFilm("plumbing"))(
    "$rig.rig.id, $depth.depthMm mm: each try is set as the data say, and ends at the depth",
    ({ rig, depth, data }) => {
      const film = drawFilm("plumbing", rig, depth, room, kit);
      const { topMm, footMm } = waterOf(film);
      const perCm = (footMm - topMm) / data.depthCm;
      const frames = read(film);
      expect(frames.length).toBe(data.plumbing.steps.length);
      for (const [i, { settingCm, sign }] of data.plumbing.steps.entries()) {
        const line = frames[i]!.find(
          ({ part }) => part.kind === "path" && part.stroke?.widthMm === 0.5,
        )!.pose;
        // From the float's eye down; what is not under is hung from where it stands.
        const eyeY = line.numbers[1]!;
        const shortCm = data.depthCm - settingCm;
        if (sign === "goes under" || sign === "stands too low")
          expect(
            Math.abs(
              eyeY -
                topMm -
                (data.draughtCm + shortCm) * perCm -
                ((data.tipShowingMm - data.tipAsSetMm) / 10) * perCm,
            ),
          ).toBeLessThan(1);
        // To the scale of the water the tip would not be seen.
        if (sign === "shows its mark") {
          const { leftMm } = tipScale(film);
          const tips = frames[i]!.filter(
            ({ part, pose }) =>
              part.kind === "path" && part.fill === "accent" && Math.max(...xs(pose)) < leftMm,
          );
          const share = tipShown(film, frames[i]!)! / rig.rig.float.tipShowingMm;
          const highest = Math.min(...tips.flatMap(({ pose }) => ys(pose)));
          expect(topMm - highest).toBeGreaterThan(0.9 * Math.min(1, share));
        }
        expect(said(film.moments[i]!)).toContain(`set to ${kit.figures.shortDepth(10 * settingCm)}`);
      }
      expect(Math.abs(rightMm(film) - tipShown(film, frames.at(-1)!)!)).toBeLessThan(withinMm(film));
      // Side by side, the hand of a picture moves the float to the next picture's setting, or it says that it goes on.
      const { steps } = data.plumbing;
      for (const [at, place] of film.strip.entries()) {
        const next = film.strip[at + 1];
        const { settingCm, moveCm } = steps[place]!;
        const leads = next === undefined || Math.abs(settingCm + moveCm - steps[next]!.settingCm) < 1e-6;
        const goesOn = said({ moving: film.moments[place]!.onPaper ?? [] }).join(" ");
        // It says so of moves that are as long as this one, and no other of those that grow shorter.
        const isAsFar = Math.abs(steps[place + 1]?.moveCm ?? 0) === Math.abs(moveCm);
        expect(goesOn, `picture ${at}`).toBe(leads ? "" : isAsFar ? "and so on" : "then half each time");
      }
      // The knot that stops a float that slides is in the water, by its name, and in the hand: its turns, wider than its ends.
      const isKnot = (items: readonly Item[]) => {
        const [end, ...others] = items.flatMap((item) =>
          item.kind === "path" ? [item.stroke?.widthMm] : [],
        );
        return others.filter((one) => one! > end!).length >= 3;
      };
      const knots = rig.rig.float.attachment === "sliding" ? 2 : 0;
      for (const frame of frames) expect(groups(frame, isKnot).length).toBe(knots);
      for (const moment of film.moments) expect(said(moment).includes("stop knot")).toBe(knots > 0);
      expect(/moves (its stop knot|the float) /.exec(film.description)![1]).toBe(
        knots > 0 ? "its stop knot" : "the float",
      );
      for (const [i, { moveCm }] of steps.entries()) {
        const { caption } = film.moments[i]!;
        const moved = /Move (.*?) (?:up|down) the line:/.exec(caption)?.[1];
        expect(moved, `line ${i}`).toBe(moveCm === 0 ? undefined : knots > 0 ? "its stop knot" : "the float");
        // Without its caption a picture says what the float does, what is wrong, and what to do, as the caption does:
        // common practice, no source.
        const seen = said(film.moments[i]!).join(" ");
        const wrong = moveCm === 0 ? "right" : moveCm > 0 ? "too shallow" : "too deep";
        const told = `${steps[i]!.sign}: set ${wrong}`;
        expect(seen, `line ${i}`).toContain(told);
        expect(caption).toContain(told);
        const way = `${moveCm > 0 ? "up" : "down"} ${kit.figures.shortGap(10 * Math.abs(moveCm))}`;
        const held = knots > 0 ? "knot" : "float";
        expect(seen, `line ${i}`).toContain(moveCm === 0 ? `leave the ${held}` : `${held} ${way}`);
        if (moveCm !== 0) expect(caption).toContain(`${moveCm > 0 ? "up" : "down"} the line`);
      }
      // Dashes round a float are where the one of the picture before stood, and are spoken of where a strip shows them.
      const dashed = film.moments.map(({ moving }) =>
        moving.some(
          (item) =>
            item.kind === "group" &&
            item.items.some((inner) => inner.kind === "path" && inner.stroke?.dashMm !== undefined),
        ),
      );
      expect(dashed[0]).toBe(false);
      const isSpoken = film.description.includes("Dashes by the hand");
      expect(film.strip.some((at) => dashed[at])).toBe(isSpoken);
      // What it ends with is what a reader sees by the water: the mark itself, no nearer told than 5 mm.
      expect(Math.abs(tipShown(film, frames.at(-1)!)! - data.tipAsSetMm)).toBeLessThan(2.6 + withinMm(film));
    },
  );
});

describe("the float in the current", () => {
  test.each(withFilm("current"))(
    "$rig.rig.id, $depth.depthMm mm: the bait is where the data have it at every share",
    ({ rig, depth, data }) => {
      const film = drawFilm("current", rig, depth, room, kit);
      const { topMm, footMm } = waterOf(film);
      const perCm = (footMm - topMm) / data.depthCm;
      const { flow } = data as unknown as {
        flow: {
          paceMs: number;
          heldBackShare: number;
          leadCm: number;
          hookDepthCm: number;
          feedWithCast: { upstreamCm: number; meetsBelowCm: number };
        }[];
      };
      const told = flow
        .filter(({ paceMs }) => paceMs === flow[0]!.paceMs)
        .sort((a, b) => a.heldBackShare - b.heldBackShare);
      const frames = read(film);
      // After them, the same float fixed at its foot alone, where that takes it under.
      const bottomOnly = (data as unknown as { holdBackMax: { bottomOnlyShare: number }[] }).holdBackMax[0]!;
      const dives = told.some(({ heldBackShare }) => heldBackShare > bottomOnly.bottomOnlyShare);
      expect(frames.length).toBe(told.length + (dives ? 1 : 0));
      // Its picture says how to fix the float instead.
      if (dives) expect(said(last(film.moments)).join(" ")).toContain("Fixed at top and bottom it");
      for (const [i, { heldBackShare }] of told.entries())
        if (heldBackShare === 0) expect(said(film.moments[i]!)).not.toContain("held back");
      for (const [i, { leadCm, hookDepthCm }] of told.entries()) {
        const bait = first(groups(frames[i]!, isBait));
        const eyeX = last(
          xs(frames[i]!.find(({ part }) => part.kind === "path" && part.stroke?.widthMm === 0.5)!.pose),
        );
        expect(Math.abs(bait.x - eyeX - leadCm * perCm)).toBeLessThan(1);
        expect(Math.abs(bait.y - topMm - hookDepthCm * perCm)).toBeLessThan(1);
        // Below the bed: the cast, where the feed goes in, and where they meet, to a scale of their own.
        const along = groups(frames[i]!, () => true).filter(({ y }) => y > footMm);
        const [castX, feedX, meetX] = along.map(({ x }) => x);
        expect(new Set(along.slice(0, 3).map(({ y }) => y)).size).toBe(1);
        const { feedWithCast: feed } = told[i]!;
        const wayPerCm = (meetX! - castX!) / feed.meetsBelowCm;
        expect(Math.abs(castX! - feedX! - feed.upstreamCm * wayPerCm)).toBeLessThan(1);
        // Words give both from the cast, to a tenth of a metre, and ticks their scale in metres.
        const words = said(film.moments[i]!).join(" ").replaceAll("\u00a0", " ");
        for (const cm of [feed.upstreamCm, feed.meetsBelowCm]) {
          const far = Math.round(Math.abs(cm) / 10) / 10;
          const told =
            far === 0
              ? /with your cast|meet there/
              : new RegExp(`${far} m (up|down)stream of (your cast|it)`);
          expect(words).toMatch(told);
        }
        // Figures stand at their ticks, but for those that would go over the edge.
        const figures = film.moments[i]!.moving.filter(
          (item): item is TextItem => item.kind === "text" && item.anchor === "middle" && item.yMm > footMm,
        );
        expect(figures.length).toBeGreaterThan(0);
        for (const { text, xMm } of figures) {
          const away = Number(/^(\d+) m$/.exec(text)![1]) * 100 * wayPerCm;
          expect(Math.abs(Math.abs(xMm - castX!) - away)).toBeLessThan(
            xMm < 6 || xMm > room.widthMm - 6 ? 4 : 1,
          );
        }
      }
    },
  );
});

describe("bites", () => {
  test.each(withFilm("bites"))(
    "$rig.rig.id, $depth.depthMm mm: the tip lifts by what the data say of hook and bait, then of the lowest shot",
    ({ rig, depth, data }) => {
      const film = drawFilm("bites", rig, depth, room, kit);
      const frames = read(film);
      const within = withinMm(film);
      const tips = frames.map((frame) => tipShown(film, frame));
      expect(Math.abs(tips[0]! - toldMm(data.tipAsSetMm))).toBeLessThan(within);
      // The float stands half as high, then is under, where it goes under; half as high where it is drawn away.
      expect(Math.abs(tips[2]! - toldMm(data.tipAsSetMm / 2))).toBeLessThan(within);
      expect(tips[3]).toBeNull();
      const { lift } = data as unknown as {
        lift: { own: boolean; steps: { feltG: number; tipRiseMm: number }[] }[];
      };
      const own = lift.find((one) => one.own)?.steps;
      if (!own || data.overdepthCm > 0) return;
      const carried = own.find(({ feltG }) => feltG > own[0]!.feltG + 1e-6)!;
      expect(Math.abs(tips[4]! - toldMm(data.tipAsSetMm + own[0]!.tipRiseMm))).toBeLessThan(within);
      // One that loses its load falls flat.
      if (film.moments[5]!.caption.includes("falls flat")) return;
      expect(Math.abs(tips[5]! - toldMm(data.tipAsSetMm + carried.tipRiseMm))).toBeLessThan(within);
      if (frames.length < 10) return;
      expect(Math.abs(tips[9]! - tips[5]!)).toBeLessThan(within);
      const { sink } = data as unknown as { sink: { tenthsS: number[] }[] };
      const told = /After ([\d.]+) s/.exec(film.moments[9]!.caption)![1];
      expect(said(film.moments[9]!).join(" ")).toContain(`should be here after ${told} s`);
      expect(Number(told)).toBe(Math.round(last(sink[0]!.tenthsS)));
    },
  );

  test("the enlarged tip leans where the float does, and stands where it stands", () => {
    for (const { rig, depth } of withFilm("bites")) {
      const film = drawFilm("bites", rig, depth, room, kit);
      const { leftMm } = tipScale(film);
      for (const [i, frame] of read(film).entries()) {
        if (film.moments[i]!.caption.includes("falls flat")) continue;
        const outline = frame.find(
          ({ pose, part }) => part.kind === "path" && part.fill === "paper" && Math.min(...xs(pose)) > leftMm,
        )!;
        const highest = Math.min(...ys(outline.pose));
        const isLevel = ys(outline.pose).filter((y) => y - highest < 0.05).length > 1;
        expect(isLevel, film.moments[i]!.caption).toBe(!/leans|straightens/.test(film.moments[i]!.caption));
      }
    }
  });

  test("where a float says to lift, it is seen to stand otherwise than without a bite", () => {
    for (const { rig, depth } of withFilm("bites")) {
      const film = drawFilm("bites", rig, depth, room, kit);
      const frames = read(film);
      const still = tipShown(film, frames[0]!)!;
      for (const [i, { caption }] of film.moments.entries()) {
        if (!caption.endsWith("Lift the rod.") || /leans|falls flat/.test(caption)) continue;
        const shown = tipShown(film, frames[i]!);
        expect(shown === null || Math.abs(shown - still) > 1, `${rig.rig.id}: ${caption}`).toBe(true);
      }
    }
  });

  test("each bite ends with the one moment that says to lift, and the strip has those", () => {
    for (const { rig, depth } of withFilm("bites")) {
      const film = drawFilm("bites", rig, depth, room, kit);
      const strikes = film.moments.flatMap(({ caption }, i) =>
        caption.endsWith("Lift the rod.") ? [i] : [],
      );
      expect(film.strip).toEqual([0, ...strikes]);
      for (const { caption, moving } of film.moments) {
        const signs = said({ moving });
        expect(signs.some((sign) => sign.endsWith(": lift the rod"))).toBe(caption.endsWith("Lift the rod."));
      }
    }
  });
});
