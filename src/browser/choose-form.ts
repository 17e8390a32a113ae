import { type Question, readWritten } from "../core/as-written.ts";
import { metalIn, parseBox } from "../core/tackle/box-notation.ts";
import type { ShotScale } from "../core/tackle/shot.ts";
import type { Conditions } from "../model/choosing.ts";
import type { ChosenSwim } from "../model/choosing-data.ts";
import { windStrengths } from "../model/choosing-rules.ts";
import { levels } from "../model/library.ts";
import { placeQuestions } from "../model/place-questions.ts";
import { questions } from "../model/questions.ts";
import type { UnitChoice } from "../model/unit-choice.ts";
import { conditionsAt } from "../solve/choosing/conditions-at.ts";

/** A field that cannot be read, or is missing where it is wanted. */
export interface ChooseProblem {
  readonly field: string;
  readonly problem: "unread" | "wanted" | "dry";
  readonly typed: string;
  readonly example: string;
}

/** What is asked, or what keeps it from being asked. */
type Asked =
  | { readonly conditions: Conditions; readonly swim?: ChosenSwim; readonly spot?: string }
  | { readonly problems: readonly ChooseProblem[] };

/** What the answers are read by. */
interface ReadBy {
  readonly swims: readonly ChosenSwim[];
  readonly units: UnitChoice;
  readonly scale: ShotScale;
  readonly tub: Parameters<typeof metalIn>[0];
}

/**
 * Conditions to choose rigs for from the answers of a form, read as they are written; nothing is guessed where one of
 * them cannot be read.
 */
export function chooseAsked(answers: URLSearchParams, { swims, units, scale, tub }: ReadBy): Asked {
  const problems: ChooseProblem[] = [];
  const asked = { ...questions[units], ...placeQuestions[units] };
  const typedIn = (field: string) => answers.get(field)?.trim() ?? "";
  const figure = (field: "depth" | "distance" | "pace" | "level" | "rod", typed = typedIn(field)) => {
    if (typed === "") return undefined;
    const { example, ...question }: Question & { readonly example: string } = asked[field];
    const read = readWritten(typed, question);
    if (read.ok) return read.value;
    problems.push({ field, problem: "unread", typed: typedIn(field), example });
    return undefined;
  };
  const wanted = (field: "depth" | "distance" | "pace") => {
    if (typedIn(field) === "")
      problems.push({ field, problem: "wanted", typed: "", example: asked[field].example });
    return figure(field) ?? 0;
  };
  const [swimId, title] = typedIn("place").split("|");
  const swim = swims.find(({ id }) => id === swimId);
  const spot = swim?.spots.find((one) => one.title === title);
  const levelTyped = typedIn("level");
  const isLower = /^[-−–]/.test(levelTyped);
  const levelMm = figure("level", levelTyped.replace(/^[-−–+]\s*/, ""));
  const rodLengthMm = figure("rod");
  const boxTyped = typedIn("box");
  const box = boxTyped === "" ? undefined : parseBox(boxTyped, scale, metalIn(tub));
  if (box && !box.ok)
    problems.push({ field: "box", problem: "unread", typed: boxTyped, example: "BB, No 8" });
  const fish = answers.getAll("fish");
  const common = {
    wind: windStrengths.find((one) => one === answers.get("wind")) ?? "calm",
    learner: levels.find((one) => one === answers.get("learner")) ?? "next",
    ...(rodLengthMm !== undefined && { rodLengthMm }),
    ...(box?.ok && { box: box.value }),
  } as const;
  if (swim && spot) {
    const level = levelMm !== undefined && { levelMm: isLower ? -levelMm : levelMm };
    const conditions = conditionsAt(swim, spot, { ...common, ...level, ...(fish.length > 0 && { fish }) });
    if (!conditions)
      problems.push({ field: "level", problem: "dry", typed: levelTyped, example: asked.level.example });
    return problems.length > 0 || !conditions ? { problems } : { conditions, swim, spot: spot.title };
  }
  const water = answers.get("water") === "flowing" ? "flowing" : "still";
  const [depthMm, fromBankMm] = [wanted("depth"), wanted("distance")];
  const paceMs = water === "flowing" ? wanted("pace") : undefined;
  if (problems.length > 0) return { problems };
  const own = { water, depthMm, fromBankMm, fish, fishWanted: "every", ...common } as const;
  return { conditions: { ...own, ...(paceMs !== undefined && { paceMs }) } };
}
