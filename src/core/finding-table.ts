/** What a value of a finding is, so that whoever words it knows how it is shown; all but text and shot are numbers. */
export type ValueKind =
  | "text"
  | "shot" // a load
  | "number"
  | "length" // mm, along the line or of a thing
  | "depth" // mm of water, or of a rod
  | "tip" // mm of a float above the water
  | "mass" // g, of a thing or of what it pulls
  | "stated mass" // g, as a scale or a rule states it
  | "density" // kg/m³
  | "time" // s
  | "share" // of one
  | "pace" // m/s
  | "temperature"; // °C

/** The part of a rig that a finding is about; `rig` for the rig as a whole, or for none. */
export type Subject = "float" | "depth" | "setting" | "bait" | "feed" | "line" | "loading" | "rig";

type Values = Readonly<Record<string, ValueKind>>;

/** A setting of the guide that says how bad a finding is, where that is a matter of the place's rules. */
type SeverityRule = "leadBreach";

const about = <S extends Subject, const V extends Values>(
  subject: S,
  values: V,
  severity?: SeverityRule,
) => ({
  subject,
  values,
  severity,
});

/** Everything that the core can find, with what each is about and the values that its sentence may tell. */
export const findingTable = {
  "beyond-reckoning": about("rig", {}),
  "capacity-below-hook-and-bait": about("float", { pullG: "mass", hookAndBaitPullG: "mass" }),
  "float-capacity": about("float", {}),
  "float-density-marked": about("float", {
    massG: "mass",
    densityKgM3: "density",
    displacedG: "mass",
    capacityG: "mass",
  }),
  "float-density-measured": about("float", {
    massG: "mass",
    densityKgM3: "density",
    displacedG: "mass",
    capacityG: "mass",
  }),
  "float-density-weighed": about("float", { massG: "mass", densityKgM3: "density" }),
  "float-figure": about("float", {}),
  "float-never-cocks": about("float", { pullG: "mass" }),
  "float-profile-diameter": about("float", { atMm: "length" }),
  "float-profile-falls": about("float", { atMm: "length", beforeMm: "length" }),
  "float-profile-short": about("float", {}),
  "float-self-load": about("float", {}),
  "float-tip-showing": about("float", { tipShowingMm: "length", lengthMm: "length" }),
  "float-tip-zero": about("float", {}),
  "float-weighed-against-marked": about("float", { weighedMassG: "mass", impliedG: "mass" }),
  "float-weighed-against-measured": about("float", { weighedMassG: "mass", impliedG: "mass" }),
  "float-weighed-mass": about("float", {}),
  "water-figure": about("float", {}),
  "depth-below-draught": about("depth", { depthMm: "depth", draughtMm: "length", lengthMm: "length" }),
  "depth-below-setting": about("depth", { depthMm: "depth", offBedMm: "length", draughtMm: "length" }),
  "depth-not-positive": about("depth", {}),
  "depth-too-great": about("depth", { deepestMm: "depth" }),
  "plumbing-guess": about("depth", {}),
  "plummet-too-light": about("depth", { heaviestG: "mass", neededG: "mass" }),
  "plummet-weight": about("depth", {}),
  "sliding-float-needed": about("depth", {
    floatToHookMm: "length",
    limitMm: "length",
    rodLengthMm: "depth",
  }),
  "sliding-float-too-light": about("depth", { loadG: "mass", neededG: "mass" }),
  "load-sinks-float": about("loading", { pullG: "mass", mostPullG: "mass" }),
  "setting-figure": about("setting", { mostMm: "depth" }),
  "flow-setting-too-deep": about("setting", { shallowerMm: "length" }),
  "setting-too-deep": about("setting", { shallowerMm: "length" }),
  "setting-too-shallow": about("setting", { deeperMm: "length" }),
  "whip-sliding-float": about("depth", {}),
  "whip-too-short": about("depth", { hookDepthMm: "depth", limitMm: "depth", whipMm: "depth" }),
  "setting-against-overdepth": about("setting", { setting: "text" }),
  "fall-floats": about("bait", { densityKgM3: "density" }),
  "hook-and-bait-figure": about("bait", {}),
  "hook-and-bait-float": about("bait", { liftG: "mass" }),
  "sink-never": about("bait", {}),
  "feed-rate": about("feed", {}),
  "feed-too-often": about("feed", { pattern: "text", everyS: "time" }),
  "feed-too-seldom": about("feed", { pattern: "text", everyS: "time" }),
  "session-length": about("feed", {}),
  "knot-share": about("line", { knot: "text" }),
  "line-strength": about("line", { part: "text" }),
  "main-line-weak-link": about("line", { mainG: "mass", hookG: "mass" }),
  "box.cannot-be-made": about("loading", { sizes: "text" }),
  "box.fall-changed": about("loading", { fallS: "time", ownS: "time" }),
  "box.fall-kept": about("loading", { fallS: "time" }),
  "box.buy": about("loading", { size: "text" }),
  "box.buy-to-make": about("loading", { size: "text" }),
  "box.lead-left-out": about("loading", { sizes: "text", place: "text" }),
  "box.not-understood": about("loading", { term: "text", text: "text", sizes: "text" }),
  "box.other-lock": about("loading", { used: "shot", own: "shot" }),
  "box.other-line-shot": about("loading", { used: "shot", own: "shot" }),
  "box.rig-that-can": about("loading", { rig: "text" }),
  "box.tip-changed": about("loading", { tipMm: "tip", ownMm: "tip" }),
  "box.tip-kept": about("loading", { tipMm: "tip" }),
  "tip-off-mark": about("loading", { tipMm: "tip", wantedMm: "tip", missingG: "mass" }),
  "tip-off-mark-add": about("loading", {
    tipMm: "tip",
    wantedMm: "tip",
    size: "text",
    thenMm: "tip",
  }),
  "tip-off-mark-buy": about("loading", {
    tipMm: "tip",
    wantedMm: "tip",
    size: "text",
    thenMm: "tip",
  }),
  "lead-not-allowed": about(
    "loading",
    {
      size: "text",
      massG: "stated mass",
      allowedUpToG: "stated mass",
      place: "text",
    },
    "leadBreach",
  ),
  "lead-rule-unread": about(
    "loading",
    {
      size: "text",
      massG: "stated mass",
      allowedUpToG: "stated mass",
      place: "text",
    },
    "leadBreach",
  ),
  "load-does-not-cock": about("loading", { pullG: "mass", neededPullG: "mass" }),
  "load.bare-number": about("loading", { term: "text", text: "text", scale: "text", sizes: "text" }),
  "load.no-count": about("loading", { term: "text", text: "text", size: "text" }),
  "load.not-understood": about("loading", { term: "text", text: "text", scale: "text", sizes: "text" }),
  "load.two-readings": about("loading", {
    term: "text",
    text: "text",
    scale: "text",
    size: "text",
    count: "text",
    countedSize: "text",
  }),
  "load.unknown-size": about("loading", { size: "text", text: "text", scale: "text", sizes: "text" }),
  "load.zero": about("loading", { term: "text", text: "text" }),
  "loading.bad-shot": about("loading", { size: "text", massG: "mass", count: "number" }),
  "loading.bad-target": about("loading", { targetPullG: "mass", mostPullG: "mass" }),
  "loading.bad-water": about("loading", { tempC: "temperature", salinity: "number" }),
  "loading.no-shot": about("loading", { sizes: "text" }),
  "loading.nothing-fits": about("loading", {
    targetPullG: "mass",
    smallestSize: "text",
    smallestPullG: "mass",
  }),
  "loading.nothing-left-for-lock": about("loading", { linePullG: "mass", floatPullG: "mass" }),
  "loading.one-sided-lock": about("loading", { size: "text", pullG: "mass" }),
  "loading.tub-runs-out": about("loading", { targetPullG: "mass", pullG: "mass", sparePullG: "mass" }),
  "loading.uneven-lock": about("loading", { heavierPullG: "mass", lighterPullG: "mass" }),
  "lock-does-not-cock": about("loading", { lockPullG: "mass", neededG: "mass" }),
  "pattern.anchor-too-light": about("loading", { size: "text", pullG: "mass", floatPullG: "mass" }),
  "pattern.bad-length": about("loading", { what: "text", lengthMm: "length" }),
  "pattern.bad-line-pull": about("loading", { linePullG: "mass" }),
  "pattern.bad-share": about("loading", { share: "share" }),
  "pattern.bulk-on-hook-length": about("loading", {
    fromHookMm: "length",
    hookLengthMm: "length",
    atLeastMm: "length",
  }),
  "pattern.gap-closed": about("loading", { askedMm: "length", gapMm: "length" }),
  "pattern.group-of-one": about("loading", { pattern: "text", size: "text" }),
  "pattern.grows-towards-hook": about("loading", {
    role: "text",
    size: "text",
    aboveRole: "text",
    aboveSize: "text",
  }),
  "pattern.moved-off-knot": about("loading", { role: "text", askedMm: "length", fromHookMm: "length" }),
  "pattern.no-lock": about("loading", { pattern: "text" }),
  "pattern.no-pull-left": about("loading", { pullG: "mass" }),
  "pattern.not-in-tub": about("loading", { size: "text", sizes: "text" }),
  "pattern.size-left-out": about("loading", { size: "text", below: "text" }),
  "pattern.too-close": about("loading", {
    role: "text",
    aboveRole: "text",
    fromHookMm: "length",
    aboveFromHookMm: "length",
    leastMm: "length",
  }),
  "pattern.too-heavy-for-line": about("loading", { pullG: "mass", linePullG: "mass" }),
  "pattern.too-near-hook": about("loading", { role: "text", fromHookMm: "length", atLeastMm: "length" }),
  "pattern.too-shallow": about("loading", {
    pattern: "text",
    role: "text",
    depthMm: "depth",
    neededDepthMm: "depth",
    floatToHookMm: "length",
    neededFloatToHookMm: "length",
  }),
  "shot-above-float": about("loading", { fromHookMm: "length", floatToHookMm: "length" }),
  "shot-not-on-line": about("loading", { size: "text" }),
  "bite-measure": about("rig", {}),
  "feed-drift": about("rig", {}),
  "flow-pace": about("rig", { paceMs: "pace", heldBackShare: "share" }),
  "groundbait-balls": about("rig", {}),
  "groundbait-too-much": about("rig", { dryG: "mass" }),
  "held-float": about("rig", {}),
  "kit-count": about("rig", { name: "text" }),
  "kit-learners": about("rig", {}),
  "kit-packet": about("rig", { name: "text" }),
  "kit-spares": about("rig", {}),
  "record-float-to-hook": about("rig", {}),
  "record-hand-span": about("rig", {}),
  "record-rod": about("rig", {}),
  "rig-measure": about("rig", { measure: "text" }),
} as const satisfies Readonly<Record<string, { readonly subject: Subject; readonly values: Values }>>;
