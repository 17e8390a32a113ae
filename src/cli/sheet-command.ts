import { Option } from "commander";
import { rigData } from "../build/data.ts";
import type { Read } from "../build/stages.ts";
import type { Answer, Finding } from "../core/finding.ts";
import { metals, type Tub } from "../core/tackle/shot.ts";
import type { Drawing } from "../drawing/model.ts";
import { drawRig } from "../drawing/rig/rig-drawing.ts";
import type { Rig } from "../model/rig.ts";
import type { SolvedRig } from "../model/solved.ts";
import { boxInWater, fromBox, rigThatCan, worthBuying } from "../solve/from-box.ts";
import { solveWholly } from "../solve/solve-wholly.ts";
import { reasonText, severityOf } from "../words/reason.ts";
import { hazardText } from "./choose-text.ts";
import { type CliCommand, exitCodes } from "./command.ts";
import { withContentOption } from "./content-option.ts";
import { noSuch } from "./no-such.ts";
import { rightContent } from "./right-content.ts";
import { boxAsked, changedRig, lengthAsked, type Options } from "./sheet-options.ts";
import { depthTold, sheetText } from "./sheet-text.ts";
import { rigAtSwim } from "./swim-options.ts";

export const sheetCommand: CliCommand = {
  name: "sheet",
  describe: (command) =>
    withContentOption(command)
      .summary("print one rig's sums")
      .description(
        "Prints one rig's sums: what to pinch on where, what the tip shows, how to read the depth.",
      )
      .argument("<rig>", "the rig's file name without .md")
      .option("--depth <depth>", "for this depth instead of the rig's own, such as 1.8m or '6 ft'")
      .addOption(
        new Option("--swim <name>", "for a place of this swim: its depth, its pace, its hazards").conflicts(
          "depth",
        ),
      )
      .option("--spot <title>", "the place of the swim, such as 'Foot of the ledge'")
      .option(
        "--level <length>",
        "with the swim's water so much higher than when it was sounded; -10cm for lower",
      )
      .addOption(new Option("--tub <file>", "with the shot of this tub file").conflicts("box"))
      .option("--box <shot>", "made from the shot you have, such as 'BB, 12 No 4, lead No 8'")
      .option(
        "--metal <metal>",
        `with everything above the lead rule's small shot in one metal: ${metals.join(", ")}`,
      )
      .option("--temp <temperature>", "in water of this temperature, such as 8C")
      .option("--tip <length>", "with this much tip showing, such as 10mm")
      .option("--rod <length>", "with a rod of this length, such as '11 ft'")
      .option("--span <length>", "your hand-span, thumb to little finger, to keep a depth by, such as 20cm")
      .addOption(new Option("--drawing", "the rig's drawing as data, in millimetres").conflicts("json"))
      .option("--json", "as data, with the unit in each field's name"),
  async run([name], options, terminal) {
    const read = await rightContent(options);
    const handSpanMm = lengthAsked(options, "span");
    const { rig: placed, swim } = rigAtSwim(rigNamed(name!, read), options, read);
    const rig = await changedRig(placed, options, read);
    const box = boxAsked(rig, options, read);
    const solved = box ? solvedFromBox(rig, box, options, read) : solveWholly(rig);
    const { findings } = solved;
    terminal.report([...new Set(findings.map((finding) => told(finding, read)))].join(""));
    // As a build does: no figures of a rig that the rules of the place forbid, where the guide calls that an error.
    const isRefused = findings.some((finding) => severityOf(finding, read.library.guide) === "error");
    if (!solved.ok || isRefused) return exitCodes.contentErrors;
    const hazards = swim ? `${hazardText(swim, read.library.guide, read.kit)}\n\n` : "";
    terminal.result(outputAsked(solved.value, options, read, { hazards, handSpanMm }));
    return exitCodes.fine;
  },
};

/** Made from the reader's box; where it cannot be, the report names a rig that can. */
function solvedFromBox(rig: Rig, box: Tub, options: Options, read: Read): Answer<SolvedRig> {
  const dry = fromBox(rig, box);
  if (dry.ok) {
    const solved = boxInWater(rig, box, dry.value);
    return { ...solved, findings: [...dry.findings, ...solved.findings] };
  }
  const others = read.library.rigs
    .map((entry) => ({ ...entry.rig, depthsMm: rig.depthsMm }))
    .filter(({ id, water }) => id !== rig.id && water === rig.water);
  const can = rigThatCan(others, (other) => boxAsked(other, options, read));
  const instead = can ? [can.finding] : [];
  return { ok: false, findings: [...dry.findings, ...worthBuying(rig, box), ...instead] };
}

function rigNamed(name: string, { library }: Read): Rig {
  const entry = library.rigs.find(({ id }) => id === name);
  if (entry) return entry.rig;
  throw noSuch(
    "rig",
    name,
    library.rigs.map(({ id }) => id),
  );
}

function told(finding: Finding, { library, kit }: Read): string {
  return `${severityOf(finding, library.guide)}: ${reasonText(finding, kit.words, kit.figures)}\n`;
}

/** @param beside hazards of the place come before all else that a person reads */
function outputAsked(
  solved: SolvedRig,
  options: Options,
  { library, kit }: Read,
  { hazards, handSpanMm }: { readonly hazards: string; readonly handSpanMm: number | undefined },
) {
  if (options.json) return asJson(rigData(solved));
  if (options.drawing) return asJson(drawing(solved, { library, kit }));
  const span = handSpanMm !== undefined && { handSpanMm };
  return `${hazards}${sheetText(solved, { ...kit, scales: library.scales, ...span })}`;
}

const asJson = (data: unknown) => `${JSON.stringify(data, null, 2)}\n`;

/** The picture of the rig's page, for the depth that the sheet tells of. */
function drawing(solved: SolvedRig, { kit }: Read): Drawing {
  const box = { widthMm: 80, heightMm: 120 };
  return drawRig(solved, depthTold(solved), box, kit, { labels: "full", textMm: 3.5 });
}
