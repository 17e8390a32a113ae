/** What each key of the rules for choosing a rig means. */
export const choosing = {
  basis: "Where the figures come from.",
  "rules-out": "What rules a rig out; each rule once. water, rod and box must be among them.",
  "rules-out.rule":
    "What is held against a rig: the water that it is for; whether rod or whip can fish it at the depth; whether the box has its shot; whether its line is strong enough for the fish; the pace; the depth; how far it must be cast; how far out a float that is held at two points is fished; snags; how far along the learner is; wind.",
  "rules-out.most":
    "pace: share of the fastest pace that the rig is for. depth: share of its deepest. More rules it out.",
  "rules-out.least": "Share of the shallowest depth that the rig is for; less rules it out.",
  "rules-out.from": "As far out as this, any float will do.",
  "rules-out.load-each-metre": "What a float must carry for each metre beyond that, to be cast so far.",
  "rules-out.rod-lengths": "So many lengths of the rod a float that is held top and bottom is fished out.",
  "rules-out.within": "How near a snag counts.",
  "rules-out.main-line": "What the main line must break at, at least, near one.",
  "rules-out.above": "How many steps a rig may be beyond the learner: 0 for none.",
  "rules-out.of": "From which wind on the rule holds.",
  "rules-out.load": "What a float must carry in such a wind.",
  "speaks-for": "What speaks for a rig, and how much; the rig with the most points comes first.",
  "speaks-for.rule":
    "fish: for each fish of the swim that it is meant for. depth and pace: if it is made up for such. level: if it is for such a learner. wind: if its line can be sunk.",
  "speaks-for.points": "How much it counts.",
  "speaks-for.of": "From which wind on it counts.",
};
