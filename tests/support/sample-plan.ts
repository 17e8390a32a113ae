const sections = [
  "How to begin",
  "What to show",
  "Drills",
  "Questions",
  "Faults and cures",
  "Quick and lost",
  "Safety",
];

/** A coach's plan that is right, with some of its text changed. */
export function samplePlan(from = "", to = ""): string {
  const front = `---
aim: Everybody can do it.
minutes: 20
parts: { begin: 3, show: 5, drills: 10, questions: 2 }
at: indoors
learners: 8
---
`;
  const body = sections.map((heading) => `\n## ${heading}\n\nWords.\n`).join("");
  const text = front + body;
  if (!text.includes(from)) throw new Error(`no ${from}`);
  return text.replace(from, to);
}
