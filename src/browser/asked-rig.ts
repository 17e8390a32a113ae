import type { DrawingKit } from "../drawing/kit.ts";
import { measureText } from "../drawing/labels/font-metrics.ts";
import type { Rig } from "../model/rig.ts";
import { type UnitChoice, unitChoices } from "../model/unit-choice.ts";
import { type Figures, makeFigures } from "../words/figures.ts";
import { guide, scaleOf, words } from "./fit-data.ts";
import { fitRig } from "./fit-rig.ts";

/** The units that an address asks for, or the guide's own. */
export function unitsOf(asked: URLSearchParams): UnitChoice {
  return unitChoices.find((choice) => choice === asked.get("units")) ?? guide.units;
}

const kitOf = (figures: Figures): DrawingKit => ({ words, figures, measure: measureText });

const kits = new Map<UnitChoice, DrawingKit>();

/** Made once: what writes a language's numbers takes a browser long to make. */
export function kitIn(units: UnitChoice): DrawingKit {
  const kit = kits.get(units) ?? kitOf(makeFigures(units, words, guide.language));
  kits.set(units, kit);
  return kit;
}

/** What an address asks of a rig beside its name, such as the reader's float. */
export function answersOf(asked: URLSearchParams): ReadonlyMap<string, string> {
  return new Map([...asked].filter(([name]) => name !== "rig"));
}

/** The rig that an address asks for; none where something in it cannot be read. */
export function rigAsked(rig: Rig, asked: URLSearchParams): Rig | undefined {
  const { rig: fitted, problems } = fitRig(rig, scaleOf(rig), answersOf(asked), unitsOf(asked));
  return problems.length > 0 ? undefined : fitted;
}
