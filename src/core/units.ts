/**
 * Exact conversion factors. Inside the core a length is in millimetres, a mass in grams, a time in seconds,
 * a pace in metres a second, a volume in millilitres and a temperature in degrees Celsius; names end in the unit.
 *
 * Source: International Yard and Pound Agreement 1959 (inch 25.4 mm, pound 453.59237 g); UK Weights and
 * Measures Act 1985 (gallon 4.54609 l); US gallon 231 cubic inches (NIST Handbook 44, Appendix C).
 */
export const mmPerInch = 25.4;
export const mmPerFoot = 12 * mmPerInch;
export const mmPerYard = 3 * mmPerFoot;
export const gPerPound = 453.59237;
export const gPerOunce = gPerPound / 16;
export const gPerGrain = gPerPound / 7000;
export const mlPerImperialPint = 4546.09 / 8;
export const mlPerUsPint = (231 * mmPerInch * mmPerInch * mmPerInch) / 1000 / 8;

/** Standard gravity [m/s²], CGPM 1901. */
export const gravityMs2 = 9.80665;

/** Degrees Fahrenheit to degrees Celsius. */
export function celsiusFromFahrenheit(tempF: number): number {
  return ((tempF - 32) * 5) / 9;
}

/** Degrees Celsius to degrees Fahrenheit. */
export function fahrenheitFromCelsius(tempC: number): number {
  return (tempC * 9) / 5 + 32;
}

/**
 * A number of one unit. A plain number may stand for any of them, as sums give plain numbers; one unit never stands for
 * another, so a length handed over as a weight does not compile.
 */
type Unit<Name extends string> = number & { readonly unit?: Name };

export type Mm = Unit<"mm">;
export type G = Unit<"g">;
/** Seconds. */
export type S = Unit<"s">;
/** Minutes, where a person plans by them. */
export type Min = Unit<"min">;
/** Metres a second. */
export type Ms = Unit<"m/s">;
/** Degrees Celsius. */
export type C = Unit<"°C">;
export type Ml = Unit<"ml">;
export type KgM3 = Unit<"kg/m³">;
/** A share of one. */
export type Share = Unit<"share">;
