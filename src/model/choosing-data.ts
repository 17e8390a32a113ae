import type { Tub } from "../core/tackle/shot.ts";
import type { ChoosableSpot, ChoosableSwim, RigShelf } from "./choosing.ts";
import type { ChoosingRules } from "./choosing-rules.ts";

/** A swim as a page has it to choose rigs for. */
export interface ChosenSwim extends ChoosableSwim {
  readonly id: string;
  readonly title: string;
  /** What can hurt there, and its rules, a line each. */
  readonly hazards: readonly string[];
  readonly spots: readonly (ChoosableSpot & { readonly title: string })[];
}

/** All that a page needs to choose rigs by. */
export interface ChoosingData {
  readonly rules: ChoosingRules;
  readonly shelf: RigShelf;
  readonly swims: readonly ChosenSwim[];
  /** The guide's own shot, whose metals a box takes where it names none. */
  readonly tub: Tub;
}
