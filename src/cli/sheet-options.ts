import type { Read } from "../build/stages.ts";
import { formatReport } from "../checks/reporter.ts";
import { linkTub } from "../content/link/shot-link.ts";
import { Reading } from "../content/reading.ts";
import { tubSchema } from "../content/schema/tackle-schema.ts";
import { byId, withId } from "../core/lists.ts";
import { parseQuantity, type QuantityKind } from "../core/quantity.ts";
import { metalIn, parseBox } from "../core/tackle/box-notation.ts";
import { leadAllowed } from "../core/tackle/lead-rule.ts";
import { type Metal, metals, type Tub } from "../core/tackle/shot.ts";
import type { Rig } from "../model/rig.ts";
import { reasonText } from "../words/reason.ts";
import { UsageError } from "./command.ts";
import { withPoint } from "./decimal-comma.ts";
import { disk } from "./disk.ts";

export type Options = Readonly<Record<string, unknown>>;

/** Temperatures that the sums of the water hold for, as in the guide [°C]. */
const tempMinC = 0;
const tempMaxC = 40;

/** The rig with what the command line asks for in place of its own figures. */
export async function changedRig(rig: Rig, options: Options, read: Read): Promise<Rig> {
  const depthMm = lengthAsked(options, "depth");
  const tempC = temperatureAsked(options);
  const tipMm = lengthAsked(options, "tip");
  const rodLengthMm = lengthAsked(options, "rod");
  const tub = await tubAsked(rig.tub, options, read);
  return {
    ...rig,
    tub,
    ...(depthMm !== undefined && { depthsMm: [depthMm] }),
    ...(rodLengthMm !== undefined && { rodLengthMm }),
    ...(tipMm !== undefined && { tipWantedMm: tipMm }),
    ...(tempC !== undefined && { conditions: { ...rig.conditions, tempC } }),
  };
}

/** A length typed after an option; undefined where the option was not given. */
export function lengthAsked(options: Options, name: string): number | undefined {
  const mm = quantityAsked(options, name, "length");
  if (mm === undefined || mm > 0) return mm;
  throw new UsageError(`--${name} ${options[name]} must be more than nothing`);
}

function temperatureAsked(options: Options): number | undefined {
  const tempC = quantityAsked(options, "temp", "temperature");
  if (tempC === undefined || (tempC >= tempMinC && tempC <= tempMaxC)) return tempC;
  throw new UsageError(`--temp ${options.temp} is not water to fish in; give ${tempMinC} C to ${tempMaxC} C`);
}

/** A quantity typed after an option; undefined where the option was not given. */
export function quantityAsked(options: Options, name: string, kind: QuantityKind): number | undefined {
  const text = options[name];
  if (text === undefined) return undefined;
  const read = parseQuantity(kind, String(text));
  if (read.ok) return read.value;
  const like = meant(String(text), name, kind) ?? read.examples.join(" or ");
  throw new UsageError(`--${name} ${text} is not understood; write it like ${like}`);
}

/** Units that figures without one are likely meant in, by the option. */
const likelyUnits: Readonly<Record<string, string>> = {
  depth: "m",
  rod: "m",
  level: "cm",
  span: "cm",
  tip: "mm",
  temp: "C",
};

/** What was likely meant by a figure with a decimal comma, or without its unit. */
function meant(typed: string, option: string, kind: QuantityKind): string | undefined {
  const number = withPoint(typed);
  const found = [number, `${number} ${likelyUnits[option]}`].find((text) => parseQuantity(kind, text).ok);
  return found && (number === typed ? found : `${found}, with a point for the comma`);
}

/** What the reader has in the box, in the metals of a tub where none is said; undefined where the option was not given. */
export function boxAsked(
  { scaleId, tub }: Pick<Rig, "scaleId" | "tub">,
  options: Options,
  { library, kit }: Read,
): Tub | undefined {
  if (options.box === undefined) return undefined;
  const box = parseBox(String(options.box), withId(library.scales, scaleId), metalIn(tub));
  if (box.ok) return box.value;
  throw new UsageError(
    `--box: ${box.findings.map((one) => reasonText(one, kit.words, kit.figures)).join(" ")}`,
  );
}

async function tubAsked(tub: Tub, options: Options, { library, kit }: Read): Promise<Tub> {
  const inMetal = (shot: Tub): Tub => {
    if (options.metal === undefined) return shot;
    const metal = metals.find((known) => known === options.metal);
    if (!metal) throw new UsageError(`--metal ${options.metal} is not known; there are ${metals.join(", ")}`);
    return ofMetal(shot, metal, ({ massG }) => leadAllowed(massG, library.guide.leadRule));
  };
  if (options.tub === undefined) return inMetal(tub);
  const file = String(options.tub);
  const text = await disk.readText(file);
  if (text === undefined) throw new UsageError(`there is no tub file ${file}`);
  const reading = new Reading(new Map([[file, { path: file, file, text, bytes: text.length }]]), kit.words);
  const read = reading.file(file, tubSchema, "");
  const asked = read && linkTub(read, byId(library.scales), reading).tub;
  if (!asked || reading.messages.length > 0) throw new UsageError(formatReport(reading.messages).trimEnd());
  return inMetal(asked);
}

/** The tub with everything in one metal but the dust, which stays what it is. */
function ofMetal(tub: Tub, metal: Metal, isDust: (shot: Tub[number]) => boolean): Tub {
  return tub.map((shot) => (isDust(shot) ? shot : { ...shot, metal }));
}
