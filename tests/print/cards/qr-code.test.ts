import { describe, expect, test } from "vitest";
import { nodeFonts } from "../../../src/layout/node-fonts.ts";
import { drawingToPng } from "../../../src/layout/png.ts";
import { cardFormats } from "../../../src/print/cards/card-formats.ts";
import { layOutCard } from "../../../src/print/cards/lay-out-card.ts";
import { qrCode } from "../../../src/print/cards/qr-code.ts";
import { drawingKit } from "../../support/drawing-kit.ts";
import { readCode } from "../../support/read-code.ts";
import { sampleWaggler } from "../../support/sample-rig.ts";
import { sampleGuide } from "../sample-print.ts";

const fonts = nodeFonts();
const siteAddress = "https://makebelieve.example/floats/";
const address = "https://makebelieve.example/floats/rigs/waggler-strung-out.html";

describe("a code", () => {
  test("decodes at 300 dpi", () => {
    const code = qrCode(address);
    const page = { widthMm: 16, heightMm: 16, items: code.draw(16) };
    expect(readCode(drawingToPng(page, 300, fonts))).toBe(address);
  });

  // Source: ISO/IEC 18004: (17 + 4·version) modules and a quiet zone of 4 modules on every side.
  test("has a quiet zone of 4 modules", () => {
    const code = qrCode(address);
    expect((code.modules - 8 - 17) % 4).toBe(0);
    const [path] = code.draw(code.modules);
    const numbers = path!.kind === "path" ? path!.steps.flatMap(([, ...at]) => at as number[]) : [];
    expect(Math.min(...numbers)).toBe(4);
    expect(Math.max(...numbers)).toBe(code.modules - 4);
  });
});

test("a card has its lines to write on with a code and without one", async () => {
  for (const guide of [sampleGuide, { ...sampleGuide, siteAddress }]) {
    const { taken } = await layOutCard(sampleWaggler, cardFormats.A5, guide, drawingKit, fonts);
    expect(taken).toContain("write-in");
    expect(taken.includes("code")).toBe("siteAddress" in guide);
  }
});
