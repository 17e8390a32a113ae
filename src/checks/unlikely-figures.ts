import type { RigEntry } from "../model/library.ts";
import { message } from "../model/message.ts";
import type { Figures } from "../words/figures.ts";
import type { ContentCheck } from "./check.ts";

/** A key of a rig, and between which figures it lies on any bank; common practice, no source. */
interface Range {
  readonly path: readonly (string | number)[];
  readonly values: (rig: RigEntry["rig"]) => readonly number[];
  readonly least: number;
  readonly most: number;
  readonly shown: (figures: Figures, value: number) => string;
}

const diameter: Range["shown"] = (figures, mm) => figures.diameter(mm);
const strength: Range["shown"] = (figures, g) => figures.strength(g);
const gap: Range["shown"] = (figures, mm) => figures.gap(mm);

/** Both lines of a rig are held to the same. */
const ofLine = (key: string, lineOf: (rig: RigEntry["rig"]) => RigEntry["rig"]["mainLine"]): Range[] => [
  {
    path: [key, "diameter"],
    values: (rig) => [lineOf(rig).diameterMm],
    least: 0.05,
    most: 0.6,
    shown: diameter,
  },
  {
    path: [key, "strength"],
    values: (rig) => [lineOf(rig).strengthG],
    least: 200,
    most: 20_000,
    shown: strength,
  },
];

/** Far outside is a slip of the unit or of the point; an unusual rig is within. */
const ranges: readonly Range[] = [
  ...ofLine("main-line", ({ mainLine }) => mainLine),
  ...ofLine("hook-length", ({ hookLine }) => hookLine),
  {
    path: ["hook-length", "length"],
    values: ({ hookLengthMm }) => [hookLengthMm],
    least: 30,
    most: 2000,
    shown: gap,
  },
  {
    path: ["depths"],
    values: ({ depthsMm }) => depthsMm,
    least: 200,
    most: 15_000,
    shown: (figures, mm) => figures.depth(mm),
  },
  {
    path: ["paces"],
    values: ({ pacesMs }) => pacesMs,
    least: 0.01,
    most: 3,
    shown: (figures, ms) => figures.pace(ms),
  },
  {
    path: ["feed", "portion"],
    values: ({ feed }) => [feed.portionMl],
    least: 0.1,
    most: 2000,
    shown: (figures, ml) => figures.volume(ml),
  },
  {
    path: ["feed", "every"],
    values: ({ feed }) => [feed.everyS],
    least: 5,
    most: 7200,
    shown: (figures, s) => figures.time(s),
  },
  {
    path: ["loading", "gap"],
    values: ({ pattern }) => ("gapMm" in pattern ? [pattern.gapMm] : []),
    least: 20,
    most: 2000,
    shown: gap,
  },
];

/** Figures of rigs that nobody fishes with. */
export const unlikelyFigures: ContentCheck = ({ library: { rigs }, figures }) =>
  rigs.flatMap(({ rig, placeOf }) =>
    ranges.flatMap(({ path, values, least, most, shown }) => {
      const all = values(rig);
      return all.flatMap((value, at) => {
        if (value >= least && value <= most) return [];
        const place = placeOf(all.length > 1 ? [...path, at] : path);
        const allowed = `${shown(figures, least)} to ${shown(figures, most)}`;
        return [
          message("unlikely-figure", place, {
            key: String(path.at(-1)),
            found: shown(figures, value),
            allowed,
          }),
        ];
      });
    }),
  );
