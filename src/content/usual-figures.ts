import { parseQuantity, type QuantityKind } from "../core/quantity.ts";
import { type Message, message } from "../model/message.ts";
import type { YamlSource } from "./yaml-source.ts";

/** A figure of a file, and between which figures it lies on any bank; common practice, no source. */
interface Usual {
  /** Where it stands; `*` is each entry of a list. */
  readonly path: readonly string[];
  readonly kind: QuantityKind;
  readonly least: string;
  readonly most: string;
}

const usual = (path: string, kind: QuantityKind, least: string, most: string): Usual => ({
  path: path.split("/"),
  kind,
  least,
  most,
});

/** Far outside is a slip of the unit or of the point; what is unusual is within. By folder, or file of the content. */
const table = new Map<string, readonly Usual[]>(
  Object.entries({
    rigs: [
      usual("main-line/diameter", "length", "0.05 mm", "0.6 mm"),
      usual("main-line/strength", "mass", "0.2 kg", "20 kg"),
      usual("hook-length/diameter", "length", "0.05 mm", "0.6 mm"),
      usual("hook-length/strength", "mass", "0.2 kg", "20 kg"),
      usual("hook-length/length", "length", "3 cm", "2 m"),
      usual("depths/*", "length", "20 cm", "15 m"),
      usual("paces/*", "pace", "0.01 m/s", "3 m/s"),
      usual("whip", "length", "1 m", "16 m"),
      usual("feed/portion", "volume", "0.1 ml", "2 l"),
      usual("feed/every", "time", "5 s", "2 h"),
      usual("feed/for", "time", "10 min", "24 h"),
      usual("overdepth", "length", "-5 m", "1 m"),
      usual("loading/gap", "length", "2 cm", "2 m"),
    ],
    floats: [usual("profile/*/diameter", "length", "0.5 mm", "60 mm")],
    baits: [usual("mass", "mass", "0.001 g", "30 g")],
    shot: [usual("sizes/*/mass", "mass", "0.001 g", "10 g")],
    "hooks.yaml": [usual("*/mass", "mass", "0.001 g", "1 g")],
    "guide.yaml": [
      usual("rod-length", "length", "1 m", "12 m"),
      usual("lead-rule/allowed-up-to", "mass", "0 g", "1 g"),
      usual("plummets/*/mass", "mass", "0.5 g", "60 g"),
    ],
    swims: [
      usual("lines/*/soundings/*/depth", "length", "0 m", "20 m"),
      usual("lines/*/soundings/*/from-bank", "length", "0 m", "100 m"),
      usual("pace", "pace", "0.01 m/s", "3 m/s"),
    ],
    notes: [usual("level", "length", "-5 m", "5 m"), usual("pace", "pace", "0.01 m/s", "3 m/s")],
    shelves: [
      usual("pack/line-for-each", "length", "5 cm", "3 m"),
      usual("pack/main-line", "length", "1 m", "200 m"),
    ],
    sessions: [usual("hours", "time", "30 min", "14 h"), usual("hook-bait", "volume", "0 ml", "2 l")],
  }),
);

/**
 * Figures of a file that nobody fishes with, each a warning at its place.
 *
 * @param path of the file within the content
 */
export function unusualFigures(yaml: YamlSource, path: string): readonly Message[] {
  const [of = ""] = path.split("/");
  const rows = table.get(of) ?? [];
  return rows.flatMap((row) =>
    typedAt(yaml.data, row.path).flatMap(({ typed, at }) => {
      if (isUsual(typed, row)) return [];
      const key = row.path.findLast((step) => step !== "*") ?? "";
      const allowed = `${row.least} to ${row.most}`;
      return [message("unlikely-figure", yaml.placeOf(at), { key, found: String(typed), allowed })];
    }),
  );
}

type At = readonly (string | number)[];

/** What stands at a path, and for each entry of a list in it. */
function typedAt(data: unknown, path: readonly string[], at: At = []): { typed: unknown; at: At }[] {
  const [step, ...rest] = path;
  if (step === undefined) return data === undefined ? [] : [{ typed: data, at }];
  if (typeof data !== "object" || data === null) return [];
  if (step !== "*") return typedAt((data as Record<string, unknown>)[step], rest, [...at, step]);
  return Array.isArray(data) ? data.flatMap((one, i) => typedAt(one, rest, [...at, i])) : [];
}

/** What is no quantity is told elsewhere. */
function isUsual(typed: unknown, { kind, least, most }: Usual): boolean {
  const [value, from, to] = [typed, least, most].map((text) => parseQuantity(kind, String(text)));
  return !value?.ok || !from?.ok || !to?.ok || (value.value >= from.value && value.value <= to.value);
}
