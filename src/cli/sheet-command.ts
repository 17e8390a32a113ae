import { type Solved, solveContent } from "../build/build.ts";
import { rigData } from "../build/data.ts";
import { linkTub } from "../content/link/shot-link.ts";
import { Reading } from "../content/reading.ts";
import { tubSchema } from "../content/schema/tackle-schema.ts";
import type { Finding } from "../core/finding.ts";
import { parseQuantity, type QuantityKind } from "../core/quantity.ts";
import { type Metal, metals, type Tub } from "../core/shot.ts";
import { reasonText } from "../report/reason.ts";
import { formatReport } from "../report/reporter.ts";
import type { Rig } from "../solve/rig.ts";
import { solveRig } from "../solve/solve-rig.ts";
import { type CliCommand, exitCodes, UsageError } from "./command.ts";
import { contentFolders, withContentOption } from "./content-option.ts";
import { disk } from "./disk.ts";
import { sheetText } from "./sheet-text.ts";

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
      .option("--tub <file>", "with the shot of this tub file")
      .option(
        "--metal <metal>",
        `with everything above the lead rule's small shot in one metal: ${metals.join(", ")}`,
      )
      .option("--temp <temperature>", "in water of this temperature, such as 8C")
      .option("--tip <length>", "with this much tip showing, such as 10mm")
      .option("--rod <length>", "with a rod of this length, such as '11 ft'")
      .option("--json", "as data, with the unit in each field's name"),
  async run([name], options, terminal) {
    const { value: solved, messages } = await solveContent(disk, contentFolders(options));
    if (!solved) {
      terminal.report(formatReport(messages));
      return exitCodes.contentErrors;
    }
    const rig = await changedRig(rigNamed(name!, solved), options, solved);
    const answer = solveRig(rig);
    const reasons = (findings: readonly Finding[]) =>
      findings.map(
        (finding) => `${finding.severity}: ${reasonText(finding, solved.kit.words, solved.kit.figures)}\n`,
      );
    terminal.report([...new Set(reasons(answer.findings))].join(""));
    if (!answer.ok) return exitCodes.contentErrors;
    terminal.result(
      options.json
        ? `${JSON.stringify(rigData(answer.value), null, 2)}\n`
        : sheetText(answer.value, solved.kit),
    );
    return exitCodes.fine;
  },
};

function rigNamed(name: string, { library }: Solved): Rig {
  const entry = library.rigs.find(({ id }) => id === name);
  if (entry) return entry.rig;
  throw new UsageError(`there is no rig "${name}"; there are ${library.rigs.map(({ id }) => id).join(", ")}`);
}

type Options = Readonly<Record<string, unknown>>;

/** The rig with what the command line asks for in place of its own figures. */
async function changedRig(rig: Rig, options: Options, solved: Solved): Promise<Rig> {
  const depthMm = typed(options, "depth", "length");
  const tempC = typed(options, "temp", "temperature");
  const tipMm = typed(options, "tip", "length");
  const rodLengthMm = typed(options, "rod", "length");
  const tub = await tubAsked(rig.tub, options, solved);
  return {
    ...rig,
    tub,
    ...(depthMm !== undefined && { depthsMm: [depthMm] }),
    ...(rodLengthMm !== undefined && { rodLengthMm }),
    ...(tipMm !== undefined && { tipWantedMm: tipMm }),
    ...(tempC !== undefined && { conditions: { ...rig.conditions, tempC } }),
  };
}

function typed(options: Options, name: string, kind: QuantityKind): number | undefined {
  const text = options[name];
  if (text === undefined) return undefined;
  const read = parseQuantity(kind, String(text));
  if (read.ok && (kind === "temperature" || read.value > 0)) return read.value;
  const examples = read.ok ? "more than nothing" : `like ${read.examples.join(" or ")}`;
  throw new UsageError(`--${name} ${text} is not understood; write it ${examples}`);
}

async function tubAsked(tub: Tub, options: Options, { library, kit }: Solved): Promise<Tub> {
  const inMetal = (shot: Tub): Tub => {
    if (options.metal === undefined) return shot;
    const metal = metals.find((known) => known === options.metal);
    if (!metal) throw new UsageError(`--metal ${options.metal} is not known; there are ${metals.join(", ")}`);
    return ofMetal(shot, metal, library.guide.leadRule.allowedUpToG);
  };
  if (options.tub === undefined) return inMetal(tub);
  const file = String(options.tub);
  const text = await disk.readText(file).catch(() => {
    throw new UsageError(`there is no tub file ${file}`);
  });
  const reading = new Reading(new Map([[file, { path: file, file, text }]]), kit.words);
  const read = reading.file(file, tubSchema, "");
  const scales = new Map(library.scales.map((scale) => [scale.id, scale]));
  const asked = read && linkTub(read, scales, reading).tub;
  if (!asked || reading.messages.length > 0) throw new UsageError(formatReport(reading.messages).trimEnd());
  return inMetal(asked);
}

/** The tub with everything heavier than the small shot in one metal; dust stays what it is. */
function ofMetal(tub: Tub, metal: Metal, dustG: number): Tub {
  return tub.map((shot) => (shot.massG > dustG ? { ...shot, metal } : shot));
}
