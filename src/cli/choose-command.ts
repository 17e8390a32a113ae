import { Option } from "commander";
import type { Read } from "../build/stages.ts";
import { withId } from "../core/lists.ts";
import { type WindStrength, windStrengths } from "../model/choosing-rules.ts";
import { levels } from "../model/library.ts";
import type { Spot, SwimEntry } from "../model/swim.ts";
import { chooseRigs } from "../solve/choosing/choose.ts";
import type { conditionsAt } from "../solve/choosing/conditions-at.ts";
import { choiceData, choiceText } from "./choose-text.ts";
import { type CliCommand, exitCodes, UsageError } from "./command.ts";
import { withContentOption } from "./content-option.ts";
import { rightContent } from "./right-content.ts";
import { boxAsked, lengthAsked, type Options, quantityAsked } from "./sheet-options.ts";
import { spotsAsked, swimNamed, waterAt } from "./swim-options.ts";

export const chooseCommand: CliCommand = {
  name: "choose",
  describe: (command) =>
    withContentOption(command)
      .summary("say which rigs suit a swim, and what rules out the others")
      .description(
        "Says for each place of a swim which rigs suit it, the best first, and why, and what rules out each other rig.",
      )
      .argument("<swim>", "the swim's file name without .yaml")
      .option("--spot <title>", "at this place alone, such as 'Foot of the ledge'")
      .addOption(
        new Option("--learner <level>", "whom it is for").choices([...levels]).default("next", "next"),
      )
      .addOption(
        new Option("--wind <wind>", "how hard it blows").choices([...windStrengths]).default("calm", "calm"),
      )
      .option("--fish <names>", "only rigs that do for all of these, such as 'roach, perch'")
      .option("--box <shot>", "made from the shot you have, such as 'BB, 12 No 4, lead No 8'")
      .option("--rod <length>", "with a rod of this length, such as '11 ft'")
      .option("--pace <pace>", "with the surface running as fast, such as '10 m in 25 s'")
      .option("--level <length>", "with the water so much higher than when it was sounded; -10cm for lower")
      .option("--json", "as data, with the unit in each field's name"),
  async run([name], options, terminal) {
    const read = await rightContent(options);
    const swim = swimNamed(name!, read);
    const asked = askedOf(options, read);
    const places = spotsAsked(swim, options).map((spot) => placeOf(swim, spot, asked, read));
    const told = { swim, places, guide: read.library.guide };
    terminal.result(options.json ? choiceData(told) : choiceText(told, read.kit));
    return exitCodes.fine;
  },
};

function placeOf(
  swim: SwimEntry,
  spot: Spot,
  asked: Parameters<typeof conditionsAt>[2],
  { library, kit }: Read,
) {
  const { choosing } = library;
  if (!choosing)
    throw new UsageError(
      "the guide has no choosing.yaml; it says what rules a rig out and what speaks for it",
    );
  const conditions = waterAt(swim, spot, asked, { kit });
  return { spot, conditions, choice: chooseRigs(choosing, conditions, library) };
}

/** What the command line asks for in place of what the swim and the guide say. */
function askedOf(options: Options, read: Read): Parameters<typeof conditionsAt>[2] {
  const rodLengthMm = lengthAsked(options, "rod");
  const { scaleId, tubId } = read.library.guide;
  const box = boxAsked({ scaleId, tub: withId(read.library.tubs, tubId).tub }, options, read);
  const fish = fishAsked(options, read);
  const paceMs = quantityAsked(options, "pace", "pace");
  const levelMm = quantityAsked(options, "level", "length");
  return {
    learner: options.learner as (typeof levels)[number],
    wind: options.wind as WindStrength,
    ...(rodLengthMm !== undefined && { rodLengthMm }),
    ...(box && { box }),
    ...(fish && { fish }),
    ...(paceMs !== undefined && { paceMs }),
    ...(levelMm !== undefined && { levelMm }),
  };
}

function fishAsked(options: Options, { library }: Read): readonly string[] | undefined {
  if (options.fish === undefined) return undefined;
  const known = library.species.flatMap(({ title, also }) => [title, ...also]);
  const fish = String(options.fish)
    .split(",")
    .map((name) => name.trim())
    .filter((name) => name !== "");
  const strange = fish.find((name) => !known.some((one) => one.toLowerCase() === name.toLowerCase()));
  if (strange === undefined) return fish;
  throw new UsageError(`--fish: the guide knows no ${strange}; it knows ${known.join(", ")}`);
}
