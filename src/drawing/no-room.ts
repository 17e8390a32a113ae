import type { Box } from "./kit.ts";

/** The rig, float or swim that a drawing is of. */
interface Drawn {
  readonly folder: "rigs" | "floats" | "swims";
  readonly id: string;
}

/**
 * A drawing has not the room that its words and parts need: too many shot, or fixed words of a guide's own that are much
 * longer than the shipped ones.
 */
export class NoRoomError extends Error {
  override readonly name = "NoRoomError";

  /** @param what the drawing, as in "a plot of sinking" */
  constructor(
    what: string,
    { widthMm, heightMm }: Box,
    readonly drawn?: Drawn,
  ) {
    super(`no room for ${what} in ${Math.round(widthMm)} × ${Math.round(heightMm)} mm`);
  }
}
