const waiting: FrameRequestCallback[] = [];

/** Has something done in a frame of its own: what a slow phone draws in one frame may be no more than that. */
export function inOwnFrame(draw: FrameRequestCallback): void {
  waiting.push(draw);
  if (waiting.length === 1) requestAnimationFrame(takeNext);
}

/** The same, to be waited for: goes on in a frame in which nothing else is done. */
export function ownFrame(): Promise<void> {
  return new Promise((begun) => inOwnFrame(() => begun()));
}

function takeNext(nowMs: number): void {
  const draw = waiting.shift();
  if (waiting.length > 0) requestAnimationFrame(takeNext);
  draw?.(nowMs);
}
