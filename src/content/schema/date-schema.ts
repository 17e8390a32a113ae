import * as z from "zod";

/** A day that there is, `2026-11-20`. */
export const date = () =>
  z.iso
    .date("this is no day; write it like 2026-11-20")
    .refine(
      (day) => !/^\d{4}-/.test(day) || day.startsWith("20"),
      "look at its year; it lies from 2000 to 2099",
    )
    .meta({ form: "a day, such as 2026-11-20" });
