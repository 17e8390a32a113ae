import { answer, noAnswer } from "../finding.ts";
import type { AllAtFloatSpec, PlacePattern } from "./pattern.ts";

/** No shot on the line; the lock carries the whole load, so there has to be one. */
export const placeAllAtFloat: PlacePattern<AllAtFloatSpec> = (spec, room) =>
  room.locked ? answer([]) : noAnswer("pattern.no-lock", { pattern: spec.kind });
