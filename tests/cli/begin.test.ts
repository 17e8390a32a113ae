import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { runCli } from "../../src/cli/run.ts";
import { keyReference } from "../../src/content/schema/key-reference.ts";
import { startKinds } from "../../src/content/start/start-values.ts";
import { cli, temporaryFolder, writeContent } from "../support/cli.ts";

const guideIn = (folder: string) => parse(readFileSync(join(folder, "content/guide.yaml"), "utf8"));

describe("init", () => {
  it("begins a guide with usual answers where nobody can be asked, and says what comes next", async () => {
    const folder = join(temporaryFolder(), "ours");
    const { code, result, report } = await cli("init", folder);
    expect({ code, report }).toEqual({ code: 0, report: "" });
    expect(guideIn(folder)).toMatchObject({ publisher: "ours", units: "metric first", paper: "A4" });
    expect(result).toContain(`${folder}/content/rigs/our-first-rig.md\n`);
    expect(result).toContain("npx dotdown build");
  });

  it("takes what is given", async () => {
    const folder = temporaryFolder();
    const given = ["--title", "T", "--publisher", "P", "--water", "flowing", "--units", "imperial"];
    const more = ["--paper", "Letter", "--language", "de-at", "--place", "X", "--lead-up-to", "0,06 g"];
    expect((await cli("init", folder, ...given, ...more)).code).toBe(0);
    expect(guideIn(folder)).toMatchObject({
      title: "T",
      publisher: "P",
      units: "imperial",
      paper: "Letter",
      language: "de-AT",
      "lead-rule": { place: "X", "allowed-up-to": "0.06 g" },
    });
    const rig = readFileSync(join(folder, "content/rigs/unsere-erste-montage.md"), "utf8");
    expect(rig).toContain("water: flowing");
    expect(readdirSync(join(folder, "content/words"))).toEqual(["de-AT.yaml"]);
  });

  it("writes a guide in German that borrows from the German library and has nothing to mend", async () => {
    const folder = temporaryFolder();
    expect((await cli("init", folder, "--language", "de")).code).toBe(0);
    const title = `Posenangeln: ${basename(folder)}`;
    expect(guideIn(folder)).toMatchObject({ language: "de", units: "metric", title });
    const readme = readFileSync(join(folder, "README.md"), "utf8");
    expect(readme).toMatch(new RegExp(`^# ${title}\\n\\nWas in content/ steht`));
    const [, id, like] = /new rig ([a-z-]+) --like ([a-z-]+)/.exec(readme)!;
    const guide = join(folder, "content");
    expect((await cli("new", "rig", id!, "--like", like!, "--content", guide)).code).toBe(0);
    // A swim stands before the notes and the session that are held at it.
    for (const kind of startKinds)
      expect(await cli("new", kind, `my-${kind}`, "--content", guide)).toMatchObject({ code: 0 });
    const { result, report } = await cli("check", "--content", guide);
    // It is asked of its author to say all that a file is begun with in words of its own.
    const told = [...report.matchAll(/^\S+:\d+:\d+ +(\w+) .*\[(.*)\]$/gm)].map(([, ...which]) =>
      which.join(" "),
    );
    expect(new Set(told)).toEqual(new Set(["warning text-as-begun"]));
    expect(result).toMatch(`3 rigs, 2 lessons: fine but for ${told.length} warnings\n`);
    expect(readFileSync(join(guide, "swims/my-swim.yaml"), "utf8")).toContain("# Stellen des Platzes");
    const page = readFileSync(join(folder, "content/rigs/unsere-erste-montage.md"), "utf8");
    expect(page).toMatch(/^title: Unsere erste Montage$/m);
    expect(page).toContain("## Warum diese zuerst");
  });

  it("asks for the rest where somebody sits there", async () => {
    const folder = temporaryFolder();
    const asked: string[] = [];
    const answers = new Map([
      ["Name of the guide?", "Mine"],
      ["Water?", "flowing"],
    ]);
    const code = await runCli(["init", folder, "--paper", "A4"], {
      result: () => {},
      report: () => {},
      ask: async (question) => {
        asked.push(question);
        return answers.get(question.replace(/ [([].*$/, "")) ?? "";
      },
    });
    expect(code).toBe(0);
    expect(guideIn(folder)).toMatchObject({ title: "Mine", units: "metric first" });
    expect(asked).toContain("Water? (still, flowing) [still]: ");
    expect(asked).toContain("Place whose law on lead shot it follows? [England and Wales]: ");
    expect(guideIn(folder)["lead-rule"]).toBeUndefined();
    expect(asked.join("")).not.toContain("Paper?");
    expect(readFileSync(join(folder, "content/rigs/our-first-rig.md"), "utf8")).toContain("water: flowing");
  });

  it.each(["Deutsch", "german", "de"])(
    "takes %s for German, whose library follows the law of no place",
    async (typed) => {
      const folder = temporaryFolder();
      const asked: string[] = [];
      const code = await runCli(["init", folder], {
        result: () => {},
        report: () => {},
        ask: async (question) => {
          asked.push(question);
          return question.startsWith("Language, such as en or de?") ? typed : "";
        },
      });
      expect(code).toBe(0);
      expect(guideIn(folder).language).toBe("de");
      expect(guideIn(folder)["lead-rule"]).toBeUndefined();
      expect(asked).toContain("Wo gilt die Regel für Bleischrot, der er folgt? [dein Wasser]: ");
      // Whoever knows no English is asked for the language alone in it.
      expect(
        asked
          .slice(1)
          .filter((question) =>
            /\b(?:the|who|which|name|water|place|paper)\b/i.test(question.replace(/[([].*/, "")),
          ),
      ).toEqual([]);
      const rig = readFileSync(join(folder, "content/rigs/unsere-erste-montage.md"), "utf8");
      expect(rig).toContain("main-line: { strength: 1.8 kg,");
    },
  );

  it("asks again where an answer is none, and keeps the others", async () => {
    const folder = temporaryFolder();
    const answers = [
      "not a tag",
      "en",
      "Mine",
      "Us",
      "salt",
      "flowing",
      "A4",
      "",
      "Nowhere",
      "much",
      "0.06 g",
    ];
    const reports: string[] = [];
    const code = await runCli(["init", folder], {
      result: () => {},
      report: (text) => reports.push(text),
      ask: async () => answers.shift()!,
    });
    expect({ code, answers }).toEqual({ code: 0, answers: [] });
    expect(reports).toEqual([
      "not a tag is no known language; write it short, such as en for English or de for German\n",
      "there is no salt; there are still, flowing\n",
      "much is no weight that lead shot may have; write it like 0.06 g, or 0 g where none is allowed\n",
    ]);
    expect(guideIn(folder)).toMatchObject({ title: "Mine", "lead-rule": { "allowed-up-to": "0.06 g" } });
  });

  it.each([
    [["--water", "salt"], "Allowed choices are still, flowing"],
    [["--language", "not a tag"], "--language: not a tag is no known language"],
    [["--place", "X", "--lead-up-to", "much"], "--lead-up-to: much is no weight"],
  ])("refuses %j with what to write instead, and writes nothing", async (options, said) => {
    const folder = temporaryFolder();
    const { code, report } = await cli("init", folder, ...options);
    expect(code).toBe(2);
    expect(report).toContain(said);
    expect(readdirSync(folder)).toEqual([]);
  });

  it("writes a workflow that checks, builds the site and publishes just that, beside a guide that is there too", async () => {
    const folder = temporaryFolder();
    expect((await cli("init", folder, "--workflow")).code).toBe(0);
    const path = join(folder, ".github/workflows/guide.yaml");
    const { jobs } = parse(readFileSync(path, "utf8"));
    const steps: readonly Readonly<Record<string, string & { path: string }>>[] = jobs.publish.steps;
    const commands = steps.flatMap(({ run }) => (run ? [run] : []));
    expect(commands).toEqual([
      "if [ -f package-lock.json ]; then npm ci; fi",
      "npx --yes dotdown check",
      "npx --yes dotdown build --for web",
    ]);
    // What is published is what the last of them writes.
    expect(steps.flatMap((step) => step.with?.path ?? [])).toEqual(["out/site"]);
    rmSync(path);
    const again = await cli("init", folder, "--workflow");
    expect(again).toMatchObject({ code: 0, result: `  ${path}\n` });
    expect((await cli("init", folder, "--workflow")).code).toBe(2);
  });

  it("leaves a content folder that is there alone", async () => {
    const folder = temporaryFolder();
    mkdirSync(join(folder, "content"));
    const { code, report } = await cli("init", folder);
    expect(code).toBe(2);
    expect(report).toContain(
      "content is there already and stays as it is; begin a file of it with npx dotdown new",
    );
    const other = temporaryFolder();
    writeFileSync(join(other, "README.md"), "mine");
    expect((await cli("init", other)).report).toContain("README.md is there already");
    expect(readdirSync(other)).toEqual(["README.md"]);
  });
});

describe("new", () => {
  it("puts a lesson behind those that there are", async () => {
    const guide = temporaryFolder();
    await cli("init", guide);
    const folder = join(guide, "content");
    for (const name of ["second-day", "third-day"]) {
      expect((await cli("new", "lesson", name, "--content", folder)).code).toBe(0);
    }
    const order = (name: string) =>
      /^order: (\d+)/m.exec(readFileSync(join(folder, "lessons", name), "utf8"))?.[1];
    expect(["welcome.md", "second-day.md", "third-day.md"].map(order)).toEqual(["1", "2", "3"]);
    // Whoever has not said where it stands yet keeps nobody from beginning another.
    writeFileSync(join(folder, "lessons", "draft.md"), "title: Draft\n");
    expect((await cli("new", "lesson", "fourth-day", "--content", folder)).code).toBe(0);
    expect(order("fourth-day.md")).toBe("4");
  });

  it("refuses a name whose page the guide has itself, and one that is too long", async () => {
    const folder = temporaryFolder();
    const refused = async (...args: string[]) => {
      const { code, report } = await cli("new", ...args, "--content", folder);
      expect(code).toBe(2);
      return report;
    };
    expect(await refused("page", "Floats")).toContain(
      "Floats cannot be a name: site/Floats.html is a page of the guide's own; call it something else",
    );
    expect(await refused("rig", "index")).toContain("site/rigs/index.html is a page of the guide's own");
    expect(await refused("rig", "r".repeat(61))).toContain("it has 61 signs, and the most is 60");
    expect(readdirSync(folder)).toEqual([]);
  });

  it("begins a shelf with a pack of the first rig that there is, and what it is made of", async () => {
    const guide = temporaryFolder();
    await cli("init", guide, "--water", "flowing");
    const folder = join(guide, "content");
    expect((await cli("new", "shelf", "hut", "--content", folder)).code).toBe(0);
    const shelf = parse(readFileSync(join(folder, "shelves/hut.yaml"), "utf8"));
    const rig = readFileSync(join(folder, "rigs/our-first-rig.md"), "utf8");
    expect(shelf.packs).toEqual([{ rig: "our-first-rig", wanted: 5 }]);
    expect(rig).toContain(`float: ${shelf.floats[0].float}\n`);
    expect(rig).toContain(`hook: ${shelf.hooks[0].size}\n`);
    // However its front matter is written.
    writeFileSync(
      join(folder, "rigs/a-rig.md"),
      '---\n{ title: A rig, "float": "stick", # ours\n  hook: 14 }\n---\n\nfloat: wrong\n',
    );
    expect((await cli("new", "shelf", "shed", "--content", folder)).code).toBe(0);
    expect(parse(readFileSync(join(folder, "shelves/shed.yaml"), "utf8"))).toMatchObject({
      packs: [{ rig: "a-rig" }],
      floats: [{ float: "stick" }],
      hooks: [{ size: 14 }],
    });
  });

  it("begins a shelf with a rig that the guide takes of the library, where it has none of its own", async () => {
    const folder = writeContent(temporaryFolder(), {
      "guide.yaml": "title: T\npublisher: P\nedition: 2026-11-27\nlibrary: { rigs: [beginner, margin] }\n",
    });
    expect((await cli("new", "shelf", "hut", "--content", folder)).code).toBe(0);
    expect(parse(readFileSync(join(folder, "shelves/hut.yaml"), "utf8"))).toMatchObject({
      packs: [{ rig: "margin" }],
      floats: [{ float: "stubby" }],
    });
  });

  it("tells which names there are of what a rig asks for, the guide's own and the library's", async () => {
    const folder = temporaryFolder();
    expect((await cli("new", "float", "our-quill", "--content", folder)).code).toBe(0);
    expect((await cli("new", "rig", "ours", "--content", folder)).code).toBe(0);
    const rig = readFileSync(join(folder, "rigs/ours.md"), "utf8").replaceAll(/\n *# /g, " ");
    expect(rig).toMatch(/below floats\/\. Write our-quill, .*\bstubby\b.* or [\w-]+\.\nfloat: /);
  });

  it("writes a file of its kind into the content folder, and never over another", async () => {
    const folder = temporaryFolder();
    const { code, result } = await cli("new", "bait", "grub", "--content", folder);
    expect({ code, result }).toMatchObject({ code: 0, result: expect.stringContaining("baits/grub.yaml") });
    writeFileSync(join(folder, "baits/grub.yaml"), "mine");
    const again = await cli("new", "bait", "grub", "--content", folder);
    expect(again.code).toBe(2);
    expect(again.report).toContain(
      "baits/grub.yaml is there already and stays as it is; nothing was written",
    );
    expect(readFileSync(join(folder, "baits/grub.yaml"), "utf8")).toBe("mine");
  });

  it("begins notes and a session at the first swim that there is, and says what to begin first where there is none", async () => {
    const guide = temporaryFolder();
    await cli("init", guide);
    const folder = join(guide, "content");
    const begin = (kind: string, name: string) => cli("new", kind, name, "--content", folder);
    const none = await begin("notes", "first-day");
    expect(none).toMatchObject({ code: 2, report: expect.stringContaining("npx dotdown new swim our-pond") });
    const without = await begin("session", "saturday");
    expect(without).toMatchObject({ code: 2 });
    expect(without.report).toContain("there is none yet; begin one with npx dotdown new swim NAME");
    expect((await begin("swim", "our-pond")).code).toBe(0);
    expect((await begin("notes", "first-day")).code).toBe(0);
    expect(readFileSync(join(folder, "notes/first-day.yaml"), "utf8")).toMatch(/^swim: our-pond$/m);
    expect((await begin("session", "saturday")).code).toBe(0);
    const session = parse(readFileSync(join(folder, "sessions/saturday.yaml"), "utf8"));
    expect(session).toMatchObject({ rigs: ["our-first-rig"], baits: ["double-maggot"] });
    const { code, report } = await cli("check", "--content", folder);
    expect(code).toBe(0);
    expect([...report.matchAll(/\[([\w-]+)\]$/gm)].filter(([, told]) => told !== "text-as-begun")).toEqual(
      [],
    );
  });

  it("calls a new file as it was typed where that is a title, and types strengths in a metric guide in kilograms", async () => {
    const folder = temporaryFolder();
    const facts = "title: T\npublisher: P\nedition: 2026-11-27\nlanguage: de\nunits: metric\n";
    writeContent(folder, { "guide.yaml": facts });
    const begin = (...args: string[]) => cli("new", ...args, "--content", folder);
    const text = (path: string) => readFileSync(join(folder, path), "utf8");
    expect((await begin("lesson", "Schleien am Grund")).code).toBe(0);
    expect(parse(text("lessons/schleien-am-grund.md").split("---\n")[1]!).title).toBe("Schleien am Grund");
    expect((await begin("rig", "Am  Wehr", "--like", "first-session")).code).toBe(0);
    expect(text("rigs/am-wehr.md")).toMatch(/^title: "Am Wehr"$/m);
    expect((await begin("rig", "weiher")).code).toBe(0);
    for (const rig of ["am-wehr", "weiher"]) expect(text(`rigs/${rig}.md`)).toMatch(/strength: 1\.8 kg/);
    expect((await begin("rig", "What? A pond")).report).toContain('has "?" (U+003F) in it');
  });

  it("copies a rig of the library, without links to what the guide has not", async () => {
    const folder = writeContent(temporaryFolder(), {
      "guide.yaml": "title: T\npublisher: P\nedition: 2026-11-27\nlibrary: { lessons: none }\n",
    });
    expect((await cli("new", "rig", "our-margin", "--like", "margin", "--content", folder)).code).toBe(0);
    const text = readFileSync(join(folder, "rigs/our-margin.md"), "utf8");
    expect(text).toMatch(/^---\n# .*\ntitle: Our margin\n/);
    expect(text).not.toMatch(/rig=margin|\.\.\/lessons\//);
    expect((await cli("sheet", "our-margin", "--content", folder)).code).toBe(0);
  });

  it.each([
    [["boat", "x"], 'there is no kind of file "boat"; '],
    [["rigs", "x"], 'there is no kind of file "rigs"; did you mean "rig"? — allowed: rig, float, lesson'],
    [["rig", "our (pond)"], 'our-(pond) cannot be a name: the file\'s name has "("'],
    [["rig", "../pond"], 'the file\'s name has "." (U+002E) in it'],
    [["rig", "x", "--like", "nothing"], 'there is no rig "nothing"; allowed: avon-bulk'],
    [["rig", "x", "--like", "rigs/Margin.md"], 'there is no rig "rigs/Margin.md"; did you mean "margin"?'],
    [["bait", "x", "--like", "margin"], "--like copies a rig; a bait is begun without it"],
  ])("refuses %j with what to write instead", async (words, said) => {
    const folder = temporaryFolder();
    const { code, report } = await cli("new", ...words, "--content", folder);
    expect(code).toBe(2);
    expect(report).toContain(said);
    expect(readdirSync(folder)).toEqual([]);
  });
});

describe("new words", () => {
  const english = parse(readFileSync("content/words/en.yaml", "utf8"));
  const countOf = (tree: object): number =>
    Object.values(tree).reduce((sum, below) => sum + (typeof below === "string" ? 1 : countOf(below)), 0);

  it("writes every word of the guide's language to be filled in, which then is as it was, and is told of until it is", async () => {
    const guide = temporaryFolder();
    expect((await cli("init", guide, "--language", "nl")).code).toBe(0);
    const content = join(guide, "content");
    const file = join(content, "words/nl.yaml");
    const begun = readFileSync(file, "utf8");
    expect(begun).toContain("`npx dotdown new words nl`");
    const all = countOf(english);
    const { code, result, report } = await cli("new", "words", "NL", "--content", content);
    expect({ code, report }).toEqual({ code: 0, report: "" });
    expect(result).toContain(`${all} words added to ${file}: fill in as few as you like`);
    const text = readFileSync(file, "utf8");
    expect(text.startsWith(begun)).toBe(true);
    const none = await cli("check", "--content", content);
    expect(none.code).toBe(0);
    expect(none.report).toContain(`there are none in "nl"`);
    // What is filled in counts, and is what is shown; the sign that starts a gap is no trouble between quotation marks.
    const filled = text
      .replace(/^( {4}# Rigs\n {4}rigs: )""/m, '$1"Montages"')
      .replace(/^( {2}# \{lesson\}\. .*\n {2}lesson: )""/m, '$1"{lesson}: les"');
    writeFileSync(file, filled);
    const some = await cli("check", "--content", content);
    expect(some.report).toMatch(new RegExp(`${all - 1} of ${all} fixed words stand in English`));
    expect(some.report).toContain("dotdown new words nl writes there all that are missing");
    const again = await cli("new", "words", "nl", "--content", content);
    expect(again).toMatchObject({ code: 0, result: expect.stringContaining("has every word already") });
    expect(readFileSync(file, "utf8")).toBe(filled);
  });

  it("says of a language that the guide is not in that nothing reads it, and refuses what is none, or a file with a fault", async () => {
    const folder = temporaryFolder();
    const content = writeContent(folder, {
      "guide.yaml": "title: T\npublisher: P\nedition: 2026-11-27\n",
      "words/fr.yaml": "page:\n  menu:\n    rigz: Montages\n",
    });
    const other = await cli("new", "words", "it", "--content", content);
    expect(other).toMatchObject({
      code: 0,
      report: expect.stringContaining("Say `language: it` in its guide.yaml"),
    });
    const none = await cli("new", "words", "Dutch!", "--content", content);
    expect(none).toMatchObject({ code: 2, report: expect.stringContaining("Dutch! is no known language") });
    const wrong = await cli("new", "words", "fr", "--content", content);
    expect(wrong).toMatchObject({ code: 1, report: expect.stringContaining('unknown key "rigz"') });
    expect(readFileSync(join(content, "words/fr.yaml"), "utf8")).toContain("rigz");
    // Of a language that is there the text above a key is that language's.
    expect((await cli("new", "words", "de-AT", "--content", content)).code).toBe(0);
    expect(readFileSync(join(content, "words/de-AT.yaml"), "utf8")).toContain('# Montagen\n    rigs: ""');
  });
});

describe("schema", () => {
  it("writes one file a kind, its own anew, and never over another's", async () => {
    const folder = join(temporaryFolder(), "schemas");
    const { code, result } = await cli("schema", "--out", folder);
    expect({ code, result }).toEqual({ code: 0, result: `18 schemas in ${folder}\n` });
    expect((await cli("schema", "--out", folder)).code).toBe(0);
    const rig = join(folder, "rig.schema.json");
    expect(JSON.parse(readFileSync(rig, "utf8")).properties.hook.description).toContain("Size of hook");
    // The words that are shipped, and a file to fill in, by another reader of the standard.
    const words = new Ajv2020({ strict: false }).compile(
      JSON.parse(readFileSync(join(folder, "words.schema.json"), "utf8")),
    );
    for (const language of ["en", "de"])
      expect(words(parse(readFileSync(`content/words/${language}.yaml`, "utf8"))), language).toBe(true);
    expect(words({ page: { menu: { rigs: "", floats: null }, table: null } })).toBe(true);
    expect(words({ page: { menu: { rigz: "" } } })).toBe(false);
    writeFileSync(rig, "{}");
    const refused = await cli("schema", "--out", folder);
    expect(refused.code).toBe(2);
    expect(refused.report).toContain("is not of dotdown's making and stays as it is");
    expect(readFileSync(rig, "utf8")).toBe("{}");
  });

  it("lists every key as a text to read, which docs/keys.md has", async () => {
    const { result } = await cli("schema", "--keys");
    expect(result).toBe(keyReference());
    await expect(result).toMatchFileSnapshot("../../docs/keys.md");
    expect(existsSync("schemas")).toBe(false);
  });
});
