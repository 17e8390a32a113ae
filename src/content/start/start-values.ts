import type { FileKind } from "../schema/key-notes.ts";
import type { StartValues } from "./commented.ts";

/** Kinds of file that can be begun; a guide has its own way, and an outfit is made of what is there. */
export const startKinds = [
  "rig",
  "float",
  "lesson",
  "page",
  "bait",
  "species",
  "knot",
  "scale",
  "tub",
  "swim",
  "notes",
  "shelf",
  "session",
] as const satisfies readonly FileKind[];
export type StartKind = (typeof startKinds)[number];

/** What a new file says before its author has changed anything; it goes with the library's tackle. */
export const startValues: {
  readonly [K in StartKind]: { readonly front: StartValues; readonly body?: (id: string) => string };
} = {
  rig: {
    front: {
      purpose: "Say here what the rig is for.",
      water: "still",
      float: "straight-waggler",
      "main-line": { strength: "4 lb", diameter: "0.18 mm" },
      "hook-length": { strength: "3 lb", diameter: "0.14 mm", length: "30 cm" },
      hook: "18",
      bait: "double-maggot",
      feed: { what: "maggots", portion: "5 ml", every: "45 s" },
      setting: "dead depth",
      depths: "[1 m, 1.5 m]",
      level: "beginner",
      catches: "[roach, perch]",
      "use-when": "\n  - Say when to take this rig.",
      "not-when": "\n  - Say when to take another.",
      "change-first": "\n  - Say what to change first when no bites come.",
      loading: {
        pattern: "strung out",
        "lock-share": "70 %",
        size: "No 8",
        gap: "25 cm",
        telltale: { size: "No 10" },
      },
    },
    body: (id) => `## How to fish it

Say here how to set it up and how to fish it. Its own drawing and figures stand in the text where you ask for them. From
the float to the hook it is :figure[]{rig=${id} depth=first of=float-to-hook} in this water:

::rig-drawing{rig=${id} depth=first}
`,
  },
  float: {
    front: {
      summary: "Say here what it is for.",
      kind: "waggler",
      attachment: "bottom",
      "held-by": "shot",
      marking: "2 AAA",
      "marked-metal": "lead",
      "tip-showing": "15 mm",
      profile: `
  - { at: 0 mm, diameter: 2 mm }
  - { at: 8 mm, diameter: 2 mm }
  - { at: 11 mm, diameter: 4.1 mm }
  - { at: 175 mm, diameter: 4.1 mm }`,
      basis: "from memory",
      notes: "|\n  Say here what an angler should know of it.",
    },
  },
  lesson: {
    front: { order: "2", part: "Our water", summary: "Say here what a reader can do after it." },
    body: () => `## What you do

Say here what to do, step by step.
`,
  },
  page: {
    front: { summary: "Say here what stands on it." },
    body: () => `## What to know

Say here what your readers should know.
`,
  },
  bait: {
    front: {
      mass: "0.06 g",
      density: "1.02 g/cm3",
      hooks: "[16, 18]",
      basis: "from memory",
      notes: "|\n  Say here how to hook it.",
    },
  },
  species: {
    front: {
      asks: "Say here what it asks of a rig.",
      notes: "|\n  Say here where it lives and how it bites.",
    },
  },
  knot: {
    front: {
      joins: "line to itself",
      "strength-share": "{ low: 0.5, high: 0.9, basis: from memory }",
      frame: "[40, 20]",
      steps: `
  - caption: Lay the line out.
    strands:
      - { name: line, pattern: line, path: [[5, 10], [35, 10]] }`,
    },
  },
  scale: {
    front: {
      source: "Say here where the figures are from.",
      basis: "measured",
      sizes: `
  - { name: BB, mass: 0.4 g }
  - { name: No 8, weighed: { count: 10, mass: 0.6 g } }`,
    },
  },
  tub: {
    front: {
      scale: "trade-round",
      sizes: `
  - { size: AAA, metal: tin, count: 20 }
  - { size: BB, metal: tin, count: 20 }
  - { size: No 8, metal: tin, count: plenty }`,
    },
  },
  swim: {
    front: {
      summary: "Say here what it is.",
      water: "still",
      sounded: "2026-11-20",
      lines: `
  - title: Straight out
    soundings:
      - { from-bank: 0 m, depth: 40 cm }
      - { from-bank: 2 m, depth: 90 cm }
      - { from-bank: 4 m, depth: 1.1 m }`,
      spots: `
  - { title: Close in, from-bank: 2 m }`,
      access: { road: "Say here the nearest road, and where on it." },
      places: "2",
      fish: "[roach, perch]",
    },
  },
  notes: {
    front: {
      swim: "my-swim",
      date: "2026-11-20",
      level: "0 cm",
      depths: `
  - { spot: Close in, depth: 90 cm }`,
      rigs: `
  - { rig: straight-waggler-strung-out, worked: Say here what worked. }`,
    },
  },
  shelf: {
    front: {
      floats: `
  - { float: straight-waggler, count: 5, packet: 1 }`,
      shot: `
  - { size: No 8, metal: tin, count: 100, packet: 50 }`,
      hooks: `
  - { size: 18, count: 20, packet: 10 }`,
      packs: `
  - { rig: straight-waggler-strung-out, wanted: 5 }`,
    },
  },
  session: {
    front: {
      date: "2027-05-15",
      from: "09:30",
      hours: "3 h",
      swims: `
  - { swim: our-pond, spot: Close in }`,
      learners: "{ count: 2, ages: 9 to 13 }",
      adults: "2",
      rods: "2",
      rigs: "[first-session]",
      baits: "[double-maggot]",
      kit: "first-outfit",
    },
  },
};
