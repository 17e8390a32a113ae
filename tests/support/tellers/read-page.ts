import { keptOf, plummetOf, tryOf } from "./read-plumbing.ts";
import {
  plain,
  readCm,
  readHookSet,
  readLineCm,
  readLoad,
  readLock,
  readMm,
  readPlaces,
  readSeconds,
} from "./read-words.ts";
import type { Statement } from "./statement.ts";

const teller = "page";

const text = (html: string) =>
  plain(
    html
      .replace(/<[^>]*>/g, " ")
      .replace(/&#x27;/g, "'")
      .replace(/&quot;/g, '"')
      .replace(/&amp;/g, "&"),
  );

/** Rows of the table with this caption or of this class, cell by cell. */
function rowsOf(html: string, mark: string): string[][] {
  const table = html.split("<table").find((one) => one.includes(mark));
  if (!table) throw new Error(`no table with ${mark}`);
  const body = /<tbody>(.*?)<\/tbody>/s.exec(table)![1]!;
  return [...body.matchAll(/<tr[^>]*>(.*?)<\/tr>/gs)].map(([, row]) =>
    [...row!.matchAll(/<t[hd][^>]*>(.*?)<\/t[hd]>/gs)].map(([, cell]) => cell!),
  );
}

const roles: Readonly<Record<string, string>> = {
  "locks the float": "lock",
  "strung out": "spread",
  "anchor, on the bottom": "anchor",
};

/** What a rig's page says of each depth, beside its pictures. */
export function readPage(html: string): Statement[] {
  const sections = html.split('<section class="depth"').slice(1);
  const metals = [...html.matchAll(/<li>([^<]*\((?:lead|tin|bismuth|tungsten|steel|zinc|brass)\))<\/li>/g)];
  const [, portion, every] = /about (\S+) ml[^<]*? every ([^<.]*)\./.exec(html)!;
  return [
    ...sections.flatMap(readDepth),
    ...readMaking(html, Number(/id="depth-(\d+)"/.exec(sections[0]!)![1])),
    ...readGlance(html),
    { teller, of: "metals", metals: metals.map(([, told]) => /\((\w+)\)$/.exec(told!)![1]!) },
    { teller, of: "feed", ml: Number(portion), everyS: readSeconds(every!) },
  ];
}

function readDepth(section: string): Statement[] {
  const depthCm = Number(/id="depth-(\d+)"/.exec(section)![1]);
  const key = [...section.matchAll(/<dt>(.*?)<\/dt><dd>(.*?)<\/dd>/gs)].map(([, name, value]) => [
    text(name!),
    text(value!),
  ]);
  const [moved, tip] = [key[0]!, key[1]!];
  const shot = rowsOf(section, "Where the shot go").map((row) => row.map(text));
  const start = rowsOf(section, 'class="guide"').filter((row) => text(row[1]!).includes("Start here"));
  if (start.length !== 1) throw new Error(`${start.length} rows say where to start at ${depthCm} cm`);
  const { fromCm, toCm } = readHookSet(text(start[0]![0]!.replace(/<span class="beside">.*?<\/span>/s, "")));
  const advice = /should show\.(.*?)<\/p>/.exec(section)?.[1] ?? "";
  return [
    {
      teller,
      depthCm,
      of: "setting",
      cm: readLineCm(moved[1]!),
      moved: moved[0]!.replace(/ to hook$/, "").toLowerCase(),
    },
    { teller, depthCm, of: "tip", mm: readMm(tip[1]!) },
    { teller, depthCm, of: "tip set by", what: advice.includes("add a small shot") ? "shot" : "depth" },
    { teller, depthCm, of: "start here", overdepthCm: fromCm, toCm },
    ...readPlumbing(section, depthCm),
    ...shot.map(([load, place, role]): Statement => {
      const [from, to] = [...place!.matchAll(/(\d+) cm(?! apart)/g)].map(([, cm]) => Number(cm));
      const placesCm = place!.includes(" to ") ? [from!, to!] : from === undefined ? [] : [from];
      const group = { counts: role === "locks the float" ? lockCounts(load!) : readLoad(load!), placesCm };
      const stretch = placesCm.length === 2 && { stretch: "even" as const };
      return {
        teller,
        depthCm,
        of: "role",
        role: roles[role!] ?? role!,
        group: { ...group, ...(stretch || {}) },
      };
    }),
  ];
}

/** Finding the depth with a plummet. */
function readPlumbing(section: string, depthCm: number): Statement[] {
  const [, told, table] =
    /<details class="more"><summary>[^<]*plummet<\/summary><p>(.*?)<\/p>(.*?)<\/details>/s.exec(section)!;
  const tries = rowsOf(table!, "Try by try").map((row) => row.map(text));
  const at = { teller, depthCm };
  return [
    plummetOf(text(told!), at),
    ...keptOf(text(told!), at),
    ...tries.map(([set, says, next], i) => tryOf(i, set!, says!, next!, at)),
  ];
}

/** The steps of making it up, which are those of the shallowest depth. */
function readMaking(html: string, depthCm: number): Statement[] {
  const steps = [
    ...html
      .split('<ol class="steps">')[1]!
      .split("</ol>")[0]!
      .matchAll(/<li>(.*?)<\/li>/gs),
  ];
  return steps.flatMap(([, step]): Statement[] => {
    const [, lock] = /until it is: (.*)\.$/.exec(text(step!)) ?? [];
    const at = { teller: `${teller}, make it up`, depthCm };
    return [...keptOf(text(step!), at), ...(lock ? [{ ...at, of: "lock" as const, ...readLock(lock) }] : [])];
  });
}

/** The lock's shot however they are grouped. */
function lockCounts(told: string) {
  if (!told.includes(" above, ")) return readLoad(told);
  const { above, below } = readLock(told);
  const sizes = new Set([...Object.keys(above), ...Object.keys(below)]);
  return Object.fromEntries([...sizes].map((size) => [size, (above[size] ?? 0) + (below[size] ?? 0)]));
}

/** The table of all depths at a glance. */
function readGlance(html: string): Statement[] {
  return rowsOf(html, 'class="glance"').flatMap((cells): Statement[] => {
    const [depth, setting, lock, line] = cells.map(text);
    const depthCm = readCm(depth!);
    return [
      { teller, depthCm, of: "setting", cm: readLineCm(setting!) },
      { teller, depthCm, of: "lock", ...readLock(lock!) },
      { teller, depthCm, of: "line placed", groups: readPlaces(line!) },
    ];
  });
}
