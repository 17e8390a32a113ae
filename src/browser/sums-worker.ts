import { type SumAsked, sumOf } from "./sums.ts";

/** Does sums beside the page, which stays quick to answer meanwhile. */
const page = self as unknown as Worker;

page.addEventListener("message", ({ data }: MessageEvent<SumAsked>) => page.postMessage(sumOf(data)));
