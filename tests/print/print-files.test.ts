import { beforeAll, describe, expect, test } from "vitest";
import { DoesNotFitError } from "../../src/print/does-not-fit.ts";
import { sampleAvon, sampleStick, sampleWaggler } from "../support/sample-rig.ts";
import { rawPdf } from "./raw-pdf.ts";
import { printed, sampleInput } from "./sample-print.ts";

const id = sampleWaggler.rig.id;
let files: Map<string, Uint8Array>;

beforeAll(async () => {
  files = await printed(sampleInput({}, [sampleWaggler]));
}, 120_000);

describe("files", () => {
  test("a card of each format, and sheets of each format", () => {
    const paths = [...files.keys()];
    for (const suffix of ["", "-a7", "-a6", "-a5"]) {
      expect(paths).toContain(`cards/${id}${suffix}.pdf`);
      expect(paths).toContain(`cards/sheet${suffix}.pdf`);
      expect(paths).toContain(`cards/sheet${suffix}-short-edge.pdf`);
    }
    for (const suffix of ["", "-a7", "-a6"]) expect(paths).toContain(`cards/sheet${suffix}-fold.pdf`);
    expect(new Set(paths).size).toBe(paths.length);
  });

  test("the front of the pocket card is a picture too, where pages have an address to show it by", async () => {
    const pictures = (all: ReadonlyMap<string, unknown>) =>
      [...all.keys()].filter((path) => /png$/.test(path));
    expect(pictures(files)).toEqual([]);
    const site = { siteAddress: "https://makebelieve.example/" };
    const shown = await printed(sampleInput(site, [sampleWaggler]));
    expect(pictures(shown)).toEqual([`site/previews/${id}-front.png`]);
  }, 120_000);

  test("are PDF and PNG as they are called", () => {
    for (const [path, bytes] of files) {
      const begins = new TextDecoder("latin1").decode(bytes.subarray(0, 4));
      expect(begins, path).toBe(path.endsWith(".pdf") ? "%PDF" : "\x89PNG");
    }
  });

  test("a second build gives the same bytes", async () => {
    const again = await printed(sampleInput({}, [sampleWaggler]));
    expect([...again.keys()]).toEqual([...files.keys()]);
    for (const [path, bytes] of again) expect(Buffer.compare(bytes, files.get(path)!), path).toBe(0);
  }, 120_000);
});

test("sheets take the rigs and copies asked for", async () => {
  const input = {
    ...sampleInput({}, [sampleWaggler, sampleStick, sampleAvon]),
    sheets: { copies: 2, rigs: [sampleStick.rig.id] },
  };
  const titles = (await rawPdf((await printed(input)).get("cards/sheet.pdf")!)).root.kids;
  const sections = titles.filter(({ type }) => type === "Sect");
  expect(sections).toHaveLength(4);
}, 120_000);

test("a rig that fits no card stops everything before the first file", async () => {
  const title = "Straightwagglerstrungoutforstillwaterwithoutanyspacesatall";
  const rig = { ...sampleWaggler, rig: { ...sampleWaggler.rig, title } };
  const seen: string[] = [];
  const failing = printed(sampleInput({}, [sampleStick, rig])).then((all) => seen.push(...all.keys()));
  await expect(failing).rejects.toBeInstanceOf(DoesNotFitError);
  expect(seen).toEqual([]);
}, 60_000);
