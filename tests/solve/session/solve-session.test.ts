import fc from "fast-check";
import { expect, test } from "vitest";
import { solveSessions } from "../../../src/build/solve-sessions.ts";
import { kitKey } from "../../../src/core/tackle/kit.ts";
import { inMemory } from "../../../src/model/kept.ts";
import type { Session } from "../../../src/model/session.ts";
import type { SolvedSession } from "../../../src/model/solved-session.ts";
import { costOf, needOf } from "../../../src/model/stock.ts";
import { shippedGuide } from "../../support/shipped-guide.ts";

const { library, rigs, kit } = shippedGuide;
const keep = inMemory(100);

function solved(session: Session): SolvedSession {
  const { value, messages } = solveSessions({
    library: { ...library, sessions: [session] },
    rigs,
    kit,
    keep,
  });
  const [one] = value;
  if (!one) throw new Error(JSON.stringify(messages));
  return one;
}

const sessionOf = (id: string) => library.sessions.find((session) => session.id === id)!;
const willow = sessionOf("willow-saturday");
const clock = (minutes: number) => `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;

// By hand: 9:30 and 20 min are 9:50; three lessons of 25 min end at 11:05; 13:00 less 15 min is 12:45.
test("the demo session at the pool goes by the clock", () => {
  const { sheet } = solved(willow);
  expect(sheet.blocks.map(({ what, fromMin }) => [what, clock(fromMin)])).toEqual([
    ["set up", "9:30"],
    ["lesson", "9:50"],
    ["lesson", "10:15"],
    ["lesson", "10:40"],
    ["fishing", "11:05"],
    ["pack up", "12:45"],
  ]);
  expect(sheet.overMin).toBe(0);
});

// The shelf lies at a sounding of 1.05 m; the foot of the ledge half a metre beyond one of 1.9 m, before one of 2 m.
test("rigs are made up for the depth of their spot, and learners shared out over the spots", () => {
  const { spots } = solved(willow);
  expect(spots.map(({ learners }) => learners)).toEqual([2, 1]);
  const [shelf, ledge] = spots;
  expect(shelf!.depthMm).toBe(1050);
  expect(ledge!.depthMm).toBeGreaterThanOrEqual(1900);
  expect(ledge!.depthMm).toBeLessThanOrEqual(2000);
  for (const { depthMm, rigs: fished } of spots) {
    for (const { solved: rig } of fished) expect(rig.depths.map((depth) => depth.depthMm)).toEqual([depthMm]);
  }
});

// A river rig is made up for the pace that was measured there: 10 m in 40 s.
test("in running water rigs are made up for the swim's own pace", () => {
  const [spot] = solved(sessionOf("river-morning")).spots;
  for (const { solved: rig } of spot!.rigs) expect(rig.rig.pacesMs).toEqual([0.25]);
});

/*
 * By hand, with a quarter for spares, rounded up. Floats: two first session rigs, one each of two rigs at the ledge, and one more
 * for a lesson that wants two of the second: 5 · 1.25 = 6.25, so 7, of which 3 are there. Hooks 16: 2 · 3 · 1.25 = 7.5, so 8,
 * less 4: a packet of 10. Hooks 18: (2 · 3 + 1) · 1.25 = 8.75, so 9. Line for hook lengths: (2 + 2) · 3 · 0.6 + 0.6 = 7.8,
 * · 1.25 = 9.75, so 10 m of 12. Main line: 3 · 100 · 1.25 = 375, less 300: a spool of 100.
 */
test("the kit of the demo session at the pool is what a coach reckons by hand", () => {
  const lines = solved(willow).kit.filter(({ kind }) => kind !== "shot");
  expect(
    lines.map(({ kind, name, count, inStock, packets }) => [kind, name, count, inStock, packets]),
  ).toEqual([
    ["float", "straight-waggler", 7, 3, 4],
    ["hook", "16", 8, 4, 1],
    ["hook", "18", 9, 0, 1],
    ["hook length", expect.any(String), 10, 10, 0],
    ["line", expect.any(String), 375, 300, 1],
  ]);
});

// Shot by hand: what the cards of each spot say, for its learners, and the one rig more for the lesson at its own depths.
test("shot is counted by size and metal from what hangs on each rig at its depth", () => {
  const { kit: lines, spots } = solved(willow);
  const onRigs = (size: string) =>
    spots.reduce(
      (sum, { learners, rigs: fished }) =>
        sum +
        learners *
          fished
            .flatMap(({ solved: rig }) => rig.depths)
            .flatMap(({ lineShot, lockShot }) => [...lineShot, ...lockShot])
            .filter((shot) => shot.size === size && shot.metal === "tin").length,
      0,
    );
  const forLesson = rigs.find(({ rig }) => rig.id === "straight-waggler-strung-out")!;
  for (const { name, count } of lines.filter(({ kind }) => kind === "shot")) {
    const [size = ""] = name.split(", ");
    const most = Math.max(
      ...forLesson.depths.map(
        ({ lineShot, lockShot }) => [...lineShot, ...lockShot].filter((shot) => shot.size === size).length,
      ),
    );
    expect(count, name).toBe(Math.ceil((onRigs(size) + most) * 1.25 - 1e-9));
  }
});

test.each(library.sessions.map((session) => [session.id, session] as const))(
  "at %s the feed by the clock is the list of feed to bring, within the time that is fished",
  (_, session) => {
    const { feedPlan, feeds, groundbait, sheet, spots } = solved(session);
    const thrown = new Map<string, number>();
    for (const { feed, portions, rods } of feedPlan.rows)
      thrown.set(feed.what, (thrown.get(feed.what) ?? 0) + portions * rods * feed.portionMl);
    const loose = feeds.filter(({ use }) => use === "feed");
    for (const { what, neededMl } of loose) expect(thrown.get(what)).toBeCloseTo(neededMl, 6);
    const balls = feedPlan.rows.filter(({ asBalls }) => asBalls);
    const thrownBalls = balls.reduce((sum, { portions, rods }) => sum + portions * rods, 0);
    expect(groundbait?.balls ?? 0).toBe(thrownBalls);
    expect(thrown.size).toBe(loose.length + new Set(balls.map(({ feed }) => feed.what)).size);
    const fishing = sheet.blocks.find(({ what }) => what === "fishing")!;
    for (const { learners, rigs: fished } of spots) {
      expect(learners).toBeGreaterThan(0);
      const last = fished.flatMap(({ spans }) => spans).filter(({ fromMin }) => fromMin >= fishing.fromMin);
      expect(last[0]?.fromMin).toBe(fishing.fromMin);
      expect(last.at(-1)?.toMin).toBe(fishing.toMin);
    }
  },
);

// By hand: 250 ml of 1149 ml are there, so 899 ml are two imperial pints of 568.26125 ml, at 3.50 each.
test("feed is bought in whole packets of what the box has not", () => {
  const [maggots] = solved(willow).feeds;
  expect(maggots).toMatchObject({
    what: "maggots",
    neededMl: 1149,
    inBoxMl: 250,
    packets: 2,
    priceCents: 350,
  });
});

test("feed in the box is taken off once, though it is on hooks, too", () => {
  const bait = library.baits.find(({ bait: { id } }) => id === "double-maggot")!.bait.title;
  const feeds = [{ feed: bait, volumeMl: 100 }];
  const lines = solved({ ...willow, hookBaitMl: 60, feeds }).feeds.filter(({ what }) => what === bait);
  expect(lines.reduce((sum, { inBoxMl }) => sum + inBoxMl, 0)).toBe(100);
});

test("what all costs is the sum of whole packets, and what has no price is told", () => {
  const { kit: lines, feeds, groundbait } = solved(willow);
  // 4 · 1.80 + 1.30 + 1.30 + 4.50 for tackle, 2 · 3.50 and 3.90 for bait.
  expect(costOf([...lines, ...feeds, groundbait!])).toEqual({ cents: 2520, withoutPrice: 0 });
});

test("whatever is in the box, nothing is too few and no packet too many, and stock is taken off once", () => {
  const full = solved({ ...willow, box: [] }).kit;
  const counts = fc.array(fc.nat(60), { minLength: full.length, maxLength: full.length });
  fc.assert(
    fc.property(counts, fc.integer({ min: 1, max: 50 }), (there, packet) => {
      const box = full.map((line, at) => ({ ...needOf(line.thing, there[at]!), perPacket: packet }));
      const { kit: lines } = solved({ ...willow, box });
      expect(lines.map(({ count }) => count)).toEqual(full.map(({ count }) => count));
      for (const line of lines) {
        const stock = box.find((one) => kitKey(one) === kitKey(line))!.count;
        expect(line.inStock).toBe(Math.min(stock, line.count));
        expect(stock + line.bought).toBeGreaterThanOrEqual(line.count);
        if (line.packets > 0) expect(stock + line.bought - packet).toBeLessThan(line.count);
      }
    }),
    { seed: 20, numRuns: 25 },
  );
});

test("a session that is too long says by how much and what to leave out", () => {
  const { sheet } = solved({ ...willow, roomMin: 120 });
  // 20 + 75 + 30 + 15 are 140 of 120; the last lesson is needed by none.
  expect(sheet).toMatchObject({ overMin: 20, leaveOut: ["adjust-through-the-day"] });
});
