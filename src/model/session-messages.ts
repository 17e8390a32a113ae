/** Messages about sessions: what each is about, for its words to speak of. */
export interface SessionMessageValues {
  readonly "session-past-midnight": { readonly hours: number; readonly left: number };
  readonly "session-too-few-rods": {
    readonly learners: number;
    /** More than learners where they fish with a whip and a rod in turn. */
    readonly needed: number;
    readonly rods: number;
  };
  readonly "session-rig-water": { readonly rig: string; readonly water: "still" | "flowing" };
  readonly "session-swim-without-rig": { readonly swim: string; readonly water: "still" | "flowing" };
  readonly "session-rig-not-for-spot": { readonly rig: string; readonly spot: string; readonly said: string };
  readonly "session-too-long": { readonly over: number; readonly leaveOut: readonly string[] };
  readonly "session-lesson-needs": {
    readonly title: string;
    readonly needs: readonly string[];
    readonly areNew: boolean;
  };
  readonly "session-lesson-place": { readonly title: string; readonly water: "still" | "flowing" };
  readonly "session-group": {
    readonly title: string;
    readonly most: number;
    readonly learners: number;
    readonly adults: number;
  };
  readonly "session-too-few-places": { readonly learners: number; readonly places: number };
  readonly "session-bait-missing": { readonly rig: string; readonly bait: string };
}

/** How bad each is. */
export const sessionSeverity = {
  "session-past-midnight": "error",
  "session-too-few-rods": "error",
  "session-rig-water": "error",
  "session-swim-without-rig": "error",
  "session-rig-not-for-spot": "error",
  "session-too-long": "warning",
  "session-lesson-needs": "warning",
  "session-lesson-place": "warning",
  "session-group": "warning",
  "session-too-few-places": "warning",
  "session-bait-missing": "warning",
} as const satisfies Readonly<Record<keyof SessionMessageValues, "error" | "warning">>;
