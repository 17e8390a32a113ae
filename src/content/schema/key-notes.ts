import { choosing } from "./choosing-notes.ts";
import { notes } from "./notes-notes.ts";
import { plan } from "./plan-notes.ts";
import { session } from "./session-notes.ts";
import { shelf } from "./stock-notes.ts";
import { swim } from "./swim-notes.ts";

/** What a key of a rig's front matter means, by its path; a person who has never programmed reads it. */
const rig = {
  title: "Name of the rig, as page and card have it.",
  purpose: "What the rig is for, in one sentence.",
  water: "still for lakes, ponds and slow canals; flowing for streams and rivers.",
  float: "The float, by the name of its file below floats/.",
  "main-line": "Line from the reel to the hook length.",
  "main-line.strength": "What it breaks at.",
  "main-line.diameter": "How thick it is; stands on the spool.",
  "hook-length": "Finer line that the hook is tied to, so that a snag costs little.",
  "hook-length.strength": "What it breaks at: less than the main line.",
  "hook-length.diameter": "How thick it is.",
  "hook-length.length": "From its loop to the bend of the hook.",
  hook: "Size of hook, a number of hooks.yaml; the larger the number, the smaller the hook.",
  bait: "Bait on the hook, by the name of its file below baits/.",
  feed: "What is thrown in, how much and how often.",
  "feed.what": "What is thrown in.",
  "feed.portion": "How much at a time.",
  "feed.every": "How long from one to the next.",
  "feed.for": "How long a session is; four hours where nothing is said.",
  "feed.note": "How to throw it, in a sentence.",
  "feed.groundbait": "true where each portion is a ball of groundbait.",
  setting:
    "How the bait lies to the bed: dead depth touches it, over depth has line on it, off bottom and up in the water hang above it.",
  overdepth: "Line beyond the depth of the water; below 0 for a rig off the bottom.",
  depths: "Depths of water that the rig is made up for; each has its own sums.",
  paces: "How fast the surface runs, for flowing water: so many metres in so many seconds.",
  whip: "Length of the whip, for a rig that is fished without a reel.",
  "held-back":
    "Share of the water's pace by which the float is held back, where that is what the rig is for.",
  knots: "Knots that the line's strength hangs on, by the names of their files below knots/.",
  "knots.hook": "Knot at the hook.",
  "knots.loop": "Knot of both loops, where main line and hook length join.",
  tub: "Tub of shot for this rig alone, by the name of its file below tubs/; the guide's where nothing is said.",
  level: "Whom it is for: first for the first day, beginner after that, next for those who can.",
  catches: "Fish that it is meant for, by the names that species/ and lines.yaml have.",
  "use-when": "When to take this rig; one sentence a line.",
  "not-when": "When to take another; one sentence a line.",
  "change-first":
    'What to change first when bites fail: a point for each sign, which may be several sentences, such as "If bites stop, go shallower."',
  loading: "Where the shot go. Each pattern has keys of its own; npx dotdown schema --keys lists them.",
  "loading.pattern": "How the shot are laid out on the line.",
  "loading.lock-share": "Least share of the load that locks the float.",
  "loading.size": "Size of each shot down the line.",
  "loading.gap": "From one shot to the next.",
  "loading.telltale": "The last shot, next to the hook, whose lift or stop shows in the tip.",
  "loading.telltale.size": "Its size.",
  "loading.telltale.from-hook": "From the bend of the hook to it; a usual place where nothing is said.",
  "loading.sizes": "Sizes that may be used, heaviest first.",
  "loading.share": "Share of what is on the line that hangs in the bulk.",
  "loading.from-hook": "From the bend of the hook up to the lowest shot of the group.",
  "loading.droppers": "Single shot between the group and the telltale, from the top down.",
  "loading.over": "Length of line that the bulk is opened out over.",
  "loading.anchor": "The shot that lies on the bed.",
};

const lesson = {
  order: "Place in the course, counted from 1; no other lesson has the same.",
  part: "Part of the course that it stands in.",
  title: "Name of the lesson.",
  summary: "What a reader can do after it, in one sentence.",
};

const page = { title: "Name of the page.", summary: "What stands on it, in one sentence." };

const basis =
  "Where the figures are from: published, common practice, from memory, or measured by you. Pages say so beside them.";

const float = {
  title: "Name of the float.",
  summary: "What it is for, in one sentence.",
  kind: "Kind of float; floats of one kind stand together.",
  attachment: "How it is fixed to the line: bottom, top and bottom, or sliding.",
  "held-by": "What keeps it in its place: shot pinched beside it, rubbers, or a stop knot.",
  marking: "Load that is marked on the float, such as 2 AAA.",
  "marked-metal": "Metal of the shot that the marking means; lead on most floats.",
  "self-load": "Weight built into the float, over and above the marking.",
  "tip-showing": "Tip above the water with the whole load on.",
  profile: "Shape from the lower eye up: how thick it is at each height.",
  "profile.at": "Height above the lower eye.",
  "profile.diameter": "How thick it is there.",
  measured: "What the float carried when somebody tried it in water; it counts more than the marking.",
  "measured.load": "Shot that it carried.",
  "measured.metal": "Metal of that shot.",
  "measured.tip-showing": "Tip above the water with that load.",
  mass: "What the float itself weighs, where somebody weighed it.",
  basis,
  notes: "What an angler should know of it, in Markdown.",
};

const bait = {
  title: "Name of the bait.",
  mass: "What it weighs on the hook.",
  density: "Mass by volume; fresh water has 1.00 g/cm3, and what is above that sinks.",
  fall: "How fast it sinks loose, where somebody timed it.",
  hooks: "Hooks that suit it: the largest, then the smallest.",
  feed: "What it is called where rigs feed it, such as maggots, so that both are bought as one.",
  basis,
  looks: "How it is drawn on its hook; without it there is no picture.",
  "looks.shape": "Which shape it has.",
  "looks.length": "How long it is.",
  "looks.width": "How thick it is.",
  "looks.count": "How many are on the hook.",
  "looks.tell": "Words beside the picture that say how it is known and hooked.",
  "looks.tell.at": "Where the words point.",
  "looks.tell.say": "A few short words.",
  notes: "How to hook and keep it, in Markdown.",
};

const species = {
  title: "Name of the fish.",
  also: "Other names by which rigs say that they catch it.",
  asks: "What it asks of a rig, in one sentence.",
  looks:
    "How it is drawn from the side; without it there is no picture. Shares are of its length from the nose to the root of the tail.",
  "looks.body": "Outline of the body.",
  "looks.body.depth": "How high it is at its highest.",
  "looks.body.deepest": "Where it is highest, from the nose.",
  "looks.body.back": "Share of its height above a line from nose to tail: more than half for a humped back.",
  "looks.body.tail-root": "How high the root of the tail is.",
  "looks.head": "Head and mouth.",
  "looks.head.gill": "From the nose to the edge of the gill cover.",
  "looks.head.mouth": "Which way the mouth opens.",
  "looks.head.wide": "Whether the mouth is wide.",
  "looks.head.barbels": "Barbels on each side of the mouth.",
  "looks.back-fins": "Fins on the back, from the head on.",
  "looks.back-fins.from": "Where it begins, from the nose.",
  "looks.back-fins.to": "Where it ends.",
  "looks.back-fins.height": "How high its tip stands over the body.",
  "looks.back-fins.edge": "How its outer edge runs.",
  "looks.vent-fin": "The fin behind the vent.",
  "looks.vent-fin.from": "Where it begins, from the nose.",
  "looks.vent-fin.to": "Where it ends.",
  "looks.vent-fin.height": "How far its tip stands off the body.",
  "looks.vent-fin.edge": "How its outer edge runs.",
  "looks.belly-fin": "Where the pair of fins on the belly begins, from the nose.",
  "looks.tail": "The tail fin.",
  "looks.tail.reach": "How far it reaches behind its root.",
  "looks.tail.fork": "How deep it is forked, as a share of its length.",
  "looks.scales": "Whether scales are to be seen, and how large they are.",
  "looks.marks": "What is to be seen on the side.",
  "looks.red-fins": "Whether the lower fins are red.",
  "looks.red-eye": "Whether the eye is red.",
  "looks.basis": basis,
  "looks.tell": "What tells it from others, in words beside the picture.",
  "looks.tell.above": "Up to two of them above the fish.",
  "looks.tell.above.at": "Where the words point.",
  "looks.tell.above.say": "A few short words.",
  "looks.tell.below": "Up to two of them below the fish.",
  "looks.tell.below.at": "Where the words point.",
  "looks.tell.below.say": "A few short words.",
  notes: "Where it lives and how it bites, in Markdown.",
};

const knot = {
  title: "Name of the knot.",
  joins: "What it joins.",
  "strength-share": "Share of the line's strength that the knot keeps, from 0 to 1.",
  "strength-share.low": "A knot tied badly.",
  "strength-share.high": "A knot tied well.",
  "strength-share.basis": basis,
  frame: "Width and height of each picture, in its own units.",
  steps: "Pictures in order, each with its words and the paths of its strands.",
  "steps.caption": "What to do, in one sentence.",
  "steps.strands": "Lines in the picture; a third number of a place is its height, where two cross.",
  "steps.objects": "Hook, float, shot and other things in the picture.",
  "steps.arrows": "Arrows: pull for where to pull, way for where a strand goes.",
  "steps.labels": "Words in the picture.",
};

const scale = {
  title: "Name of the scale.",
  source: "Where its figures are from.",
  basis,
  sizes: "Sizes of shot, each with its weight.",
  "sizes.name": "Name of the size, such as BB.",
  "sizes.mass": "What one weighs.",
  "sizes.weighed": "Several weighed together, which is surer than one.",
  "sizes.weighed.count": "How many were weighed.",
  "sizes.weighed.mass": "What they weighed together.",
  "sizes.basis": basis,
};

const tub = {
  title: "Name of the tub.",
  scale: "Scale that its sizes are of, by the name of its file below shot/.",
  sizes: "What is in it.",
  "sizes.size": "Name of a size of the scale.",
  "sizes.metal": "What the shot is made of. Local rules may forbid lead.",
  "sizes.count": "How many there are, or plenty.",
};

const kit = {
  title: "Name of the outfit.",
  rigs: "Rigs that it must do for.",
  floats: "Floats in it.",
  tub: "Tub of shot in it.",
  hooks: "Sizes of hook in it.",
  "main-line": "What its main line breaks at.",
  "hook-length": "What its hook lengths break at.",
  baits: "Baits to bring.",
  group: "What a group of learners uses up, for the table of what to buy.",
  "group.spares": "What to buy on top, for what breaks or is lost.",
  "group.hook-lengths": "Hook lengths that each learner ties for each rig.",
  "group.line-for-each": "Line that is cut off for one hook length.",
  "group.line-on-reel": "Line that goes on each learner's reel; a whip takes as much as its length asks for.",
  "group.hooks-in-packet": "Hooks in a packet from the shop.",
  "group.hook-line-on-spool": "Line for hook lengths on a spool from the shop.",
  "group.main-line-on-spool": "Main line on a spool from the shop.",
};

const guide = {
  title: "Name of the guide.",
  publisher: "Who gives it out.",
  "site-address": "Where the site will be served; cards get a code for telephones with it.",
  language: "Language of the guide, such as en or de-AT; it says how numbers are written, too.",
  units:
    "metric first shows both systems; metric, imperial or us (feet and inches, American pints) one alone, and lengths typed in texts in it too.",
  "shot-scale": "Scale of shot, by the name of its file below shot/.",
  tub: "Tub that rigs are made up from, by the name of its file below tubs/.",
  "lead-rule": "What the law of your place says of lead shot. Look it up; it differs from place to place.",
  "lead-rule.place": "Place whose law it is.",
  "lead-rule.allowed-up-to": "Lead shot may weigh up to this; 0 g where none is allowed.",
  "lead-rule.allowed-above": "Lead weights above this are allowed again, where the law says so.",
  "lead-rule.source": "Where the rule can be read.",
  "lead-rule.checked": "Day on which somebody last looked; without it pages say that nobody has yet.",
  rules:
    "Other rules of the place, in whole sentences that texts ask for by name; the safety page asks for licence, close-season, wires and cleaning.",
  contacts: "Whom to ring when something has happened.",
  "club-number": "The club's own number in an emergency, as it should be dialled.",
  "access-point":
    "Where help gets to your water, as you would tell it on the telephone: gate, road, nearest house.",
  "contacts.when": "What has happened.",
  "contacts.who": "Whom to ring.",
  "contacts.number": "Their number, where it is the same for all readers.",
  "lead-breach": "Whether a rig against the lead rule is an error, which stops the build, or a warning.",
  plummets: "Plummets to find the depth with.",
  "plummets.mass": "What it weighs.",
  "plummets.metal": "What it is made of.",
  "water-temperature": "Usual temperature of the water.",
  salinity: "Salt in the water, in grams a kilogram: 0 in fresh water, 35 in the open sea.",
  paper: "Paper that cards and handouts are laid out for.",
  "rod-length": "Length of the rods that learners have.",
  edition: "Day of this edition, which stands at the foot of pages and on booklets and labels.",
  look: "What makes the pages look your own: a mark in images/, a font in fonts/, two colours.",
  "look.logo":
    "Your mark, by the name of its file below images/, SVG or PNG; it stands on pages, booklet and app.",
  "look.font":
    "A font for signs that ours lacks, by the name of its file below fonts/; pages and paper take those signs from it.",
  "look.colours":
    "Two colours, or one of them, as # and six digits; each must be legible, and is made lighter for dark pages.",
  "look.colours.main": "Colour of the masthead and of links.",
  "look.colours.accent": "Colour of marks, such as the tip of a float.",
  visit: "Where you are found; it stands at the foot of pages and at the end of handouts.",
  "visit.address": "Your address, in one line.",
  "visit.hours": "When you are open, a line each.",
  library:
    "What of the guide that comes with dotdown is used: none, or for each kind all, none, or names and tags.",
  "library.lessons": "Lessons, by name or part of the course.",
  "library.rigs": "Rigs, by name, level, water or pattern.",
  "library.floats": "Floats, by name or kind.",
  "library.baits": "Baits, by name.",
  "library.knots": "Knots, by name.",
  "library.species": "Fish, by name.",
  "library.kits": "Outfits, by name.",
  "library.pages": "Single pages, by name.",
};

/** What each key means, by kind of file. */
export const keyNotes = {
  rig,
  lesson,
  plan,
  page,
  float,
  bait,
  species,
  knot,
  scale,
  tub,
  swim,
  kit,
  shelf,
  notes,
  choosing,
  session,
  guide,
} as const;

export type FileKind = keyof typeof keyNotes;
