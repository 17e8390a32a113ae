import type { StartValues } from "./commented.ts";

/** What the first files of a new guide are called and say, in one language. */
interface Starter {
  readonly rig: { readonly id: string; readonly title: string };
  readonly lesson: { readonly id: string; readonly front: StartValues; readonly body: string };
}

const english: Starter = {
  rig: { id: "our-first-rig", title: "Our first rig" },
  lesson: {
    id: "welcome",
    front: {
      order: "1",
      title: "Welcome to our water",
      part: "Start",
      summary: "Say here what a reader can do after it.",
    },
    body: "## What you do\n\nSay here what to do, step by step.\n",
  },
};

const others: Readonly<Record<string, Starter>> = {
  de: {
    rig: { id: "unsere-erste-montage", title: "Unsere erste Montage" },
    lesson: {
      id: "willkommen",
      front: {
        order: "1",
        title: "Willkommen an unserem Wasser",
        part: "Anfang",
        summary: "Sage hier, was ein Leser danach kann.",
      },
      body: "## Was du tust\n\nSage hier Schritt für Schritt, was zu tun ist.\n",
    },
  },
};

/** In the language of a guide (a BCP 47 tag), or in English. */
export function starterIn(language: string): Starter {
  return others[language.split("-")[0] ?? language] ?? english;
}
