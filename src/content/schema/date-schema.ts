import { z } from "zod";

/** A day that there is, `2026-11-20`. */
export const date = () => z.iso.date("write the date as 2026-11-20");
