/** A swim that is right, and the fish that live there, with some of its text changed. */
export function sampleSwim(from = "", to = ""): Readonly<Record<string, string>> {
  const text = `title: Our pond
summary: A pond for tests.
water: still
sounded: 2026-04-11
lines:
  - title: Straight out
    soundings:
      - { from-bank: 0 m, depth: 40 cm }
      - { from-bank: 2 m, depth: 90 cm }
      - { from-bank: 4 m, depth: 1.1 m }
spots:
  - { title: Close in, from-bank: 2 m }
access: { road: Pond Road }
places: 2
fish: [roach]
`;
  if (!text.includes(from)) throw new Error(`no ${from}`);
  return {
    "swims/pond.yaml": text.replace(from, to),
    "species/roach.yaml": "title: Roach\nasks: A bait.\nnotes: Silver.\n",
  };
}
