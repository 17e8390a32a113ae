import { expect, test } from "vitest";
import { boundText } from "../../../templates/handouts/prose-inline.tsx";

const bound = (text: string) => boundText(text).replaceAll("\u00A0", "_");

// Source: the SI Brochure, 9th edition, section 5.4.3: a space, not to be broken, stands between figure and unit.
test.each([
  ["from 15 m to 0.5 cm", "from 15_m to 0.5_cm"],
  ["3 ft 3 in", "3_ft 3_in"],
  ["3 ft 3½ in", "3_ft 3½_in"],
  ["80 % at 12 °C", "80_% at 12_°C"],
  ["2 × No 8", "2_×_No_8"],
  ["10 mm\nof tip", "10_mm of tip"],
  ["take 2 and 3 more", "take 2 and 3 more"],
  ["2 millilitres, 4 stones", "2 millilitres, 4 stones"],
  ["No, 4", "No, 4"],
])("%s", (text, expected) => {
  expect(bound(text)).toBe(expected);
});
