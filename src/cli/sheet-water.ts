import type { FlowFigure, InWater } from "../solve/in-water.ts";
import type { SolvedDepth } from "../solve/solved.ts";
import type { TextTable } from "../solve/tables.ts";
import type { SheetKit } from "./sheet-kit.ts";
import { columns, section } from "./sheet-layout.ts";

/** How the rig sinks, how it hangs in its paces and where its feed goes in; nothing where that was not reckoned. */
export function waterText({ inWater }: SolvedDepth, kit: SheetKit): string {
  if (!inWater) return "";
  const { words, figures } = kit;
  const paces = [...new Set(inWater.flow.map(({ paceMs }) => paceMs))];
  return [
    section(words("page.in-water.sink-caption"), columns(sinkTable(inWater, kit)), assumedText(inWater, kit)),
    ...paces.map((paceMs) =>
      section(
        words("page.in-water.flow-caption", { pace: figures.pace(paceMs) }),
        columns(
          flowTable(
            inWater.flow.filter((figure) => figure.paceMs === paceMs),
            kit,
          ),
        ),
      ),
    ),
  ].join("\n\n");
}

function sinkTable({ sink }: InWater, { words, figures }: SheetKit): TextTable {
  const head = ["landing", "upper", "middle", "lower", "in-all"];
  return {
    head: head.map((key) => words(`page.in-water.${key}`)),
    rows: sink.map(({ landing, thirdsS, tenthsS }) => [
      words(`page.in-water.${landing}`),
      ...[...thirdsS, tenthsS.at(-1)!].map((time) => figures.time(time)),
    ]),
  };
}

function assumedText({ assumed }: InWater, { words, figures }: SheetKit): string {
  return words("sheet.assumed", {
    area: assumed.floatDragAreaCm2.toFixed(1),
    mass: figures.mass(assumed.floatMassG),
    fall: (assumed.feedFallMs * 100).toFixed(0),
  });
}

function flowTable(flow: readonly FlowFigure[], { words, figures }: SheetKit): TextTable {
  const head = ["held", "bait", "set-deeper", "feed"];
  return {
    head: head.map((key) => words(`page.in-water.${key}`)),
    rows: flow.map(({ heldBackShare, leadMm, extraDepthMm, feedUpstreamMm }) => [
      words(`page.in-water.held-${heldBackShare === 0 ? "free" : heldBackShare === 1 ? "stopped" : "half"}`),
      words(`page.in-water.${leadMm > 0 ? "leads" : "trails"}`, { gap: figures.shortGap(Math.abs(leadMm)) }),
      extraDepthMm === null ? words("page.in-water.not-at-all") : figures.shortGap(Math.max(0, extraDepthMm)),
      words(`page.in-water.${feedUpstreamMm > 0 ? "upstream" : "downstream"}`, {
        gap: figures.shortDepth(Math.abs(feedUpstreamMm)),
      }),
    ]),
  };
}
