import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { allNeeds, type CourseLesson, evenings, lessonPlaces } from "../../../src/core/course/course.ts";

const lesson = (id: string, minutes: number, place: CourseLesson["place"], ...after: string[]) => ({
  id,
  minutes,
  place,
  after,
});
const told = (course: ReturnType<typeof evenings>) =>
  course.map(({ lessons, minutes }) => `${lessons.map(({ id }) => id).join(" ")} ${minutes}`);

describe("the evenings of a course", () => {
  it("stay at one place, fill their time and keep the order of the course, by hand", () => {
    const course = [
      lesson("knots", 30, "indoors"),
      lesson("cast", 40, "on grass", "knots"),
      lesson("rig", 50, "indoors", "knots"),
      lesson("float", 30, "indoors", "rig"),
      lesson("swim", 60, "on grass", "cast"),
    ];
    expect(told(evenings(course, 100))).toEqual(["knots rig 80", "cast swim 100", "float 30"]);
    expect(told(evenings(course, 110))).toEqual(["knots rig float 110", "cast swim 100"]);
  });

  it("give a lesson that is longer than an evening one of its own", () => {
    expect(told(evenings([lesson("long", 180, "indoors"), lesson("next", 10, "indoors")], 100))).toEqual([
      "long 180",
      "next 10",
    ]);
  });

  it("leave out what needs itself, or what nobody holds", () => {
    const course = [
      lesson("a", 10, "indoors", "b"),
      lesson("b", 10, "indoors", "a"),
      lesson("c", 10, "indoors", "gone"),
    ];
    expect(evenings(course, 100)).toEqual([]);
    expect(told(evenings(course, 100, ["gone"]))).toEqual(["c 10"]);
  });

  it("know all that a lesson needs, round a circle too", () => {
    const course = [
      lesson("a", 1, "indoors", "b"),
      lesson("b", 1, "indoors", "c"),
      lesson("c", 1, "indoors", "b"),
    ];
    expect([...allNeeds(course[0]!, course)]).toEqual(["b", "c"]);
  });
});

// A topological order, by its definition: each after all that it needs (Kahn 1962).
it("any course without a circle is held whole, each lesson once, after its needs, within its time", () => {
  const courses = fc
    .array(
      fc.record({
        minutes: fc.integer({ min: 5, max: 150 }),
        place: fc.constantFrom(...lessonPlaces),
        needs: fc.array(fc.nat(), { maxLength: 4 }),
      }),
      { maxLength: 25 },
    )
    .map((drawn) =>
      drawn.map(({ needs, ...rest }, i) => ({
        ...rest,
        id: `l${i}`,
        after: i === 0 ? [] : needs.map((need) => `l${need % i}`),
      })),
    );
  fc.assert(
    fc.property(courses, (course) => {
      const held = evenings(course, 100);
      const order = held.flatMap(({ lessons }) => lessons.map(({ id }) => id));
      expect([...order].sort()).toEqual(course.map(({ id }) => id).sort());
      for (const { id, after } of course) {
        for (const need of after) expect(order.indexOf(need)).toBeLessThan(order.indexOf(id));
      }
      for (const { place, lessons, minutes } of held) {
        expect(lessons.every((one) => one.place === place)).toBe(true);
        expect(minutes).toBe(lessons.reduce((sum, one) => sum + one.minutes, 0));
        expect(minutes <= 100 || lessons.length === 1).toBe(true);
      }
    }),
    { seed: 20, numRuns: 200 },
  );
});
