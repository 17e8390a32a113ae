import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { parse } from "yaml";
import { groundbait } from "../../src/core/feed/groundbait.ts";

/** What the course answers once, however many texts ask: a learner follows the nearest one. */
const content = "content";
const texts = readdirSync(content, { recursive: true, encoding: "utf8" })
  .filter((name) => /\.(?:md|yaml)$/.test(name))
  .map((name) => ({ name, text: plain(readFileSync(join(content, name), "utf8")) }));

/** Words one space apart, without signs, links and marks. */
function plain(source: string): string {
  return source
    .replace(/:[\w-]+\[[^\]]*\]\{[^}]*\}/g, "")
    .replace(/\]\([^)]*\)|[*[\]]/g, "")
    .replace(/\s+/g, " ");
}

const places = (pattern: RegExp) =>
  texts.flatMap(({ name, text }) => [...text.matchAll(pattern)].map(({ 0: found }) => ({ name, found })));

test("no bites at dead depth: ten minutes, 20 cm shallower, 20 cm more, then 5 cm over depth", () => {
  const asked = [
    ...places(/\bNo bites\. Wait .{0,260}/g),
    ...places(/## No bites .{0,260}/g),
    ...places(/\bwith no bite, .{0,260}/g),
    ...places(/- If there are no bites for .{0,120}/g),
    ...places(/sign: No bites at all .{0,460}/g),
  ];
  expect(new Set(asked.map(({ name }) => name)).size).toBeGreaterThanOrEqual(7);
  for (const { name, found } of asked) {
    expect(found, name).toMatch(/(?:20 cm.{0,20}shallower|[Ss]hallower by 20 cm).*20 cm more.*5 cm over/);
    expect(found, name).toMatch(/\bten minutes\b/i);
  }
});

test("bites while the bait sinks in still water: 15 cm shallower", () => {
  const asked = places(
    /\b[Bb]ites (?:come on the way down,|on the way down\.|while it sinks\.|only just after the cast).{0,200}/g,
  );
  expect(asked.length).toBeGreaterThanOrEqual(4);
  for (const { name, found } of asked) expect(found, name).toMatch(/shallower by 15 cm|15 cm shallower/);
});

test("a change is given ten minutes", () => {
  const given = places(/\b(?:give (?:it|each change)|try it) ([\w-]+ (?:minutes|casts|times|runs))\b/gi);
  expect(given.length).toBeGreaterThanOrEqual(3);
  for (const { name, found } of given) expect(found, name).toMatch(/ten minutes$/);
});

test("nobody counts before a lift, and a big bait alone is waited for", () => {
  expect(places(/\bcount to \w+[^.]*\b(?:lift|strike)/gi)).toEqual([]);
  const waits = places(/[^.]*\bwhen the float keeps going\b/g);
  expect(waits.length).toBeGreaterThanOrEqual(2);
  for (const { name, found } of waits) expect(found, name).toMatch(/big bait|bread/i);
});

test("more than half of the load locks a waggler, and the two groups are told as the card gives them", () => {
  expect(places(/three quarters[^.]*\b(?:at the float|load|lock)/g)).toEqual([]);
  expect(places(/more than half[^.]*\b(?:at the float|load|weight)/gi).length).toBeGreaterThanOrEqual(3);
  expect(places(/half above|an equal shot/gi)).toEqual([]);
});

test("two rubbers hold a float, a third is the spare", () => {
  expect(
    places(/\b(?:two or three|three) (?:soft )?(?:float )?(?:rubbers?|rings)\b|\buse three\b/gi),
  ).toEqual([]);
});

test("a step to find the depth starts at a metre", () => {
  expect(places(/\bbig steps?\b[^.]*\b\d+ cm/gi)).toEqual([]);
  expect(places(/a whole metre deeper/gi).length).toBeGreaterThanOrEqual(1);
});

test("for plumbing the lightest of the locking shot of each side stay on, so that none has to change sides", () => {
  const told = places(
    /[^.]*\blightest\b[^.]*\blocking shot\b[^.]*|[^.]*\blocking shot\b[^.]*\blightest\b[^.]*/gi,
  );
  expect(told.length).toBeGreaterThanOrEqual(2);
  for (const { name, found } of told.filter(({ name }) => name.startsWith("lessons")))
    expect(found, name).toMatch(/\blightest of [^.]*\babove\b[^.]*\blightest of [^.]*\bbelow\b/);
});

test("a pinch of maggots, 3 ml of the three thousand in an imperial pint, is about fifteen", () => {
  const told = places(/(?:\bpinch is about|\bpinch of maggots, about|\bPinch each time, about) ([\w-]+)/gi);
  expect(told.length).toBeGreaterThanOrEqual(3);
  for (const { name, found } of told) expect(found, name).toMatch(/fifteen$/);
});

test("a learner ties three hook lengths of 60 cm and fills a reel with 100 m, as what a group buys has it", () => {
  const { group } = parse(readFileSync(join(content, "kits/first-outfit.yaml"), "utf8")) as {
    group: Readonly<Record<string, unknown>>;
  };
  const tied = places(/\b(?:Make|Tie|tie) (?!all)(\w+)(?: hook lengths| at home before each trip)/g);
  expect(tied.length).toBeGreaterThanOrEqual(3);
  for (const { name, found } of tied) expect(found, name).toMatch(/ three /);
  expect(group["hook-lengths"]).toBe(3);
  expect(places(/Cut off about 60 cm of line/g)).toHaveLength(1);
  expect(group["line-for-each"]).toBe("60 cm");
  expect(places(/about 100 m of the new line on top/g)).toHaveLength(1);
  expect(group["line-on-reel"]).toBe("100 m");
  // "A quarter more" of the page for coaches.
  expect(places(/with a quarter more for what breaks or is lost/g)).toHaveLength(1);
  expect(group.spares).toBe("25 %");
});

test("groundbait: a quarter kept back, half a litre to the kilogram, and a session's balls within a kilogram", () => {
  const lesson = texts.find(({ name }) => name.endsWith("groundbait.md"))!.text;
  const mix = (balls: number) => groundbait(balls, 50);
  expect(lesson).toMatch(/three quarters of the dry mix.*Keep the last quarter back/);
  expect(lesson).toMatch(/A kilogram of dry mix takes about half a litre of water/);
  expect(lesson).toMatch(/A kilogram is plenty for an ordinary day, and for a short session half is enough/);
  // An opening of five, and one or two an hour for three hours.
  for (const balls of [5, 10]) {
    const made = mix(balls);
    if (!made.ok) throw new Error("no mix");
    const { dryLowG, dryHighG, waterLowMl, waterHighMl, heldBackG } = made.value;
    expect((dryLowG + dryHighG) / 2).toBeLessThan(balls === 5 ? 500 : 1000);
    expect(waterLowMl / dryLowG).toBeLessThan(0.5);
    expect(waterHighMl / dryHighG).toBeGreaterThan(0.5);
    expect(heldBackG / dryHighG).toBeCloseTo(1 / 4, 9);
  }
  // Balls 5 cm across hold half as much as one like a tennis ball (65 mm to 69 mm: ITF rules of tennis, from memory).
  expect((50 / 65) ** 3).toBeCloseTo(0.5, 1);
});
