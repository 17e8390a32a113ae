import type { PatternRoom, PatternSpec, PlacedShot } from "../../../src/core/patterns/pattern.ts";
import { placePattern } from "../../../src/core/patterns/table.ts";
import { pullG } from "../../../src/core/tackle/shot.ts";
import { tradeTub } from "../loading-instances.ts";

export const water = { tempC: 10, salinity: 0 };
export const everySize = [
  "SSG",
  "AAA",
  "BB",
  "No 1",
  "No 4",
  "No 6",
  "No 8",
  "No 9",
  "No 10",
  "No 11",
  "No 12",
  "No 13",
] as const;
const fullTub = tradeTub(Object.fromEntries(everySize.map((size) => [size, 40])), "lead");
export const lead = (massG: number) => pullG(massG, "lead", water);

/** A 2 AAA waggler in 2 m of water: 1.6 g, of which three tenths may go down the line. */
export const waggler: PatternRoom = {
  depthMm: 2000,
  floatToHookMm: 1800,
  hookLengthMm: 300,
  pullG: lead(1.6),
  locked: true,
  linePullMaxG: lead(0.48),
  tub: fullTub,
  water,
};

/** A 4 No 4 stick in 1.5 m of water, held by rubbers. */
export const stick: PatternRoom = {
  ...waggler,
  depthMm: 1500,
  floatToHookMm: 1480,
  pullG: lead(0.8),
  locked: false,
  linePullMaxG: lead(0.8),
};

export function placed(spec: PatternSpec, room: PatternRoom): readonly PlacedShot[] {
  const answer = placePattern(spec, room);
  if (!answer.ok) throw new Error(JSON.stringify(answer.findings));
  return answer.value;
}

export function told(shot: readonly PlacedShot[]): string[] {
  return shot.map(({ size, role, fromHookMm }) => `${size} ${role} ${Math.round(fromHookMm)}`);
}

export function codes(spec: PatternSpec, room: PatternRoom): string[] {
  return placePattern(spec, room).findings.map(({ code }) => code);
}
