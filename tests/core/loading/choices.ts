import { chooseShot, type Mix, type Split } from "../../../src/core/loading/loading.ts";
import { pullG, type Shot, type StockedShot } from "../../../src/core/tackle/shot.ts";

export const water = { tempC: 10, salinity: 0 };
export const toleranceG = 1e-9;

export function pull(shot: Shot): number {
  return pullG(shot.massG, shot.metal, water);
}

export function chosen(tub: readonly StockedShot[], targetPullG: number, split: Split = "halves"): Mix {
  const choice = chooseShot({ tub, targetPullG, water, split });
  if (!choice.ok) throw new Error(JSON.stringify(choice.findings));
  return choice.value;
}

export function names(shot: readonly Shot[]): string[] {
  return shot.map(({ size }) => size);
}
