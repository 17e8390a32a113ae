import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { compare, dpi, printedCards } from "./printed-cards.ts";
import { type Dots, dotsOf } from "./raster.ts";

const mutool = spawnSync("mutool", ["-v"]).error === undefined;

describe.skipIf(!mutool)("drawn by mutool", () => {
  test("the card looks like its preview to 0.12 % of the dots, with no complaint about a glyph", async () => {
    await inFolder((folder) =>
      compare(async (pdf, page) => {
        const [input, output] = [join(folder, "card.pdf"), join(folder, "card.png")];
        writeFileSync(input, pdf);
        const { stderr, status } = spawnSync(
          "mutool",
          ["draw", "-q", "-r", String(dpi), "-c", "rgba", "-o", output, input, String(page)],
          { encoding: "utf8" },
        );
        expect(status).toBe(0);
        expect(stderr).not.toMatch(/FT_|glyph|error/i);
        return onWhite(dotsOf(readFileSync(output)));
      }, 0.0012),
    );
  });
});

async function inFolder(use: (folder: string) => unknown): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), "raster-"));
  try {
    await use(folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function onWhite({ width, height, data }: Dots): Dots {
  const out = Buffer.from(data);
  for (let at = 0; at < out.length; at += 4) {
    const cover = out[at + 3]! / 255;
    for (let c = 0; c < 3; c++) out[at + c] = Math.round(out[at + c]! * cover + 255 * (1 - cover));
    out[at + 3] = 255;
  }
  return { width, height, data: out };
}

const qpdf = spawnSync("qpdf", ["--version"]).error === undefined;

test.skipIf(!qpdf)("qpdf finds no fault", async () => {
  await inFolder((folder) => {
    const input = join(folder, "card.pdf");
    for (const { pdf } of printedCards()) {
      writeFileSync(input, pdf);
      const output = execFileSync("qpdf", ["--check", input], { encoding: "utf8" });
      expect(output).toContain("No syntax or stream encoding errors found");
    }
  });
});
