import { sampleSwim } from "./sample-swim.ts";
import { smallestKit } from "./smallest-content.ts";

const text = `title: Our day
date: 2027-05-15
from: 09:30
hours: 3 h
swims:
  - { swim: pond, spot: Close in }
learners: { count: 2 }
adults: 1
rods: 2
rigs: [plain]
baits: [grub]
kit: box
`;

const group = `group:
  spares: 25 %
  hook-lengths: 3
  line-for-each: 60 cm
  line-on-reel: 100 m
  hooks-in-packet: 10
  hook-line-on-spool: 50 m
  main-line-on-spool: 100 m
`;

/** A session that is right, at the sample swim and with the plain rig, with some of its text changed. */
export function sampleSession(from = "", to = ""): Readonly<Record<string, string>> {
  if (!text.includes(from)) throw new Error(`no ${from}`);
  return {
    ...sampleSwim(),
    "kits/box.yaml": `${smallestKit}${group}`,
    "sessions/day.yaml": text.replace(from, to),
  };
}
