import { beforeAll, expect, test } from "vitest";
import { sampleAvon, sampleWaggler } from "../../support/sample-rig.ts";
import { carriedFiles } from "../archive-file.ts";
import { archiveBreaks, archiveRules } from "../archive-rules.ts";
import { printedOfTwoRigs } from "../sample-print.ts";

let files: ReadonlyMap<string, Uint8Array>;

beforeAll(async () => {
  files = await printedOfTwoRigs("A4");
}, 120_000);

const pdfs = () => [...files].filter(([path]) => path.endsWith(".pdf"));

test("every file keeps every rule of PDF/A-3a that a program can check", async () => {
  expect(pdfs().length).toBeGreaterThan(4);
  for (const [path, bytes] of pdfs()) {
    expect({ path, breaks: await archiveBreaks(bytes) }).toEqual({ path, breaks: [] });
  }
});

test("each card carries the figures of its rig, and nothing else does", async () => {
  for (const [path, bytes] of pdfs()) {
    const rig = [sampleWaggler, sampleAvon].find(({ rig }) => path.startsWith(`cards/${rig.id}`));
    const want = rig ? [[`${rig.rig.id}.json`, JSON.stringify({ id: rig.rig.id })]] : [];
    expect([path, ...(await carriedFiles(bytes))]).toEqual([path, ...want]);
  }
});

const replaced = (bytes: Uint8Array, from: string, to: string): Uint8Array => {
  expect(to).toHaveLength(from.length);
  const text = Buffer.from(bytes).toString("latin1");
  expect(text).toContain(from);
  return new Uint8Array(Buffer.from(text.replace(from, to), "latin1"));
};

test.each([
  ["6.1.2", "%âãÏÓ", "%abcd"],
  ["6.6.4", "<pdfaid:part>3<", "<pdfaid:part>1<"],
  ["6.6.2.3", "<pdfaSchema:prefix>pdfuaid<", "<pdfaSchema:prefix>another<"],
  ["6.6.3", "<xmp:CreatorTool>dotdown<", "<xmp:CreatorTool>another<"],
  ["6.6.2.1, 6.6.2.2", 'id="W5M0MpCehiHzreSzNTczkc9d"', 'id="W5M0MpCehiHzreSzNTczkc9e"'],
  ["6.1.7.1", "endstream\nendobj", "endstream endobj"],
])("the check of %s finds what is wrong", async (clause, from, to) => {
  const [, bytes] = pdfs()[0]!;
  const told = archiveRules.find((rule) => rule.clause === clause)!;
  expect(await archiveBreaks(replaced(bytes, from, to))).toContain(`${clause}: ${told.says}`);
});

test("the end of a file is its end", async () => {
  const [, bytes] = pdfs()[0]!;
  const longer = new Uint8Array([...bytes, ...new TextEncoder().encode("more")]);
  expect((await archiveBreaks(longer)).map((one) => one.split(":")[0])).toContain("6.1.3");
});
