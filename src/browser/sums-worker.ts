import { type SumAsked, sumOf } from "./sums.ts";

/** Does sums beside the page, which stays quick to answer meanwhile; where there can be no worker, in the page itself. */
const scope = globalThis as unknown as { document?: Document; dotdownSumOf?: typeof sumOf };

if (scope.document) scope.dotdownSumOf = sumOf;
else {
  const page = self as unknown as Worker;
  // The first that writes numbers takes a browser as long to make as all else that a page shows, and those after it,
  // wherever they are made, hardly any time: so it is made here, where nobody waits to type.
  new Intl.NumberFormat();
  page.addEventListener("message", ({ data }: MessageEvent<SumAsked>) => page.postMessage(sumOf(data)));
}
