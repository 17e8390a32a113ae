import { entry, paired } from "../core/lists.ts";

/** What a rig in the list says of itself: see `RigSummary`. */
type RigMarks = Readonly<Record<string, string | undefined>>;

/** The answers; an empty one asks nothing. */
export type RigWishes = Readonly<Record<string, string>>;

/** A rig set for one depth does for water this much shallower or deeper. */
const depthSlackMm = 300;

/** Questions that are let go, the least weighty first, where no rig fits them all. */
const letGo = ["method", "level", "catch", "depth", "water"] as const;

interface Nearest {
  /** For each rig, whether it is shown. */
  readonly shown: readonly boolean[];
  /** Questions whose answers had to be let go. */
  readonly left: readonly string[];
}

/** The rigs that fit every answer, or else as many as it takes to show one. */
export function nearest(rigs: readonly RigMarks[], wishes: RigWishes): Nearest {
  const left: string[] = [];
  let asked = wishes;
  for (const question of [undefined, ...letGo]) {
    if (question !== undefined) {
      if (!asked[question]) continue;
      asked = { ...asked, [question]: "" };
      left.push(question);
    }
    const shown = rigs.map((marks) => fits(marks, asked));
    if (shown.includes(true)) return { shown, left };
  }
  return { shown: rigs.map(() => false), left };
}

const levels = ["first", "beginner", "next"];

/** Places of the rigs that fit best, the best first: those for that depth, then for that pace, then the easiest. */
export function bestFirst(rigs: readonly RigMarks[], wishes: RigWishes): number[] {
  const { shown } = nearest(rigs, wishes);
  const rank = (marks: RigMarks) => [
    outside(wishes.depth, marks.depths),
    outside(wishes.pace, marks.paces),
    levels.indexOf(marks.level ?? ""),
  ];
  const ranks = rigs.map(rank);
  return shown
    .flatMap((is, at) => (is ? [at] : []))
    .sort((a, b) => {
      const pairs = paired(entry(ranks, a), entry(ranks, b));
      return pairs.map(([one, other]) => one - other).find((by) => by !== 0) ?? a - b;
    });
}

/** How far a figure is from those that a rig is for; 0 between them, or where none was asked. */
function outside(wanted: string | undefined, own = ""): number {
  const figures = own.split(" ").filter(Boolean).map(Number);
  if (!wanted || figures.length === 0) return 0;
  const figure = Number(wanted);
  return Math.max(0, Math.min(...figures) - figure, figure - Math.max(...figures));
}

/** Whether a rig fits every answer given. */
export function fits(marks: RigMarks, wishes: RigWishes): boolean {
  const { water, method, level, depth, catch: fish } = wishes;
  if (water && marks.water !== water) return false;
  if (method && marks.method !== method) return false;
  if (level && marks.level !== level) return false;
  if (fish && !(marks.catch ?? "").split("|").includes(fish)) return false;
  if (depth) {
    const depths = (marks.depths ?? "").split(" ").map(Number);
    const wanted = Number(depth);
    return wanted >= Math.min(...depths) - depthSlackMm && wanted <= Math.max(...depths) + depthSlackMm;
  }
  return true;
}
