import type { CommentWords } from "./comment-words.ts";
import { germanNotes } from "./german-notes.ts";

/** What a new file says at first in German, by its English; a text that is part of another stands behind it. */
export const saidAtFirst: Readonly<Record<string, string>> = {
  "Say here what the rig is for.": "Sage hier, wozu die Montage ist.",
  "Say when to take this rig.": "Sage, wann man diese Montage nimmt.",
  "Say when to take another.": "Sage, wann man eine andere nimmt.",
  "Say what to change first when no bites come.": "Sage, was man zuerst ändert.",
  "Say here how to set it up and how to fish it. Its own drawing and figures stand in the text where you ask for them. From\nthe float to the hook it is":
    "Sage hier, wie man sie aufbaut und fischt. Ihre Zeichnung und ihre Zahlen stehen im Text, wo du nach ihnen fragst. Von der\nPose bis zum Haken sind es",
  "in this water:": "in diesem Wasser:",
  "## How to fish it": "## So fischst du sie",
  "Say here what it is for.": "Sage hier, wozu sie ist.",
  "Say here what an angler should know of it.": "Sage hier, was man als Angler von ihr wissen sollte.",
  "Our water": "Unser Wasser",
  "Say here what a reader can do after it.": "Sage hier, was ein Leser danach kann.",
  "## What you do": "## Was du tust",
  "Say here what to do, step by step.": "Sage hier Schritt für Schritt, was zu tun ist.",
  "Say here what stands on it.": "Sage hier, was auf ihr steht.",
  "## What to know": "## Was man wissen sollte",
  "Say here what your readers should know.": "Sage hier, was deine Leser wissen sollten.",
  "Say here how to hook it.": "Sage hier, wie man ihn anködert.",
  "Say here what it asks of a rig.": "Sage hier, was er von einer Montage verlangt.",
  "Say here where it lives and how it bites.": "Sage hier, wo er lebt und wie er beißt.",
  "line to itself": "Schnur mit sich selbst",
  "Lay the line out.": "Lege die Schnur aus.",
  "Say here where the figures are from.": "Sage hier, woher die Zahlen sind.",
  "Say here what it is.": "Sage hier, was er ist.",
  "Say here the nearest road, and where on it.": "Sage hier die nächste Straße, und wo an ihr.",
  "Say here what worked.": "Sage hier den Erfolg.",
  "Not looked up yet.": "Noch nicht nachgesehen.",
  "Straight out": "Gerade hinaus",
  "Close in": "Nah am Ufer",
  "[roach, perch]": "[Rotauge, Flussbarsch]",
  "9 to 13": "9 bis 13",
  maggots: "Maden",
};

export const german: CommentWords = {
  note: (english) => germanNotes[english] ?? english,
  atFirst: (english) =>
    Object.entries(saidAtFirst).reduce((text, [from, to]) => text.replaceAll(from, to), english),
  write: (form) => `Schreibe ${form}.`,
  mayBeLeftOut: "Darf fehlen.",
  form: {
    or: "oder",
    suchAs: "etwa",
    list: "eine Liste",
    listOf: (count) => `eine Liste von ${count}`,
    string: "ein Text",
    number: "eine Zahl",
    integer: "eine ganze Zahl",
    boolean: "true oder false",
    object: "eine Gruppe von Schlüsseln",
  },
};
