import { entry, last } from "../core/lists.ts";
import type { InWater, Sister } from "../model/in-water.ts";

/** For which ways of landing a bulk brings the bait down sooner than the same shot strung out. */
type BulkGains = "both" | "straight" | "heap" | "nothing";

/** Less than this share is no gain: it is about what the sums are good for. Our own bound. */
const leastGainShare = 0.05;

/** Whether gathering the shot, as the rig or as its sister has them, is worth it at this depth. */
export function bulkGains(own: InWater["sink"], sister: Sister): BulkGains {
  const gathered = sister.arrangement === "strung out" ? own : sister.sink;
  const strungOut = sister.arrangement === "strung out" ? sister.sink : own;
  const [straight, heap] = gathered.map(
    ({ tenthsS }, i) => last(tenthsS) < (1 - leastGainShare) * last(entry(strungOut, i).tenthsS),
  );
  if (straight && heap) return "both";
  if (straight) return "straight";
  return heap ? "heap" : "nothing";
}
