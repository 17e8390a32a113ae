/** What each key of the notes on a day at a swim means. */
export const notes = {
  swim: "The swim, by the name of its file below swims/.",
  date: "Day of the session.",
  level: "How much higher the water stood than when the swim was sounded; below 0 where it was lower.",
  pace: "How fast the surface ran: so many metres in so many seconds.",
  depths: "Depths that were found.",
  "depths.spot": "Place of the swim, by its title there.",
  "depths.depth": "How deep the water was there.",
  rigs: "What each rig did. No names of people.",
  "rigs.rig": "The rig, by the name of its file below rigs/.",
  "rigs.spot": "Place of the swim where it was fished, by its title there.",
  "rigs.worked": "What worked with it, in a sentence or two.",
  "rigs.catches": "What it caught.",
  "rigs.catches.fish": "Kind of fish, by a name that species/ has.",
  "rigs.catches.count": "How many.",
};
