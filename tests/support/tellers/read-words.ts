import type { Counts, ToldGroup } from "./statement.ts";

/** Text with plain spaces, none doubled. */
export const plain = (text: string) => text.replace(/\s+/g, " ").trim();

/** What a voice says of shot, `4 number 8 + 2 BB`, as it is printed: `4 × No 8 + 2 × BB`. */
export const heard = (text: string) =>
  plain(text)
    .replace(/\bnumber (?=\d)/g, "No ")
    .replace(/\b(\d+) (?=No \d|[A-Z]{2,}\b)/g, "$1 × ");

/** `2 × BB + No 4` */
export function readLoad(text: string): Counts {
  if (plain(text) === "none") return {};
  const terms = plain(text)
    .split(" + ")
    .map((term): [string, number] => {
      const [, count, size] = /^(?:(\d+) × )?((?:No )?\w+)$/.exec(term) ?? [];
      if (!size) throw new Error(`"${term}" in "${text}" is no shot`);
      return [size, Number(count ?? 1)];
    });
  return Object.fromEntries(terms);
}

/** `BB + No 4 above, AAA below`, or nothing where no shot hold the float. */
export function readLock(text: string): { above: Counts; below: Counts } {
  if (plain(text) === "none") return { above: {}, below: {} };
  const alone = /^(.*) on one side alone$/.exec(plain(text))?.[1];
  if (alone) return { above: {}, below: readLoad(alone) };
  const [, above, below] = /^(.*) above, (.*) below$/.exec(plain(text)) ?? [];
  if (!above || !below) throw new Error(`"${text}" is no lock in two groups`);
  return { above: readLoad(above), below: readLoad(below) };
}

/** `1.04 m (3 ft 5 in)`, `104 cm` */
export function readCm(text: string): number {
  const [, number, unit] = /^−?(\d+(?:\.\d+)?) (m|cm)\b/.exec(plain(text)) ?? [];
  if (!number) throw new Error(`"${text}" is no length`);
  return Number(number) * (unit === "m" ? 100 : 1);
}

/** A length along the line, which no output may tell but in centimetres: `104 cm (41 in)`. */
export function readLineCm(text: string): number {
  if (!/^\d+ cm\b/.test(plain(text))) throw new Error(`"${text}" is no length along the line in centimetres`);
  return readCm(text);
}

export function readMm(text: string): number {
  const [, number] = /^(\d+(?:\.\d+)?) mm\b/.exec(plain(text)) ?? [];
  if (!number) throw new Error(`"${text}" is no length in millimetres`);
  return Number(number);
}

/** `480 ml (0.8 imperial pints)`, `1.2 l` */
export function readMl(text: string): number {
  const [, number, unit] = /^(\d+(?:\.\d+)?) (ml|l)\b/.exec(plain(text)) ?? [];
  if (!number) throw new Error(`"${text}" is no volume`);
  return Number(number) * (unit === "l" ? 1000 : 1);
}

/** `45 s`, `1 min`, `2 min 30 s` */
export function readSeconds(text: string): number {
  const [, min, s] = /^(?:(\d+) min)? ?(?:(\d+) s)?/.exec(plain(text)) ?? [];
  return 60 * Number(min ?? 0) + Number(s ?? 0);
}

/** `No 10 at 32 cm; 4 × No 8 at 52 to 112 cm; 2 × No 6 at 46, 61 cm` */
export function readPlaces(text: string): ToldGroup[] {
  if (plain(text) === "none") return [];
  return plain(text)
    .split("; ")
    .map((part) => {
      const [, load, places] = /^(.*) at (.*) cm$/.exec(part) ?? [];
      if (!load) throw new Error(`"${part}" in "${text}" has no place`);
      const ends = places!.split(" to ");
      return ends.length === 2
        ? { counts: readLoad(load), placesCm: ends.map(Number), stretch: "even" }
        : { counts: readLoad(load), placesCm: places!.split(", ").map(Number) };
    });
}

/**
 * `just touching the bed`, `30 cm (12 in) over depth`, `10 cm to 20 cm (…) off the bed`, in running water `just the
 * depth`, `10 cm (…) short of the depth`: overdepth from and to.
 */
export function readHookSet(text: string): { fromCm: number; toCm: number } {
  const told = plain(text).replace(/ \([^)]*\)/g, "");
  const [, shallow, deep] = /^(.*\b(?:bed|depth)) to (.*)$/.exec(told) ?? [];
  if (shallow && deep) return { fromCm: readHookSet(shallow).fromCm, toCm: readHookSet(deep).toCm };
  const sign = /off the bed|short of the depth/.test(told) ? -1 : 1;
  if (/^just (touching the bed|the depth)\b/.test(told)) return { fromCm: 0, toCm: 0 };
  const [from, to = from] = [...told.matchAll(/(\d+) cm/g)].map(([, cm]) => sign * Number(cm));
  return { fromCm: from!, toCm: to! };
}
