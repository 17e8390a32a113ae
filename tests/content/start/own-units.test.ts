import { expect, it } from "vitest";
import { inOwnUnits } from "../../../src/content/start/own-units.ts";

const rig = `---
# Line beyond the depth of the water. Write such as 30 cm, 6 ft.
# overdepth: 30 cm
#   whip: 4 m
main-line: { strength: 4 lb, diameter: 0.18 mm, length: 100 m }
hook-length: { strength: 3 lb, length: 30 cm }
overdepth: 0 cm
setting: -5 cm
depths: [1 m, 1.2 m, 1.5 m]
paces: [10 m in 25 s, 0.4 m/s]
change-first: [Make it 20 cm shallower.]
---

At 1.5 m it shows :figure[]{rig=ours depth="1.5 m" of=tip}, another :figure[]{rig=theirs depth="1.5 m" of=tip}.
`;

// An inch is 25.4 mm, a foot 304.8 mm, a yard 914.4 mm, a pound 453.59237 g (NIST SP 811, appendix B.8).
it.each(["imperial", "us"])(
  "a file that is begun in a guide in %s units has lengths in feet and inches",
  (units) => {
    expect(inOwnUnits(rig, units, "ours")).toBe(`---
# Line beyond the depth of the water. Write such as 30 cm, 6 ft.
# overdepth: 12 in
#   whip: 13 ft
main-line: { strength: 4 lb, diameter: 0.18 mm, length: 100 m }
hook-length: { strength: 3 lb, length: 12 in }
overdepth: 0 cm
setting: -2 in
depths: [3 ft 3 in, 4 ft, 5 ft]
paces: [11 yd in 25 s, 0.4 m/s]
change-first: [Make it 8 in shallower.]
---

At 1.5 m it shows :figure[]{rig=ours depth="5 ft" of=tip}, another :figure[]{rig=theirs depth="1.5 m" of=tip}.
`);
  },
);

it("one in a metric guide has strengths in kilograms, and one in both systems stays as it is", () => {
  expect(inOwnUnits(rig, "metric", "ours")).toBe(rig.replace("4 lb", "1.8 kg").replace("3 lb", "1.4 kg"));
  expect(inOwnUnits(rig, "metric first", "ours")).toBe(rig);
});

it("a file without a text below is changed throughout", () => {
  expect(inOwnUnits("title: Pool\nlines:\n  - { from-bank: 2 m, depth: 90 cm }\n", "imperial", "pool")).toBe(
    "title: Pool\nlines:\n  - { from-bank: 6 ft 6 in, depth: 3 ft }\n",
  );
});
