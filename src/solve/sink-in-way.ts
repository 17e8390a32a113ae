import { type Answer, answer } from "../core/finding.ts";
import { type Landing, type Sink, sinkOfRig } from "../core/sink/sink-of-rig.ts";
import type { Arrangement, SisterShot } from "../model/in-water.ts";
import { allShot, type SolvedDepth, type SolvedRig } from "../model/solved.ts";
import { flowRig } from "./hanging-rig.ts";
import { sameShot } from "./same-shot.ts";

/** How a rig's own shot hang, and how it lands. */
export interface WayToSink {
  /** None where the rig's own way is the only one. */
  readonly arrangement?: Arrangement;
  readonly landing: Landing;
}

export interface SunkInWay extends WayToSink {
  /** All shot, in their places. */
  readonly shot: readonly SisterShot[];
  readonly sink: Sink;
}

/**
 * A rig's fall with its own shot hung in one of the ways of `sameShot`.
 *
 * @returns nothing where the rig's shot cannot be hung so
 */
export function sinkInWay(
  { rig, floatMassG: massG }: SolvedRig,
  depth: SolvedDepth,
  way: WayToSink,
): Answer<SunkInWay | undefined> {
  const { floatDragAreaCm2: dragAreaCm2, ...hanging } = flowRig(rig, depth);
  const hung = sameShot(rig, depth).find(({ arrangement }) => arrangement === way.arrangement);
  if (way.arrangement && !hung) return answer(undefined);
  const moved = hung && !hung.own ? [...hung.shot, ...depth.lockShot] : undefined;
  const float = { massG, dragAreaCm2 };
  const sink = sinkOfRig({ ...hanging, ...(moved && { shot: moved }), float }, way.landing);
  if (!sink.ok) return sink;
  return answer({ ...way, shot: moved ?? allShot(depth), sink: sink.value });
}
