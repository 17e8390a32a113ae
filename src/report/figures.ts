/**
 * Quantities as a reader sees them: rounded for the bank, in the units of the guide ("metric first" puts imperial
 * beside). Rounding happens here and nowhere earlier.
 */
export interface Figures {
  /** A water depth: `1.5 m (4 ft 11 in)`. */
  depth(mm: number): string;
  /** A distance along the line, to the centimetre: `30 cm (12 in)`. */
  gap(mm: number): string;
  /** The same without the second system, for labels in drawings. */
  shortDepth(mm: number): string;
  shortGap(mm: number): string;
  /** Tip showing, to 5 mm: `15 mm`. */
  tip(mm: number): string;
  /** A weight, to 0.01 g: `1.6 g`. */
  mass(g: number): string;
  /** A breaking strain: `4 lb (1.8 kg)`. */
  strength(g: number): string;
  /** A small size such as a line's or shot's diameter: `0.16 mm`. */
  diameter(mm: number): string;
  /** A surface pace: `10 m in 25 s`. */
  pace(ms: number): string;
  temperature(c: number): string;
  volume(ml: number): string;
  /** A share of one: `70 %`. */
  share(share: number): string;
  /** A time: `45 s`, `2 min 30 s`. */
  time(s: number): string;
}
