import { z } from "zod";

/** A day that there is, `2026-11-20`. */
export const date = () =>
  z.iso.date("this is no day; write it like 2026-11-20").meta({ form: "a day, such as 2026-11-20" });
