/** A depth as people write it, and what it must be read as [mm]; null where it has no one meaning. */
export interface Spelling {
  readonly text: string;
  readonly mm: number | null;
}

// 1 ft = 304.8 mm and 1 in = 25.4 mm exactly (International Yard and Pound Agreement 1959).
const mmPerFoot = 304.8;
const mmPerInch = 25.4;

const metric: Spelling[] = [700, 1700, 2500, 4350].flatMap((mm) => {
  const m = String(mm / 1000);
  const comma = m.replace(".", ",");
  const cm = String(mm / 10);
  const whole = Math.floor(mm / 1000);
  const rest = String((mm % 1000) / 10).padStart(2, "0");
  const texts = [
    ...[m, comma, `${m}0`].flatMap((number) => [
      `${number} m`,
      `${number}m`,
      `${number} M`,
      `${number} metres`,
      `${number} meters`,
      `${number}metre`,
      `${number} mtr`,
      `  ${number}  m `,
      `${number}\u00a0m`,
      `${number} m.`,
      `+${number} m`,
    ]),
    ...["cm", "cms", "CM", "centimetres", "centimeter"].flatMap((unit) => [
      `${cm} ${unit}`,
      `${cm}${unit}`,
      `${cm}.0 ${unit}`,
    ]),
    `${mm} mm`,
    `${mm}mm`,
    `${mm} millimetres`,
    ...(mm >= 1000 ? [`${whole},${String(mm % 1000).padStart(3, "0")} mm`] : []),
    ...(whole > 0
      ? [
          `${whole} m ${rest}`,
          `${whole}m${rest}`,
          `${whole} m ${rest} cm`,
          `${whole}m${rest}cm`,
          `${whole} metres ${rest}`,
          `${whole} m and ${rest} cm`,
        ]
      : []),
  ];
  return texts.map((text) => ({ text, mm }));
});

const imperial: Spelling[] = [
  [5, 7],
  [6, 0],
  [11, 10],
].flatMap(([feet = 0, inches = 0]) => {
  const mm = feet * mmPerFoot + inches * mmPerInch;
  const texts =
    inches === 0
      ? ["ft", "foot", "feet", "FT", "'", "’", "′"].flatMap((unit) => [`${feet} ${unit}`, `${feet}${unit}`])
      : [
          ...["ft", "foot", "feet", "'", "’", "′"].flatMap((foot) => [
            `${feet} ${foot} ${inches}`,
            `${feet}${foot}${inches}`,
            ...["in", "inches", '"', "″", "''"].map((inch) => `${feet} ${foot} ${inches} ${inch}`),
            `${feet}${foot}${inches}"`,
          ]),
          `${feet} feet and ${inches} inches`,
          `${feet} feet, ${inches} inches`,
        ];
  return texts.map((text) => ({ text, mm }));
});

const others: Spelling[] = [
  { text: "1½ m", mm: 1500 },
  { text: "1 ½ m", mm: 1500 },
  { text: "½ m", mm: 500 },
  { text: "1 1/2 m", mm: 1500 },
  { text: "2¼ m", mm: 2250 },
  { text: "5½'", mm: 5.5 * mmPerFoot },
  { text: "5 1/2 ft", mm: 5.5 * mmPerFoot },
  { text: "66 in", mm: 66 * mmPerInch },
  { text: "2 yards", mm: 2 * 3 * mmPerFoot },
  { text: "６ ft", mm: 6 * mmPerFoot },
  { text: "12 m", mm: 12_000 },
  { text: "20 cm", mm: 200 },
];

/** Bare numbers, for somebody who reads metres first. */
const bare: Spelling[] = [
  { text: "1.7", mm: 1700 },
  { text: "1,7", mm: 1700 },
  { text: ".8", mm: 800 },
  { text: "2", mm: 2000 },
  { text: "170", mm: 1700 },
  { text: "85", mm: 850 },
  { text: "200", mm: 2000 },
  { text: "1700", mm: 1700 },
  { text: "5.7", mm: 5700 },
];

/** Nothing of this is to be read, whatever else it may look like. */
const unread = [
  ..."1e3 mm|0x10|1..7 m|1,7,5 m|1.7.5|1 m 170|5 ft 13|5 ft 12|5.5 ft 7|1.7 m 20|1 m 7|1m7|one metre|deep".split(
    "|",
  ),
  ..."m|ft|'|-|.|,|1/0 m|0/0|NaN|Infinity m|-1.7 m|−1.7 m|0|0 m|-1|1.7 km|1.7 mm|170 m|99 ft|12.1 m|13 m|19 cm".split(
    "|",
  ),
  ..."1 fathom|1.7n|1.7 l|1.7 kg|12 C|about 1.7 m|1.7 m deep|1.5-2 m|1.5–2 m|1 to 2 m|5-7|5 7|1 7 m|1.7/2 m".split(
    "|",
  ),
  ..."3|6|8|12|17|20|30|39|3.5|0.1|12001|99999999999999999999|1.7 m 1.8 m|2 m 5 ft|<b>2 m</b>|2 m; 3 m|١٫٧ م|√2 m".split(
    "|",
  ),
  ..."1.7 m²|1.7 m/s|2m2m|m 2|ft 6|$2 m|2 m?2|(2 m)|2 m +/- 1|~2 m|2 mm|1 200 mm|1'700 mm|1.700.000 mm".split(
    "|",
  ),
].map((text): Spelling => ({ text, mm: null }));

/** Some three hundred and fifty, right and wrong, for a reader who thinks in metres. */
export const depthSpellings: readonly Spelling[] = [...metric, ...imperial, ...others, ...bare, ...unread];
