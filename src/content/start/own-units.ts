import { parseQuantity } from "../../core/quantity.ts";
import { mmPerFoot, mmPerInch, mmPerYard } from "../../core/units.ts";
import { bracesOf } from "./own-depths.ts";

/**
 * A begun file with its figures as a guide of these units has them: in a metric one strengths of lines in kilograms, in an imperial or
 * American one lengths in feet and inches. In a text below a front matter only the depths that name the rig's own change: what is typed
 * there a page shows in the guide's units anyway.
 *
 * @param id of the file
 */
export function inOwnUnits(text: string, units: unknown, id: string): string {
  if (units === "metric") return text.replace(strengthTyped, inKilograms);
  if (units !== "imperial" && units !== "us") return text;
  const [, front = "", below = ""] = /^(---\n.*?\n---\n)?(.*)$/s.exec(text) ?? [];
  const keys = (yaml: string) => yaml.replace(/^(?![ \t]*#(?! *(?:- |[\w-]+:))).*$/gm, withFeet);
  if (front === "") return keys(text);
  return `${keys(front)}${below.replace(bracesOf(id), withFeet)}`;
}

const strengthTyped = /(?<=\bstrength: )\d+(?:\.\d+)? lb/g;

/** To a tenth, as they stand on spools. */
function inKilograms(typed: string): string {
  const read = parseQuantity("mass", typed);
  return read.ok ? `${(read.value / 1000).toFixed(1)} kg` : typed;
}

const paceTyped = /(?<![\d.])(\d+) m in (?=\d)/g;
const lengthTyped = /(?<![\d.])-?\d+(?:\.\d+)? c?m(?![\w/])/g;

const withFeet = (line: string): string =>
  line
    .replace(paceTyped, (_, metres: string) => `${Math.round((Number(metres) * 1000) / mmPerYard)} yd in `)
    .replace(lengthTyped, inFeet);

/** A line is sold by the hundred metres. */
const spoolMm = 20_000;
/** So much is told in inches alone, from there on to a quarter of a foot, and what is long in whole feet. */
const inchesMostMm = 2 * mmPerFoot;
const quartersMostMm = 10 * mmPerFoot;

function inFeet(typed: string): string {
  const read = parseQuantity("length", typed);
  if (!read.ok || read.value === 0 || read.value >= spoolMm) return typed;
  const mm = Math.abs(read.value);
  const sign = read.value < 0 ? "-" : "";
  if (mm < inchesMostMm) return `${sign}${Math.max(1, Math.round(mm / mmPerInch))} in`;
  const step = mm < quartersMostMm ? 1 : 4;
  const quarters = Math.round((mm / mmPerFoot) * (4 / step)) * step;
  const inches = (quarters % 4) * 3;
  return `${sign}${Math.floor(quarters / 4)} ft${inches > 0 ? ` ${inches} in` : ""}`;
}
