import { parseQuantity } from "../core/quantity.ts";

/** What somebody typed into the form of a swim, row by row; an empty text is nothing. */
export interface TypedSwim {
  readonly title: string;
  readonly summary: string;
  readonly water: string;
  readonly pace: string;
  readonly sounded: string;
  readonly levelMark: string;
  readonly road: string;
  readonly way: string;
  readonly gridReference: string;
  readonly places: string;
  /** Parted by commas. */
  readonly fish: string;
  readonly rules: string;
  readonly line: string;
  readonly soundings: readonly { readonly fromBank: string; readonly depth: string }[];
  readonly spots: readonly { readonly title: string; readonly fromBank: string }[];
  readonly hazards: readonly { readonly what: string; readonly where: string; readonly measure: string }[];
}

/** What keeps a form from being a file, with what was typed there. */
export interface SwimProblem {
  readonly problem: "missing" | "unread" | "twice" | "few" | "beyond";
  /** Name of the field. */
  readonly field: string;
  readonly typed: string;
}

type MadeSwim = { readonly text: string } | { readonly problems: readonly SwimProblem[] };

/** The text of a swim's file, as its reader takes it; nothing half made where something is wrong. */
export function swimFile(typed: TypedSwim): MadeSwim {
  const problems = problemsOf(typed);
  if (problems.length > 0) return { problems };
  const { water, pace, sounded, places } = typed;
  const list = (text: string, parting: RegExp) =>
    text
      .split(parting)
      .map((part) => part.trim())
      .filter((part) => part !== "");
  const optional = (key: string, value: string) => (value.trim() === "" ? [] : [`${key}: ${quoted(value)}`]);
  const rows = <T extends object>(
    key: string,
    entries: readonly T[],
    row: (one: T) => string,
    indent = "",
  ) => {
    const some = entries.filter(isTyped);
    return some.length === 0
      ? []
      : [`${indent}${key}:`, ...some.map((one) => `${indent}  - { ${row(one)} }`)];
  };
  const lines = [
    `title: ${quoted(typed.title)}`,
    `summary: ${quoted(typed.summary)}`,
    `water: ${water}`,
    ...(water === "flowing" ? [`pace: ${pace.trim()}`] : []),
    `sounded: ${sounded}`,
    ...optional("level-mark", typed.levelMark),
    "lines:",
    `  - title: ${quoted(typed.line)}`,
    ...rows(
      "soundings",
      typed.soundings,
      ({ fromBank, depth }) => `from-bank: ${quoted(fromBank)}, depth: ${quoted(depth)}`,
      "    ",
    ),
    ...rows("spots", typed.spots, (one) => `title: ${quoted(one.title)}, from-bank: ${quoted(one.fromBank)}`),
    ...rows("hazards", typed.hazards, ({ what, where, measure }) => {
      return `what: ${what}, where: ${quoted(where)}, do: ${quoted(measure)}`;
    }),
    "access:",
    ...optional("  grid-reference", typed.gridReference),
    `  road: ${quoted(typed.road)}`,
    ...optional("  way", typed.way),
    `places: ${places.trim()}`,
    `fish: [${list(typed.fish, /,/).map(quoted).join(", ")}]`,
    ...(typed.rules.trim() === ""
      ? []
      : ["rules:", ...list(typed.rules, /\n/).map((rule) => `  - ${quoted(rule)}`)]),
  ];
  return { text: `${lines.join("\n")}\n` };
}

/** A text of JSON is one of YAML, too. */
const quoted = (text: string) => JSON.stringify(text.trim());

const isTyped = (row: object) => Object.values(row).some((text) => String(text).trim() !== "");

function problemsOf(typed: TypedSwim): readonly SwimProblem[] {
  const { water, pace, places, soundings, spots, hazards } = typed;
  const rows = soundings.filter(isTyped);
  const needed = ["title", "summary", "sounded", "road", "places", "fish", "line"] as const;
  const sounded = rows.map(({ fromBank }) => lengthOf(fromBank) ?? 0);
  const [least, most] = [Math.min(...sounded), Math.max(...sounded)];
  const twice = rows.filter(({ fromBank }, at) => {
    const mm = lengthOf(fromBank);
    return mm !== undefined && rows.findIndex((row) => lengthOf(row.fromBank) === mm) < at;
  });
  return [
    ...needed.flatMap((field) => (typed[field].trim() === "" ? problem("missing", field, "") : [])),
    ...(water === "flowing" && !parseQuantity("pace", pace).ok ? problem("unread", "pace", pace) : []),
    ...(/^ *([1-9]|[12]\d|30) *$/.test(places) || places.trim() === ""
      ? []
      : problem("unread", "places", places)),
    ...rows.flatMap(({ fromBank, depth }) => [...unread("from-bank", fromBank), ...unread("depth", depth)]),
    ...(rows.length < 2 ? problem("few", "depth", "") : []),
    ...twice.flatMap(({ fromBank }) => problem("twice", "from-bank", fromBank)),
    ...(spots.some(isTyped) ? [] : problem("missing", "spot", "")),
    ...spots.filter(isTyped).flatMap(({ title, fromBank }) => {
      const mm = lengthOf(fromBank);
      if (title.trim() === "") return problem("missing", "spot", fromBank);
      if (mm === undefined) return problem("unread", "from-bank", fromBank);
      return mm < least || mm > most ? problem("beyond", "spot", title) : [];
    }),
    ...hazards
      .filter(({ where, measure }) => (where.trim() === "") !== (measure.trim() === ""))
      .flatMap(({ where, measure }) => problem("missing", "hazard", where || measure)),
  ];
}

const problem = (of: SwimProblem["problem"], field: string, typed: string): SwimProblem[] => [
  { problem: of, field, typed: typed.trim() },
];

const unread = (field: string, typed: string) =>
  lengthOf(typed) === undefined ? problem("unread", field, typed) : [];

/** A length that is not below nothing. */
function lengthOf(typed: string): number | undefined {
  const read = parseQuantity("length", typed);
  return read.ok && read.value >= 0 ? read.value : undefined;
}
