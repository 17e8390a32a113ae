import type { z } from "zod";
import { first, last } from "../../core/lists.ts";
import type { Species } from "../../model/library.ts";
import type { SoundedLine, SwimEntry } from "../../model/swim.ts";
import type { Read, Reading } from "../reading.ts";
import type { swimSchema } from "../schema/swim-schema.ts";
import { eachOnce } from "../taken-twice.ts";
import { knownFish } from "./known-fish.ts";

type Typed = z.output<typeof swimSchema>;
type Path = readonly (string | number)[];

/** A swim with its names looked up; undefined where a spot has no line to lie on. */
export function linkSwim(
  read: Read<Typed>,
  species: readonly Species[],
  reading: Reading,
): SwimEntry | undefined {
  const { id, source, value, yaml } = read;
  const lines = value.lines.map((line, at) => lineOf(line, ["lines", at], read, reading));
  const byTitle = new Map(lines.map((line) => [line.title, line]));
  eachOnce(
    reading,
    value.lines.map(({ title }) => title),
    (at) => yaml.placeOf(["lines", at, "title"]),
  );
  eachOnce(
    reading,
    value.spots.map(({ title }) => title),
    (at) => yaml.placeOf(["spots", at, "title"]),
  );
  const spots = value.spots.flatMap((spot, at) => {
    const path: Path = ["spots", at];
    const line =
      spot.line === undefined
        ? first(lines)
        : reading.lookUp(byTitle, spot.line, "line of this swim", yaml.placeOf([...path, "line"]));
    if (!line || !isSounded(line, spot["from-bank"], path, read, reading)) return [];
    return { title: spot.title, line, fromBankMm: spot["from-bank"] };
  });
  if (spots.length < value.spots.length) return undefined;
  const { access } = value;
  return {
    id,
    path: source.file,
    placeOf: yaml.placeOf,
    title: value.title,
    summary: value.summary,
    water: value.water,
    ...(value.pace !== undefined && { paceMs: value.pace }),
    sounded: value.sounded,
    ...(value["level-mark"] !== undefined && { levelMark: value["level-mark"] }),
    lines,
    spots,
    exposedTo: value["exposed-to"],
    hazards: value.hazards.map(({ what, where, do: measure }) => ({ kind: what, where, measure })),
    access: {
      ...(access["grid-reference"] !== undefined && { gridReference: access["grid-reference"] }),
      road: access.road,
      ...(access.way !== undefined && { way: access.way }),
    },
    places: value.places,
    fish: fishOf(read, species, reading),
    rules: value.rules,
  };
}

function lineOf(
  { title, soundings, features }: Typed["lines"][number],
  path: Path,
  read: Read<Typed>,
  reading: Reading,
): SoundedLine {
  const places = soundings.map((one) => one["from-bank"]);
  for (const [at, place] of places.entries()) {
    if (places.indexOf(place) === at) continue;
    const wrong = [...path, "soundings", at, "from-bank"];
    reading.error(read.yaml.placeOf(wrong), "sounding-twice", { found: typedAt(read, wrong), line: title });
  }
  const line: SoundedLine = {
    title,
    soundings: soundings
      .map((one) => ({ fromBankMm: one["from-bank"], depthMm: one.depth }))
      .sort((a, b) => a.fromBankMm - b.fromBankMm),
    features: features.map(({ what, "from-bank": fromBankMm, note }) => ({
      what,
      fromBankMm,
      ...(note !== undefined && { note }),
    })),
  };
  for (const [at, { fromBankMm }] of line.features.entries()) {
    isSounded(line, fromBankMm, [...path, "features", at], read, reading);
  }
  return line;
}

/** Whether a place lies within the soundings of its line; told where it does not. */
function isSounded(
  line: SoundedLine,
  fromBankMm: number,
  path: Path,
  read: Read<Typed>,
  reading: Reading,
): boolean {
  const [from, to] = [first(line.soundings).fromBankMm, last(line.soundings).fromBankMm];
  if (fromBankMm >= from && fromBankMm <= to) return true;
  const at = read.value.lines.findIndex(({ title }) => title === line.title);
  const typed = (mm: number) => {
    const sounding = read.value.lines[at]?.soundings.findIndex((one) => one["from-bank"] === mm) ?? 0;
    return typedAt(read, ["lines", at, "soundings", sounding, "from-bank"]);
  };
  const place = [...path, "from-bank"];
  reading.error(read.yaml.placeOf(place), "beyond-soundings", {
    found: typedAt(read, place),
    line: line.title,
    allowed: `${typed(from)} to ${typed(to)}`,
  });
  return false;
}

/** What was typed at a path of the file. */
function typedAt({ yaml }: Read<Typed>, path: Path): string {
  const at = (value: unknown, step: string | number) => (value as Record<string | number, unknown>)[step];
  return String(path.reduce(at, yaml.data));
}

/** The fish of a swim, each one that the guide knows. */
function fishOf({ value, yaml }: Read<Typed>, species: readonly Species[], reading: Reading) {
  return value.fish.filter((name, at) => knownFish(name, species, yaml.placeOf(["fish", at]), reading));
}
