import type { Basis } from "../core/basis.ts";
import type { G } from "../core/units.ts";

/** Pounds and kilograms that mean the same line differ by less. */
export const strengthRoundingG: G = 30;

/** Breaking strains between which a line suits a fish. */
export interface StrengthBand {
  readonly leastG: G;
  readonly mostG: G;
}

/** The line that a kind of fish asks for, by the name that rigs call it. */
export interface LineForFish {
  readonly fish: string;
  readonly mainLine: StrengthBand;
  readonly hookLine: StrengthBand;
}

/** `content/lines.yaml`: how strong line is for each kind of fish. */
export interface LineTable {
  readonly basis: Basis;
  readonly source: string;
  /** Share of its strength that a line keeps where a shot is pinched on it. */
  readonly leftUnderShot: number;
  readonly rows: readonly LineForFish[];
}

/** The row of a fish, in capitals or not. */
export const lineOfFish = ({ rows }: LineTable, fish: string): LineForFish | undefined =>
  rows.find((one) => one.fish.toLowerCase() === fish.toLowerCase());
