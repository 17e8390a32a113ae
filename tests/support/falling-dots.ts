import type { Sink } from "../../src/core/sink/sink-of-rig.ts";
import type { Drawing } from "../../src/drawing/model.ts";
import { flatItems } from "./drawing-checks.ts";

/** A bait's dots as they are drawn, from the surface down, and what is written beside them. */
interface FallingDots {
  readonly xMm: number;
  readonly dots: readonly { readonly yMm: number; readonly radiusMm: number }[];
  readonly times: readonly { readonly said: string; readonly isBold: boolean; readonly yMm: number }[];
}

/** The columns of dots of a drawing, in the order that it has them. */
export function fallingDots(drawing: Drawing): FallingDots[] {
  const items = flatItems(drawing.items);
  const columns: { xMm: number; dots: { yMm: number; radiusMm: number }[] }[] = [];
  let isOpen = false;
  for (const item of items) {
    const isRing = item.kind === "circle" && item.stroke?.ink === "accent";
    const isDot = item.kind === "circle" && item.fill === "accent";
    if (isDot && !isOpen) columns.push({ xMm: item.cxMm, dots: [] });
    if (isDot) columns.at(-1)!.dots.push({ yMm: item.cyMm, radiusMm: item.radiusMm });
    isOpen = isDot || (isRing && isOpen);
  }
  const times = items.flatMap((item) =>
    item.kind === "text" && item.anchor === "start" && /^[\d.]+.s$/.test(item.text)
      ? [{ xMm: item.xMm, said: item.text, isBold: item.face === "bold", yMm: item.yMm - 0.35 * item.sizeMm }]
      : [],
  );
  return columns.map(({ xMm, dots }) => {
    const [topMm, footMm] = [dots[0]!.yMm - 5, dots.at(-1)!.yMm + 5];
    return {
      xMm,
      dots,
      times: times.filter((one) => one.xMm > xMm && one.xMm < xMm + 3 && one.yMm > topMm && one.yMm < footMm),
    };
  });
}

/** How deep a bait is at a time, by its track. */
export function baitDepthMm({ track }: Sink, timeS: number): number {
  const after = Math.max(
    1,
    track.findIndex((one) => one.timeS >= timeS),
  );
  const [a, b] = [track[after - 1]!, track[after]!];
  return a.depthMm + ((timeS - a.timeS) / (b.timeS - a.timeS || 1)) * (b.depthMm - a.depthMm);
}

/**
 * What of a column is not where its bait is, to a hundredth of a millimetre of paper: a dot for each second, then a larger
 * one where the bait is all but down, each time at its own dot and the last in bold. A bed may lift that by half a line.
 */
export function fallingFaults(
  { dots, times }: FallingDots,
  sink: Sink,
  { zeroMm, scale }: { readonly zeroMm: number; readonly scale: number },
): string[] {
  const endS = sink.tenthsS[9]!;
  const y = (timeS: number) => zeroMm + scale * baitDepthMm(sink, timeS);
  const off = (what: string, a: number, b: number, byMm = 0.01) =>
    Math.abs(a - b) <= byMm ? [] : [`${what}: ${a.toFixed(2)} for ${b.toFixed(2)}`];
  const seconds = dots.slice(0, -1);
  const end = dots.at(-1)!;
  // The last second may lie so close to the end that its dot would be the same.
  const isCounted = endS - seconds.length > 0.2 && endS - seconds.length < 1.3;
  const written = times.filter(({ isBold }) => !isBold);
  const last = times.filter(({ isBold }) => isBold);
  return [
    ...(isCounted ? [] : [`${seconds.length} seconds of ${endS.toFixed(2)}`]),
    ...seconds.flatMap(({ yMm, radiusMm }, i) => [
      ...off(`${i + 1} s`, yMm, y(i + 1)),
      ...(radiusMm < end.radiusMm ? [] : ["a second as large as the end"]),
    ]),
    ...off("down", end.yMm, y(endS)),
    ...written.flatMap(({ said, yMm }) => off(said, yMm, y(Number.parseInt(said, 10)))),
    ...(last.length === 1 && Number.parseInt(last[0]!.said, 10) === Math.round(endS)
      ? off("the last time", last[0]!.yMm, y(endS), 3)
      : [`${last.map(({ said }) => said).join()} for ${endS}`]),
    ...(endS < 3 || written.length > 0 ? [] : ["no time on the way"]),
  ];
}
