import type { z } from "zod";
import { byId, paired, withId } from "../../core/lists.ts";
import { spreadOver } from "../../core/session/places.ts";
import type { Library } from "../../model/library.ts";
import type { FeedStock, Session } from "../../model/session.ts";
import type { SwimEntry } from "../../model/swim.ts";
import type { Read, Reading } from "../reading.ts";
import type { sessionSchema } from "../schema/session-schema.ts";
import { linkStock, priced, type StockShelves } from "./stock-link.ts";

type Typed = z.output<typeof sessionSchema>;
type Path = readonly (string | number)[];

/** What the names of a session are looked up in. */
type Shelves = StockShelves & Pick<Library, "swims" | "plans" | "rigs" | "baits" | "kits">;

const dayMin = 24 * 60;
const minutes = (seconds: number) => Math.round(seconds / 60);

/** A session with its names looked up; undefined where it cannot be held as it is written. */
export function linkSession(read: Read<Typed>, shelves: Shelves, reading: Reading): Session | undefined {
  const { id, source, value, yaml } = read;
  const told = reading.messages.length;
  const named = namesOf(read, shelves, reading);
  const swims = swimsOf(read, named.rigIds, shelves.swims, reading);
  const kits = shelves.kits.filter(({ group }) => group);
  reading.lookUp(byId(kits), value.kit, "kit with a group", yaml.placeOf(["kit"]));
  const box = linkStock(value.box, ["box"], read, shelves, reading);
  const feeds = feedsOf(read, named, shelves, reading);
  holdable(read, reading);
  enoughRods(read, swims, named.rigIds, shelves, reading);
  if (reading.messages.length > told) return undefined;
  const { learners } = value;
  const { groundbait } = value.box;
  return {
    id,
    path: source.file,
    placeOf: yaml.placeOf,
    title: value.title,
    date: value.date,
    fromMin: value.from,
    roomMin: minutes(value.hours),
    isPublic: value.page,
    swims,
    learners: {
      count: learners.count,
      ...(learners.ages !== undefined && { ages: learners.ages }),
      areNew: learners["first-time"],
    },
    adults: value.adults,
    rods: value.rods,
    ...named,
    hookBaitMl: value["hook-bait"],
    kitId: value.kit,
    setUpMin: minutes(value["set-up"]),
    leastFishingMin: minutes(value.fishing),
    packUpMin: minutes(value["pack-up"]),
    ...(value.money !== undefined && { money: value.money }),
    box,
    feeds,
    ...(groundbait && {
      groundbait: {
        massG: groundbait.mass,
        ...(groundbait.packet !== undefined && { packetG: groundbait.packet }),
        ...priced(groundbait.price),
      },
    }),
  };
}

/** Lessons, rigs and baits, each once. */
function namesOf({ value, yaml }: Read<Typed>, { plans, rigs, baits }: Shelves, reading: Reading) {
  const all = (key: "lessons" | "rigs" | "baits", shelf: ReadonlyMap<string, unknown>, what: string) =>
    value[key].filter((name, at) => {
      const place = yaml.placeOf([key, at]);
      if (value[key].indexOf(name) < at) reading.error(place, "duplicate-name", { found: name });
      return reading.lookUp(shelf, name, what, place) !== undefined;
    });
  return {
    lessonIds: all("lessons", byId(plans), "lesson with a plan"),
    rigIds: all("rigs", byId(rigs), "rig"),
    baitIds: all("baits", byId(baits.map(({ bait }) => bait)), "bait"),
  };
}

function swimsOf(
  { value, yaml }: Read<Typed>,
  rigIds: readonly string[],
  all: readonly SwimEntry[],
  reading: Reading,
): Session["swims"] {
  const spots = value.swims.map(({ swim, spot }) => `${swim}, ${spot}`);
  return value.swims.flatMap(({ swim: name, spot: title, rigs }, at) => {
    const path: Path = ["swims", at];
    const swim = reading.lookUp(byId(all), name, "swim", yaml.placeOf([...path, "swim"]));
    if (!swim) return [];
    const titles = new Map(swim.spots.map((spot) => [spot.title, spot]));
    const place = yaml.placeOf([...path, "spot"]);
    const spot = reading.lookUp(titles, title, "spot of this swim", place);
    if (spots.indexOf(spots[at] ?? "") < at) reading.error(place, "duplicate-name", { found: title });
    const named = new Map(rigIds.map((id) => [id, id]));
    for (const [i, rig] of rigs.entries()) {
      reading.lookUp(named, rig, "rig of this session", yaml.placeOf([...path, "rigs", i]));
    }
    return spot ? [{ swimId: swim.id, spot: spot.title, rigIds: rigs }] : [];
  });
}

/** Feed by the names that the rigs and baits of the session have for it. */
function feedsOf(
  { value, yaml }: Read<Typed>,
  { rigIds, baitIds }: Pick<Session, "rigIds" | "baitIds">,
  { rigs, baits }: Shelves,
  reading: Reading,
): readonly FeedStock[] {
  const hooked = baits.filter(({ bait }) => baitIds.includes(bait.id));
  const known = new Map([
    ...rigs.filter(({ id }) => rigIds.includes(id)).map(({ rig }) => [rig.feed.what, rig.feed.what] as const),
    ...hooked.map(({ bait: { title }, feed = title }) => [title, feed] as const),
  ]);
  const { feeds } = value.box;
  return feeds.flatMap(({ feed: name, volume: volumeMl, packet, price }, at) => {
    const place = yaml.placeOf(["box", "feeds", at, "feed"]);
    const feed = reading.lookUp(known, name, "feed or bait of this session", place);
    if (feed !== undefined && feeds.findIndex((one) => known.get(one.feed) === feed) < at) {
      reading.error(place, "duplicate-name", { found: name });
    }
    return feed === undefined
      ? []
      : [{ feed, volumeMl, ...(packet !== undefined && { packetMl: packet }), ...priced(price) }];
  });
}

/** Whether the day is long enough. */
function holdable({ value, yaml }: Read<Typed>, reading: Reading): void {
  const roomMin = minutes(value.hours);
  if (value.from + roomMin > dayMin) {
    reading.error(yaml.placeOf(["hours"]), "session-past-midnight", {
      hours: roomMin / 60,
      left: Math.floor((dayMin - value.from) / 6) / 10,
    });
  }
}

/** Whether there is a rod, or a whip, for each learner; who fishes with both in turn has both. */
function enoughRods(
  { value, yaml }: Read<Typed>,
  swims: Session["swims"],
  rigIds: readonly string[],
  { rigs, swims: all }: Shelves,
  reading: Reading,
): void {
  const { count } = value.learners;
  const heads = spreadOver(count, swims.length);
  const inTurn = swims.map(({ swimId, rigIds: wanted }) => {
    const fished = wanted.length > 0 ? wanted : rigIds;
    const { water } = withId(all, swimId);
    const outfits = rigs
      .filter(({ id, rig }) => fished.includes(id) && rig.water === water)
      .map(({ rig }) => rig.outfit === "whip");
    return Math.max(1, new Set(outfits).size);
  });
  const needed = swims.length === 0 ? count : paired(heads, inTurn).reduce((sum, [a, b]) => sum + a * b, 0);
  if (needed > value.rods) {
    reading.error(yaml.placeOf(["rods"]), "session-too-few-rods", {
      learners: count,
      needed,
      rods: value.rods,
    });
  }
}
