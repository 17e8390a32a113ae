import { entry, first, withId } from "../../core/lists.ts";
import type { SpotRig } from "../../model/choosing.ts";
import type { Library } from "../../model/library.ts";
import type { DrawingKit } from "../kit.ts";
import type { Drawing } from "../model.ts";
import { drawRig } from "../rig/rig-drawing.ts";
import { drawBed } from "./bed-drawing.ts";
import { drawSwimDays } from "./swim-days.ts";

interface SwimPicture {
  /** All that it is drawn from, besides its room and the kit. */
  readonly from: unknown;
  draw(
    room: { readonly widthMm: number; readonly textMm: number },
    kit: DrawingKit,
  ): readonly { readonly drawing: Drawing }[];
}

type Swims = Pick<Library, "swims" | "notes">;

/** Heights of pictures for their widths. */
const bedShare = 0.75;
const rigShare = 1.3;

/** The bed along a line of a swim. */
export function bedPicture(id: string, at: number, { swims }: Swims): SwimPicture {
  const swim = withId(swims, id);
  const line = entry(swim.lines, at);
  const spots = swim.spots.flatMap((spot, i) => (spot.line === line ? [[i + 1, spot] as const] : []));
  const { placeOf: _, ...from } = swim;
  return {
    from,
    draw: ({ widthMm, textMm }, kit) => {
      const box = { widthMm, heightMm: widthMm * bedShare };
      return [{ drawing: drawBed({ swim, line, spots }, box, kit, { textMm }) }];
    },
  };
}

/** What was found at a swim, over the days. */
export function daysPicture(id: string, of: "depth" | "pace", { swims, notes }: Swims): SwimPicture {
  const swim = withId(swims, id);
  const own = notes.filter((one) => one.swim === id);
  const days = own.map(({ placeOf: _, ...day }) => day);
  return {
    from: [swim.title, swim.spots.map(({ title }) => title), swim.sounded, swim.paceMs, days],
    draw: ({ widthMm, textMm }, kit) => {
      const box = { widthMm, heightMm: widthMm * bedShare };
      return [{ drawing: drawSwimDays(of, swim, own, box, kit, textMm) }];
    },
  };
}

/** The best rig for a spot, made up for just there; nothing where none suits. */
export function spotRigPicture(id: string, title: string, spots: readonly SpotRig[]): SwimPicture {
  const best = spots.find(({ swim, spot }) => swim.id === id && spot.title === title);
  return {
    from: best?.rig,
    draw: ({ widthMm, textMm }, kit) => {
      const made = best?.made?.();
      if (!made) return [];
      const box = { widthMm, heightMm: widthMm * rigShare };
      return [{ drawing: drawRig(made, first(made.depths), box, kit, { labels: "full", textMm }) }];
    },
  };
}
