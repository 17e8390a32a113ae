import { describe, expect, it } from "vitest";
import { measureText } from "../../../src/drawing/labels/font-metrics.ts";
import { type LabelText, layLabel, together } from "../../../src/drawing/labels/label-text.ts";

const sizeMm = 3.5;
const lay = (text: string, roomMm: number, wide?: "whole") =>
  layLabel([{ text, face: "bold" }], roomMm, sizeMm, measureText, wide);
const linesOf = ({ lines }: LabelText) => lines.map((line) => line.map(({ text }) => text).join(" "));
const widest = (label: LabelText) =>
  Math.max(...linesOf(label).map((line) => measureText(line, sizeMm, "bold")));

describe("a label", () => {
  it("is broken between words where these fit the room", () => {
    const label = lay("a float for running water", 20);
    expect(linesOf(label).length).toBeGreaterThan(1);
    expect(linesOf(label).join(" ")).toBe("a float for running water");
    expect(widest(label)).toBeLessThanOrEqual(20);
  });

  it.each([
    "Plainrigforeverybodywhowantsnospacesinthename",
    "x".repeat(100),
    "Laufposenantennenverlängerung in e\u0301le\u0301gance\u0301sanscesse",
    together("12 × No 8 and a very long tail of words that hang together"),
  ])("of a word wider than the room is broken in it, no line too wide and nothing lost: %s", (text) => {
    for (const roomMm of [8, 15, 21.25]) {
      const label = lay(text, roomMm);
      expect(widest(label)).toBeLessThanOrEqual(roomMm);
      expect(label.widthMm).toBeLessThanOrEqual(roomMm);
      expect(linesOf(label).join("").replaceAll("-", "").replace(/\s/g, "")).toBe(text.replace(/\s/g, ""));
      expect(linesOf(label).filter((line) => /^\p{M}/u.test(line))).toEqual([]);
    }
  });

  it("beside a drawing that has other places for it keeps a word whole, and says how wide it is", () => {
    const label = lay("Plainrigforeverybody", 15, "whole");
    expect(linesOf(label)).toEqual(["Plainrigforeverybody"]);
    expect(label.widthMm).toBeGreaterThan(15);
  });
});
