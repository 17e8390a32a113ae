/** Notes of tackle in a box or on a shelf. */
export const stock = (at: string) => {
  const sold = (key: string, packet: string) => ({
    [`${at}${key}.packet`]: packet,
    [`${at}${key}.price`]: "What a packet costs, in the money of the file.",
  });
  const spools = (key: string, what: string) => ({
    [`${at}${key}`]: what,
    [`${at}${key}.strength`]: "What it breaks at.",
    [`${at}${key}.length`]: "How much of it there is.",
    ...sold(
      key,
      "How much is on a spool from the shop; by the metre, or as the kit has it, where nothing is said.",
    ),
  });
  return {
    [`${at}floats`]: "Floats that there are.",
    [`${at}floats.float`]: "The float, by the name of its file below floats/.",
    [`${at}floats.count`]: "How many there are.",
    ...sold(
      "floats",
      "How many are in a packet from the shop; one, or as the kit has it, where nothing is said.",
    ),
    [`${at}shot`]: "Shot that there is, by size and metal.",
    [`${at}shot.size`]: "Name of a size of the guide's scale.",
    [`${at}shot.metal`]: "What it is made of. Local rules may forbid lead.",
    [`${at}shot.count`]: "How many there are.",
    ...sold(
      "shot",
      "How many are in a packet from the shop; one, or as the kit has it, where nothing is said.",
    ),
    [`${at}hooks`]: "Hooks that there are.",
    [`${at}hooks.size`]: "Size of hook, a number of hooks.yaml.",
    [`${at}hooks.count`]: "How many there are.",
    ...sold(
      "hooks",
      "How many are in a packet from the shop; one, or as the kit has it, where nothing is said.",
    ),
    ...spools("hook-line", "Line for hook lengths that there is."),
    ...spools("main-line", "Main line that there is."),
  };
};

/** What each key of a shelf means. */
export const shelf = {
  title: "Name of the shop, or of its shelf.",
  money: "What prices are in, such as £ or EUR.",
  ...stock(""),
  pack: "What is in a made-up pack besides float and shot.",
  "pack.hook-lengths": "Hook lengths tied for it.",
  "pack.line-for-each": "Line that is cut off for one hook length.",
  "pack.main-line": "Main line on the winder with the rig.",
  packs: "Rigs that are sold made up.",
  "packs.rig": "The rig, by the name of its file below rigs/.",
  "packs.wanted": "How many are to lie ready.",
  "packs.ready": "How many lie ready now; none where nothing is said.",
};
