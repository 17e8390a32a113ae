/** Where a rig is drawn, and how large. */
export const places = [
  { name: "card", box: { widthMm: 48, heightMm: 78 }, labels: "distances", textMm: 3.175 },
  { name: "page", box: { widthMm: 100, heightMm: 140 }, labels: "full", textMm: 4 },
  { name: "phone", box: { widthMm: 80, heightMm: 120 }, labels: "full", textMm: 3.5 },
  { name: "column of a handout", box: { widthMm: 80, heightMm: 104 }, labels: "full", textMm: 3.88 },
  { name: "list", box: { widthMm: 36, heightMm: 72 }, labels: "none", textMm: 3.5 },
] as const;
