import { describe, expect, it } from "vitest";
import { formatReport, messageAsJson } from "../../src/checks/reporter.ts";
import { message } from "../../src/model/message.ts";

const place = { file: "content/rigs/pond.md", line: 9, column: 8 };
const unknown = message("unknown-name", place, { what: "float", found: "wagler", allowed: ["waggler"] });
const reportOf = (line: string, column = 8) =>
  formatReport([{ ...unknown, place: { ...place, column } }], () => line).split("\n");

describe("a report over the lines of the content", () => {
  it("has the place as editors open it, the line, a caret below the spot, and what to do", () => {
    expect(reportOf("float: wagler")).toEqual([
      'content/rigs/pond.md:9:8  error  there is no float "wagler"  [unknown-name]',
      "    float: wagler",
      "           ^",
      '    hint: did you mean "waggler"? — allowed: waggler',
      "1 error, 0 warnings",
      "",
    ]);
  });

  it("keeps the caret in its place after tabs and in a long line, of which it shows a part", () => {
    expect(reportOf("\tfloat: wagler", 9)[2]).toBe("            ^");
    const [, line, caret] = reportOf(`${"x".repeat(200)}WRONG${"y".repeat(200)}`, 201);
    expect(line!.length).toBeLessThan(120);
    expect(line!.slice(caret!.indexOf("^"))).toMatch(/^WRONGy+…$/);
    expect(line).toMatch(/^ {4}…x+WRONG/);
  });

  it("shows up to 60 signs before the spot and 40 from there on, and a sign of each part that it leaves out", () => {
    const shown = (before: number, after: number) =>
      reportOf("a".repeat(before) + "b".repeat(after), before + 1)[1];
    expect(shown(60, 40)).toBe(`    ${"a".repeat(60)}${"b".repeat(40)}`);
    expect(shown(61, 40)).toBe(`    …${"a".repeat(60)}${"b".repeat(40)}`);
    expect(shown(60, 41)).toBe(`    ${"a".repeat(60)}${"b".repeat(40)}…`);
  });

  it("shows no line where there is none", () => {
    const missing = message(
      "missing-file",
      { file: "hooks.yaml" },
      { path: "hooks.yaml", need: "it has hooks" },
    );
    expect(formatReport([missing], () => undefined)).toBe(
      "hooks.yaml  error  there is no hooks.yaml  [missing-file]\n    hint: add it; it has hooks\n1 error, 0 warnings\n",
    );
  });

  it("names the first column of a line whose column nobody knows", () => {
    const inLine = { ...unknown, place: { file: place.file, line: 9 } };
    expect(
      formatReport([inLine], () => "float: wagler")
        .split("\n")
        .slice(0, 3),
    ).toEqual([
      'content/rigs/pond.md:9:1  error  there is no float "wagler"  [unknown-name]',
      "    float: wagler",
      "    ^",
    ]);
  });

  it("never passes signs on that a terminal obeys", () => {
    expect(reportOf("a\u001b[2J: wagler").join("")).not.toContain("\u001b");
  });
});

it("a report without the lines has each file once, and the first column where none is known", () => {
  const inLine = { ...unknown, place: { file: place.file, line: 9 } };
  expect(formatReport([inLine, { ...unknown, place: { ...place, line: 10 } }])).toBe(
    [
      "content/rigs/pond.md",
      '    9:1  error    there is no float "wagler"  [unknown-name]',
      '         hint: did you mean "waggler"? — allowed: waggler',
      '   10:8  error    there is no float "wagler"  [unknown-name]',
      '         hint: did you mean "waggler"? — allowed: waggler',
      "2 errors, 0 warnings",
      "",
    ].join("\n"),
  );
});

it("a message as JSON has its place, its code and its words", () => {
  expect(JSON.parse(messageAsJson(unknown))).toEqual({
    severity: "error",
    code: "unknown-name",
    ...place,
    reason: 'there is no float "wagler"',
    hint: 'did you mean "waggler"? — allowed: waggler',
    values: { what: "float", found: "wagler", allowed: ["waggler"] },
  });
});
