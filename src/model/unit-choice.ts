/**
 * Which systems of units a guide shows. Feet, inches and pounds are alike in `imperial` and `us`; pints and ounces of liquid
 * are not.
 */
export const unitChoices = ["metric first", "metric", "imperial", "us"] as const;
export type UnitChoice = (typeof unitChoices)[number];

/** Whether a guide shows feet and inches alone. */
export const inFeetAlone = (units: UnitChoice): boolean => units === "imperial" || units === "us";
