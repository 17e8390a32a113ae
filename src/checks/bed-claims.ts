/** What a sentence says of where its rig's bait is. */
export type BedClaim =
  /** `free` where it is said of a float that runs free. */
  | { readonly kind: "on the bed" | "off the bed"; readonly free: boolean }
  | { readonly kind: "above the bed"; readonly mm: number }
  /** Share of the depth at which the bait hangs; in this depth alone where one is named. */
  | { readonly kind: "way down"; readonly share: number; readonly depthMm?: number };

interface Claimed {
  readonly at: number;
  readonly said: string;
  readonly claim: BedClaim;
}

/** Words that make a sentence one of another case, of other people, or of a change. */
const otherCase =
  /\b(?:if|when|until|till|before|after|unless|some|others?|would|could|may|might|can|or|then|lower|raise|make|go)\b/i;

const place = "(on|along|off|over|above|clear\\sof)\\s+the\\s+(?:bed|bottom)\\b";
const verb =
  "(?:lies?|rests?|drags?|sits?|runs?|rides?|hangs?|edges?|rolls?|stays?|swims?|drifts?|trails?|is|are)";
/** A bait, hook, rig or line that does something on or off the bed, or a bait held there. */
const whereItIs = [
  new RegExp(`\\b(?:bait|hook|rig|line)\\b[^.;]{0,100}?\\b${verb}\\b[^.;]{0,25}?\\b${place}`, "iu"),
  new RegExp(`\\b(?:bait|hook)\\s(?:\\p{L}+\\s){0,2}?(?:just\\s)?${place}`, "iu"),
];
const runsFree =
  /\blet\s[^.;]{0,30}?\b(?:go|run)\b(?:\sat\sfull\space|\sfree)?|\bat\sfull\space\b|\brun(?:s|ning)?\sfree\b/i;

const distance = /(\d+(?:\.\d+)?)\s(cm|m)\s(?:off|above)\sthe\s(?:bed|bottom)/iu;

const shares: Readonly<Record<string, number>> = {
  "a quarter": 1 / 4,
  "a third": 1 / 3,
  "one third": 1 / 3,
  half: 1 / 2,
  "two thirds": 2 / 3,
  "three quarters": 3 / 4,
};
const wayDown = new RegExp(
  `\\b(?:hangs?|bait|set)\\b[^.;]{0,60}?\\b(${Object.keys(shares).join("|").replaceAll(" ", "\\s")})(?:-|\\s(?:of\\sthe\\s)?)way\\sdown(?!\\sthe)`,
  "iu",
);

/**
 * What a sentence about a rig says of its bait and the bed. A sentence of another case (`if`, `when`, `some`) says
 * nothing of the rig as it is set.
 */
export function bedClaims(sentence: string): readonly Claimed[] {
  const free = runsFree.test(sentence);
  if (otherCase.test(sentence.replace(runsFree, ""))) return [];
  const claims: Claimed[] = [];
  const typed = distance.exec(sentence);
  const isPlace = whereItIs.map((pattern) => pattern.exec(sentence)).find((found) => found !== null);
  if (typed) {
    const mm = Number(typed[1]) * (typed[2] === "m" ? 1000 : 10);
    claims.push({ at: typed.index, said: typed[0], claim: { kind: "above the bed", mm } });
  } else if (isPlace) {
    const kind = /^(?:on|along)$/i.test(isPlace[1]!) ? "on the bed" : "off the bed";
    claims.push({ at: isPlace.index, said: isPlace[0], claim: { kind, free } });
  }
  const way = wayDown.exec(sentence);
  const depth = /\bin\s(\d+(?:\.\d+)?)\sm\s(?:of\swater|deep)/i.exec(sentence);
  if (way) {
    const share = shares[way[1]!.toLowerCase().replace(/\s/g, " ")]!;
    const claim = { kind: "way down", share, ...(depth && { depthMm: Number(depth[1]) * 1000 }) } as const;
    claims.push({ at: way.index, said: way[0], claim });
  }
  return claims;
}
