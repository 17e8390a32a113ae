import type { ShotScale } from "../../src/core/tackle/shot.ts";
import { tradeMassesG } from "./loading-instances.ts";

/** The trade's figures as a scale: common practice, no source. */
export const tradeScale: ShotScale = {
  id: "trade",
  title: "trade figures",
  sizes: Object.entries(tradeMassesG).map(([name, massG]) => ({ name, massG })),
};
