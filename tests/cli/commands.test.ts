import { existsSync, readdirSync, renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { commands, runCli } from "../../src/cli/run.ts";
import { borrowedGuide, cli, smallGuide, temporaryFolder } from "../support/cli.ts";
import { hashesBelow } from "../support/files-below.ts";
import { shippedLibrary } from "../support/shipped-library.ts";
import { contentWith, edited } from "../support/smallest-content.ts";

const content = (changes: Record<string, string | null> = {}) =>
  smallGuide(join(temporaryFolder(), "content"), changes);

const sheet = (...options: string[]) => cli("sheet", "plain", "--content", content(), ...options);

describe("a rig that cannot be had at one of its depths", () => {
  it.each([["check"], ["build", "--out", join("no", "such", "folder")], ["sheet", "plain"]])(
    "has the same reason, once, from %s",
    async (...command) => {
      const shallow = content(edited("rigs/plain.md", "depths: [1 m, 1.5 m]", "depths: [1 m, 10 cm]"));
      const { code, result, report } = await cli(...command, "--content", shallow);
      expect({ code, result }).toEqual({ code: 1, result: "" });
      expect(report.match(/The float stands/g), report).toHaveLength(1);
    },
  );
});

describe("the sheet of a rig", () => {
  it("goes to stdout, with nothing to report of a good rig", async () => {
    const { code, result, report } = await sheet();
    expect({ code, report }).toEqual({ code: 0, report: "" });
    expect(result).toMatch(/^Plain rig — still water\nA rig for tests\.\n/);
    for (const part of ["Tackle", "Shot, depth by depth", "What the tip says", "Find the depth", "What next"])
      expect(result).toContain(part);
  });

  it.each(["1.8m", "1.8 m", "180 cm"])("reads a depth typed as %s", async (depth) => {
    expect((await sheet("--depth", depth)).result).toContain("Set it for 1.8 m");
  });

  it("counts the tries of plumbing from one", async () => {
    const { result } = await sheet("--depth", "1.8 m");
    const tries = [...result.matchAll(/\bTry (\S+)/g)].map(([, number]) => number);
    expect(tries.slice(0, 3)).toEqual(["1", "2", "3"]);
  });

  it("is data with --json, and a drawing in millimetres with --drawing, for the depth asked", async () => {
    const data = JSON.parse((await sheet("--json", "--depth", "6 ft")).result);
    expect(data.depths.map(({ depthCm }: { depthCm: number }) => depthCm)).toEqual([182.88]);
    const drawing = JSON.parse((await sheet("--drawing", "--depth", "2 m")).result);
    expect(drawing).toMatchObject({ widthMm: 80, title: expect.stringContaining("2 m") });
    expect(drawing.items.length).toBeGreaterThan(5);
  });

  it("takes another tub, metal, temperature, tip, rod and hand-span", async () => {
    const tub = join(temporaryFolder(), "mine.yaml");
    writeFileSync(
      tub,
      "title: mine\nscale: plain\nsizes:\n  - { size: No 8, metal: tin, count: plenty }\n  - { size: No 10, metal: tin, count: plenty }\n",
    );
    const sizes = JSON.parse((await sheet("--json", "--tub", tub)).result).depths[0].shot;
    expect(new Set(sizes.map(({ size }: { size: string }) => size))).toEqual(new Set(["No 8", "No 10"]));
    const heavy = JSON.parse((await sheet("--json", "--metal", "tungsten")).result).depths[0].shot;
    for (const { metal, massG } of heavy) expect(metal).toBe(massG > 0.06 ? "tungsten" : "lead");
    expect(JSON.parse((await sheet("--json", "--temp", "50 F")).result).waterTempC).toBe(10);
    const { tipShowingMm } = JSON.parse((await sheet("--json", "--tip", "40mm")).result).depths[0];
    expect(tipShowingMm).toBeGreaterThanOrEqual(40);
    expect((await sheet("--rod", "1 m")).report).toContain("use a sliding float");
    expect((await sheet("--span", "20cm")).result).toMatch(/In your hand-spans: \d+, and/);
  });

  it.each([
    [["--depth", "-1m"], "--depth -1m must be more than nothing"],
    [["--depth", "0m"], "--depth 0m must be more than nothing"],
    [["--depth", "1.8"], "--depth 1.8 is not understood; write it like 1.8 m\n"],
    [["--depth", "1,5"], "--depth 1,5 is not understood; write it like 1.5 m, with a point for the comma"],
    [["--depth", "1,5 m"], "write it like 1.5 m, with a point for the comma"],
    [["--depth", "deep"], "--depth deep is not understood; write it like 30 cm"],
    [["--depth", "NaN"], "is not understood"],
    [["--tip", "0mm"], "--tip 0mm must be more than nothing"],
    [["--temp", "41C"], "--temp 41C is not water to fish in"],
    [["--metal", "gold"], "--metal gold is not known; there are lead, tin"],
    [["--tub", "no-such-file"], "there is no tub file no-such-file"],
    [["--wrong"], "unknown option '--wrong'\n"],
    [["--units", "metric"], "unknown option '--units'\nhint: units is a key of guide.yaml"],
    [["--paper=Letter"], "hint: paper is a key of guide.yaml"],
    [["--json", "--drawing"], "cannot be used with"],
    [["extra"], "too many arguments"],
  ])("answers %j with exit code 2 and what to ask instead", async (options, expected) => {
    const { code, result, report } = await sheet(...options);
    expect({ code, result }).toEqual({ code: 2, result: "" });
    expect(report).toContain(expected);
    expect(report).not.toMatch(/\n\s+at /);
  });

  it.each([
    ["--depth", "10cm", "so it cannot float in 10 cm"],
    ["--depth", "0.4m", "is too shallow for this pattern"],
    ["--tip", "900mm", "of tip cannot show"],
  ])("answers %s %s, which no rig can do, with exit code 1 and the reason", async (name, value, reason) => {
    const { code, result, report } = await sheet(name, value);
    expect({ code, result }).toEqual({ code: 1, result: "" });
    expect(report.replaceAll(/0\.1 m[^)]*\)/g, "10 cm")).toContain(reason);
    expect(report).not.toMatch(/NaN|undefined|Infinity|\{/);
  });

  it("is refused, as a build is, where the guide calls forbidden lead an error", async () => {
    const strict = edited("guide.yaml", "edition:", "lead-breach: error\nedition:")["guide.yaml"]!;
    const lead = edited("tubs/box.yaml", "size: No 8, metal: lead", "size: No 6, metal: lead")[
      "tubs/box.yaml"
    ]!;
    const forbidden = content({
      ...edited("rigs/plain.md", "size: No 8", "size: No 6"),
      "guide.yaml": strict,
      "tubs/box.yaml": lead.replace("  - { size: No 6, metal: tin, count: plenty }\n", ""),
    });
    const { code, result, report } = await cli("sheet", "plain", "--content", forbidden);
    expect({ code, result }).toEqual({ code: 1, result: "" });
    expect(report).toContain("error: ");
    const check = await cli("check", "--content", forbidden);
    expect(check.code).toBe(1);
    expect(check.report).toContain("[lead-not-allowed]");
    const other = await cli("sheet", "plain", "--metal", "tin", "--content", forbidden);
    expect(other).toMatchObject({ code: 0, result: expect.stringContaining("Plain rig") });
  });

  it("knows the rigs by name", async () => {
    const { code, report } = await cli("sheet", "nothing", "--content", content());
    expect(code).toBe(2);
    expect(report).toContain('there is no rig "nothing"; allowed: plain');
  });
});

describe("content with an error", () => {
  const wrong = () => content(edited("rigs/plain.md", "hook: 16", "hok: 16"));

  it.each([["check"], ["sheet", "plain"]])(
    "stops %s with exit code 1, its report on stderr",
    async (...command) => {
      const { code, result, report } = await cli(...command, "--content", wrong());
      expect({ code, result }).toEqual({ code: 1, result: "" });
      expect(report).toMatch(
        /rigs\/plain\.md:2:1 {2}error {2}"hook" is missing {2}\[missing-key\]\n {4}title: Plain rig\n {4}\^\n {4}hint: add/,
      );
    },
  );

  it("is a line of JSON for each message with --json, and nothing else", async () => {
    const { code, result, report } = await cli("check", "--json", "--content", wrong());
    expect({ code, report }).toEqual({ code: 1, report: "" });
    const told = result
      .trimEnd()
      .split("\n")
      .map((line) => JSON.parse(line));
    expect(told.map(({ code: one }) => one)).toEqual(["missing-key", "unknown-key"]);
    expect(told[0]).toMatchObject({ severity: "error", line: 2, column: 1, reason: '"hook" is missing' });
  });

  it("is told with what does not fit in one report", async () => {
    const title = "Plainrigforeverybodywhowantsnospacesinthename";
    const long = content({
      ...edited("rigs/plain.md", "title: Plain rig", `title: ${title}`),
      "baits/worm.yml": "title: worm\n",
    });
    const { code, report } = await cli("check", "--content", long);
    expect(code, report).toBe(1);
    expect(report).toMatch(/\[file-not-read\]\n[\s\S]*\[does-not-fit\]\n/);
    expect(report.match(/\d+ errors?, \d+ warnings?/g)).toHaveLength(1);
  });

  it("may be a warning that --strict stops at and --quiet leaves out", async () => {
    const folder = content({ "baits/worm.yml": "title: worm\n" });
    const strict = await cli("build", "--strict", "--content", folder, "--out", join(folder, "../out"));
    const why = "0 errors, 1 warning\nstopped, as --strict counts warnings as errors\n";
    expect(strict).toMatchObject({ code: 1, report: expect.stringMatching(/\[file-not-read\]/) });
    expect(strict.report.endsWith(why), strict.report).toBe(true);
    const looked = await cli("check", "--content", folder);
    expect(looked).toMatchObject({ code: 0, result: "1 rig, 1 lesson: fine but for 1 warning\n" });
    expect(looked.report).not.toContain("--strict");
    expect(existsSync(join(folder, "../out"))).toBe(false);
    expect(await cli("check", "--quiet", "--content", folder)).toEqual({ code: 0, result: "", report: "" });
    const stopped = await cli("check", "--quiet", "--strict", "--content", folder);
    expect(stopped).toMatchObject({ code: 1, report: expect.stringContaining(why) });
  });

  it("says with --verbose what each stage did and in how long, and nothing of it without", async () => {
    const { code, result, report } = await cli("check", "--verbose", "--content", content());
    expect({ code, result }).toEqual({ code: 0, result: "1 rig, 1 lesson: fine\n" });
    expect(report).toMatch(
      /dotdown: read: \d+ files in [\d.]+ s\ndotdown: check: \d+ files in [\d.]+ s\ndotdown: solve: 1 rigs in [\d.]+ s\n/,
    );
    expect(report).toMatch(
      /dotdown: all: [\d.]+ s, [\d.]+ s of them reckoned\ndotdown: most memory: \d+ MB\n$/,
    );
    const again = await cli("check", "--content", content());
    expect(again.report).not.toContain("dotdown:");
  });

  it("leaves no output, and an earlier one whole", async () => {
    const folder = temporaryFolder();
    const out = join(folder, "out");
    await cli("build", "--content", content(), "--out", out);
    const earlier = hashesBelow(out);
    const { code } = await cli("build", "--content", wrong(), "--out", out);
    expect(code).toBe(1);
    expect(hashesBelow(out)).toEqual(earlier);
    expect(readdirSync(folder)).toEqual(["out"]);
    const fresh = join(folder, "fresh");
    await cli("build", "--content", wrong(), "--out", fresh);
    expect(existsSync(fresh)).toBe(false);
  });

  it("may be named before the rig", async () => {
    expect((await cli("sheet", "--content", content(), "plain")).code).toBe(0);
  });

  it("is a wrong call where the folder is missing or a file", async () => {
    const file = join(temporaryFolder(), "file");
    writeFileSync(file, "");
    const missing = await cli("check", "--content", `${file}-missing`);
    expect(missing).toMatchObject({ code: 2, result: "" });
    expect(missing.report).toContain(`there is no folder ${file}-missing`);
    const isFile = await cli("check", "--content", file);
    expect(isFile).toMatchObject({ code: 2, result: "" });
    expect(isFile.report).toContain(`${file} is a file; name the folder that it is in`);
  });
});

describe("content that somebody changes all the while", () => {
  it("is given up with exit code 75, by the name of the file, and nothing is written", async () => {
    const folder = content();
    const file = join(folder, "hooks.yaml");
    const half = join(folder, ".hooks.yaml");
    let edition = 0;
    const changing = setInterval(() => {
      writeFileSync(half, `# ${edition++}\n${contentWith()["hooks.yaml"]}`);
      renameSync(half, file);
    }, 1);
    const out = join(folder, "../out");
    const ended = await cli("build", "--content", folder, "--out", out).finally(() =>
      clearInterval(changing),
    );
    // As in sysexits.h of 4.3BSD: EX_TEMPFAIL.
    expect(ended).toEqual({
      code: 75,
      result: "",
      report: `dotdown: the content changed each time it was read: ${file}; nothing was written. Wait until it is at rest, and try again\n`,
    });
    expect(readdirSync(join(folder, ".."))).toEqual(["content"]);
  });
});

describe("a fault of the tool", () => {
  it("ends with exit code 70 and what those who mend it need to know", async () => {
    let report = "";
    const broken = {
      result: () => {
        throw new TypeError("it is broken");
      },
      report: (text: string) => {
        report += text;
      },
    };
    // As in sysexits.h of 4.3BSD: EX_SOFTWARE.
    expect(await runCli(["sheet", "plain", "--content", content()], broken)).toBe(70);
    expect(report).toMatch(
      /^dotdown: this is a fault of ours.*\nPlease report it.*\ndotdown \d+\.\d+\.\d+, Node v/,
    );
    expect(report).toMatch(/\nTypeError: it is broken\n +at /);
  });
});

describe("a sheet made from the reader's own box", () => {
  const fromShipped = (...options: string[]) =>
    cli("sheet", ...options, "--content", borrowedGuide(temporaryFolder()));

  it("takes that shot, and reports what is other and what to buy; its data tell the same", async () => {
    const { code, result, report } = await fromShipped(
      ...["straight-waggler-strung-out", "--depth", "1.7 m", "--box", "AAA, BB, No 4, No 6", "--json"],
    );
    expect(code).toBe(0);
    const [depth] = JSON.parse(result).depths as { shot: { size: string }[]; findings: { code: string }[] }[];
    const sizes = new Set(depth!.shot.map(({ size }) => size));
    expect([...sizes].every((size) => ["AAA", "BB", "No 4", "No 6"].includes(size))).toBe(true);
    expect(report.replaceAll("\u00A0", " ")).toContain(
      "6 × No 6 down the line, where the guide has 5 × No 8 + No 10.",
    );
    expect(report).toMatch(/The bait takes \d+ s to sink; with the guide's shot it takes \d+ s\./);
    expect(report.match(/One size worth buying: No (8|10)\./g)).toHaveLength(1);
    const codes = depth!.findings.map(({ code: found }) => found);
    for (const told of ["box.other-line-shot", "box.fall-changed", "box.buy"]) expect(codes).toContain(told);
  });

  it("is refused where the box cannot make it, with a rig that can be made from it", async () => {
    const { code, result, report } = await fromShipped("lift-method", "--box", "No 4, No 8");
    expect({ code, result }).toEqual({ code: 1, result: "" });
    expect(report).toContain("These shot (No 4, No 8) do not make this rig");
    expect(report).toContain("One size worth buying: SSG.");
    const [, title] = /This rig can be made from the box: (.+)/.exec(report)!;
    expect((await fromShipped("first-session", "--box", "No 4, No 8", "--depth", "1 m")).result).not.toBe("");
    expect(title).not.toBe("Lift rig");
    const offered = shippedLibrary.rigs.find((one) => title?.startsWith(one.title));
    expect(offered?.rig.water).toBe("still");
  });

  it("does not guess at a box that cannot be read", async () => {
    const { code, report } = await fromShipped("lift-method", "--box", "12 No 4, many");
    expect(code).toBe(2);
    expect(report).toContain("--box: “many” is no shot in a box.");
  });
});

describe("help", () => {
  it.each([[], ...Object.keys(commands).map((name) => [name])])(
    "of %s is as written down",
    async (...command) => {
      const { code, result, report } = await cli(...command, "--help");
      expect({ code, report }).toEqual({ code: 0, report: "" });
      await expect(result).toMatchFileSnapshot(
        `../golden/cli/help${command.map((c) => `-${c}`).join("")}.txt`,
      );
    },
  );
});
