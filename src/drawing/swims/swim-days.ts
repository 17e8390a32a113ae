import type { SwimEntry } from "../../model/swim.ts";
import type { SwimNotes } from "../../model/swim-notes.ts";
import type { Box, DrawingKit } from "../kit.ts";
import type { Drawing } from "../model.ts";
import { drawDatesPlot } from "../plots/dates-plot.ts";

/** Depths that were found at the places of a swim, or its pace, day by day. */
export function drawSwimDays(
  of: "depth" | "pace",
  swim: SwimEntry,
  notes: readonly SwimNotes[],
  box: Box,
  kit: DrawingKit,
  textMm: number,
): Drawing {
  const { words, figures } = kit;
  const isDepth = of === "depth";
  const depths = swim.spots.map(({ title }) => ({
    label: title,
    points: notes.flatMap(({ date, depths: found }) =>
      found.flatMap(({ spot, depthMm }) => (spot === title ? [{ date, value: depthMm }] : [])),
    ),
  }));
  const sounded = swim.paceMs === undefined ? [] : [{ date: swim.sounded, value: swim.paceMs }];
  const ran = notes.flatMap(({ date, paceMs }) => (paceMs === undefined ? [] : [{ date, value: paceMs }]));
  const paces = [{ label: words("drawing.dates.surface"), points: [...sounded, ...ran] }];
  return drawDatesPlot(
    {
      swim: swim.id,
      title: words(`drawing.dates.${of}`, { swim: swim.title }),
      head: words(`drawing.dates.head.${of}`),
      series: (isDepth ? depths : paces).filter(({ points }) => points.length > 0),
      unit: isDepth ? 1000 : 1,
      told: isDepth ? figures.shortDepth : figures.speed,
      isDown: isDepth,
    },
    box,
    kit,
    textMm,
  );
}
