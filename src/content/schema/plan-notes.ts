/** Notes of what somebody needs for a lesson. */
const share = (whom: string, at: string) => ({
  [`kit.${at}`]: whom,
  [`kit.${at}.rigs`]: "Rigs made up, by name.",
  [`kit.${at}.floats`]: "Floats, by name.",
  [`kit.${at}.shot`]: "Shot, such as 4 No 8 + 2 AAA.",
  [`kit.${at}.hooks`]: "Hooks by their sizes; a size twice for two of them.",
  [`kit.${at}.baits`]: "Baits, by name.",
  [`kit.${at}.main-line`]: "Length of main line.",
  [`kit.${at}.hook-line`]: "Length of line for hook lengths.",
  [`kit.${at}.tools`]: "Whatever else, by the names of tools.yaml.",
});

/** What each key of a coach's plan means. */
export const plan = {
  aim: "What every learner can do at the end, in one sentence.",
  minutes: "How long the lesson takes in all, in minutes.",
  parts: "The minutes of its parts, which add up to that.",
  "parts.begin": "For how to begin.",
  "parts.show": "For what the coach shows.",
  "parts.drills": "For what the learners do.",
  "parts.questions": "For asking whether it went in.",
  at: "Where it is held.",
  learners: "How many learners one coach can have in it at most.",
  after: "Lessons that must have been held, by the names of their files.",
  "teaches-safety": "true where learners know after it what there is to know of safety by the water.",
  kit: "What is needed for it.",
  ...share("What each learner needs.", "each"),
  ...share("What two learners share.", "two"),
  ...share("What the whole group needs once.", "group"),
};
