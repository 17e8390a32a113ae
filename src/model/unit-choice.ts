/** Which systems of units a guide shows. */
export const unitChoices = ["metric first", "metric", "imperial"] as const;
export type UnitChoice = (typeof unitChoices)[number];
