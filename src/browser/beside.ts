import { type Asked, type SumAsked, type SumName, sumOf, type Told } from "./sums.ts";

export interface Beside {
  /** @param told gets the answer, and whether nothing else has been asked for since */
  ask<N extends SumName>(name: N, asked: Asked<N>, told: (got: Told<N>, isLast: boolean) => void): void;
  /** What is under way is not told any more. */
  drop(): void;
}

interface Question {
  readonly asked: SumAsked;
  told(got: Told<SumName>, isLast: boolean): void;
}

/**
 * Has sums done beside the page, one at a time: while one is under way only the last that was asked for waits.
 *
 * @param script the worker's address; opened from disk there is none to be had, and the page does its sums
 * @param ownPauseMs how long nobody may have typed before the page does its own; at once where there is no such pause
 */
export function besideBy(script: string, ownPauseMs = 0): Beside {
  let worker = startWorker(script);
  let underWay: Question | undefined;
  let waiting: Question | undefined;
  let busy = false;
  let pause: ReturnType<typeof setTimeout> | undefined;

  const own = () => {
    const one = waiting;
    waiting = undefined;
    one?.told(sumOf(one.asked), true);
  };
  const ownSoon = () => {
    clearTimeout(pause);
    if (ownPauseMs === 0) own();
    else pause = setTimeout(own, ownPauseMs);
  };
  const next = () => {
    if (!worker) return ownSoon();
    if (busy || !waiting) return;
    [underWay, waiting, busy] = [waiting, undefined, true];
    worker.onmessage = ({ data }: MessageEvent<Told<SumName>>) => {
      const one = underWay;
      [underWay, busy] = [undefined, false];
      one?.told(data, waiting === undefined);
      next();
    };
    worker.onerror = (event) => {
      event.preventDefault();
      begin(undefined);
    };
    worker.postMessage(underWay.asked);
  };
  /** What was under way is asked again. */
  const begin = (another: Worker | undefined) => {
    worker = another;
    waiting ??= underWay;
    [underWay, busy] = [undefined, false];
    next();
  };
  // A page that has been left is gone at once, or a new edition would wait for its work; one that comes back begins anew.
  addEventListener("pagehide", () => worker?.terminate());
  addEventListener("pageshow", ({ persisted }) => {
    if (persisted) begin(startWorker(script));
  });
  return {
    ask(name, asked, told) {
      waiting = { asked: { name, asked } as SumAsked, told: told as Question["told"] };
      next();
    },
    drop() {
      [underWay, waiting] = [undefined, undefined];
    },
  };
}

function startWorker(script: string): Worker | undefined {
  if (location.protocol === "file:") return undefined;
  try {
    return new Worker(script);
  } catch {
    return undefined;
  }
}
