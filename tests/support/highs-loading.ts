import loadHighs from "highs";
import { metalDensityKgM3, pullShare, type StockedShot } from "../../src/core/tackle/shot.ts";
import type { Water } from "../../src/core/water/water.ts";

/** The largest pull that does not exceed the target, as HiGHS finds it, a library for integer programs. */
export type IntegerProgram = (tub: readonly StockedShot[], targetPullG: number, water: Water) => number;

/** What rounding may add to the target [g]. */
const toleranceG = 1e-9;

/** Loads the library; its answers are exact to its own tolerances, which milligrams keep below a nanogram. */
export async function integerProgram(): Promise<IntegerProgram> {
  const highs = await loadHighs();
  return (tub, targetPullG, water) => {
    const { coefficients, limit, unitPullG } = program(tub, targetPullG, water);
    const terms = coefficients.map((coefficient, i) => `${coefficient} x${i}`).join(" + ");
    const bounds = tub.map(({ count }, i) => ` 0 <= x${i} <= ${Math.min(count, 10_000)}`);
    const model = [
      "Maximize",
      ` pull: ${terms}`,
      "Subject To",
      ` target: ${terms} <= ${limit}`,
      "Bounds",
      ...bounds,
      "General",
      ` ${tub.map((_, i) => `x${i}`).join(" ")}`,
      "End",
    ].join("\n");
    const solution = highs.solve(model, { output_flag: false, mip_rel_gap: 0, mip_abs_gap: 0 });
    if (solution.Status !== "Optimal") throw new Error(`HiGHS ended with ${solution.Status}`);
    const total = coefficients.reduce((sum, coefficient, i) => {
      return sum + coefficient * Math.round(solution.Columns[`x${i}`]!.Primal as number);
    }, 0);
    return total * unitPullG;
  };
}

/** Whole milligrams in air where all is of one metal, which such a library likes best, else milligrams in water. */
function program(tub: readonly StockedShot[], targetPullG: number, water: Water) {
  const shares = tub.map(({ metal }) => pullShare(metalDensityKgM3[metal], water));
  const massesMg = tub.map(({ massG }) => Math.round(massG * 1000));
  if (shares.every((share) => share === shares[0])) {
    const unitPullG = shares[0]! / 1000;
    return { coefficients: massesMg, limit: Math.floor((targetPullG + toleranceG) / unitPullG), unitPullG };
  }
  return {
    coefficients: massesMg.map((massMg, i) => massMg * shares[i]!),
    limit: targetPullG * 1000,
    unitPullG: 1 / 1000,
  };
}
