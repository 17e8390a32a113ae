import { existsSync, readFileSync } from "node:fs";
import { basename, join, resolve } from "node:path";
import { Option } from "commander";
import { firstRigs, type NewGuide, newGuide } from "../content/start/new-guide.ts";
import { type Question, starterIn } from "../content/start/starters.ts";
import { workflow, workflowPath } from "../content/start/workflow.ts";
import { libraryIn } from "../content/world.ts";
import { readYaml } from "../content/yaml-source.ts";
import { parseQuantity } from "../core/quantity.ts";
import { waterKinds } from "../core/water/water.ts";
import { unitChoices } from "../model/unit-choice.ts";
import { type CliCommand, exitCodes, type Terminal, UsageError } from "./command.ts";
import { guideOfThePackage } from "./content-option.ts";
import { withPoint } from "./decimal-comma.ts";
import { languageTag } from "./language-tag.ts";
import { reading } from "./trouble.ts";
import { writeNew } from "./write-new.ts";

type Options = Readonly<Record<string, unknown>>;

export const initCommand: CliCommand = {
  name: "init",
  describe: (command) =>
    command
      .summary("begin a guide of your own")
      .description(
        "Writes a small guide of your own into a folder. Asks for what is not given, where there is somebody to ask.",
      )
      .argument("[folder]", "folder to begin it in", ".")
      .option("--title <title>", "name of the guide")
      .option("--publisher <name>", "who gives it out")
      .addOption(new Option("--water <water>", "water that you fish").choices(waterKinds))
      .addOption(new Option("--units <units>", "units that it shows").choices(unitChoices))
      .addOption(new Option("--paper <paper>", "paper that it is printed on").choices(["A4", "Letter"]))
      .option("--language <tag>", "its language, such as en or de-AT")
      .option("--place <place>", "place whose law on lead shot it follows, where that is not the library's")
      .option("--lead-up-to <weight>", "weight up to which lead shot is allowed there, such as '0.06 g'")
      .option(
        "--workflow",
        "also a workflow that publishes the site on each push; alone where the guide is there already",
      ),
  async run([folder = "."], options, terminal) {
    const flow: readonly (readonly [string, string])[] = options.workflow ? [[workflowPath, workflow]] : [];
    if (options.workflow && existsSync(join(folder, "content"))) {
      writeNew(folder, new Map(flow));
      terminal.result(`  ${join(folder, workflowPath)}\n`);
      return exitCodes.fine;
    }
    if (existsSync(join(folder, "content")))
      throw new UsageError(
        `${join(folder, "content")} is there already and stays as it is; begin a file of it with npx dotdown new`,
      );
    const told = await toldBy(options, basename(resolve(folder)), terminal);
    const rig = join(libraryIn(guideOfThePackage(), told.language), "rigs", `${firstRigs[told.water]}.md`);
    const guide = newGuide(told, await reading(rig, () => readFileSync(rig, "utf8")));
    const files = new Map([...guide, ...flow]);
    writeNew(folder, files);
    const names = [...files.keys()].map((path) => `  ${join(folder, path)}\n`).join("");
    const go = folder === "." ? "" : `cd ${folder}, then `;
    terminal.result(`${names}Next: ${go}npx dotdown build, and open out/site/index.html\n`);
    return exitCodes.fine;
  },
};

/** What an answer comes to. @throws UsageError where it is none */
type Understand = (typed: string) => string;

const asTyped: Understand = (typed) => typed;

/** What is given, asked for, or else usual. */
async function toldBy(options: Options, folder: string, terminal: Terminal): Promise<NewGuide> {
  const answer = async (key: string, question: string, usual: string, understand = asTyped) => {
    const given = options[key];
    if (given !== undefined) return ofOption(key, String(given), understand);
    if (!terminal.ask) return understand(usual);
    for (;;) {
      const typed = (await terminal.ask(`${question} [${usual}]: `)).trim() || usual;
      try {
        return understand(typed);
      } catch (error) {
        // A slip costs one answer, not all of them.
        if (!(error instanceof UsageError)) throw error;
        terminal.report(`${error.message}\n`);
      }
    }
  };
  const language = await answer("language", "Language, such as en or de?", "en", languageTag);
  const starter = starterIn(language);
  const ask = (key: Question, usual: string, understand?: Understand) =>
    answer(key, starter.questions[key], usual, understand);
  const oneOf = (key: Question, usual: string, allowed: readonly string[]) =>
    answer(key, `${starter.questions[key]} (${allowed.join(", ")})`, usual, (typed) => {
      if (allowed.includes(typed)) return typed;
      throw new UsageError(`there is no ${typed}; there are ${allowed.join(", ")}`);
    });
  const title = await ask("title", starter.title(folder));
  const publisher = await ask("publisher", folder);
  const water = await oneOf("water", "still", waterKinds);
  const paper = await oneOf("paper", "A4", ["A4", "Letter"]);
  // Feet beside metres help where English is spoken.
  const usualUnits = /^en\b/.test(language) ? "metric first" : "metric";
  const units = await oneOf("units", usualUnits, unitChoices);
  const theLibrarys = await placeOfLaw(libraryIn(guideOfThePackage(), language));
  const place = await ask("place", theLibrarys);
  const law = place !== theLibrarys && {
    place,
    upTo: await ask("leadUpTo", "0 g", massOf),
  };
  const isFlowing = water === "flowing";
  return {
    title,
    publisher,
    water: isFlowing ? "flowing" : "still",
    units,
    paper,
    language,
    day: today(),
    ...(law && { law }),
  };
}

/** What was given with an option, which a slip is told by. */
function ofOption(key: string, given: string, understand: Understand): string {
  try {
    return understand(given);
  } catch (error) {
    if (!(error instanceof UsageError)) throw error;
    const option = key.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
    throw new UsageError(`--${option}: ${error.message}`);
  }
}

/** Place whose law on lead shot a library follows. */
async function placeOfLaw(library: string): Promise<string> {
  const file = join(library, "guide.yaml");
  const { data } = readYaml(await reading(file, () => readFileSync(file, "utf8")), file);
  return (data as { readonly "lead-rule": { readonly place: string } })["lead-rule"].place;
}

function massOf(typed: string): string {
  const written = withPoint(typed);
  const read = parseQuantity("mass", written);
  if (read.ok && read.value >= 0) return written;
  throw new UsageError(
    `${typed} is no weight that lead shot may have; write it like 0.06 g, or 0 g where none is allowed`,
  );
}

/** The day of the first edition; `SOURCE_DATE_EPOCH` stands in for the clock. */
function today(): string {
  const epoch = Number(process.env.SOURCE_DATE_EPOCH || Number.NaN);
  return new Date(Number.isNaN(epoch) ? Date.now() : epoch * 1000).toISOString().slice(0, 10);
}
