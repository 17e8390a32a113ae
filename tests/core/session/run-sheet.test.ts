import fc from "fast-check";
import { expect, test } from "vitest";
import { runSheet, type SessionLesson } from "../../../src/core/session/run-sheet.ts";

const lesson = (id: string, minutes: number, more: Partial<SessionLesson> = {}): SessionLesson => ({
  id,
  minutes,
  after: [],
  mustStay: false,
  ...more,
});

const day = (roomMin: number, lessons: readonly SessionLesson[]) => ({
  fromMin: 9 * 60,
  roomMin,
  setUpMin: 20,
  packUpMin: 15,
  leastFishingMin: 30,
  lessons,
});

// By hand: 9:00 + 20 = 9:20, + 25 = 9:45, + 30 = 10:15; three hours end at 12:00, less 15 is 11:45.
test("a session goes by the clock, and fishing has all that is left", () => {
  const { blocks, overMin } = runSheet(day(180, [lesson("depth", 25), lesson("bites", 30)]));
  expect(overMin).toBe(0);
  expect(blocks).toEqual([
    { what: "set up", fromMin: 540, toMin: 560 },
    { what: "lesson", id: "depth", fromMin: 560, toMin: 585 },
    { what: "lesson", id: "bites", fromMin: 585, toMin: 615 },
    { what: "fishing", fromMin: 615, toMin: 705 },
    { what: "pack up", fromMin: 705, toMin: 720 },
  ]);
});

// By hand: 20 + 15 + 30 fishing = 65 of 120 leave 55 for lessons of 25 + 30 + 20 = 75: 20 over, which the last one wins.
test("a session that is too long says by how much, and what to leave out", () => {
  const lessons = [lesson("safety", 25, { mustStay: true }), lesson("depth", 30), lesson("bites", 20)];
  const sheet = runSheet(day(120, lessons));
  expect(sheet.overMin).toBe(20);
  expect(sheet.leaveOut).toEqual(["bites"]);
  expect(sheet.blocks.at(-1)?.toMin).toBe(9 * 60 + 140);
  expect(
    runSheet(
      day(
        120,
        lessons.filter(({ id }) => id !== "bites"),
      ),
    ).overMin,
  ).toBe(0);
});

test("nothing goes that another lesson needs, nor what must stay", () => {
  const lessons = [
    lesson("safety", 40, { mustStay: true }),
    lesson("depth", 30),
    lesson("bites", 20, { after: ["depth"] }),
  ];
  expect(runSheet(day(130, lessons)).leaveOut).toEqual(["depth", "bites"]);
  expect(runSheet(day(90, lessons))).toMatchObject({ overMin: 65, leaveOut: [] });
});

const someLessons = fc
  .array(
    fc.record({ minutes: fc.integer({ min: 5, max: 60 }), mustStay: fc.boolean(), needs: fc.boolean() }),
    {
      maxLength: 7,
    },
  )
  .map((all) =>
    all.map(({ minutes, mustStay, needs }, at) =>
      lesson(`lesson-${at}`, minutes, { mustStay, after: needs && at > 0 ? [`lesson-${at - 1}`] : [] }),
    ),
  );

test("a sheet has no gap, fits what it says it fits, and leaves out the least that is enough", () => {
  fc.assert(
    fc.property(someLessons, fc.integer({ min: 60, max: 400 }), (lessons, roomMin) => {
      const { blocks, overMin, leaveOut } = runSheet(day(roomMin, lessons));
      for (const [at, { fromMin }] of blocks.entries()) expect(fromMin).toBe(blocks[at - 1]?.toMin ?? 540);
      expect(blocks.at(-1)?.toMin).toBe(540 + roomMin + overMin);
      const ways = allWays(lessons);
      const enough = ways.filter((ids) => minutesOf(ids, lessons) >= overMin);
      if (overMin === 0 || enough.length === 0) expect(leaveOut).toEqual([]);
      else {
        expect(ways).toContainEqual([...leaveOut]);
        expect(minutesOf(leaveOut, lessons)).toBe(Math.min(...enough.map((ids) => minutesOf(ids, lessons))));
      }
    }),
    { seed: 20, numRuns: 300 },
  );
});

const minutesOf = (ids: readonly string[], lessons: readonly SessionLesson[]) =>
  lessons.filter(({ id }) => ids.includes(id)).reduce((sum, { minutes }) => sum + minutes, 0);

/** Every set of lessons that may go together, tried one by one. */
function allWays(lessons: readonly SessionLesson[]): string[][] {
  const sets: SessionLesson[][] = [[]];
  for (const one of lessons) sets.push(...sets.map((set) => [...set, one]));
  return sets
    .filter((gone) => gone.every(({ mustStay }) => !mustStay))
    .filter((gone) =>
      lessons.every(
        (one) => gone.includes(one) || one.after.every((need) => !gone.some(({ id }) => id === need)),
      ),
    )
    .map((gone) => gone.map(({ id }) => id));
}
