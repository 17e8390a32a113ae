import { type LaterAsked, laterSums } from "./later-sums.ts";

/** Does the longer sums beside the page, which stays quick to answer meanwhile. */
const page = self as unknown as Worker;

page.addEventListener("message", ({ data }: MessageEvent<LaterAsked>) => page.postMessage(laterSums(data)));
