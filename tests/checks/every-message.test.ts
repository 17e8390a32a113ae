import { expect, it } from "vitest";
import { formatReport } from "../../src/checks/reporter.ts";
import type { MessageCode } from "../../src/model/message-table.ts";
import { samplePlan } from "../support/sample-plan.ts";
import { sampleSession } from "../support/sample-session.ts";
import { sampleSwim } from "../support/sample-swim.ts";
import { contentWith, edited, smallestKit, solveWith } from "../support/smallest-content.ts";
import { lesson, lessonFile } from "./checked.ts";

type Changes = Readonly<Record<string, string | null>>;

const rig = (from: string, to: string) => edited("rigs/plain.md", from, to);
const knot = (from: string, to: string) => edited("knots/half-blood.yaml", from, to);
const lines = (main: string) => ({
  "species/roach.yaml": "title: Roach\nasks: A bait.\nnotes: Silver.\n",
  "lines.yaml": `basis: from memory\nsource: made up for tests\nleft-under-shot: 80 %\nfish:\n  - { fish: roach, main-line: [${main}], hook-length: [3 lb, 3 lb] }\n`,
});
const kit = (text = "") => ({
  "kits/box.yaml": smallestKit.replace(...(text.split("|") as [string, string])),
});
const square = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 4 4"><path d="M1 1h2v2h-2z"/></svg>';

/** What only shows when all is laid out, or beside a library to borrow from, has a test with the build. */
type ReadCode = Exclude<
  MessageCode,
  | "does-not-fit"
  | "no-room"
  | "card-lacks"
  | "lent-left-out"
  | "lent-shortened"
  | "lent-without-rules"
  | "shelf-rig-left-out"
>;

/** Content that is wrong in one way each, beside what is said of it; the compiler asks for each message. */
const cases: { readonly [C in ReadCode]: { readonly of: Changes; readonly says: readonly string[] } } = {
  "yaml-syntax": {
    of: rig("hook: 16", "hook: [16"),
    says: [
      "content/rigs/plain.md:8:7 error [ is not closed",
      "hint: put a ] where it ends; what stands behind a space and a # counts for nothing",
    ],
  },
  "hash-cuts": {
    of: rig("title: Plain rig", "title: Plain rig #1"),
    says: [
      'content/rigs/plain.md:2:18 warning "#1" counts for nothing: a # behind a space starts a note to other authors',
      "hint: put the whole value in quotes; or leave a space behind the #, where it is such a note",
    ],
  },
  "text-as-begun": {
    of: lesson(
      "Say here what to do, step by step. Or not.\n\n## Sage hier, wie man ihn anködert.\n\nSay it well.",
    ),
    says: [
      'content/lessons/first.md:8:1 warning "Say here what to do, step by step." still stands as the file was begun, and 1 more such sentence; readers would find it in print',
      "hint: say it in your own words, or take it out",
    ],
  },
  "not-utf-8": {
    of: lesson("A \uFFFD sign."),
    says: ["content/lessons/first.md:8:3 error a sign here is not UTF-8", "hint: save the file as UTF-8"],
  },
  "no-front-matter": {
    of: { "lessons/first.md": "Words.\n" },
    says: [
      "content/lessons/first.md:1:1 error the file has no front matter",
      "hint: start it with a line ---, then `title: …`, then a line ---",
    ],
  },
  "too-much": {
    of: lesson("a".repeat(20_000)),
    says: [
      "content/lessons/first.md:8:1 error 20000 signs in a line; the most is 10000",
      "hint: break the line",
    ],
  },
  "no-sign": {
    of: lesson("A \u2605 star."),
    says: [
      'content/lessons/first.md:8:3 error the fonts of the guide have no sign for "★" (U+2605)',
      "hint: say it in words, in Latin, Greek or Cyrillic letters; or lay a font that has it into fonts/ and name it in guide.yaml, as look: { font: NAME.ttf }",
    ],
  },
  "file-too-deep": {
    of: { "rigs/old/plain.md": "x" },
    says: [
      "content/rigs/old/plain.md:1:1 error the file stands in a folder below rigs/",
      "hint: move it up into rigs/, or out of the content",
    ],
  },
  "file-name": {
    of: { "rigs/a b.md": "x" },
    says: [
      "content/rigs/a b.md:1:1 error the file's name has a space (U+0020) in it",
      "hint: call it by letters, digits, - and _ only, such as first-knots",
    ],
  },
  "address-taken": {
    of: { "pages/floats.md": "---\ntitle: Floats\nsummary: More.\n---\n\nWords.\n" },
    says: [
      "content/pages/floats.md:1:1 error what is made of this file comes out at site/floats.html, which is taken by the guide itself",
      "hint: call the file something else; letters that differ by case only are the same on some systems",
    ],
  },
  "missing-file": {
    of: { "guide.yaml": null },
    says: [
      "content/guide.yaml: error there is no guide.yaml",
      "hint: add it; it names the guide, its units, scale, tub and lead rule",
    ],
  },
  "unlikely-figure": {
    of: rig("diameter: 0.18 mm", "diameter: 0.18 cm"),
    says: [
      'content/rigs/plain.md:6:40 warning "diameter" is 0.18 cm; on the bank it is 0.05 mm to 0.6 mm',
      "hint: look at its unit and its decimal point",
    ],
  },
  "words-in-english": {
    of: edited("guide.yaml", "title: Test guide", "title: Test guide\nlanguage: de"),
    says: [
      'content/guide.yaml: warning the fixed words of pages and cards stand in English: there are none in "de"',
      "hint: fill them in in words/de.yaml, as few as you like; npx dotdown new words de writes there all that are missing",
    ],
  },
  "font-not-usable": {
    of: { ...edited("guide.yaml", "edition:", "look: { font: x.ttf }\nedition:"), "fonts/x.ttf": "no font" },
    says: [
      "content/fonts/x.ttf: error the font cannot be used: no font can be found in it",
      "hint: take a font of one face, as .ttf, .otf, .woff or .woff2",
    ],
  },
  "image-not-usable": {
    of: { "images/pond.svg": '<svg xmlns="http://www.w3.org/2000/svg">\n  <script>1</script>\n</svg>' },
    says: [
      "content/images/pond.svg:2:3 error the drawing cannot be shown: it has a <script>",
      "hint: take it out; a drawing runs and loads nothing",
    ],
  },
  "image-not-used": {
    of: { "images/pond.svg": square },
    says: [
      "content/images/pond.svg: warning no text shows pond.svg",
      "hint: show it on a line of its own, ![what it shows](../images/pond.svg), or take it out",
    ],
  },
  "image-in-sentence": {
    of: { ...lesson("The swim ![a square](../images/pond.svg) is deep."), "images/pond.svg": square },
    says: [
      "content/lessons/first.md:8:10 error a picture stands within a sentence",
      "hint: put it on a line of its own, with empty lines around it: ![what it shows](../images/pond.jpg)",
    ],
  },
  "no-alt-text": {
    of: { ...lesson("![](../images/pond.svg)"), "images/pond.svg": square },
    says: [
      "content/lessons/first.md:8:1 error pond.svg has no words for readers who cannot see it",
      "hint: say between the brackets what it shows, such as ![The swim below the weir](../images/pond.svg)",
    ],
  },
  "file-not-read": {
    of: { "baits/grub.yml": "title: grub\n" },
    says: [
      "content/baits/grub.yml: warning the file is not read: files in baits/ end in .yaml",
      "hint: call it grub.yaml",
    ],
  },
  "unknown-key": {
    of: rig("hook: 16", "hook: 16\nhuk: 16"),
    says: [
      'content/rigs/plain.md:9:1 error unknown key "huk"',
      "hint: allowed: title, purpose, water, float, main-line, hook-length, hook, bait, feed, setting, overdepth, depths, paces, whip, held-back, knots, tub, level, catches, use-when, not-when, change-first, loading",
    ],
  },
  "missing-key": {
    of: rig("hook: 16\n", ""),
    says: ['content/rigs/plain.md:2:1 error "hook" is missing', "hint: add a line `hook: …`"],
  },
  "missing-attribute": {
    of: lesson("It weighs :weight[]."),
    says: [
      'content/lessons/first.md:8:11 error ":weight" does not say its "load"',
      'hint: write it like :weight[]{load="…"}',
    ],
  },
  "missing-label": {
    of: lesson("It is :plain[]."),
    says: [
      'content/lessons/first.md:8:7 error ":plain" has no words between its brackets',
      "hint: write them there: :plain[words]",
    ],
  },
  "block-as-figure": {
    of: lesson("So :knot[]{knot=half-blood}"),
    says: [
      'content/lessons/first.md:8:4 error "knot" stands on a line of its own, with two colons',
      "hint: write ::knot{…} there, with an empty line above and below",
    ],
  },
  "figure-as-block": {
    of: lesson('::weight[]{load="1 BB"}'),
    says: [
      'content/lessons/first.md:8:1 error "weight" stands within a sentence, with one colon',
      "hint: write :weight[]{…} there",
    ],
  },
  "order-taken": {
    of: {
      ...lesson("See the [second](second.md)."),
      "lessons/second.md": lessonFile(1, "See the [first](first.md)."),
    },
    says: [
      "content/lessons/second.md:2:8 warning 1 is the order of content/lessons/first.md, too: readers are led by file name from one to the other",
      "hint: give it a number of its own, such as 2",
    ],
  },
  "still-water-key": {
    of: rig("level: first", "level: first\nheld-back: 40 %"),
    says: [
      'content/rigs/plain.md:13:12 warning "held-back" tells of a current, and this rig is for still water: nothing is made of it',
      "hint: take it out, or write water: flowing",
    ],
  },
  "unknown-feed": {
    of: rig("what: grubs", "what: unicorns"),
    says: [
      'content/rigs/plain.md:10:15 warning nothing in the guide tells what "unicorns" is',
      "hint: write something that its readers know, or explain the word in glossary.yaml; baits: grub",
    ],
  },
  "slipped-sign": {
    of: lesson("Look: ::knot{knot=half-blood} here."),
    says: [
      'content/lessons/first.md:8:7 error "::knot" stands within a sentence',
      "hint: put it on a line of its own, with an empty line above and below",
    ],
  },
  "wrong-type": {
    of: rig("catches: [roach]", "catches: roach"),
    says: [
      'content/rigs/plain.md:13:10 error "catches" should be a list, but is roach',
      "hint: write it in brackets: [roach]",
    ],
  },
  "not-a-choice": {
    of: rig("water: still", "water: stil"),
    says: [
      'content/rigs/plain.md:4:8 error "water" cannot be stil',
      'hint: did you mean "still"? — allowed: still, flowing',
    ],
  },
  "too-few": {
    of: rig("catches: [roach]", "catches: []"),
    says: [
      'content/rigs/plain.md:13:10 error "catches" needs at least 1',
      "hint: write more between the brackets, parted by commas, or as lines that start with a dash",
    ],
  },
  "too-many": {
    of: rig("[1 m, 1.5 m]", `[${Array.from({ length: 21 }, (_, at) => `${100 + at} cm`).join(", ")}]`),
    says: [
      'content/rigs/plain.md:11:9 error "depths" has 21 entries; the most is 20',
      "hint: take out what is not needed",
    ],
  },
  "out-of-range": {
    of: rig("length: 30 cm", "length: 0 cm"),
    says: ['content/rigs/plain.md:7:59 error "length" is 0 cm, which is not above nothing'],
  },
  "not-valid": {
    of: edited("guide.yaml", "title: Test guide", "title: Test guide\nlanguage: not a tag"),
    says: ['content/guide.yaml:2:11 error "language": this is no language tag; write one like en or de-AT'],
  },
  quantity: {
    of: rig("length: 30 cm", "length: 30"),
    says: ['content/rigs/plain.md:7:59 error "30" has no unit', "hint: say which: 30 cm or 30 m or 30 ft"],
  },
  "unknown-name": {
    of: rig("float: waggler", "float: wagler"),
    says: [
      'content/rigs/plain.md:5:8 error there is no float "wagler"',
      'hint: did you mean "waggler"? — allowed: waggler',
    ],
  },
  "duplicate-name": {
    of: edited("shot/plain.yaml", "name: No 4", "name: BB"),
    says: [
      'content/shot/plain.yaml:6:13 error "BB" stands here twice',
      "hint: take one of the two out, or call it something else",
    ],
  },
  "falling-profile": {
    of: edited("floats/waggler.yaml", "at: 200 mm", "at: 0 mm"),
    says: [
      "content/floats/waggler.yaml:11:11 error the profile's points must rise: 0 mm follows 0 mm",
      "hint: list them from the lower eye up",
    ],
  },
  "band-upside-down": {
    of: lines("5 lb, 4 lb"),
    says: [
      'content/lines.yaml:5:31 error the second of "main-line" is less than the first',
      "hint: write the lower first, then the higher",
    ],
  },
  "line-too-light": {
    of: lines("5 lb, 8 lb"),
    says: [
      "content/rigs/plain.md:6:24 warning a main line of 4 lb (1.8 kg) is too light for roach, which asks for 5 lb (2.3 kg) to 8 lb (3.6 kg)",
      "hint: give the rig a stronger line, or take the fish out of `catches`",
    ],
  },
  "line-too-heavy": {
    of: lines("2 lb, 3 lb"),
    says: [
      "content/rigs/plain.md:6:24 warning a main line of 4 lb (1.8 kg) is too heavy for roach, which asks for 2 lb (0.9 kg) to 3 lb (1.4 kg)",
      "hint: give the rig a finer line, or take the fish out of `catches`",
    ],
  },
  "fish-without-line": {
    of: { ...lines("4 lb, 4 lb"), ...rig("catches: [roach]", "catches: [eel]") },
    says: [
      'content/rigs/plain.md:13:11 warning no fish "eel" stands in lines.yaml, which says how strong a line each asks for',
      "hint: allowed: roach",
    ],
  },
  "not-in-kit": {
    of: { ...kit("main-line: 4 lb|main-line: 5 lb") },
    says: [
      'content/rigs/plain.md:6:24 warning the rig takes main line 4 lb (1.8 kg), which is not in the kit "Box": 5 lb (2.3 kg)',
      "hint: change the rig, add it to the kit, or take the rig out of the kit's `rigs`",
    ],
  },
  "lesson-without-plan": {
    of: { "plans/first.md": samplePlan(), "lessons/second.md": lessonFile(2, "See [it](first.html).") },
    says: [
      'content/lessons/second.md:1:1 warning the lesson "Lesson 2" has no plan for its coach',
      "hint: write plans/second.md",
    ],
  },
  "plan-sections": {
    of: { "plans/first.md": samplePlan("## Drills", "## Drill") },
    says: [
      'content/plans/first.md:17:1 warning the section "Drill" stands where "Drills" belongs',
      "hint: its headings are, in this order: ## How to begin, ## What to show, ## Drills, ## Questions, ## Faults and cures, ## Quick and lost, ## Safety",
    ],
  },
  "plan-never-held": {
    of: { "plans/first.md": samplePlan("learners: 8", "learners: 8\nafter: [first]") },
    says: [
      'content/plans/first.md:7:8 error the lesson "First lesson" can never be held: it needs first',
      "hint: take out of `after` what has no plan, and what needs this lesson itself",
    ],
  },
  "plan-before-need": {
    of: {
      "plans/first.md": samplePlan("learners: 8", "learners: 8\nafter: [second]"),
      "plans/second.md": samplePlan(),
      "lessons/second.md": lessonFile(2, "See [it](first.html)."),
    },
    says: [
      'content/plans/first.md:7:8 warning the lesson "First lesson" stands in the course before second, which it needs',
      "hint: change the `order` of one of the lessons, or take it out of `after`",
    ],
  },
  "plan-without-safety": {
    of: { "plans/first.md": samplePlan("at: indoors", "at: at still water") },
    says: [
      'content/plans/first.md:5:5 warning the lesson "First lesson" is held at the water, and no lesson before it teaches safety there',
      "hint: write `teaches-safety: true` in the plan of the lesson that does",
    ],
  },
  "rig-without-kit": {
    of: {
      ...kit("rigs: [plain]|rigs: [other]"),
      "rigs/other.md": rig("Plain rig", "Other rig")["rigs/plain.md"]!,
    },
    says: [
      'content/rigs/plain.md:2:8 warning "Plain rig" is a first rig, and no kit is for it',
      "hint: name it under `rigs` of a kit: box",
    ],
  },
  "size-in-no-tub": {
    of: {
      ...edited("tubs/box.yaml", "  - { size: No 6, metal: tin, count: plenty }\n", ""),
      ...lesson("Add a No 6."),
    },
    says: [
      'content/lessons/first.md:8:7 warning the text speaks of No 6, which is not in "box"',
      "hint: sizes there: BB, No 4, No 8, No 10",
    ],
  },
  "hook-against-bait": {
    of: edited("baits/grub.yaml", "basis:", "hooks: [18, 20]\nbasis:"),
    says: [
      "content/rigs/plain.md:8:7 warning a hook 16 does not suit grub, which asks for 18 to 20",
      "hint: give the rig another hook or bait, or mend `hooks` of the bait",
    ],
  },
  "rig-not-for-fish": {
    of: {
      "species/perch.yaml": "title: Perch\nasks: A bait.\nnotes: See the [plain rig](../rigs/plain.md).\n",
    },
    says: [
      'content/species/perch.yaml:3:16 warning the notes on perch lead to "Plain rig", which does not name it under `catches`',
      "hint: rigs that name it: none",
    ],
  },
  "hard-to-read": {
    of: lesson(
      "Notwithstanding considerable understanding, interpretation necessitates extraordinary deliberation.",
    ),
    says: [
      "content/lessons/first.md:8:1 warning the lesson needs a reader of 47 (grade 42.8, Flesch–Kincaid); it should stay below grade 7, which is for readers under 12",
      "hint: this is its hardest paragraph: shorten the sentences, then the words",
    ],
  },
  "term-not-explained": {
    of: lesson("We call it *dead depth* here."),
    says: [
      'content/lessons/first.md:8:12 warning "dead depth" is brought in as a term, but the glossary does not have it',
      "hint: add it to glossary.yaml, or as another form of a word there",
    ],
  },
  "term-not-used": {
    of: { "glossary.yaml": "- { term: eddy, meaning: Water that turns. }\n" },
    says: [
      'content/glossary.yaml:1:3 warning "eddy" stands in the glossary and nowhere else',
      "hint: use it, add the form that is used under `also`, or take it out",
    ],
  },
  "lesson-not-linked": {
    of: { "lessons/second.md": lessonFile(2, "Words.") },
    says: [
      'content/lessons/second.md:1:1 warning no text leads to the lesson "Lesson 2"',
      "hint: link to it from the lesson before it",
    ],
  },
  "rig-not-taught": {
    of: lesson("Words alone."),
    says: [
      'content/rigs/plain.md:2:8 warning no lesson teaches "Plain rig"',
      "hint: link to it from a lesson, or show its drawing there",
    ],
  },
  "thick-hook-length": {
    of: rig("diameter: 0.14 mm", "diameter: 0.24 mm"),
    says: [
      "content/rigs/plain.md:7:42 warning the hook length is thicker than the main line: fish see it first, and a snag costs the whole rig",
      "hint: take finer line for the hook length, or look at both diameters",
    ],
  },
  "date-far-off": {
    of: sampleSwim("sounded: 2026", "sounded: 2036"),
    says: [
      'content/swims/pond.yaml:4:10 warning "sounded" is 2036-04-11, more than a year after the day of this edition, 2026-11-20',
      "hint: look at its year, or give guide.yaml the day of a new edition",
    ],
  },
  "rig-title-taken": {
    of: { "rigs/second.md": contentWith({})["rigs/plain.md"]!.replace("rig=plain", "rig=second") },
    says: [
      'content/rigs/second.md:2:8 warning "Plain rig" is the title of content/rigs/plain.md, too: readers and cards cannot tell the two apart',
      "hint: call one of them something else",
    ],
  },
  "rig-shows-another": {
    of: {
      "rigs/second.md": `${contentWith({})["rigs/plain.md"]!.replace("Plain rig", "Second rig")}\n::rig-drawing{rig=plain depth=first}\n`,
    },
    says: [
      'content/rigs/second.md:2:8 warning the text of "Second rig" shows figures of the rig "plain" and none of its own',
      "hint: write rig=second where its own are meant, which is so in most texts that were copied",
    ],
  },
  "sounding-twice": {
    of: sampleSwim("from-bank: 4 m", "from-bank: 200 cm"),
    says: [
      'content/swims/pond.yaml:10:22 error "Straight out" has two depths at 200 cm',
      "hint: keep the one that was plumbed last, or mend how far from the bank it was",
    ],
  },
  "beyond-soundings": {
    of: sampleSwim("Close in, from-bank: 2 m", "Far out, from-bank: 4.5 m"),
    says: [
      'content/swims/pond.yaml:12:34 error 4.5 m lies where nobody has plumbed "Straight out"',
      "hint: plumb there and add the depth to its soundings, or name a place from 0 m to 4 m",
    ],
  },
  "choosing-limit-missing": {
    of: {
      "choosing.yaml":
        "basis: common practice\nrules-out: [{ rule: water }, { rule: box }]\nspeaks-for: [{ rule: fish, points: 1 }]\n",
    },
    says: [
      'content/choosing.yaml:2:12 error nothing rules a rig out by "rod", which no list of rules may go without',
      "hint: add a line under `rules-out`: - rule: rod",
    ],
  },
  "swim-hazard-untold": {
    of: sampleSwim("depth: 1.1 m", "depth: 1.3 m"),
    says: [
      "content/swims/pond.yaml:1:1 warning it is 1.3 m deep, and the swim's hazards do not name deep water",
      "hint: add to `hazards`: { what: deep water, where: …, do: … }",
    ],
  },
  "swim-ledge-not-found": {
    of: sampleSwim("spots:", "    features: [{ what: ledge, from-bank: 3 m }]\nspots:"),
    says: [
      'content/swims/pond.yaml:11:42 warning no ledge shows in the depths of "Straight out" at 3 m',
      "hint: plumb on either side of it, close by, and add both depths",
    ],
  },
  "swim-spot-without-rig": {
    of: {
      ...sampleSwim("depth: 90 cm }", "depth: 4.9 m }"),
      "choosing.yaml":
        "basis: common practice\nrules-out: [{ rule: water }, { rule: rod }, { rule: box }]\nspeaks-for: [{ rule: fish, points: 1 }]\n",
    },
    says: [
      'content/swims/pond.yaml:12:5 warning no rig of the guide can be fished at "Close in"',
      "hint: npx dotdown choose says what rules each of them out; add a rig that would do, or take the spot out",
    ],
  },
  "notes-depth-other": {
    of: {
      ...sampleSwim(),
      "notes/day.yaml":
        "swim: pond\ndate: 2026-05-09\nlevel: 10 cm\ndepths: [{ spot: Close in, depth: 1.9 m }]\n",
    },
    says: [
      'content/notes/day.yaml:4:35 warning 1.9 m was found at "Close in", where depths and level of the water give 1 m',
      "hint: look at `level`; or plumb the swim anew where its bed has changed",
    ],
  },
  "swim-spot-unsure": {
    of: sampleSwim("{ from-bank: 2 m, depth: 90 cm }", "{ from-bank: 0.2 m, depth: 50 cm }"),
    says: [
      'content/swims/pond.yaml:12:35 warning the nearest depth to "Close in" is 1.8 m away: how deep it is there is a guess',
      "hint: plumb there and add the depth to the soundings",
    ],
  },
  "setting-in-note": {
    of: rig("Notes.", "Set it over depth."),
    says: [
      'content/rigs/plain.md:25:8 warning the note says "over depth", but the rig is set dead depth',
      "hint: let the note say how the rig is set, or give the other way as a change to try",
    ],
  },
  "bait-in-note": {
    of: rig("Notes.", "The bait hangs half-way down."),
    says: [
      'content/rigs/plain.md:25:5 warning "bait hangs half-way down" is said of a rig that is set just touching the bed',
      "hint: say where the bait is, or change how the rig is set",
    ],
  },
  "typed-figure": {
    of: lesson("One BB weighs 0.4 g."),
    says: [
      'content/lessons/first.md:8:15 warning "0.4 g" is typed by hand and will go stale',
      'hint: write :weight[]{load="1 BB"}',
    ],
  },
  "no-basis": {
    of: lesson("Put 5 cm to 30 cm of line below it."),
    says: [
      'content/lessons/first.md:8:5 warning "5 cm to 30 cm" is a rule of thumb, and its section does not say where it comes from',
      "hint: put :basis[]{of=practice} or :basis[]{of=memory} after it, or say where it is published, or link to its source",
    ],
  },
  "basis-in-words": {
    of: lesson("That is common practice."),
    says: [
      'content/lessons/first.md:8:9 warning "common practice" is said in a sentence',
      "hint: put :basis[]{of=practice} after the figure",
    ],
  },
  "markdown-left-out": {
    of: lesson("Not ~~this~~ that."),
    says: [
      "content/lessons/first.md:8:5 error struck-out words are not shown",
      "hint: take them out, with their ~ signs",
    ],
  },
  "heading-level": {
    of: lesson("## A\n\n### B\n\n#### C"),
    says: [
      "content/lessons/first.md:12:1 error a heading with #### in a text whose first heading has ##",
      "hint: use ## for the parts of the text and ### for the parts below them",
    ],
  },
  "link-scheme": {
    of: lesson("[Words](ftp://example.org/file)"),
    says: [
      'content/lessons/first.md:8:1 error a guide follows no "ftp:" links',
      "hint: allowed: http:, https:, mailto: and files of the guide",
    ],
  },
  "no-address": {
    of: lesson("[Words](http://)"),
    says: [
      "content/lessons/first.md:8:1 error http:// is no address",
      "hint: write where it leads, such as https://example.org/page or ../rigs/NAME.md",
    ],
  },
  "bad-link": {
    of: lesson("[Words](../nowhere/near.md)"),
    says: [
      "content/lessons/first.md:8:1 error nothing is at ../nowhere/near.md",
      "hint: write the file that it leads to as seen from this one, such as ../rigs/NAME.md",
    ],
  },
  "session-past-midnight": {
    of: sampleSession("from: 09:30", "from: 22:00"),
    says: [
      "content/sessions/day.yaml:4:8 error the session is 3 h long, and the day has 2 h left when it begins",
      "hint: make `hours` shorter or `from` earlier, or write a session for each day",
    ],
  },
  "session-too-few-rods": {
    of: sampleSession("rods: 2", "rods: 1"),
    says: [
      "content/sessions/day.yaml:9:7 error 2 learners cannot fish with 1 rod",
      "hint: bring 1 more and say so in `rods`, or take fewer learners",
    ],
  },
  "session-rig-water": {
    of: { ...sampleSession(), ...sampleSwim("water: still", "water: flowing\npace: 10 m in 40 s") },
    says: [
      'content/sessions/day.yaml:10:8 error the rig "Plain rig" is for still water, and no swim of the session is',
      "hint: take it out of `rigs`, or add a swim that it is for",
    ],
  },
  "session-swim-without-rig": {
    of: { ...sampleSession(), ...sampleSwim("water: still", "water: flowing\npace: 10 m in 40 s") },
    says: [
      'content/sessions/day.yaml:6:5 error no rig of the session can be fished at "Our pond", which is running water',
      "hint: add one for such water to `rigs`, or take the swim out",
    ],
  },
  "session-rig-not-for-spot": {
    of: { ...sampleSession(), ...sampleSwim("from-bank: 2 m, depth: 90 cm", "from-bank: 2 m, depth: 20 cm") },
    says: [
      'content/sessions/day.yaml:6:25 error the rig "Plain rig" cannot be made up for "Close in": 0.2 m (8 in) of water is too shallow for this pattern (strung out): the telltale needs 37 cm (14 in) of line below the float, and there is 2 cm (0.75 in). It would do in 0.55 m (1 ft 10 in).',
      "hint: choose another spot, or say in the swim's `rigs` which ones are fished there",
    ],
  },
  "session-too-long": {
    of: {
      ...sampleSession("rods: 2", "rods: 2\nlessons: [first]\nset-up: 2 h 30 min"),
      "plans/first.md": samplePlan(),
    },
    says: [
      "content/sessions/day.yaml:4:8 warning the session is 35 min too long for its hours",
      "hint: no lessons can go to make it fit: make `hours` longer, or `set-up`, `fishing` or `pack-up` shorter",
    ],
  },
  "session-lesson-needs": {
    of: {
      ...sampleSession("count: 2 }", "count: 2, first-time: true }\nlessons: [first]"),
      "plans/first.md": samplePlan("learners: 8", "learners: 8\nafter: [second]"),
      "plans/second.md": samplePlan(),
      "lessons/second.md": lessonFile(2, "Words."),
    },
    says: [
      'content/sessions/day.yaml:8:11 warning "First lesson" needs second, and these learners have had no lesson before',
      "hint: put what it needs before it in `lessons`, or leave it out",
    ],
  },
  "session-lesson-place": {
    of: {
      ...sampleSession("rods: 2", "rods: 2\nlessons: [first]"),
      "plans/first.md": samplePlan("at: indoors", "at: at running water"),
    },
    says: [
      'content/sessions/day.yaml:10:11 warning "First lesson" is held at running water, and no swim of the session is',
      "hint: leave it out, or add such a swim",
    ],
  },
  "session-group": {
    of: {
      ...sampleSession("rods: 2", "rods: 2\nlessons: [first]"),
      "plans/first.md": samplePlan("learners: 8", "learners: 1"),
    },
    says: [
      'content/sessions/day.yaml:10:11 warning "First lesson" is for up to 1 learner with one coach: 2 with 1 grown-up are too many at once',
      "hint: hold it twice, bring one more coach, or take fewer learners",
    ],
  },
  "session-too-few-places": {
    of: { ...sampleSession(), ...sampleSwim("places: 2", "places: 1") },
    says: [
      "content/sessions/day.yaml:6:3 warning 2 learners do not have room side by side: the swims have 1 place",
      "hint: add a swim, or take fewer learners",
    ],
  },
  "session-bait-missing": {
    of: {
      ...sampleSession("baits: [grub]", "baits: [paste]"),
      "baits/paste.yaml": "title: paste\nmass: 0.05 g\ndensity: 1.02 g/cm3\nbasis: from memory\n",
    },
    says: [
      'content/sessions/day.yaml:10:8 warning the rig "Plain rig" is fished with grub, which is not among the session\'s baits',
      "hint: add it to `baits`",
    ],
  },
  "shelf-shot-unused": {
    of: {
      "shelves/hut.yaml":
        "title: Hut\nshot:\n  - { size: BB, metal: tin, count: 9 }\n  - { size: No 4, metal: lead, count: 90 }\n  - { size: BB, metal: lead, count: 1 }\npacks: [{ rig: plain, wanted: 1 }]\n",
    },
    says: [
      "content/shelves/hut.yaml:4:26 warning No 4 of lead lies unused: the packs take No 4 of tin, which is ordered",
      "hint: write tin if it is that; lead may be sold and used only as the law of your place says",
    ],
  },
  "knot-crossing": {
    of: knot(
      "path: [[5, 10], [35, 10]] }",
      "path: [[5, 10], [35, 10]] }\n      - { name: tag, pattern: line, path: [[20, 5], [20, 15]] }",
    ),
    says: [
      "content/knots/half-blood.yaml:6:5 error Step 1: the line crosses at 20, 10 and nothing says which strand is on top. Give one of them a height there.",
    ],
  },
  "knot-outside": {
    of: knot("[35, 10]", "[45, 10]"),
    says: ["content/knots/half-blood.yaml:6:5 error Step 1: the line leaves the frame at 42.5, 10."],
  },
  "knot-short": {
    of: knot("[35, 10]", "[5, 10]"),
    says: [
      "content/knots/half-blood.yaml:6:5 error Step 1: the line goes nowhere. Give its path two places at least.",
    ],
  },
};

/** The line of a report with this code, with its file before it and its hint behind it. */
function saidOf(report: string, code: string): string[] {
  const lines = report.split("\n");
  const at = lines.findIndex((line) => line.endsWith(`  [${code}]`));
  const file = lines.slice(0, at).findLast((line) => /^\S/.test(line));
  const said = lines[at]?.trim().replace(`  [${code}]`, "").replace(/ {2,}/g, " ") ?? "nothing";
  const hint = lines[at + 1]?.trim();
  return [
    /^\d/.test(said) ? `${file}:${said}` : `${file}: ${said}`,
    ...(hint?.startsWith("hint: ") ? [hint] : []),
  ];
}

it.each(Object.entries(cases))("%s", async (code, { of, says }) => {
  const { messages } = await solveWith(of);
  expect(saidOf(formatReport(messages), code)).toEqual(says);
});
