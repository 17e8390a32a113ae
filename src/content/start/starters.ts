import { type CommentWords, english as inEnglish } from "./comment-words.ts";
import type { StartValues } from "./commented.ts";
import { german } from "./german.ts";

/** What is asked of whoever begins a guide, once its language is known. */
export type Question = "title" | "publisher" | "water" | "paper" | "units" | "place" | "leadUpTo";

/** What the first files of a new guide are called and say, in one language. */
interface Starter {
  /** How all files that are begun are worded. */
  readonly comments: CommentWords;
  /** What a guide is called that is begun in a folder of this name. */
  readonly title: (folder: string) => string;
  /** What stands in a file of words that has none yet. */
  readonly words: (language: string) => string;
  /** What is asked for, by its option, before the choices and the usual answer. */
  readonly questions: Readonly<Record<Question, string>>;
  /** The README beside it, below its title. */
  readonly readme: string;
  readonly rig: { readonly id: string; readonly title: string };
  readonly lesson: { readonly id: string; readonly front: StartValues; readonly body: string };
}

const english: Starter = {
  comments: inEnglish,
  title: (folder) => `Float fishing at ${folder}`,
  questions: {
    title: "Name of the guide?",
    publisher: "Who gives it out?",
    water: "Water?",
    paper: "Paper?",
    units: "Units?",
    place: "Place whose law on lead shot it follows?",
    leadUpTo: "Lead shot allowed there up to?",
  },
  words: (
    language,
  ) => `# Words of your own for pages and cards, in place of the usual. \`npx dotdown new words ${language}\` writes all of them here, to be
# filled in. Or take the # away from all lines of one, and change it. A page's title and its place in the menu are two.
# page:
#   menu:
#     rigs: Our rigs
#   rigs:
#     title: Our rigs
`,
  readme: `What stands in content/ is yours. Whatever is not there comes from the guide that is shipped with dotdown, as far as
\`library\` in content/guide.yaml takes it.

- \`npx dotdown check\` says what is wrong, with file and line.
- \`npx dotdown preview\` shows the guide in a browser, anew after each save.
- \`npx dotdown build\` writes the site, the cards and the handouts to out/.
- \`npx dotdown new rig our-pond\` begins another rig, \`npx dotdown new rig our-pond --like margin\` copies one.
- \`npx dotdown schema --keys\` lists every key of every file. \`npx dotdown schema\` writes them for editors, which then complete
  and explain keys: the first line of each file says where they are.
`,
  rig: { id: "our-first-rig", title: "Our first rig" },
  lesson: {
    id: "welcome",
    front: {
      order: "1",
      title: "Welcome to our water",
      part: "Start",
      summary: "Make up our first rig, find the depth, and fish it.",
    },
    body: `<!-- Readers do not see this. Put in your own words: where you meet, what to bring, what your water is like. -->

## What you do

1. Read how to [stay safe](../pages/safety.md), and look up for power lines before you put a rod together.
2. Make up [our first rig](../rigs/our-first-rig.md), with its card beside you.
3. Find the depth where you will fish, and set the float to it.
4. Cast out, keep the line tidy, and watch the tip of the float.
5. If no bites come, change one thing at a time. The back of the card says what to change first.
`,
  },
};

const others: Readonly<Record<string, Starter>> = {
  de: {
    comments: german,
    title: (folder) => `Posenangeln: ${folder}`,
    questions: {
      title: "Wie heißt der Führer?",
      publisher: "Wer gibt ihn heraus?",
      water: "Gewässer: stehend (still) oder fließend (flowing)?",
      paper: "Papier?",
      units: "Einheiten: metrisch (metric) oder andere?",
      place: "Wo gilt die Regel für Bleischrot, der er folgt?",
      leadUpTo: "Bleischrot ist dort erlaubt bis?",
    },
    words: (
      language,
    ) => `# Eigene Worte für Seiten und Karten, anstelle der üblichen. \`npx dotdown new words ${language}\` schreibt sie alle hierher,
# zum Ausfüllen. Oder nimm das # vor allen Zeilen von einem weg und ändere es. Titel einer Seite und Eintrag im Menü sind zwei.
# page:
#   menu:
#     rigs: Unsere Montagen
#   rigs:
#     title: Unsere Montagen
`,
    readme: `Was in content/ steht, gehört dir. Was dort fehlt, kommt aus dem Führer, den dotdown mitbringt, soweit ihn \`library\` in
content/guide.yaml nimmt.

- \`npx dotdown check\` sagt, was nicht stimmt, mit Datei und Zeile.
- \`npx dotdown preview\` zeigt den Führer im Browser, nach jedem Speichern neu.
- \`npx dotdown build\` schreibt Seiten, Karten und Blätter nach out/.
- \`npx dotdown new rig unser-teich\` beginnt eine weitere Montage, \`npx dotdown new rig unser-teich --like lift-method\`
  schreibt eine ab.
- \`npx dotdown schema --keys\` nennt jeden Schlüssel jeder Datei, auf Englisch. \`npx dotdown schema\` schreibt sie für Editoren,
  die dann ergänzen und erklären: die erste Zeile jeder Datei sagt, wo sie liegen.
`,
    rig: { id: "unsere-erste-montage", title: "Unsere erste Montage" },
    lesson: {
      id: "willkommen",
      front: {
        order: "1",
        title: "Willkommen an unserem Wasser",
        part: "Anfang",
        summary: "Unsere erste Montage aufbauen, die Tiefe finden und fischen.",
      },
      body: `<!-- Das sehen Leser nicht. Schreibe in eigenen Worten: wo ihr euch trefft, was man mitbringt, wie euer Wasser ist. -->

## Was du tust

1. Lies, [wie du sicher bleibst](../pages/safety.md), und sieh nach Stromleitungen, bevor du die Rute zusammensteckst.
2. Baue [unsere erste Montage](../rigs/unsere-erste-montage.md) auf, mit ihrer Karte neben dir.
3. Finde die Tiefe an deiner Stelle, und stelle die Pose darauf ein.
4. Wirf aus, halte die Schnur in Ordnung und achte auf die Spitze der Pose.
5. Wenn Bisse ausbleiben, ändere eines nach dem anderen. Was zuerst, steht hinten auf der Karte.
`,
    },
  },
};

/** In the language of a guide (a BCP 47 tag), or in English. */
export function starterIn(language: string): Starter {
  return others[language.split("-")[0] ?? language] ?? english;
}
