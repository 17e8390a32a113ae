/** A pace by stick and stride, as its two fields have it: `10 m` and `25` are `10 m in 25 s`. */
export function paceText(way: string, time: string): string {
  const seconds = time.trim();
  return seconds === "" ? way.trim() : `${way.trim()} in ${seconds.replace(/\s*s?$/, " s")}`;
}

/** What stands in the two fields for a pace; one of another kind, such as `0.4 m/s`, stands in the first. */
export function paceParts(text: string): readonly [way: string, time: string] {
  const [, way = text, time = ""] = /^(.+) in (\d[\d.]*) s$/.exec(text) ?? [];
  return [way, time];
}
